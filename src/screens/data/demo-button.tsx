import { useLive } from '../../app/live.ts';
import { notify } from '../../app/notices.ts';
import { isDemoLoaded, loadDemo, unloadDemo } from '../../store/demo/demo-shop.ts';
import { kinds } from '../../store/records/kinds.ts';
import { Button } from '../../ui/button.tsx';

/** A look around with invented work: in with one tap, and out with another. */
export function DemoButton() {
  const loaded = useLive(kinds, isDemoLoaded);
  if (loaded === undefined) return null;
  const swap = async () => {
    try {
      await (loaded ? unloadDemo() : loadDemo());
      if (loaded) notify('The demo shop is gone.');
      else notify('The demo shop is loaded.', { label: 'Remove it', run: () => unloadDemo() });
    } catch {
      // The shell shows what the phone did not take.
    }
  };
  return <Button onClick={swap}>{loaded ? 'Remove the demo shop' : 'Load the demo shop'}</Button>;
}
