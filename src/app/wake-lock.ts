import { useEffect } from 'preact/hooks';

/** Keeps the screen awake while `wanted`, where the browser can; takes it again when the app comes back to the front. */
export function useWakeLock(wanted: boolean): void {
  useEffect(() => {
    if (!wanted || !('wakeLock' in navigator)) return;
    let lock: WakeLockSentinel | undefined;
    let over = false;
    const take = async () => {
      if (document.visibilityState !== 'visible') return;
      try {
        const taken = await navigator.wakeLock.request('screen');
        if (over) await taken.release();
        else lock = taken;
      } catch {
        // Refused on low battery or by a setting: the screen may dim, the timer goes on.
      }
    };
    void take();
    document.addEventListener('visibilitychange', take);
    return () => {
      over = true;
      document.removeEventListener('visibilitychange', take);
      void lock?.release();
    };
  }, [wanted]);
}
