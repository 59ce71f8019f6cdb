import type { SourceId } from '../core/answer/source-id.ts';

/** Warp that is taken for a board that nobody has measured: middling kiln-dried hardwood. */
export const assumedWarp: { readonly cupPerWidth: number; readonly bowPerLength: number; readonly source: SourceId } = {
  /** 1 mm of hollow for each 100 mm of width. */
  cupPerWidth: 0.01,
  /** 2 mm of curve for each metre of length. */
  bowPerLength: 0.002,
  source: 'assumption',
};
