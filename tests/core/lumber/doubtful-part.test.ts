import { expect, test } from 'vitest';
import { doubtfulPart } from '../../../src/core/lumber/doubtful-part.ts';

const shelf = { length: 600, width: 300, thickness: 19, quantity: 2, panel: true };
const doubts = (part: Partial<typeof shelf>) => doubtfulPart({ ...shelf, ...part }).map(({ text }) => text);

test('an ordinary part raises no doubt, nor does a square one', () => {
  expect(doubts({})).toEqual([]);
  expect(doubts({ length: 40, width: 40, thickness: 40, panel: false })).toEqual([]);
});

test('sizes that look swapped are asked about', () => {
  expect(doubts({ width: 19, thickness: 300 })).toEqual([expect.stringContaining('Thicker')]);
  expect(doubts({ length: 300, width: 600 })).toEqual([expect.stringContaining('along the grain')]);
});

test('a thin panel is doubted, a thin solid part is not', () => {
  expect(doubts({ thickness: 3 })).toEqual([expect.stringContaining('keep flat')]);
  expect(doubts({ thickness: 3, panel: false })).toEqual([]);
});
