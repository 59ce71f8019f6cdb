/** Puts these values in place of everything in an object store. */
export async function refill(
  store: { clear(): Promise<void>; put(value: unknown): Promise<unknown> },
  values: readonly unknown[],
): Promise<void> {
  // Async, so that a put that throws at once fails like one that fails later, and none is left unheard.
  await Promise.all([store.clear(), ...values.map(async (value) => store.put(value))]);
}
