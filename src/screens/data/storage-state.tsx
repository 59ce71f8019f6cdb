import { useEffect, useState } from 'preact/hooks';
import { formatDecimals } from '../../core/answer/format-number.ts';
import { Button } from '../../ui/button.tsx';
import { Card } from '../../ui/card.tsx';

interface Storage {
  readonly persisted: boolean;
  readonly megabytes: number | undefined;
}

async function readStorage(): Promise<Storage> {
  const [persisted, estimate] = await Promise.all([navigator.storage.persisted(), navigator.storage.estimate()]);
  return { persisted, megabytes: estimate.usage === undefined ? undefined : estimate.usage / 1e6 };
}

/** Whether the browser has promised not to clear the records by itself, and the way to ask for it. */
export function StorageState() {
  const [storage, setStorage] = useState<Storage>();
  const [refused, setRefused] = useState(false);
  const read = () => {
    if ('storage' in navigator) readStorage().then(setStorage, () => {});
  };
  useEffect(read, []);
  if (!storage) return null;
  const ask = async () => {
    setRefused(!(await navigator.storage.persist()));
    read();
  };
  return (
    <Card title="Room on this phone">
      <p>
        {storage.megabytes !== undefined && `App and records take ${formatDecimals(storage.megabytes, 1)} MB. `}
        {storage.persisted ? 'The browser keeps them.' : 'Short of room, the browser may clear them.'}
      </p>
      <div aria-live="polite">
        {refused && !storage.persisted && <p>Not yet: it often agrees with the app on the home screen.</p>}
      </div>
      {!storage.persisted && <Button onClick={ask}>Ask it to keep them</Button>}
    </Card>
  );
}
