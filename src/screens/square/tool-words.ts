import { type Option, optionsOf } from '../../ui/fields.tsx';
import type { Entry } from '../movement/entries.tsx';
import type { ToolEntry, ToolKind } from './tool-test.ts';

export type Way = 'plus' | 'minus';

interface KindWords {
  readonly steps: readonly string[];
  readonly entries: { readonly [name in ToolEntry]?: Entry };
  /** Which way the gap lies: the first of the two counts as positive. */
  readonly way: string;
  readonly ways: readonly Option<Way>[];
}

/** How each tool is tested; common practice. */
export const kindWords: Readonly<Record<ToolKind, KindWords>> = {
  square: {
    steps: [
      'Stock against a straight edge, left of the blade: strike a line.',
      'Flip the square over and strike again from the same point.',
      'Measure between the lines at their far ends.',
    ],
    entries: { length: ['Length of the lines'], gap: ['Gap at the far ends'] },
    way: 'The line struck first ends',
    ways: optionsOf({ plus: 'On the right', minus: 'On the left' }),
  },
  straightedge: {
    steps: [
      'Strike a line between two points, the straightedge on your side.',
      'Flip it to the far side and strike again through the same points.',
      'Measure where the lines are furthest apart.',
    ],
    entries: { length: ['Between the points'], gap: ['Widest gap'] },
    way: 'The line struck first lies',
    ways: optionsOf({ plus: 'Further from you', minus: 'Nearer to you' }),
  },
  sticks: {
    steps: [
      'Lay one stick across each end of the board and sight over the near one.',
      'At the right, measure how far the far one stands above or below.',
      'Swap the sticks and sight again: what changes is theirs, what stays is the board’s.',
    ],
    entries: {
      length: ['Length of the sticks'],
      width: ['Width of the board'],
      gap: ['Gap seen'],
      swapped: ['Gap, swapped'],
    },
    way: 'At the right the far stick stands',
    ways: optionsOf({ plus: 'Higher', minus: 'Lower' }),
  },
};

export const toolKinds = optionsOf<ToolKind>({
  square: 'Try square',
  straightedge: 'Straightedge',
  sticks: 'Winding sticks',
});
