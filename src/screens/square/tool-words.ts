import type { ToolEntry, ToolKind } from './tool-test.ts';

interface KindWords {
  readonly steps: readonly string[];
  readonly entries: Readonly<Partial<Record<ToolEntry, string>>>;
  /** Which way the gap lies: the first of the two counts as positive. */
  readonly way: string;
  readonly ways: readonly [{ value: 'plus'; label: string }, { value: 'minus'; label: string }];
}

/** How each tool is tested; common practice. */
export const kindWords: Readonly<Record<ToolKind, KindWords>> = {
  square: {
    steps: [
      'Stock against a straight edge, left of the blade: strike a line.',
      'Flip the square over and strike again from the same point.',
      'Measure between the lines at their far ends.',
    ],
    entries: { length: 'Length of the lines', gap: 'Gap at the far ends' },
    way: 'The line struck first ends',
    ways: [
      { value: 'plus', label: 'On the right' },
      { value: 'minus', label: 'On the left' },
    ],
  },
  straightedge: {
    steps: [
      'Strike a line between two points, the straightedge on your side.',
      'Flip it to the far side and strike again through the same points.',
      'Measure where the lines are furthest apart.',
    ],
    entries: { length: 'Between the points', gap: 'Widest gap' },
    way: 'The line struck first lies',
    ways: [
      { value: 'plus', label: 'Further from you' },
      { value: 'minus', label: 'Nearer to you' },
    ],
  },
  sticks: {
    steps: [
      'Lay one stick across each end of the board and sight over the near one.',
      'At the right, measure how far the far one stands above or below.',
      'Swap the sticks and sight again: what changes is theirs, what stays is the board’s.',
    ],
    entries: { length: 'Length of the sticks', width: 'Width of the board', gap: 'Gap seen', swapped: 'Gap, swapped' },
    way: 'At the right the far stick stands',
    ways: [
      { value: 'plus', label: 'Higher' },
      { value: 'minus', label: 'Lower' },
    ],
  },
};
