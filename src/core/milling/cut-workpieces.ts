import { isFlatEnough } from './is-flat-enough.ts';
import type { MillingInput } from './milling-input.ts';
import { reachableThickness } from './reachable-thickness.ts';
import type { BlankWork, StripWork, Workpiece } from './workpiece.ts';

/** Why a blank is ripped before it is flattened. */
export type RipReason = 'wider' | 'thickness' | 'mixed' | 'thick' | 'offcut';

/** How wide a blank may be to be flattened whole in this shop, in mm; by hand or between rails any width goes. */
export function flatteningWidth({ shop }: MillingInput): number {
  if (shop.jointerWidth !== null) return shop.jointerWidth;
  return shop.planerWidth !== null && shop.planerSled ? shop.planerWidth : Number.MAX_VALUE;
}

/**
 * Why a blank must be ripped before it is flattened, or null when it is flattened whole: fewer passes, and wider wood
 * is steadier on the bed.
 *
 * - `blank`: the blank, mm; `input`: machines and allowances
 *
 * Result: the reason, or null. Valid for checked input. Errors: none.
 *
 * Example: 300 mm wide in a shop with a jointer of 200 mm: `wider`.
 *
 * Source: common practice.
 */
export function whyRipFirst(blank: BlankWork, input: MillingInput): RipReason | null {
  const { board, strips } = blank;
  const needs = strips.map((strip) => strip.part.thickness);
  const most = Math.max(...needs);
  if (needs.some((need) => need !== most) || new Set(strips.map((strip) => strip.part.panel)).size > 1) return 'mixed';
  if (isFlatEnough(board, board.width, blank.length, input.practice)) return null;
  if (board.width > flatteningWidth(input)) return 'wider';
  // Thick wood bends when it is ripped: that comes before it is made flat.
  if (strips.length > 1 && most >= input.practice.thickMm.value) return 'thick';
  const { ripKerf } = input.shop;
  const faceAllowance = board.surfaced ? 0 : input.shop.faceAllowance;
  if (reachableThickness(board, board.width, blank.length, faceAllowance) < most) return 'thickness';
  const used = strips.reduce((sum, strip) => sum + strip.width + ripKerf, 0);
  // A rest this wide goes back to the rack; it need not be flattened first.
  return board.width - used >= 50 ? 'offcut' : null;
}

/**
 * What lies on the bed while faces are flattened: every strip of the blanks that are ripped first, every other blank
 * whole, each with the thickness that it needs and that it can reach.
 *
 * - `blanks`: as they are crosscut; `input`: machines and allowances, mm
 *
 * Result: workpieces at their rough size, in the order of the blanks. Valid for checked input. Errors: none.
 *
 * Example: a blank of 300 x 1000 with two strips of 145 in a shop with a jointer of 200: two workpieces of 145.
 *
 * Source: plane geometry, common practice.
 */
export function cutWorkpieces(blanks: readonly BlankWork[], input: MillingInput): Workpiece[] {
  return blanks.flatMap((blank) => {
    if (whyRipFirst(blank, input) === null) {
      return [workpiece(blank, blank.strips, blank.board.width, input)];
    }
    return blank.strips.map((strip) => workpiece(blank, [strip], strip.width, input));
  });
}

function workpiece(blank: BlankWork, strips: readonly StripWork[], width: number, input: MillingInput): Workpiece {
  const { board, length } = blank;
  const whole = width === board.width && strips.length === blank.strips.length;
  const flat = isFlatEnough(board, width, length, input.practice);
  const [first] = strips;
  const named = whole || !first ? blank : first;
  return {
    id: named.id,
    label: strips.length === 1 && first ? first.label : named.label,
    blank,
    strips,
    size: { thickness: board.thickness, width, length },
    need: Math.max(...strips.map((strip) => strip.part.thickness)),
    flat,
    reachable: flat
      ? board.thickness
      : reachableThickness(board, width, length, board.surfaced ? 0 : input.shop.faceAllowance),
  };
}
