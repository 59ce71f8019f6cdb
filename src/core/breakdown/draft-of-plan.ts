import { Draft } from './draft.ts';
import { cutBreaches } from './plan-validity.ts';
import type { Blank, BreakdownPlan, BreakdownProblem } from './problem-types.ts';
import { type Rack, servingBoards, type Unit } from './rack.ts';

/** Takes up a plan as a draft to go on from; what no longer fits the problem is dropped, and the units concerned are missing. */
export function draftOf(asked: BreakdownProblem, rack: Rack, plan: BreakdownPlan): Draft {
  const draft = new Draft(rack);
  const unitAt = new Map(rack.units.map(({ part, unit }, at) => [`${part.id}#${unit}`, at]));
  const broken = new Set(cutBreaches(asked, plan).map(({ field }) => field));
  for (const [index, blank] of plan.blanks.entries()) if (!broken.has(`blanks.${index}`)) takeUp(draft, blank, unitAt);
  draft.missing.fill(0);
  draft.remove(notWhole(draft));
  return draft;
}

function takeUp(draft: Draft, blank: Blank, unitAt: ReadonlyMap<string, number>): void {
  const { runs, units, maySupply } = draft.rack;
  const runAt = runs.findIndex(
    ({ board, start, length }) =>
      board.id === blank.board && blank.start >= start && blank.start + blank.length <= start + length,
  );
  const boardAt = runs[runAt]?.boardAt ?? -1;
  const strips = blank.strips.flatMap(({ part, unit, width }) => {
    const at = unitAt.get(`${part}#${unit}`);
    return at !== undefined && maySupply((units[at] as Unit).partAt, boardAt) ? [{ at, width }] : [];
  });
  if (strips.length === 0) return;
  const blankAt = draft.open(runAt, blank.length);
  for (const { at, width } of strips) draft.rip(blankAt, at, width, 1);
}

/** Marks the units that a draft's strips don't make whole, or not from as few boards as wished. */
function notWhole(draft: Draft): Uint8Array {
  const { units, shop, together } = draft.rack;
  const width = new Float64Array(units.length);
  const boards = units.map(() => new Set<number>());
  for (const { run, strips } of draft.blanks)
    for (const strip of strips) {
      const solid = !(units[strip.unit] as Unit).part.panel;
      width[strip.unit] = (width[strip.unit] as number) + strip.width - (solid ? 0 : shop.edgeAllowance);
      boards[strip.unit]?.add(run.boardAt);
    }
  return Uint8Array.from(units, ({ need, partAt }, at) => {
    if ((width[at] as number) < need * (1 - 1e-12)) return 1;
    if (together[partAt] === Number.POSITIVE_INFINITY) return 0;
    const serving = servingBoards(draft.rack, partAt);
    const from = [...(boards[at] ?? [])].map((boardAt) => serving.indexOf(boardAt));
    return Math.max(...from) - Math.min(...from) >= (together[partAt] as number) ? 1 : 0;
  });
}
