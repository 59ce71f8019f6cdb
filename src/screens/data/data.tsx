import { useState } from 'preact/hooks';
import { useLive } from '../../app/live.ts';
import { notify } from '../../app/notices.ts';
import { saveBackup } from '../../app/save-backup.ts';
import { isDemoLoaded, loadDemo, unloadDemo } from '../../store/demo/demo-shop.ts';
import { kinds } from '../../store/records/kinds.ts';
import { Button } from '../../ui/button.tsx';
import { Screen } from '../../ui/screen.tsx';
import { questions } from '../questions.ts';
import { BackupState } from './backup-state.tsx';
import { Privacy } from './privacy.tsx';
import { Receive } from './receive.tsx';
import { Send } from './send.tsx';
import { SnapshotList } from './snapshot-list.tsx';
import { StorageState } from './storage-state.tsx';
import './data.css';

/** Where the records are, how they get out and in, and the demo shop. */
export default function DataScreen() {
  const [busy, setBusy] = useState(false);
  const backUp = async () => {
    setBusy(true);
    try {
      const how = await saveBackup();
      if (how !== 'cancelled') notify(how === 'shared' ? 'Backup shared.' : 'Backup saved to the downloads.');
    } finally {
      setBusy(false);
    }
  };
  return (
    <Screen
      question={questions.data}
      kicker="Records"
      action={
        <Button look="big now" disabled={busy} onClick={backUp}>
          Take a backup
        </Button>
      }
    >
      <BackupState />
      <Receive />
      <Send />
      <SnapshotList />
      <Demo />
      <StorageState />
      <Privacy />
    </Screen>
  );
}

function Demo() {
  const loaded = useLive(kinds, isDemoLoaded);
  const [busy, setBusy] = useState(false);
  if (loaded === undefined) return null;
  const swap = async () => {
    setBusy(true);
    try {
      await (loaded ? unloadDemo() : loadDemo());
      notify(loaded ? 'The demo shop is gone.' : 'The demo shop is loaded.');
    } catch {
      // The shell shows what the phone did not take.
    } finally {
      setBusy(false);
    }
  };
  return (
    <section class="card" aria-label="Demo shop">
      <h2>Demo shop</h2>
      <p>A hanging tool cabinet and a blanket chest in cherry and maple, with invented boards and prices.</p>
      <Button disabled={busy} onClick={swap}>
        {loaded ? 'Remove the demo shop' : 'Load the demo shop'}
      </Button>
    </section>
  );
}
