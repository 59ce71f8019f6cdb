import { phrase } from '../answer/phrase.ts';
import { isProblem, type Outcome } from '../answer/problem.ts';
import { factor, mm } from '../answer/quantity.ts';
import type { Worked, WorkingStep } from '../answer/worked.ts';
import { elongatedSlots, type Slot } from './elongated-slots.ts';
import { partMovement, type Wood } from './part-movement.ts';
import type { Seasons } from './seasons.ts';

export interface BreadboardInput {
  readonly wood: Wood;
  /** Of the panel across its grain today, mm; the end is cut flush to it. */
  readonly width: number;
  readonly seasons: Seasons;
  /** Where the pegs sit, from one edge, mm, rising. */
  readonly pegs: readonly number[];
  /** Which of them keeps still: its number in `pegs`; the one nearest the middle unless told otherwise. */
  readonly fixed?: number;
  /** Diameter, mm. */
  readonly peg: number;
  readonly margin?: number;
  /** How far the tenons are apart from edge to edge, or one tenon's width, along the slots, mm. */
  readonly tenonWidth: number;
}

export interface BreadboardEnd {
  /** The slots in the panel's tenons. */
  readonly slots: readonly Slot[];
  /** How far the panel stands out beyond the end (positive) or falls short of it, at the near and the far edge, mm. */
  readonly dry: { readonly near: number; readonly far: number };
  readonly wet: { readonly near: number; readonly far: number };
}

/**
 * A breadboard end: the middle peg fixed and glued, the outer ones in slots of the panel's tenons.
 *
 * @param input wood and width of the panel (mm), moisture today and in the seasons (percent), positions of the pegs
 *   (mm), which is fixed, their diameter (mm), margin (mm), width of a tenon along the slots (mm)
 * @returns slots, and how far the panel's edges stand out or fall short in each season, mm
 * @valid a panel flush with its ends today; glue at the fixed peg only
 * @errors a `Problem` as `elongatedSlots`, at `pegs`, `peg` or `tenonWidth`
 * @example breadboardEnd({ wood: cherry, width: 600, seasons, pegs: [60, 300, 540], peg: 8, tenonWidth: 60 }).value
 *   // => { dry: { near: -1.5 }, wet: { near: 2.2 } }
 * @source movement by Wood handbook (FPL-GTR-190), chapter 13; the construction is common practice
 */
export function breadboardEnd(input: BreadboardInput): Outcome<Worked<BreadboardEnd>> {
  const { wood, width, seasons, pegs, peg, margin, tenonWidth } = input;
  const { fixed = nearestMiddle(pegs, width) } = input;
  const slots = elongatedSlots({
    wood,
    width,
    seasons,
    positions: pegs,
    fixed,
    fastener: { shank: peg },
    ...(margin !== undefined && { margin }),
    slottedWidth: tenonWidth,
    slotsIn: 'moving',
  });
  if (isProblem(slots)) return { ...slots, field: named(slots.field) };
  const whole = partMovement(wood, width, seasons);
  if (isProblem(whole)) return whole;
  const near = (pegs[fixed] ?? 0) / width;
  const edges = (change: number) => ({ near: change * near, far: change * (1 - near) });
  const share = Math.max(near, 1 - near);
  const edge = (season: string, change: number): WorkingStep => ({
    finds: `edge of the panel, ${season} season`,
    by: phrase('change {change} × {share} beyond the fixed peg', {
      change: mm(change),
      share: factor(share),
    }),
    gives: mm(change * share),
  });
  const { dryChange, wetChange } = whole.value;
  return {
    value: { slots: slots.value, dry: edges(dryChange), wet: edges(wetChange) },
    working: {
      ...slots.working,
      steps: [...slots.working.steps, edge('dry', dryChange), edge('damp', wetChange)],
    },
  };
}

function nearestMiddle(pegs: readonly number[], width: number): number {
  const offsets = pegs.map((peg) => Math.abs(peg - width / 2));
  return Math.max(0, offsets.indexOf(Math.min(...offsets)));
}

const named = (field: string): string =>
  field
    .replace(/^positions/, 'pegs')
    .replace('fastener.shank', 'peg')
    .replace('slottedWidth', 'tenonWidth');
