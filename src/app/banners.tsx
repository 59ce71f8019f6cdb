import { useEffect, useRef, useState } from 'preact/hooks';
import { exportFailedWrites } from '../store/backup/export-backup.ts';
import { closeDatabase, type DatabaseState, database, onDatabase } from '../store/db.ts';
import { type FailedWrite, failedWrites, onFailedWrites, retryFailedWrites } from '../store/failed-writes.ts';
import { Button } from '../ui/button.tsx';
import { saveFile } from '../ui/save-file.ts';
import { inFlow } from './flow.ts';
import { notice } from './notices.ts';
import { saveBackup } from './save-backup.ts';
import { waitingUpdate } from './updates.ts';

const databaseWords: Partial<Record<DatabaseState, string>> = {
  blocked: 'Another tab holds an older version open. Close it, and this one goes on.',
  migrating: 'Bringing your records to the new version. Leave the app open.',
  migrationFailed: 'Your records could not be brought to the new version. They are untouched.',
  superseded: 'A newer version is open in another tab. This one has stopped writing.',
  erased: 'The records on this phone were erased outside the app.',
  failed: 'The phone does not let the app open its records.',
};

async function tryAgain() {
  await closeDatabase();
  await database().catch(() => {});
}

/** As a backup that holds no more than what is not stored. */
async function takeOut() {
  const { name, text } = await exportFailedWrites();
  await saveFile(name, 'application/json', text);
}

/** What the maker must know about the records, the writes and the version, wherever they stand. */
export function Banners() {
  const [state, setState] = useState<DatabaseState>('closed');
  const [failed, setFailed] = useState<readonly FailedWrite[]>(failedWrites());
  // What was erased stays said, though something may read in the meantime: that starts anew.
  useEffect(() => onDatabase((next) => setState((now) => (now === 'erased' ? now : next))), []);
  useEffect(() => onFailedWrites(setFailed), []);
  const words = databaseWords[state];
  const update = waitingUpdate.value;
  const past = notice.value?.past;
  const now = useRef<HTMLDivElement>(null);
  // Room for them beside the screen. Asked of the style itself, every change of the page would cost anew.
  useEffect(() => {
    document.documentElement.toggleAttribute('data-noticed', Boolean(now.current?.firstChild));
  });
  const banners = (
    <div class="notices" aria-live="polite" ref={now}>
      {words && (
        <div class="notice">
          <p>{words}</p>
          {state === 'migrationFailed' && <Button onClick={saveBackup}>Take the data out</Button>}
          {state === 'superseded' || state === 'erased' ? (
            <Button onClick={() => location.reload()}>Load again</Button>
          ) : (
            state !== 'migrating' && <Button onClick={tryAgain}>Try again</Button>
          )}
        </div>
      )}
      {failed.length > 0 && (
        <div class="notice">
          <p>
            {failed.length === 1 ? 'One change is' : `${failed.length} changes are`} not stored yet:{' '}
            {failed[0]?.full ? 'the phone is full.' : 'the phone did not take it.'}
          </p>
          <Button onClick={retryFailedWrites}>Try again</Button>
          <Button onClick={takeOut}>Take it out</Button>
        </div>
      )}
      {update && !inFlow() && (
        <div class="notice">
          <p>A newer version is ready.</p>
          <Button onClick={update}>Use it now</Button>
        </div>
      )}
      {!past && <LatestNotice />}
    </div>
  );
  return (
    <>
      {banners}
      {past && (
        <section class="notices past" aria-label="Done before">
          <LatestNotice />
        </section>
      )}
    </>
  );
}

function LatestNotice() {
  const latest = notice.value;
  if (!latest) return null;
  const dismiss = () => {
    notice.value = undefined;
  };
  return (
    <div class="notice">
      <p>{latest.text}</p>
      {latest.action && (
        <Button
          onClick={() => {
            dismiss();
            void latest.action?.run();
          }}
        >
          {latest.action.label}
        </Button>
      )}
      <Button label="Dismiss" onClick={dismiss}>
        ✕
      </Button>
    </div>
  );
}
