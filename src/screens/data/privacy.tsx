import { useState } from 'preact/hooks';
import { saveBackup } from '../../app/save-backup.ts';

/** What is stored, where, and how it is taken out and erased. */
export function Privacy() {
  const [sure, setSure] = useState(false);
  const erase = async () => {
    const { eraseEverything } = await import('../../store/backup/erase-everything.ts');
    await eraseEverything();
    location.reload();
  };
  return (
    <section class="card" aria-label="Privacy">
      <h2>What is kept, and where</h2>
      <p>
        Your shop, boards, deliveries, pieces, plans, runs, checks and timers are kept in this browser’s storage on this
        phone. There is no account and no server: after the app is loaded, nothing leaves the phone unless you share a
        file.
      </p>
      <p>A backup holds all of it as one JSON file that any text editor opens.</p>
      {sure ? (
        <div class="buttons">
          <button type="button" class="button" onClick={() => void saveBackup()}>
            Back up first
          </button>
          <button type="button" class="button now" onClick={() => void erase()}>
            Erase all records
          </button>
          <button type="button" class="button" onClick={() => setSure(false)}>
            Keep them
          </button>
        </div>
      ) : (
        <button type="button" class="button" onClick={() => setSure(true)}>
          Erase everything…
        </button>
      )}
    </section>
  );
}
