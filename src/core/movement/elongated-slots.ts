import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import { isProblem, type Outcome, type Problem, problem, within } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked, WorkingStep } from '../answer/worked.ts';
import { partMovement, type Wood } from './part-movement.ts';
import type { Seasons } from './seasons.ts';

/** A screw, peg or pin and what it needs; all in mm. */
export interface Fastener {
  readonly shank: number;
  /** Diameter of the head or washer, when it is sunk in a counterbore. */
  readonly head?: number;
}

export interface SlotInput {
  /** The part that moves. */
  readonly wood: Wood;
  /** Its width across the grain today, mm. */
  readonly width: number;
  readonly seasons: Seasons;
  /** Where the fasteners sit, from one edge of the moving part, mm, rising. */
  readonly positions: readonly number[];
  /** Which of them is fixed: its number in `positions`. */
  readonly fixed: number;
  readonly fastener: Fastener;
  /** Room beyond the movement at each end of a slot, mm; 1 unless told otherwise (common practice). */
  readonly margin?: number;
  /** How wide the slotted part is, measured along the slots, mm. */
  readonly slottedWidth: number;
  /** Whether the slots are in the part that keeps still (a cleat, an apron), or in the moving one (a tenon under a breadboard end). */
  readonly slotsIn: 'still' | 'moving';
}

export interface Slot {
  /** From the edge, mm. */
  readonly position: number;
  readonly fixed: boolean;
  /** From the fixed fastener, mm. */
  readonly distance: number;
  readonly shrink: number;
  readonly swell: number;
  /** Over all, mm: the shank's diameter where it is fixed. */
  readonly length: number;
  /** mm: snug, so that the part is guided. */
  readonly width: number;
  /** From the fastener's centre today to the end of the slot towards the fixed fastener, and to the other end, mm. */
  readonly towardsFixed: number;
  readonly awayFromFixed: number;
  readonly counterbore?: { readonly length: number; readonly width: number };
}

/** Room around a head in its counterbore, mm on the diameter (common practice). */
const headRoom = 1;

/**
 * How long the slots must be for a part to move freely about one fixed fastener. Slots grow with their distance from
 * it.
 *
 * @param input the moving wood, its width in mm, moisture today and in the seasons in percent, positions of the
 *   fasteners in mm and which is fixed, shank and head in mm, margin in mm, the slotted part's width in mm
 * @returns for each fastener its slot: length over all, its two ends from today's centre, counterbore, all in mm
 * @valid fasteners in one row across the grain. Tighten them so that the part is held down and can still slide
 * @errors a `Problem` on `positions` (also where two slots run into one another), `fixed`, `fastener`, `margin`,
 *   `slottedWidth` (a slot longer than the part is wide), or as `partMovement`
 * @example elongatedSlots({
 *   wood: cherry,
 *   width: 450,
 *   seasons,
 *   positions: [25, 225, 425],
 *   fixed: 1,
 *   fastener: { shank: 5 },
 *   slottedWidth: 40,
 *   slotsIn: 'still',
 * }).value[0] // => { length: 9.5 }
 * @source movement by Wood handbook (FPL-GTR-190), chapter 13; margin and head room are common practice
 */
export function elongatedSlots(input: SlotInput): Outcome<Worked<readonly Slot[]>> {
  const { wood, width, seasons, positions, fixed, fastener, margin = 1, slotsIn } = input;
  const wrong = slotProblem(input, margin);
  if (wrong) return wrong;
  const whole = partMovement(wood, width, seasons);
  if (isProblem(whole)) return whole;
  const centre = positions[fixed] ?? 0;
  const slots = positions.map((position, index): Slot => {
    const distance = Math.abs(position - centre);
    const shrink = (whole.value.shrink * distance) / width;
    const swell = (whole.value.swell * distance) / width;
    const isFixed = index === fixed;
    const room = isFixed ? 0 : margin;
    // A fastener that goes with the moving part nears the fixed one as it shrinks; a slot that goes with it does the opposite.
    const [nearing, leaving] = slotsIn === 'still' ? [shrink, swell] : [swell, shrink];
    const length = fastener.shank + shrink + swell + 2 * room;
    return {
      position,
      fixed: isFixed,
      distance,
      shrink,
      swell,
      length,
      width: fastener.shank,
      towardsFixed: fastener.shank / 2 + nearing + room,
      awayFromFixed: fastener.shank / 2 + leaving + room,
      ...(fastener.head !== undefined && {
        counterbore: { length: length - fastener.shank + fastener.head + headRoom, width: fastener.head + headRoom },
      }),
    };
  });
  const tooLong = fitProblem(slots, input);
  if (tooLong) return tooLong;
  return {
    value: slots,
    working: {
      steps: [...whole.working.steps, ...slots.map((slot, index) => slotStep(slot, index, fastener.shank, margin))],
      holds: phrase('One row across the grain, one fastener fixed.'),
      sources: [...new Set([...whole.working.sources, 'common-practice' as const])],
    },
  };
}

function slotStep({ length, shrink, swell, fixed }: Slot, index: number, shank: number, margin: number): WorkingStep {
  return {
    finds: `slot ${index + 1}`,
    by: fixed
      ? phrase('round, for the shank {shank}', { shank: mm(shank) })
      : phrase('shank {shank} + shrinking {shrink} + swelling {swell} + 2 × room {margin}', {
          shank: mm(shank),
          shrink: mm(shrink),
          swell: mm(swell),
          margin: mm(margin),
        }),
    gives: mm(length),
  };
}

function slotProblem(
  { positions, fixed, fastener, width, slottedWidth }: SlotInput,
  margin: number,
): Problem | undefined {
  if (positions.length === 0) return problem('positions', 'Say where the fasteners sit.');
  const wrong =
    badNumber('width', 'The width', width, 'mm', { above: 0 }) ??
    badNumber('fixed', 'The fixed fastener', fixed, 'count', { least: 0, most: positions.length - 1, whole: true }) ??
    badNumber('fastener.shank', 'The shank', fastener.shank, 'mm', { above: 0, most: 50 }) ??
    (fastener.head === undefined
      ? undefined
      : badNumber('fastener.head', 'The head', fastener.head, 'mm', { least: fastener.shank, most: 100 })) ??
    badNumber('margin', 'The room', margin, 'mm', { least: 0, most: 20 }) ??
    badNumber('slottedWidth', 'The slotted part', slottedWidth, 'mm', { above: 0 });
  if (wrong) return wrong;
  for (const [index, position] of positions.entries()) {
    const bad =
      badNumber(`${index}`, 'The position', position, 'mm', { least: 0, most: width }) ??
      (index > 0 && position <= (positions[index - 1] ?? 0)
        ? problem(`${index}`, 'It must lie beyond the one before.')
        : undefined);
    if (bad) return within(bad, 'positions');
  }
  return undefined;
}

function fitProblem(slots: readonly Slot[], { slottedWidth, fixed }: SlotInput): Problem | undefined {
  for (const [index, slot] of slots.entries()) {
    const opening = slot.counterbore?.length ?? slot.length;
    if (opening >= slottedWidth) {
      return problem(
        'slottedWidth',
        'The slot would be {opening} long in a part {width} wide. Move the fixed point nearer, or use buttons.',
        { opening: mm(opening), width: mm(slottedWidth) },
      );
    }
    const next = slots[index + 1];
    if (
      next &&
      reach(slot, index < fixed ? 'back' : 'on') + reach(next, index < fixed ? 'on' : 'back') >=
        next.position - slot.position
    ) {
      return problem(`positions.${index + 1}`, 'It would run into the one before. Set them further apart.');
    }
  }
  return undefined;
}

/** How far a slot's opening reaches from its fastener: back towards the fixed one, or on away from it. */
function reach(slot: Slot, way: 'back' | 'on'): number {
  const overhang = slot.counterbore ? (slot.counterbore.length - slot.length) / 2 : 0;
  return overhang + (way === 'back' ? slot.towardsFixed : slot.awayFromFixed);
}
