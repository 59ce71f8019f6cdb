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

/** Forces are habits of the trade, by a hand on a clean screw: a worn or waxed screw is far off either way. */
export const clampKinds: readonly ClampKind[] = [
  { id: 'pipe', name: 'Pipe clamp', newtons: range(3500, 6000), source: 'common-practice' },
  {
    id: 'parallel-jaw',
    name: 'Parallel-jaw clamp',
    newtons: range(3000, 6000),
    source: 'common-practice',
  },
  {
    id: 'bar-heavy',
    name: 'Heavy bar clamp',
    newtons: range(3500, 7000),
    source: 'common-practice',
  },
  {
    id: 'bar-light',
    name: 'Light bar clamp, hollow rail',
    newtons: range(1000, 2000),
    source: 'common-practice',
  },
  {
    id: 'f-clamp',
    name: 'Screw clamp on a bar, middling',
    newtons: range(1500, 3000),
    source: 'common-practice',
  },
  {
    id: 'c-clamp',
    name: 'Cast C-clamp',
    newtons: range(3000, 8000),
    source: 'common-practice',
  },
  {
    id: 'handscrew',
    name: 'Wooden handscrew',
    newtons: range(2000, 4000),
    source: 'common-practice',
  },
  {
    id: 'trigger',
    name: 'One-handed trigger clamp',
    newtons: range(500, 1300),
    source: 'common-practice',
  },
  {
    id: 'cam',
    name: 'Wooden cam clamp',
    newtons: range(300, 700),
    source: 'common-practice',
  },
  {
    id: 'strap',
    name: 'Strap clamp',
    newtons: range(500, 1500),
    source: 'common-practice',
  },
  {
    id: 'spring',
    name: 'Spring clamp',
    newtons: range(40, 200),
    source: 'common-practice',
  },
];
