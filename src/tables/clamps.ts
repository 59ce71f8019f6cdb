import { type Range, range } from '../core/answer/range.ts';
import type { SourceId } from '../core/answer/source-id.ts';

/** A kind of clamp, never a brand. */
export interface ClampKind {
  readonly id: string;
  readonly name: string;
  /** What a hand gives without straining, newtons. */
  readonly newtons: Range;
  readonly use: string;
  readonly source: SourceId;
}

/** Forces are habits of the trade, by a hand on a clean screw: a worn or waxed screw is far off either way. */
export const clampKinds: readonly ClampKind[] = [
  { id: 'pipe', name: 'Pipe clamp', newtons: range(3500, 6000), use: 'wide panels', source: 'common-practice' },
  {
    id: 'parallel-jaw',
    name: 'Parallel-jaw clamp',
    newtons: range(3000, 6000),
    use: 'panels and cases',
    source: 'common-practice',
  },
  {
    id: 'bar-heavy',
    name: 'Heavy bar clamp',
    newtons: range(3500, 7000),
    use: 'panels and bench tops',
    source: 'common-practice',
  },
  {
    id: 'bar-light',
    name: 'Light bar clamp, hollow rail',
    newtons: range(1000, 2000),
    use: 'narrow panels, drawers',
    source: 'common-practice',
  },
  {
    id: 'f-clamp',
    name: 'Screw clamp on a bar, middling',
    newtons: range(1500, 3000),
    use: 'cauls, frames',
    source: 'common-practice',
  },
  {
    id: 'c-clamp',
    name: 'Cast C-clamp',
    newtons: range(3000, 8000),
    use: 'laminations, blocks',
    source: 'common-practice',
  },
  {
    id: 'handscrew',
    name: 'Wooden handscrew',
    newtons: range(2000, 4000),
    use: 'work out of square',
    source: 'common-practice',
  },
  {
    id: 'trigger',
    name: 'One-handed trigger clamp',
    newtons: range(500, 1300),
    use: 'holding while others go on',
    source: 'common-practice',
  },
  {
    id: 'cam',
    name: 'Wooden cam clamp',
    newtons: range(300, 700),
    use: 'light and curved work',
    source: 'common-practice',
  },
  {
    id: 'strap',
    name: 'Strap clamp',
    newtons: range(500, 1500),
    use: 'mitred frames and boxes',
    source: 'common-practice',
  },
  {
    id: 'spring',
    name: 'Spring clamp',
    newtons: range(40, 200),
    use: 'edging, holding cauls',
    source: 'common-practice',
  },
];
