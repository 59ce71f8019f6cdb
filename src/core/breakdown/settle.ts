import type { Draft, DraftBlank } from './draft.ts';
import type { Blank, BreakdownPlan } from './problem-types.ts';
import type { Unit } from './rack.ts';
import { slack } from './sizes.ts';

/** A draft as a plan: blanks get their places, longest first from the start of each run, so that what is left is in one piece. */
export function settle({ rack, blanks: drafted, missing }: Draft): BreakdownPlan {
  const named = ({ strips }: DraftBlank) =>
    strips.map(({ unit: at, width }) => {
      const { part, unit } = rack.units[at] as Unit;
      return { width, part: part.id, unit };
    });
  const on = (run: number) => drafted.filter(({ runAt }) => runAt === run);
  const cut = on(-1);
  const blanks: Blank[] = rack.cut.map(({ blank }, at) => ({
    ...blank,
    strips: [...blank.strips, ...named(cut[at] as DraftBlank)],
  }));
  for (const [runAt, { board, start: from }] of rack.runs.entries()) {
    let start = from;
    for (const blank of on(runAt).sort((a, b) => b.length - a.length)) {
      blanks.push({ board: board.id, start, length: blank.length, strips: named(blank) });
      start += blank.length + rack.shop.crosscutKerf;
    }
  }
  const short = rack.units.flatMap(({ part, unit }, at) => {
    const lacks = missing[at] as number;
    return lacks > slack ? { part: part.id, unit, missingWidth: part.panel ? lacks : part.width } : [];
  });
  return { blanks, short };
}
