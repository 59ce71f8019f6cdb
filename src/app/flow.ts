import { useEffect } from 'preact/hooks';
import { signal } from '../ui/signal.ts';

const running = signal(0);

/** True while a step flow is on the screen: nothing may reload the app then. */
export const inFlow = () => running.value > 0;

/** Marks the screen as a step flow for as long as it stands (and `active`). */
export function useFlow(active = true): void {
  useEffect(() => {
    if (!active) return;
    running.value++;
    return () => {
      running.value--;
    };
  }, [active]);
}
