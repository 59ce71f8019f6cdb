import { notify } from '../../app/notices.ts';
import { saveBackup } from '../../app/save-backup.ts';
import { Button } from '../../ui/button.tsx';
import { Card } from '../../ui/card.tsx';
import { Screen } from '../../ui/screen.tsx';
import { questions } from '../questions.ts';
import { BackupState } from './backup-state.tsx';
import { DemoButton } from './demo-button.tsx';
import { Privacy } from './privacy.tsx';
import { Receive } from './receive.tsx';
import { Send } from './send.tsx';
import { SnapshotList } from './snapshot-list.tsx';
import { StorageState } from './storage-state.tsx';
import './data.css';

/** Where the records are, how they get out and in, and the demo shop. */
export default function DataScreen() {
  const backUp = async () => {
    const how = await saveBackup();
    if (how !== 'cancelled') notify(how === 'shared' ? 'Backup shared.' : 'Backup saved to the downloads.');
  };
  return (
    <Screen
      question={questions.data}
      kicker="Records"
      action={
        <Button look="big now" onClick={backUp}>
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

const Demo = () => (
  <Card title="Demo shop">
    <p>A tool cabinet and a blanket chest, with invented boards and prices.</p>
    <DemoButton />
  </Card>
);
