/** A record with this property, or without it where there is no value. */
export function withOptional<T extends object, K extends keyof T>(record: T, property: K, value: T[K] | undefined): T {
  const { [property]: _, ...rest } = record;
  return (value === undefined ? rest : { ...rest, [property]: value }) as T;
}
