import { useId, useState } from 'preact/hooks';
import { notify } from '../../app/notices.ts';
import type { ApplyMode, Preview } from '../../store/backup/preview-backup.ts';
import type { ReadOutcome } from '../../store/backup/read-backup.ts';

type Read = Extract<ReadOutcome, { kind: 'read' }>;

const refusals: Readonly<Record<Exclude<ReadOutcome['kind'], 'read'>, string>> = {
  tooBig: 'This file is larger than any backup of this app.',
  notJson: 'This file is not a backup: it is not even JSON.',
  notBackup: 'This is a JSON file, but not a backup of this app.',
  newer: 'This backup comes from a newer version of the app. Update the app first.',
  notConverted: 'This backup is from an old version and could not be brought up to date.',
};

/** Takes a backup in: says what it holds and what would change before anything does. */
export function Restore() {
  const id = useId();
  const [read, setRead] = useState<Read>();
  const [refused, setRefused] = useState('');
  const [previews, setPreviews] = useState<Readonly<Record<ApplyMode, Preview>>>();

  const open = async (file: File | undefined) => {
    setRead(undefined);
    setRefused('');
    if (!file) return;
    const { readBackup } = await import('../../store/backup/read-backup.ts');
    const { previewBackup } = await import('../../store/backup/preview-backup.ts');
    const outcome = await readBackup(file);
    if (outcome.kind !== 'read') {
      setRefused(refusals[outcome.kind]);
      return;
    }
    setPreviews({
      merge: await previewBackup(outcome.contents, 'merge'),
      replace: await previewBackup(outcome.contents, 'replace'),
    });
    setRead(outcome);
  };
  const apply = async (mode: ApplyMode) => {
    if (!read) return;
    const { applyBackup } = await import('../../store/backup/apply-backup.ts');
    const outcome = await applyBackup(read.contents, mode, { damaged: read.damaged });
    setRead(undefined);
    notify(
      outcome.kind === 'applied'
        ? 'Done. How it was before is kept as a snapshot below.'
        : 'The phone did not take it; nothing has changed.',
    );
  };

  return (
    <section class="card" aria-label="Restore">
      <h2>Bring a backup in</h2>
      <div class="field">
        <label for={id}>Backup file</label>
        <input
          id={id}
          type="file"
          accept=".json,application/json"
          onChange={(event) => void open(event.currentTarget.files?.[0])}
        />
      </div>
      <div aria-live="polite">
        {refused && <p class="trouble">{refused} Nothing has changed.</p>}
        {read && previews && (
          <>
            <p>
              Made {new Date(read.madeAt).toLocaleString()}. It holds{' '}
              {Object.values(read.contents.kinds).reduce((sum, records) => sum + records.length, 0)} records.
            </p>
            {read.altered && (
              <p class="trouble">The file has been changed since it was made. Look at what it brings.</p>
            )}
            {read.damaged.length > 0 && (
              <details>
                <summary>{read.damaged.length} damaged records are set aside</summary>
                <ul class="rows">
                  {read.damaged.slice(0, 50).map(({ kind, why }) => (
                    <li>
                      <span>
                        {kind}: {why}
                      </span>
                    </li>
                  ))}
                </ul>
              </details>
            )}
            <Changes of={previews.merge} mode="Merge" />
            <Changes of={previews.replace} mode="Replace" />
            <div class="buttons">
              <button type="button" class="button" onClick={() => void apply('merge')}>
                Merge: the newest of each record stays
              </button>
              <button type="button" class="button" onClick={() => void apply('replace')}>
                Replace everything with the file
              </button>
            </div>
          </>
        )}
      </div>
    </section>
  );
}

function Changes({ of: { counts }, mode }: { of: Preview; mode: string }) {
  return (
    <p class="small">
      <b>{mode}:</b> {counts.new} new, {counts.newer} newer in the file, {counts.older} newer here, {counts.conflict} in
      conflict, {counts.removed} removed, {counts.same} the same.
    </p>
  );
}
