import { useState } from 'preact/hooks';
import { notify } from '../../app/notices.ts';
import { loadDemo, unloadDemo } from '../../store/demo/demo-shop.ts';
import { Button } from '../../ui/button.tsx';

/** A look around with invented work, before there is any of the maker's own. */
export function DemoOffer() {
  const [busy, setBusy] = useState(false);
  const load = async () => {
    setBusy(true);
    try {
      await loadDemo();
      notify('The demo shop is loaded.', { label: 'Remove it', run: () => unloadDemo() });
    } catch {
      // The shell shows what the phone did not take.
    } finally {
      setBusy(false);
    }
  };
  return (
    <Button disabled={busy} onClick={load}>
      Load the demo shop
    </Button>
  );
}
