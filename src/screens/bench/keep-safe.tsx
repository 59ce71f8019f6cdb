import { dueBackup } from '../../app/housekeeping.ts';
import { install, installsByHand } from '../../app/install.ts';

/** What keeps the work safe, when there is something to say: a backup that is due, the app not yet on the home screen. */
export function KeepSafe({ begun }: { begun: boolean }) {
  return (
    <>
      {dueBackup.value && <BackupDue changed={dueBackup.value.changed} />}
      {begun && install.value && (
        <div class="card">
          <p>On the home screen it opens like a tool at hand, and the phone does not clear its records.</p>
          <button type="button" class="button" onClick={install.value}>
            Put it on the home screen
          </button>
        </div>
      )}
      {!begun && installsByHand() && (
        <p class="card">
          Before you enter anything: open the share menu and add this to the home screen. This browser clears pages that
          were not used for some days, and the app on the home screen keeps its own records.
        </p>
      )}
    </>
  );
}

function BackupDue({ changed }: { changed: number }) {
  const save = async () => (await import('../../app/save-backup.ts')).saveBackup();
  return (
    <div class="card">
      <p>{changed} records lie on this phone alone.</p>
      <button type="button" class="button" onClick={() => void save()}>
        Take a backup
      </button>
    </div>
  );
}
