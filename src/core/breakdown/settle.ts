import type { Draft, DraftBlank } from './draft.ts';
import { unitCover } from './plan-validity.ts';
import type { Blank, BreakdownPlan, BreakdownProblem } from './problem-types.ts';

/** A draft as a plan: blanks get their places, longest first from the start of each run, so that what is left is in one piece. */
export function settle(asked: BreakdownProblem, draft: Draft): BreakdownPlan {
  const { rack } = draft;
  const byRun = new Map<number, DraftBlank[]>();
  const blanks: Blank[] = [];
  let cutAt = 0;
  for (const blank of draft.blanks) {
    if (blank.runAt >= 0) {
      byRun.set(blank.runAt, [...(byRun.get(blank.runAt) ?? []), blank]);
      continue;
    }
    const cut = rack.cut[cutAt++]?.blank;
    if (cut) blanks.push({ ...cut, strips: [...cut.strips, ...named(draft, blank)] });
  }
  for (const [runAt, run] of rack.runs.entries()) {
    let start = run.start;
    for (const blank of (byRun.get(runAt) ?? []).sort((a, b) => b.length - a.length)) {
      blanks.push({ board: run.board.id, start, length: blank.length, strips: named(draft, blank) });
      start += blank.length + rack.shop.crosscutKerf;
    }
  }
  const short = unitCover(asked, { blanks, short: [] })
    .filter(({ covered }) => !covered)
    .map(({ part, unit, missingWidth }) => ({ part: part.id, unit, missingWidth }));
  return { blanks, short };
}

function named(draft: Draft, blank: DraftBlank) {
  return blank.strips.map(({ unit, width }) => {
    const made = draft.rack.units[unit];
    return { width, part: made?.part.id ?? '', unit: made?.unit ?? 0 };
  });
}
