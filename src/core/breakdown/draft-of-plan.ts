import { Draft } from './draft.ts';
import type { Blank, BreakdownPlan } from './problem-types.ts';
import { type Rack, type Run, servingBoards, type Unit } from './rack.ts';
import { rippedWidth } from './ripped-width.ts';
import { slack } from './sizes.ts';
import { widestStrip } from './strip-limits.ts';

/** Takes up a plan as a draft to go on from; what no longer fits the problem is dropped, and the units concerned are missing. */
export function draftOf(rack: Rack, plan: BreakdownPlan): Draft {
  const draft = new Draft(rack);
  const unitAt = new Map(rack.units.map(({ part, unit }, at) => [`${part.id}#${unit}`, at]));
  for (const blank of plan.blanks) takeUp(draft, blank, unitAt);
  draft.missing.fill(0);
  draft.remove(notWhole(draft));
  return draft;
}

function takeUp(draft: Draft, blank: Blank, unitAt: ReadonlyMap<string, number>): void {
  const { rack, room } = draft;
  const { ripKerf, crosscutKerf } = rack.shop;
  const runAt = rack.runs.findIndex(
    ({ board, start, length }) =>
      board.id === blank.board && blank.start >= start && blank.start + blank.length <= start + length,
  );
  const run = rack.runs[runAt];
  if (!run) return;
  const strips = blank.strips.flatMap(({ part, unit, width }) => {
    const at = unitAt.get(`${part}#${unit}`) ?? -1;
    const made = rack.units[at];
    return made && suits(rack, run, blank.length, made, width) ? [{ at, width }] : [];
  });
  const taken = rippedWidth(strips, ripKerf);
  const fits = taken <= run.width + slack && blank.length + crosscutKerf <= (room[runAt] as number) + slack;
  if (strips.length === 0 || !fits) return;
  const blankAt = draft.open(runAt, blank.length);
  for (const { at, width } of strips) draft.rip(blankAt, at, width, 1);
}

/** Whether a strip so wide, of a blank of this run, may serve the unit. */
function suits({ shop, maySupply }: Rack, { board, boardAt }: Run, length: number, unit: Unit, width: number): boolean {
  const { part, partAt, need, blankLength } = unit;
  return (
    maySupply(partAt, boardAt) &&
    length >= blankLength - slack &&
    width >= (part.panel ? shop.minStrip : need) - slack &&
    width <= widestStrip(shop, board, part, length) + slack
  );
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
