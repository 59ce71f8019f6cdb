import { useLayoutEffect, useReducer } from 'preact/hooks';

/** A value that the whole app looks at. Setting it draws the app again (`useSignals`). */
export interface Signal<T> {
  value: T;
}

const listeners = new Set<() => void>();

export function signal<T>(initial: T): Signal<T> {
  let now = initial;
  return {
    get value() {
      return now;
    },
    set value(next) {
      if (Object.is(next, now)) return;
      now = next;
      for (const listener of listeners) listener();
    },
  };
}

/** Draws the component, and all below it, again whenever a signal changes. Once, at the root: what changes is small. */
export function useSignals(): void {
  const [, again] = useReducer((count: number, _: undefined) => count + 1, 0);
  useLayoutEffect(() => {
    const listener = () => again(undefined);
    listeners.add(listener);
    // What was set between the first drawing and this moment is not lost.
    listener();
    return () => {
      listeners.delete(listener);
    };
  }, []);
}
