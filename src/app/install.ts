import { signal } from '../ui/signal.ts';

interface InstallEvent extends Event {
  prompt(): Promise<{ readonly outcome: 'accepted' | 'dismissed' }>;
}

/** Puts the app on the home screen; undefined where the browser doesn't offer that, or it is there already. */
export const install = signal<(() => void) | undefined>(undefined);

/** Takes the browser's offer to install, to be shown when the maker has a reason for it. */
export function followInstall(): void {
  addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    install.value = () => {
      install.value = undefined;
      void (event as InstallEvent).prompt().catch(() => {});
    };
  });
  addEventListener('appinstalled', () => {
    install.value = undefined;
  });
}

/** In a tab of a browser that lets the maker alone put the app on the home screen, and keeps its records apart from the tab's. */
export const installsByHand = (): boolean => (navigator as { standalone?: boolean }).standalone === false;
