import { sumOf } from '../answer/sum-of.ts';
import { fewestGroups } from '../breakdown/fewest-groups.ts';
import type { MillingPart, MillingShop } from './milling-input.ts';
import type { Size, StepPiece } from './milling-step.ts';
import type { StripPiece } from './width-steps.ts';
import { unitKey, unitName } from './workpiece.ts';

/** A unit of a part with all its edges done, before its ends are cut. */
export interface FinishedPiece extends StepPiece {
  readonly part: MillingPart;
  readonly units: readonly number[];
}

/** What is glued and planed together of a panel: the panel itself when there is one only. */
interface SubPanel extends StepPiece {
  readonly seams: number;
}

/** One unit of a panel, made from strips, grouped into sub-panels. */
export interface Panel extends FinishedPiece {
  readonly from: readonly string[];
  readonly subs: readonly SubPanel[];
}

/** Strips side by side: as wide as all of them, as long as the shortest. */
const asGlued = (strips: readonly StripPiece[]): Size => ({
  thickness: Math.max(...strips.map(({ size }) => size.thickness)),
  width: sumOf(strips, ({ size }) => size.width),
  length: Math.min(...strips.map(({ size }) => size.length)),
});

const idsOf = (strips: readonly StripPiece[]) => strips.map(({ id }) => id);

/** The panel that these strips make, in the fewest sub-panels that the planer takes. */
export function panelOf(strips: readonly StripPiece[], { planerWidth }: MillingShop): Panel {
  const { part, units } = strips[0] as StripPiece;
  // Strips at the part's thickness already are not planed again: all seams are glued at once.
  const planed = strips.some(({ final }) => final > part.thickness);
  const widths = strips.map(({ size }) => size.width);
  const groups = fewestGroups(widths, (planed ? planerWidth : null) ?? Number.POSITIVE_INFINITY).map((places) =>
    places.map((place) => strips[place] as StripPiece),
  );
  const id = unitKey({ part, units });
  const label = unitName(part, units);
  const whole = { id, label };
  return {
    ...whole,
    part,
    units,
    size: asGlued(strips),
    from: idsOf(groups.flat()),
    subs: groups.map((group, index) => ({
      ...(groups.length === 1
        ? whole
        : {
            id: `${id}${String.fromCharCode(97 + index)}`,
            label: `${label} sub-panel ${index + 1} of ${groups.length}`,
          }),
      size: asGlued(group),
      from: idsOf(group),
      seams: group.length - 1,
    })),
  };
}

/** A piece no thicker than this, in mm. */
export const thinned = <P extends { readonly size: Size }>(piece: P, thickness: number): P => ({
  ...piece,
  size: { ...piece.size, thickness: Math.min(piece.size.thickness, thickness) },
});
