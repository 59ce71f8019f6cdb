import { useState } from 'preact/hooks';
import { saveBackup } from '../../app/save-backup.ts';
import { eraseEverything } from '../../store/backup/erase-everything.ts';
import { Button } from '../../ui/button.tsx';
import { Card } from '../../ui/card.tsx';

/** What is stored, where, and how it is taken out and erased. */
export function Privacy() {
  const [sure, setSure] = useState(false);
  const erase = async () => {
    await eraseEverything();
    location.reload();
  };
  return (
    <Card title="What is kept, and where">
      <p>
        All you enter stays in this browser on this phone: no account, no server. Nothing leaves it unless you share a
        file. A backup is one JSON file with it all.
      </p>
      {sure ? (
        <div class="buttons">
          <Button onClick={saveBackup}>Back up first</Button>
          <Button look="now" onClick={erase}>
            Erase all records
          </Button>
          <Button onClick={() => setSure(false)}>Keep them</Button>
        </div>
      ) : (
        <Button onClick={() => setSure(true)}>Erase everything…</Button>
      )}
    </Card>
  );
}
