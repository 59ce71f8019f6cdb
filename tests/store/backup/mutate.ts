/** Small seeded generator (mulberry32), so that a failing case can be had again from its number. */
export function randomFrom(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

const nested = (depth: number) => `${'['.repeat(depth)}${']'.repeat(depth)}`;

/** Values that a hostile or broken file may hold, as JSON text. */
const hostile = [
  'null',
  'true',
  '-1',
  '0',
  '1e308',
  '-1e999',
  '1e999',
  '9007199254740993',
  '""',
  '"<script>alert(1)</script>"',
  '"<img src=x onerror=alert(1)>"',
  '"=HYPERLINK(0)"',
  '"\\u0000\\ud800"',
  '[]',
  '{}',
  '[[]]',
  '{"__proto__":{"polluted":1}}',
  '{"constructor":{"prototype":{"polluted":1}}}',
  '{"length":1e9}',
  '{"toString":1,"valueOf":1,"hasOwnProperty":1}',
  '{"then":1}',
  JSON.stringify('x'.repeat(20_000)),
  nested(40),
  nested(5_000),
  JSON.stringify(Array.from({ length: 2_000 }, (_, at) => at)),
] as const;

const names = ['__proto__', 'constructor', 'prototype', 'id', 'revision', 'kinds', 'toJSON', '', 'length'];

/** The text of a backup with one to four things wrong with it. */
export function mutate(text: string, random: () => number): string {
  const below = (limit: number) => Math.floor(random() * limit);
  const pick = <T>(list: readonly T[]): T => list[below(list.length)] as T;
  let result = text;
  for (let count = 1 + below(4); count > 0; count -= 1) {
    result = random() < 0.35 ? cutUp(result) : regrown(result);
  }
  return result;

  /** Damage to the text itself. */
  function cutUp(from: string): string {
    const at = below(from.length + 1);
    const end = Math.min(from.length, at + below(80));
    switch (below(5)) {
      case 0:
        return from.slice(0, at);
      case 1:
        return from.slice(0, at) + from.slice(end);
      case 2:
        return from.slice(0, at) + from.slice(at, end) + from.slice(at);
      case 3:
        return from.slice(0, at) + String.fromCharCode(below(0x300)) + from.slice(at + 1);
      default:
        return from.slice(0, at) + pick(hostile) + from.slice(at);
    }
  }

  /** Damage to the values, in a text that stays JSON. */
  function regrown(from: string): string {
    let tree: unknown;
    try {
      tree = JSON.parse(from);
    } catch {
      return cutUp(from);
    }
    const places: { holder: Record<string, unknown>; name: string }[] = [];
    const open: [unknown, number][] = [[tree, 0]];
    for (let next = open.pop(); next; next = open.pop()) {
      const [holder, depth] = next;
      if (typeof holder !== 'object' || holder === null || depth > 30) continue;
      for (const name of Object.keys(holder)) {
        places.push({ holder: holder as Record<string, unknown>, name });
        open.push([(holder as Record<string, unknown>)[name], depth + 1]);
      }
    }
    if (places.length === 0) return pick(hostile);
    const { holder, name } = pick(places);
    const marker = '\u0001marker';
    switch (below(4)) {
      case 0:
        holder[name] = marker;
        break;
      case 1:
        delete holder[name];
        break;
      case 2:
        if (Array.isArray(holder)) holder.push(holder[below(holder.length)]);
        else Object.defineProperty(holder, pick(names), { value: holder[name], enumerable: true, configurable: true });
        break;
      default:
        Object.defineProperty(holder, Array.isArray(holder) ? '0' : pick(names), {
          value: marker,
          enumerable: true,
          configurable: true,
          writable: true,
        });
    }
    try {
      return JSON.stringify(tree).replace(JSON.stringify(marker), () => pick(hostile));
    } catch {
      // Nested too deep to be written again.
      return cutUp(from);
    }
  }
}
