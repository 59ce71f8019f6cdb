import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import type { CutBlank } from '../../../src/core/breakdown/problem-types.ts';
import { layBlanks } from '../../../src/core/milling/lay-blanks.ts';
import type { MillingInput } from '../../../src/core/milling/milling-input.ts';
import { millingSequence } from '../../../src/core/milling/milling-sequence.ts';
import { offcuts } from '../../../src/core/milling/offcuts.ts';
import { scenarios, stepsOf } from './shops-and-stacks.ts';

const whole = scenarios['a wide and long panel, a full shop'];

/** The first strip of the first blank is spoilt, and its place is taken by one more blank. */
function withSpoilt(input: MillingInput, places: readonly number[]): MillingInput {
  const blanks = input.blanks.map(
    (blank, at): CutBlank => ({
      ...blank,
      strips: blank.strips.map((strip, n) => (at === 0 && places.includes(n) ? { ...strip, spoilt: true } : strip)),
    }),
  );
  return { ...input, blanks };
}

const named = (input: MillingInput) =>
  layBlanks(input).flatMap(({ strips }) => strips.map(({ id, label }) => `${id} ${label}`));

describe('a spoilt strip', () => {
  it('is milled no further, and the others keep their names', () => {
    const [, ...others] = named(whole);
    expect(named(withSpoilt(whole, [0]))).toEqual(others);
    const ids = stepsOf(withSpoilt(whole, [0])).flatMap(({ pieces }) => pieces.map(({ id }) => id));
    expect(ids).not.toContain('B1@0/1');
    expect(ids).toContain('B1@0/2');
  });

  it('takes a blank with it when it was its last one', () => {
    const blanks = layBlanks(withSpoilt(whole, [0, 1]));
    expect(blanks.map(({ id }) => id)).toEqual(['B2@0']);
  });

  it('still takes its width, so that strips beside it must fit, and nothing of it comes back', () => {
    expect(offcuts(withSpoilt(whole, [0, 1]))).toEqual(offcuts(whole));
    const [first, ...rest] = withSpoilt(whole, [0]).blanks as [CutBlank, ...CutBlank[]];
    const [spoilt, ...good] = first.strips as [CutBlank['strips'][number], ...CutBlank['strips']];
    const fat = { ...first, strips: [{ ...spoilt, width: 250 }, ...good] };
    const answer = millingSequence({ ...whole, blanks: [fat, ...rest] });
    expect(isProblem(answer) && answer.field).toBe('blanks.0.strips');
  });
});
