import { signal } from '../ui/signal.ts';

/** Applies the newer version that waits; undefined while there is none. */
export const waitingUpdate = signal<(() => void) | undefined>(undefined);

/** Registers the worker that makes the app work offline, and offers a newer version once it waits. Never reloads by itself. */
export async function followUpdates(): Promise<void> {
  if (!('serviceWorker' in navigator) || !import.meta.env.PROD) return;
  const { Workbox } = await import('workbox-window');
  const worker = new Workbox('./sw.js');
  let taken = false;
  worker.addEventListener('controlling', () => {
    taken = true;
  });
  worker.addEventListener('waiting', () => {
    waitingUpdate.value = () => {
      // Another tab may have taken it up meanwhile: then only this page is left of the older one.
      if (taken) location.reload();
      worker.addEventListener('controlling', () => location.reload());
      worker.messageSkipWaiting();
    };
  });
  try {
    await worker.register();
  } catch {
    // Without a worker the app still works as long as the network does; there is nothing for the maker to do.
  }
}
