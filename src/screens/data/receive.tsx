import { useEffect, useId, useState } from 'preact/hooks';
import { type ReadOutcome, readBackup } from '../../store/backup/read-backup.ts';
import { Button } from '../../ui/button.tsx';
import { Card } from '../../ui/card.tsx';
import { Fold } from '../../ui/fold.tsx';
import { onIncomingFile } from './incoming-file.ts';
import { Received } from './received.tsx';
import { refusals } from './refusals.ts';

type Outcome = ReadOutcome | { readonly kind: 'unread' };

/** Takes a backup, a piece or a delivery in: from a file, from another app, or pasted. */
export function Receive() {
  const id = useId();
  const [outcome, setOutcome] = useState<Outcome>();
  const [pasted, setPasted] = useState('');

  const open = async (file: string | Blob | undefined) => {
    setOutcome(undefined);
    if (!file) return;
    try {
      setOutcome(await readBackup(file));
    } catch {
      setOutcome({ kind: 'unread' });
    }
  };
  useEffect(() => onIncomingFile((file) => void open(file)), []);

  return (
    <Card title="Bring records in">
      <p>A backup, or what another phone sent. First you see what would change.</p>
      <div class="field">
        <label for={id}>File</label>
        <input
          id={id}
          type="file"
          accept=".json,.txt,application/json,text/plain"
          onChange={(event) => void open(event.currentTarget.files?.[0])}
        />
      </div>
      <Fold label="Or paste it">
        <div class="field">
          <label for={`${id}-text`}>What was sent</label>
          <textarea
            id={`${id}-text`}
            rows={4}
            value={pasted}
            onInput={(event) => setPasted(event.currentTarget.value)}
          />
        </div>
        <Button disabled={pasted.trim() === ''} onClick={() => open(pasted.trim())}>
          Look at it
        </Button>
      </Fold>
      <div class="received" aria-live="polite">
        {outcome &&
          (outcome.kind === 'read' ? (
            <Received read={outcome} onDone={() => setOutcome(undefined)} />
          ) : (
            <p class="trouble">{refusals[outcome.kind]} Nothing has changed.</p>
          ))}
      </div>
    </Card>
  );
}
