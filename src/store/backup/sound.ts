const deepest = 32;
const mostItems = 100_000;
const forbidden = new Set(['__proto__', 'constructor', 'prototype']);

/** Why a parsed value from outside can't be taken in, whatever it is meant to be; undefined when it can. */
export function unsound(value: unknown): string | undefined {
  const open: { value: unknown; depth: number }[] = [{ value, depth: 0 }];
  let items = 0;
  for (let next = open.pop(); next; next = open.pop()) {
    if (typeof next.value !== 'object' || next.value === null) continue;
    if (next.depth >= deepest) return 'nested too deep';
    for (const name of Object.keys(next.value)) {
      if (!Array.isArray(next.value) && forbidden.has(name)) return `holds the name ${name}`;
      items += 1;
      if (items > mostItems) return 'too large';
      open.push({ value: (next.value as Record<string, unknown>)[name], depth: next.depth + 1 });
    }
  }
  return undefined;
}
