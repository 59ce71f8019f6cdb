/** The list without the last one that is like this; others that are alike stay. */
export function without<T>(list: readonly T[] = [], gone: T): readonly T[] {
  const text = JSON.stringify(gone);
  const at = list.findLastIndex((one) => JSON.stringify(one) === text);
  return list.filter((_, place) => place !== at);
}
