import fc from 'fast-check';
import { expect, it } from 'vitest';
import { nextChalkMark } from '../../../src/core/lumber/chalk-mark.ts';

it.each([
  [[], '1'],
  [['1', '2', '3'], '4'],
  [['12', '3'], '13'],
  [['A1', 'A2', 'A4'], 'A5'],
  [['1', '2', 'B7'], 'B8'],
  [['B7', '2'], '3'],
  [['07'], '08'],
  [['A'], 'A1'],
  [[' a2 ', 'A1'], 'A3'],
  [['A9', 'A10'], 'A11'],
  [['A9', 'A8'], 'A10'],
])('after %j comes %s', (marks, next) => {
  expect(nextChalkMark(marks)).toBe(next);
});

it('never gives a mark twice', () => {
  const mark = fc.oneof(fc.string({ maxLength: 4 }), fc.stringMatching(/^[abAB]?\d{0,3}$/));
  fc.assert(
    fc.property(fc.array(mark, { maxLength: 30 }), (marks) => {
      const plain = marks.map((each) => each.trim().toUpperCase());
      expect(plain).not.toContain(nextChalkMark(marks).trim().toUpperCase());
    }),
  );
});
