import { signal } from '../ui/signal.ts';

/** Applies the newer version that waits; undefined while there is none. */
export const waitingUpdate = signal<(() => void) | undefined>(undefined);

/** Registers the worker that makes the app work offline, and offers a newer version once it waits. Never reloads by itself. */
export async function followUpdates(): Promise<void> {
  if (!('serviceWorker' in navigator) || !import.meta.env.PROD) return;
  const { serviceWorker } = navigator;
  // The first version of all has nobody to take over from.
  const offer = (worker: ServiceWorker) => {
    if (worker.state !== 'installed' || !serviceWorker.controller) return;
    waitingUpdate.value = () => {
      serviceWorker.addEventListener('controllerchange', () => location.reload());
      worker.postMessage({ type: 'SKIP_WAITING' });
    };
  };
  const follow = (worker: ServiceWorker | null) => {
    if (!worker) return;
    offer(worker);
    worker.addEventListener('statechange', () => offer(worker));
  };
  try {
    const registration = await serviceWorker.register('./sw.js');
    follow(registration.waiting);
    follow(registration.installing);
    registration.addEventListener('updatefound', () => follow(registration.installing));
  } catch {
    // Without a worker the app still works as long as the network does; there is nothing for the maker to do.
  }
}
