import { useEffect, useState } from 'preact/hooks';

/** A pause in typing, in milliseconds. */
const pause = 150;

/** The value as of the last pause: for what may follow a key a moment later, so that the answer itself comes at once. */
export function useLater<T>(value: T): T {
  const [settled, setSettled] = useState(() => value);
  useEffect(() => {
    const waiting = setTimeout(() => setSettled(() => value), pause);
    return () => clearTimeout(waiting);
  }, [value]);
  return settled;
}
