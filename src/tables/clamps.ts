import { type Range, range } from '../core/answer/range.ts';
import type { SourceId } from '../core/answer/source-id.ts';

/** A kind of clamp, never a brand. */
export interface ClampKind {
  readonly id: string;
  readonly name: string;
  /** What a hand gives without straining, newtons. */
  readonly newtons: Range;
  readonly source: SourceId;
}

const kind = (id: string, name: string, least: number, most: number): ClampKind => ({
  id,
  name,
  newtons: range(least, most),
  source: 'common-practice',
});

/** Forces are habits of the trade, by a hand on a clean screw: a worn or waxed screw is far off either way. */
export const clampKinds: readonly ClampKind[] = [
  kind('pipe', 'Pipe clamp', 3500, 6000),
  kind('parallel-jaw', 'Parallel-jaw clamp', 3000, 6000),
  kind('bar-heavy', 'Heavy bar clamp', 3500, 7000),
  kind('bar-light', 'Light bar clamp, hollow rail', 1000, 2000),
  kind('f-clamp', 'Screw clamp on a bar, middling', 1500, 3000),
  kind('c-clamp', 'Cast C-clamp', 3000, 8000),
  kind('handscrew', 'Wooden handscrew', 2000, 4000),
  kind('trigger', 'One-handed trigger clamp', 500, 1300),
  kind('cam', 'Wooden cam clamp', 300, 700),
  kind('strap', 'Strap clamp', 500, 1500),
  kind('spring', 'Spring clamp', 40, 200),
];
