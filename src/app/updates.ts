import { signal } from '../ui/signal.ts';

/** Applies the newer version that waits; undefined while there is none. */
export const waitingUpdate = signal<(() => void) | undefined>(undefined);

/** Registers the worker that makes the app work offline, and offers a newer version once it waits. Never reloads by itself. */
export async function followUpdates(): Promise<void> {
  if (!('serviceWorker' in navigator) || !import.meta.env.PROD) return;
  const { serviceWorker } = navigator;
  try {
    const registration = await serviceWorker.register('./sw.js');
    const offer = () => {
      const { active, waiting } = registration;
      // The very first version has none to wait for.
      if (!active || !waiting) return;
      waitingUpdate.value = () => {
        serviceWorker.addEventListener('controllerchange', () => location.reload());
        waiting.postMessage({ type: 'SKIP_WAITING' });
      };
    };
    const follow = () => registration.installing?.addEventListener('statechange', offer);
    offer();
    follow();
    registration.addEventListener('updatefound', follow);
  } catch {
    // Without a worker the app still works as long as the network does; there is nothing for the maker to do.
  }
}
