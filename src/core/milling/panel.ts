import type { MillingPart } from './milling-input.ts';
import type { Size, StepPiece } from './milling-step.ts';
import type { StripPiece } from './width-steps.ts';

/** One unit of a panel with its strips, grouped into what is glued and planed together. */
export interface Panel {
  readonly id: string;
  readonly label: string;
  readonly part: MillingPart;
  readonly units: readonly number[];
  readonly groups: readonly StripPiece[][];
}

/** Strips side by side: as wide as all of them, as long as the shortest. */
export const asGlued = ({ groups }: Panel, pieces = groups.flat()): Size => ({
  thickness: Math.max(...pieces.map(({ size }) => size.thickness)),
  width: pieces.reduce((sum, { size }) => sum + size.width, 0),
  length: Math.min(...pieces.map(({ size }) => size.length)),
});

/** The sub-panels of a panel as pieces to tick: the panel itself when there is one only. */
export function parts(panel: Panel): (StepPiece & { readonly seams: number })[] {
  const { id, label, groups } = panel;
  return groups.map((group, index) => ({
    ...(groups.length === 1
      ? { id, label }
      : {
          id: `${id}${String.fromCharCode(97 + index)}`,
          label: `${label} sub-panel ${index + 1} of ${groups.length}`,
        }),
    size: asGlued(panel, group),
    from: group.map((strip) => strip.id),
    seams: group.length - 1,
  }));
}
