import { signal } from '../ui/signal.ts';

/** Applies the newer version that waits; undefined while there is none. */
export const waitingUpdate = signal<(() => void) | undefined>(undefined);

/** Registers the worker that makes the app work offline, and offers a newer version once it waits. Never reloads by itself. */
export async function followUpdates(): Promise<void> {
  if (!('serviceWorker' in navigator) || !import.meta.env.PROD) return;
  try {
    offerWaiting(await navigator.serviceWorker.register('./sw.js'));
  } catch {
    // Without a worker the app still works as long as the network does; there is nothing for the maker to do.
  }
}

function offerWaiting(registration: ServiceWorkerRegistration): void {
  const look = () => {
    const { active, waiting } = registration;
    // The very first worker waits for nobody.
    if (!active || !waiting) return;
    waitingUpdate.value = () => {
      // Another tab may have taken it up meanwhile.
      if (waiting.state === 'activated') location.reload();
      waiting.addEventListener('statechange', () => waiting.state === 'activated' && location.reload());
      waiting.postMessage({ type: 'SKIP_WAITING' });
    };
  };
  look();
  registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', look));
}
