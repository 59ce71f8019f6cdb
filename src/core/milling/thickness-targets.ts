import { fewestGroups } from '../breakdown/fewest-groups.ts';
import type { MillingInput } from './milling-input.ts';
import { losesMuch } from './rough-steps.ts';
import { grouped } from './step-draft.ts';
import type { Ways } from './ways.ts';
import { type StripWork, unitKey, type Workpiece } from './workpiece.ts';

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
 * (a little more, when they have it and the planer takes what is glued from them, so that the panel is planed after
 * gluing), and a first setting for wood that loses much and rests in between.
 *
 * @param workpieces those that reach their thickness
 * @param ways how this shop flattens
 * @param input machines and habits, mm
 * @returns the workpieces with their settings
 * @valid where the planer takes strips of different boards at one setting
 * @example thicknessTargets(cutWorkpieces(layBlanks(wideLid), wideLid), waysOf(wideLid.shop, machineLimits), wideLid)[0]
 *   // => { final: 20 }
 * @source common practice
 */
export function thicknessTargets(workpieces: readonly Workpiece[], ways: Ways, input: MillingInput): TargetedPiece[] {
  const over = panelAllowance(workpieces, input);
  return workpieces.map((piece) => {
    const final = piece.need + Math.min(...piece.strips.map(over));
    const first = final + input.practice.secondMillingMm.value;
    const twice = losesMuch(piece, input) && piece.reachable >= first && flattensTwice(piece, first, ways);
    return { ...piece, final, first: twice ? first : null };
  });
}

/** Nobody flattens a face twice by hand; and what is left after the first time must still be safe on the machine. */
function flattensTwice({ size }: Workpiece, first: number, ways: Ways): boolean {
  return [size, { ...size, thickness: first }].every((now) => (ways.face(now) ?? 'hand plane') !== 'hand plane');
}

/** What a panel's strips keep for planing after the glue, in mm; 0 when the panel is only scraped flush. */
function panelAllowance(workpieces: readonly Workpiece[], { practice, shop: { planerWidth } }: MillingInput) {
  const strips = workpieces.flatMap(({ strips: own, need, reachable }) =>
    own.filter(({ part }) => part.panel).map((strip) => ({ ...strip, need, spare: reachable - need })),
  );
  const planed = new Map<string, { need: number; spare: number }>();
  for (const panel of grouped(strips, unitKey)) {
    const { need } = panel[0] as (typeof panel)[number];
    const spare = Math.min(...panel.map((strip) => strip.spare));
    const widths = panel.map(({ finished }) => finished);
    // Only where something is glued that still fits the planer, and has wood to spare for it.
    if (planerWidth !== null && spare >= leastAllowance && fewestGroups(widths, planerWidth).length < widths.length)
      planed.set(unitKey(panel[0] as StripWork), { need, spare });
  }
  // A blank that is planed whole gives strips of one thickness: its panels are planed after gluing together or not.
  for (let before = -1; before !== planed.size; ) {
    before = planed.size;
    for (const { strips: own } of workpieces)
      if (!own.every((strip) => planed.has(unitKey(strip)))) for (const strip of own) planed.delete(unitKey(strip));
  }
  return (strip: StripWork): number => {
    const panel = planed.get(unitKey(strip));
    if (!panel) return 0;
    // One setting for all panels of a thickness: what the scarcest of them has, in whole tenths.
    const spare = [...planed.values()].flatMap((other) => (other.need === panel.need ? other.spare : []));
    return Math.floor(Math.min(practice.panelAllowanceMm.value, ...spare) * 10 + 1e-6) / 10;
  };
}
