import type { SourceId } from '../core/answer/source-id.ts';

/** How far out of square a kind of work may be. */
export interface SquarenessTolerance {
  readonly id: 'drawers' | 'top' | 'frame';
  readonly label: string;
  /** Slide of a corner for each metre that its end is long, mm per m. */
  readonly perMetre: number;
  readonly source: SourceId;
}

/** Common practice; the maker may set others. */
export const squarenessTolerances: readonly SquarenessTolerance[] = [
  { id: 'drawers', label: 'Cabinet with drawers or doors', perMetre: 0.75, source: 'common-practice' },
  { id: 'top', label: 'Table top or loose panel', perMetre: 1.5, source: 'common-practice' },
  { id: 'frame', label: 'Rough frame', perMetre: 4, source: 'common-practice' },
];
