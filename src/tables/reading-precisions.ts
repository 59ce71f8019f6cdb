import type { SourceId } from '../core/answer/source-id.ts';

/** How far off one reading can be with a way of measuring, mm. */
export interface ReadingPrecision {
  readonly id: 'tape' | 'rule' | 'stick';
  readonly label: string;
  readonly precision: number;
  readonly source: SourceId;
}

const tape: ReadingPrecision = {
  id: 'tape',
  label: 'Tape marked in millimetres',
  precision: 0.5,
  source: 'common-practice',
};

/** About a knife line's width. */
export const stickPrecision: ReadingPrecision = {
  id: 'stick',
  label: 'Stick cut to one diagonal',
  precision: 0.25,
  source: 'common-practice',
};

/** Half of the finest graduation for tape and rule. */
export const readingPrecisions: readonly ReadingPrecision[] = [
  tape,
  { id: 'rule', label: 'Steel rule marked in half millimetres', precision: 0.25, source: 'common-practice' },
  stickPrecision,
];

/** Taken when nothing is said. */
export const usualPrecision = tape;

/** Of what a clamped case is moved, the part that it springs back when the clamp comes off. */
export const usualSpringBack: { readonly share: number; readonly source: SourceId } = {
  share: 0.2,
  source: 'common-practice',
};
