import { badNumber, firstBad } from '../answer/bad-number.ts';
import { joined } from '../answer/joined.ts';
import { phrase } from '../answer/phrase.ts';
import { type Outcome, type Problem, problem } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked, WorkingStep } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import type { Moves } from './moves.ts';

export interface SlotInput {
  /** How far the one part moves beside the other over the length of their seam. */
  readonly moves: Worked<Moves>;
  /** Of the seam, mm: as wide as the slotted part is along the slots. */
  readonly length: number;
  /** Where the screws, pegs or tenons sit, from one end of the seam, mm, rising. */
  readonly positions: readonly number[];
  /** Which of them is fixed: its number in `positions`. */
  readonly fixed: number;
  /** Diameter of the screw's shank or the peg; length along the seam of a tenon; mm. */
  readonly shank: number;
  /** Diameter of the head or washer, when it is sunk in a counterbore, mm. */
  readonly head?: number;
  /** Room beyond the movement at each end of a slot, mm; 1 unless told otherwise (common practice). */
  readonly margin?: number;
  /** Whether the slots are in the part that moves (a tenon under a breadboard end), not in the one that keeps still (a cleat, an apron). */
  readonly inMoving?: boolean;
}

export interface Slot extends Moves {
  /** From the end of the seam, mm. */
  readonly position: number;
  readonly fixed: boolean;
  /** Over all, mm: the shank's diameter where it is fixed. */
  readonly length: number;
  /** From the fastener's centre today to the end of the slot towards the fixed fastener, and to the other end, mm. */
  readonly towardsFixed: number;
  readonly awayFromFixed: number;
  /** Where it begins, from the end of the seam, mm. */
  readonly from: number;
  readonly counterbore?: { readonly length: number; readonly width: number };
}

/** Room around a head in its counterbore, mm on the diameter (common practice). */
const headRoom = 1;

/**
 * How long the slots, or the mortises, must be for a part to move freely about one fixed fastener. They grow with their
 * distance from it.
 *
 * @param input movement over the seam, its length, positions of the fasteners and which is fixed, shank, head and margin,
 *   all in mm
 * @returns for each fastener its slot: length over all, its two ends from today's centre, counterbore, all in mm; as wide
 *   as the shank, so that the part is guided
 * @valid fasteners in one row across the grain. Tighten them so that the part is held down and can still slide
 * @errors a `Problem` on `positions` (also where two slots run into one another, or one breaks out at an end), `fixed`, `shank`, `head`, `margin`, or
 *   `length` (a slot longer than the part is wide)
 * @example elongatedSlots({
 *   moves: partMovement(cherry, 450, seasons),
 *   length: 450,
 *   positions: [25, 225, 425],
 *   fixed: 1,
 *   shank: 5,
 * }).value[0] // => { length: 9.5 }
 * @source movement by Wood handbook (FPL-GTR-190), chapter 13; margin and head room are common practice
 */
export function elongatedSlots(input: SlotInput): Outcome<Worked<readonly Slot[]>> {
  const { moves, length: seam, positions, fixed, shank, head, margin = 1, inMoving = false } = input;
  const wrong = slotProblem(input, margin);
  if (wrong) return wrong;
  const centre = positions[fixed] ?? 0;
  const slots = positions.map((position, index): Slot => {
    const share = Math.abs(position - centre) / seam;
    const shrink = moves.value.shrink * share;
    const swell = moves.value.swell * share;
    const room = index === fixed ? 0 : margin;
    // A fastener that goes with the moving part nears the fixed one as it shrinks; a slot that goes with it does the opposite.
    const [nearing, leaving] = inMoving ? [swell, shrink] : [shrink, swell];
    const length = shank + shrink + swell + 2 * room;
    const towardsFixed = shank / 2 + nearing + room;
    const awayFromFixed = shank / 2 + leaving + room;
    return {
      position,
      fixed: index === fixed,
      shrink,
      swell,
      length,
      towardsFixed,
      awayFromFixed,
      from: position - (index < fixed ? awayFromFixed : towardsFixed),
      ...(head !== undefined && {
        counterbore: { length: length - shank + head + headRoom, width: head + headRoom },
      }),
    };
  });
  return (
    fitProblem(slots, seam) ?? {
      value: slots,
      working: joined(moves.working, {
        steps: slots.map((slot, index) => slotStep(slot, index, shank, margin)),
        holds: phrase`One row across the grain, one fastener fixed.`,
        sources: ['common-practice'],
      }),
    }
  );
}

function slotStep({ length, shrink, swell, fixed }: Slot, index: number, shank: number, margin: number): WorkingStep {
  return workingStep(
    `opening ${index + 1}`,
    fixed
      ? phrase`snug, ${mm(shank)}`
      : phrase`${mm(shank)} + shrinking ${mm(shrink)} + swelling ${mm(swell)} + 2 × room ${mm(margin)}`,
    mm(length),
  );
}

function slotProblem({ positions, fixed, shank, head, length }: SlotInput, margin: number): Problem | undefined {
  return (
    badNumber('length', 'The length', length, 'mm', { above: 0 }) ??
    badNumber('fixed', 'The fixed one', fixed, 'count', { least: 0, most: positions.length - 1, whole: true }) ??
    badNumber('shank', 'This', shank, 'mm', { above: 0 }) ??
    (head === undefined ? head : badNumber('head', 'The head', head, 'mm', { least: shank, most: 100 })) ??
    badNumber('margin', 'The room', margin, 'mm', { least: 0, most: 20 }) ??
    firstBad(positions.map((at, index) => [`positions.${index}`, 'The position', at, 'mm', { least: 0, most: length }]))
  );
}

/** Why slots can't be made; one that doesn't lie beyond the one before runs into it too. */
function fitProblem(slots: readonly Slot[], seam: number): Problem | undefined {
  let last = 0;
  for (const [index, { from, length, counterbore = { length } }] of slots.entries()) {
    const opening = counterbore.length;
    if (opening >= seam) {
      return problem(
        'length',
        phrase`The slot would be ${mm(opening)} long in a part ${mm(seam)} wide. Move the fixed point nearer, or use buttons.`,
      );
    }
    const begins = from - (opening - length) / 2;
    const ends = begins + opening;
    if (begins <= last || ends >= seam)
      return problem(`positions.${index}`, 'It would run into the one before, or out at the end. Move it.');
    last = ends;
  }
  return undefined;
}
