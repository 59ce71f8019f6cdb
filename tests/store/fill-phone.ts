import { vi } from 'vitest';

/** The phone is full: every put is refused, or those into one store. Gives how to make room again. */
export function fillPhone(store?: string): () => void {
  const real = IDBObjectStore.prototype.put;
  const full = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...given) {
    if (store === undefined || this.name === store) throw new DOMException('The phone is full.', 'QuotaExceededError');
    return real.apply(this, given);
  });
  return () => full.mockRestore();
}
