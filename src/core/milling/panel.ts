import type { MillingPart } from './milling-input.ts';
import type { Size, StepPiece } from './milling-step.ts';
import type { StripPiece } from './width-steps.ts';

/** One unit of a panel with its strips, grouped into what is glued and planed together. */
export interface Panel {
  readonly id: string;
  readonly label: string;
  readonly part: MillingPart;
  readonly unit: number;
  readonly groups: readonly StripPiece[][];
}

/** Width of strips side by side, mm. */
export const widthOf = (pieces: readonly StripPiece[]): number =>
  pieces.reduce((sum, piece) => sum + piece.size.width, 0);
/** Length of the shortest, mm. */
export const lengthOf = (pieces: readonly StripPiece[]): number =>
  Math.min(...pieces.map((piece) => piece.size.length));

export const asGlued = ({ groups }: Panel, pieces = groups.flat()): Size => ({
  thickness: Math.max(...pieces.map((piece) => piece.size.thickness)),
  width: widthOf(pieces),
  length: lengthOf(pieces),
});

/** The sub-panels of a panel as pieces to tick: the panel itself when there is one only. */
export function parts(panel: Panel): (StepPiece & { readonly seams: number })[] {
  return panel.groups.map((group, index) => ({
    id: panel.groups.length === 1 ? panel.id : `${panel.id}${String.fromCharCode(97 + index)}`,
    label: panel.groups.length === 1 ? panel.label : `${panel.label} sub-panel ${index + 1} of ${panel.groups.length}`,
    size: asGlued(panel, group),
    from: group.map((piece) => piece.id),
    seams: group.length - 1,
  }));
}

/** A piece as a step keeps it, without what else is known of it. */
export const stepPiece = ({ id, label, size, from }: StepPiece): StepPiece => ({
  id,
  label,
  size,
  ...(from ? { from } : {}),
});
