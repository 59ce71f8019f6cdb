import { rippedWidth } from '../breakdown/ripped-width.ts';
import type { MillingInput } from './milling-input.ts';
import { reachedIn } from './reached-in.ts';
import type { BlankWork, StripWork, Workpiece } from './workpiece.ts';

/** How wide a blank may be to be flattened whole in this shop, in mm; by hand or between rails any width goes. */
export function flatteningWidth({ shop }: MillingInput): number {
  if (shop.jointerWidth !== null) return shop.jointerWidth;
  return shop.planerWidth !== null && shop.planerSled ? shop.planerWidth : Number.MAX_VALUE;
}

/**
 * Whether a blank must be ripped before it is flattened. Else it is flattened whole: fewer passes, and wider wood is
 * steadier on the bed.
 *
 * @param blank mm
 * @param input machines and allowances
 * @returns yes or no
 * @valid checked input
 * @example ripsFirst(layBlanks(wideLid)[0], wideLid) // => true
 * @source common practice
 */
export function ripsFirst({ board, length, strips }: BlankWork, input: MillingInput): boolean {
  const { practice, shop } = input;
  const [first] = strips;
  const most = Math.max(...strips.map(({ part }) => part.thickness));
  // What becomes different parts goes different ways from the start.
  if (strips.some(({ part }) => part.thickness !== most || part.panel !== first?.part.panel)) return true;
  return (
    board.width > flatteningWidth(input) ||
    // Thick wood bends when it is ripped: that comes before it is made flat.
    (strips.length > 1 && most >= practice.thickMm.value) ||
    reachedIn(board, board.width, length, input) < most ||
    // A rest this wide goes back to the rack; it need not be flattened first.
    board.width - rippedWidth(strips, shop.ripKerf) - shop.ripKerf >= 50
  );
}

/**
 * What lies on the bed while faces are flattened: every strip of the blanks that are ripped first, every other blank
 * whole, each with the thickness that it needs and that it can reach.
 *
 * @param blanks as they are crosscut
 * @param input machines and allowances, mm
 * @returns workpieces at their rough size, in the order of the blanks
 * @valid checked input
 * @example cutWorkpieces(layBlanks(wideLid), wideLid).map(({ size }) => size.width) // => [140, 140, 140, 140]
 * @source plane geometry, common practice
 */
export const cutWorkpieces = (blanks: readonly BlankWork[], input: MillingInput): Workpiece[] =>
  blanks.flatMap((blank) =>
    ripsFirst(blank, input)
      ? blank.strips.map((strip) => workpiece(blank, [strip], strip.width, input))
      : workpiece(blank, blank.strips, blank.board.width, input),
  );

function workpiece(blank: BlankWork, strips: readonly StripWork[], width: number, input: MillingInput): Workpiece {
  const { board, length } = blank;
  const [only, ...others] = strips;
  return {
    id: width < board.width && only ? only.id : blank.id,
    label: only && others.length === 0 ? only.label : blank.label,
    blank,
    strips,
    size: { thickness: board.thickness, width, length },
    need: Math.max(...strips.map(({ part }) => part.thickness)),
    reachable: reachedIn(board, width, length, input),
  };
}
