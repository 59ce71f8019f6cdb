import type { SourceId } from '../answer/source-id.ts';

/** One habit of the bench as a figure, with where it comes from. The unit is in its name. */
export interface Habit {
  readonly value: number;
  readonly source: SourceId;
}

/** The habits that the milling sequence rests on; a maker's own come from earlier runs. */
export type MillingPractice = Readonly<
  Record<
    /** Nobody rips narrower than this to save thickness: too many seams. */
    | 'leastStripMm'
    /** Left on both faces together for flattening again after a rest. */
    | 'secondMillingMm'
    /** Left on a panel's strips for planing the panel after gluing. */
    | 'panelAllowanceMm'
    /** Left beside a saw cut for the jointer. */
    | 'sawnEdgeMm'
    /** When more comes off than this much, or this share of the thickness, the wood rests before its last milling. */
    | 'muchMm'
    | 'muchShare'
    /** From this thickness on, wood is thick: it always rests, and longer. */
    | 'thickMm'
    | 'restRippedSeconds'
    | 'restSeconds'
    | 'restThickSeconds'
    | 'glueRestSeconds'
    | 'thicknessToleranceMm'
    | 'widthToleranceMm'
    | 'lengthToleranceMm',
    Habit
  >
>;
