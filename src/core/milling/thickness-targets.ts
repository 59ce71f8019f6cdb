import type { MillingInput } from './milling-input.ts';
import { losesMuch } from './rough-steps.ts';
import type { Ways } from './ways.ts';
import type { Workpiece } from './workpiece.ts';

/** A workpiece with the thicknesses it is planed to, in mm. */
export interface TargetedPiece extends Workpiece {
  /** What the first milling leaves when the wood rests before its last milling; null for one milling. */
  readonly first: number | null;
  /** What it leaves the planer with: the part's thickness, and for a panel what planing after the glue takes. */
  readonly final: number;
}

/** Less than this is not worth a setting of the planer. */
const leastAllowance = 0.4;

/**
 * The thickness settings of a run: one for all solid parts of a thickness, one for all panel strips of a thickness
 * (a little more, when every strip has it, so that the panel is planed after gluing), and a first setting for wood
 * that loses much and rests in between.
 *
 * - `workpieces`: those that reach their thickness; `ways`: how this shop flattens; `input`: machines and habits, mm
 *
 * Result: the workpieces with their settings. Errors: none.
 * Valid where the planer takes strips of different boards at one setting.
 *
 * Example: strips for a 19 mm panel from boards that reach 24 mm: final 20, planed to 19 after gluing.
 *
 * Source: common practice.
 */
export function thicknessTargets(workpieces: readonly Workpiece[], ways: Ways, input: MillingInput): TargetedPiece[] {
  const { practice, shop } = input;
  const spare = new Map<number, number>();
  for (const piece of workpieces.filter(isPanel)) {
    spare.set(piece.need, Math.min(spare.get(piece.need) ?? Number.MAX_VALUE, piece.reachable - piece.need));
  }
  const allowance = (need: number): number => {
    const most = Math.min(practice.panelAllowanceMm.value, spare.get(need) ?? 0);
    return shop.planerWidth === null || most < leastAllowance ? 0 : Math.round(most * 10) / 10;
  };
  return workpieces.map((piece) => {
    const final = piece.need + (isPanel(piece) ? allowance(piece.need) : 0);
    const first = final + practice.secondMillingMm.value;
    const twice = losesMuch(piece, input) && piece.reachable >= first && ways.face({ ...piece.size, thickness: first });
    return { ...piece, final, first: twice ? first : null };
  });
}

const isPanel = (piece: Workpiece): boolean => piece.strips.some((strip) => strip.part.panel);
