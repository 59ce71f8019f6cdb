import { sumOf } from '../answer/sum-of.ts';

/** Ways to fill the groups that are looked at before the row stays as it is; a dozen strips take far fewer. */
const mostTries = 20_000;

/**
 * Strips in the fewest groups no wider than a limit; one wider than that is a group by itself.
 *
 * @param widths of the strips in their row, mm
 * @param limit mm; Infinity where nothing limits them
 * @returns groups of places in the row: neighbours, the widest group as narrow as so few groups allow; where another
 *   order needs fewer groups, those
 * @valid up to some dozens of strips: beyond, a better order may not be found
 * @example fewestGroups([150, 160, 100, 90], 260) // => [[0, 3], [1, 2]]
 * @source bin packing, by trying the wide strips first
 */
export function fewestGroups(widths: readonly number[], limit: number): number[][] {
  const inRow = filled(widths, limit);
  for (let count = Math.ceil(total(widths) / limit); count < inRow.length; count++) {
    const packed = pack(widths, limit, count);
    if (packed) return packed;
  }
  // The widest group is the sum of some neighbours: the least such sum that still makes do with as few groups.
  const sums = widths.flatMap((_, from) =>
    widths.slice(from).map((_, many) => total(widths.slice(from, from + many + 1))),
  );
  const least = sums.filter((sum) => sum <= limit && filled(widths, sum).length === inRow.length).sort((a, b) => a - b);
  return filled(widths, least[0] ?? limit);
}

const total = (widths: readonly number[]): number => sumOf(widths, (width) => width);

/** Sums of the same widths in another order may differ by a rounding. */
const within = (width: number, limit: number): boolean => width <= limit * (1 + 1e-12);

function filled(widths: readonly number[], limit: number): number[][] {
  const groups: number[][] = [];
  let used = 0;
  for (const [at, width] of widths.entries()) {
    if (groups.length === 0 || !within(used + width, limit)) {
      groups.push([]);
      used = 0;
    }
    groups.at(-1)?.push(at);
    used += width;
  }
  return groups;
}

/** So many groups within the limit, in the order of their first strips, if there is a way. */
function pack(widths: readonly number[], limit: number, count: number): number[][] | undefined {
  const widest = [...widths.keys()].sort((a, b) => (widths[b] as number) - (widths[a] as number));
  const groups: number[][] = Array.from({ length: count }, () => []);
  const used = groups.map(() => 0);
  let tries = 0;
  const place = (turn: number): boolean => {
    const at = widest[turn];
    if (at === undefined) return true;
    const width = widths[at] as number;
    for (const [to, group] of groups.entries()) {
      const before = used[to] as number;
      // Groups that are as full as each other are the same choice.
      if (!within(before + width, limit) || used.indexOf(before) < to || tries++ > mostTries) continue;
      used[to] = before + width;
      group.push(at);
      if (place(turn + 1)) return true;
      group.pop();
      used[to] = before;
    }
    return false;
  };
  if (!place(0)) return undefined;
  for (const group of groups) group.sort((a, b) => a - b);
  return groups.sort((a, b) => (a[0] as number) - (b[0] as number));
}
