import type { ComponentChildren } from 'preact';
import { dueBackup } from '../../app/housekeeping.ts';
import { install, installsByHand } from '../../app/install.ts';
import { saveBackup } from '../../app/save-backup.ts';
import { Button } from '../../ui/button.tsx';
import { DemoButton } from '../data/demo-button.tsx';

/** What keeps the work safe, when there is something to say: a backup that is due, the app not yet on the home screen. */
export function KeepSafe({ begun }: { begun: boolean }) {
  const byHand = installsByHand();
  return (
    <>
      {dueBackup.value ? (
        <BackupOffer>{dueBackup.value.changed} records lie on this phone alone.</BackupOffer>
      ) : (
        begun &&
        byHand && (
          <BackupOffer>
            This browser clears pages that were not used for some days. Take a backup, add this to the home screen from
            the share menu, and bring the backup in there.
          </BackupOffer>
        )
      )}
      {begun && install.value && (
        <div class="card">
          <p>On the home screen it opens at a tap, and the phone does not clear its records.</p>
          <Button onClick={install.value}>Put it on the home screen</Button>
        </div>
      )}
      {!begun && byHand && (
        <p class="card first">
          Before you enter anything: open the share menu and add this to the home screen. This browser clears pages that
          were not used for some days, and the app on the home screen keeps its own records.
        </p>
      )}
      {!begun && <DemoButton />}
    </>
  );
}

function BackupOffer({ children }: { children: ComponentChildren }) {
  return (
    <div class="card">
      <p>{children}</p>
      <Button onClick={saveBackup}>Take a backup</Button>
    </div>
  );
}
