import type { Outcome } from '../answer/problem.ts';
import type { Worked } from '../answer/worked.ts';
import { checkMillingInput } from './check-milling-input.ts';
import { cutWorkpieces } from './cut-workpieces.ts';
import { thicknessWorking } from './flat-thickness.ts';
import { layBlanks } from './lay-blanks.ts';
import type { MillingInput } from './milling-input.ts';
import { type Remedy, thicknessRemedies } from './thickness-remedies.ts';

/** What thickness is still in a piece against what its part needs, in mm. */
export interface ThicknessBudget {
  readonly id: string;
  readonly label: string;
  readonly need: number;
  readonly reachable: Worked;
  /** Reachable less needed: below zero it can't be made as planned. */
  readonly spare: number;
  /** What to do before flattening; empty when nothing gains and nothing is missing. */
  readonly remedies: readonly Remedy[];
}

/**
 * The thickness budget of every piece that will lie on the jointer or its stand-in.
 *
 * @param input blanks, boards with their warp, parts, machines, habits; mm
 * @returns budgets in the order of the boards, each with its working and remedies
 * @valid as `reachableThickness`
 * @errors as `millingSequence`
 * @example thicknessBudget(oneShelf)
 *   // => [{ label: 'B1 · shelf', need: 20, reachable: { value: 21.37 }, spare: 1.37 }]
 * @source plane geometry
 */
export function thicknessBudget(input: MillingInput): Outcome<ThicknessBudget[]> {
  const wrong = checkMillingInput(input);
  if (wrong) return wrong;
  const { lengthAllowance, faceAllowance } = input.shop;
  return cutWorkpieces(layBlanks(input), input).map((piece) => {
    const { board } = piece.blank;
    const { width, length } = piece.size;
    const canRip = piece.strips.every((strip) => strip.part.panel);
    const remedies = thicknessRemedies({
      board,
      width,
      length,
      need: piece.need,
      faceAllowance,
      leastLength: Math.max(...piece.strips.map((strip) => strip.part.length)) + lengthAllowance,
      ...(canRip ? { leastStrip: input.practice.leastStripMm.value } : {}),
    });
    const reachable = thicknessWorking(board, width, length, faceAllowance);
    return {
      id: piece.id,
      label: piece.label,
      need: piece.need,
      reachable,
      spare: reachable.value - piece.need,
      remedies,
    };
  });
}
