import { useEffect, useState } from 'preact/hooks';
import { signal } from '../ui/signal.ts';

/** The wall clock in milliseconds, as of the last tick. */
export const now = signal(Date.now());

let watchers = 0;
let ticking: ReturnType<typeof setInterval> | undefined;
const tick = () => {
  now.value = Date.now();
};

/** Keeps `now` ticking once a second while a screen shows running time. */
export function useNow(): number {
  // At once: what began since the last tick would lie ahead of the clock.
  useState(tick);
  useEffect(() => {
    if (watchers++ === 0) {
      ticking = setInterval(tick, 1000);
      document.addEventListener('visibilitychange', tick);
    }
    return () => {
      if (--watchers === 0) {
        clearInterval(ticking);
        document.removeEventListener('visibilitychange', tick);
      }
    };
  }, []);
  return now.value;
}
