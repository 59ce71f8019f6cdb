import type { MillingInput } from './milling-input.ts';
import { losesMuch } from './rough-steps.ts';
import { subPanels } from './sub-panels.ts';
import type { Ways } from './ways.ts';
import { unitKey, type Workpiece } from './workpiece.ts';

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
  const over = panelAllowances(workpieces, input);
  return workpieces.map((piece) => {
    const final = piece.need + Math.min(...piece.strips.map((strip) => over.get(unitKey(strip)) ?? 0));
    const first = final + input.practice.secondMillingMm.value;
    const twice = losesMuch(piece, input) && piece.reachable >= first && flattensTwice(piece, first, ways);
    return { ...piece, final, first: twice ? first : null };
  });
}

/** Nobody flattens a face twice by hand; and what is left after the first time must still be safe on the machine. */
function flattensTwice(piece: Workpiece, first: number, ways: Ways): boolean {
  return [piece.size, { ...piece.size, thickness: first }].every((size) => {
    const way = ways.face(size);
    return way !== null && way !== 'hand plane';
  });
}

/** What each panel's strips keep for planing after the glue, in mm; 0 when the panel is only scraped flush. */
function panelAllowances(workpieces: readonly Workpiece[], { practice, shop }: MillingInput): Map<string, number> {
  const panels = new Map<string, { need: number; spare: number; widths: number[] }>();
  for (const piece of workpieces) {
    for (const strip of piece.strips.filter(({ part }) => part.panel)) {
      const panel = panels.get(unitKey(strip)) ?? { need: piece.need, spare: Number.MAX_VALUE, widths: [] };
      panel.spare = Math.min(panel.spare, piece.reachable - piece.need);
      panel.widths.push(strip.finished);
      panels.set(unitKey(strip), panel);
    }
  }
  const planed = new Set([...panels].filter(([, panel]) => isPlaned(panel, shop.planerWidth)).map(([key]) => key));
  // A blank that is planed whole gives strips of one thickness: its panels are planed after gluing together or not.
  for (let before = -1; before !== planed.size; ) {
    before = planed.size;
    for (const { strips } of workpieces) {
      if (strips.some((strip) => !planed.has(unitKey(strip))))
        for (const strip of strips) planed.delete(unitKey(strip));
    }
  }
  const least = new Map<number, number>();
  for (const key of planed) {
    const { need, spare } = panels.get(key) ?? { need: 0, spare: 0 };
    least.set(need, Math.min(least.get(need) ?? practice.panelAllowanceMm.value, spare));
  }
  const tenths = (mm: number) => Math.floor(mm * 10 + 1e-6) / 10;
  return new Map([...planed].map((key) => [key, tenths(least.get(panels.get(key)?.need ?? 0) ?? 0)]));
}

/** Whether anything is glued that still fits the planer and has wood to spare for it. */
function isPlaned(
  { spare, widths }: { spare: number; widths: readonly number[] },
  planerWidth: number | null,
): boolean {
  if (planerWidth === null || spare < leastAllowance) return false;
  return subPanels(widths, planerWidth).length < widths.length;
}
