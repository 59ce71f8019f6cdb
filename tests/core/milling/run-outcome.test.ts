import { quantileSeq } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import type { Stage } from '../../../src/core/milling/milling-step.ts';
import { runOutcome } from '../../../src/core/milling/run-outcome.ts';
import type { Measured } from '../../../src/core/milling/with-measured.ts';
import { outside } from '../../setup/outside.ts';
import { blank, board, millingInput, part, stepsOf } from './shops-and-stacks.ts';

const input = millingInput({
  boards: [board('B1', { width: 220, cup: 0, bow: 0 }), board('B2', { width: 220, cup: 0, bow: 0 })],
  parts: [part('lid', 900, 600, 19, { panel: true })],
  blanks: [
    blank('B1', 0, 950, [105, 'lid'], [105, 'lid']),
    blank('B1', 953.2, 950, [105, 'lid'], [105, 'lid']),
    blank('B2', 0, 950, [105, 'lid'], [105, 'lid']),
  ],
});
const ids = ['B1@0/1', 'B1@0/2', 'B1@953.2/1', 'B1@953.2/2', 'B2@0/1', 'B2@0/2'];
const steps = stepsOf(input);
/** A strip read at the step of this stage that it goes through, whatever the target. */
const reading = (stage: Stage, piece: string, value: number, given: Partial<Measured> = {}): Measured => {
  const step = steps.find(({ stage: at, pieces }) => at === stage && pieces.some(({ id }) => id === piece));
  return {
    step: step?.id ?? '',
    piece,
    dimension: step?.target?.dimension ?? 'width',
    value,
    accepted: true,
    ...given,
  };
};
const finished = (strip: string, width: number) => reading('sawn edge', strip, width);
const clean = (strip: string, thickness: number) => reading('first thickness', strip, thickness, { clean: true });
const outcome = (measured: readonly Measured[], lost: Readonly<Record<string, string>> = {}) => {
  const out = runOutcome(input, steps, measured, lost);
  if (isProblem(out)) throw new Error(out.field);
  return out;
};

describe('what a run came to', () => {
  it('as planned without records: the yield is finished against crosscut', () => {
    const { yield: came, toMake, allowances } = outcome([]);
    // 900 x 600 of 3 x 220 x 953.2 by hand; nine decimals, rounding only
    expect(came.planned.value).toBeCloseTo((100 * 900 * 600) / (3 * 220 * 953.2), 9);
    expect(came.real.value).toBe(came.planned.value);
    expect(toMake).toEqual([]);
    expect(allowances).toEqual({});
  });

  it('a lost strip leaves the panel short: it is to make again and the yield falls', () => {
    const out = outcome([], { 'B2@0/1': 'a check opened' });
    // six strips of 101.8 less one: 509 of 600
    expect(out.toMake).toMatchObject([{ part: 'lid', unit: 1, label: 'lid' }]);
    expect(out.toMake[0]?.missingWidth).toBeCloseTo(91, 9);
    expect(out.yield.real.value).toBe(0);
    expect(out.strips.find(({ strip }) => strip.id === 'B2@0/1')?.lost).toBe('a check opened');
  });

  it('offers what would have been enough for nine of ten as the next allowance', () => {
    const widths = [101, 101.4, 101.5, 101.9, 101.2, 100];
    const out = outcome(ids.flatMap((strip, index) => [clean(strip, 24), finished(strip, widths[index] ?? 0)]));
    // rough 105: 3.1 to 5 was lost. The nearest-rank percentile of six is the largest; mathjs interpolates below it.
    const lost = widths.map((width) => 105 - width);
    outside({
      what: 'enough for nine of ten strips that lost 3.1 to 5 mm: edge allowance, mm',
      source: 'mathjs',
      at: 'quantileSeq of 1, nearest rank of six',
      expected: Number(quantileSeq(lost, 1)),
      got: out.allowances.edge?.value,
    });
    expect(out.allowances.edge?.value).toBeGreaterThanOrEqual(Number(quantileSeq(lost, 0.9)));
    // 27 rough without warp, clean at 24: 1.5 a face
    expect(out.allowances.face?.value).toBe(1.5);
    expect(out.allowances.face?.working.sources).toEqual(['assumption']);
  });

  it('offers nothing from four strips', () => {
    expect(outcome(ids.slice(0, 4).map((strip) => finished(strip, 101))).allowances).toEqual({});
  });

  it('readings of no strip, or larger than a strip was, count for nothing', () => {
    const wrong = [finished('X@0/1', 101), finished('B1@0/1', 106), clean('B1@0/1', 0)];
    expect(outcome(wrong)).toEqual(outcome([]));
  });

  it('a strip read a little wider than it was cut makes no allowance below zero', () => {
    const bare = { ...input, shop: { ...input.shop, edgeAllowance: 0 } };
    const jointed = stepsOf(bare).find(({ stage }) => stage === 'sawn edge');
    const wide = ids.map(
      (piece): Measured => ({ step: jointed?.id ?? '', piece, dimension: 'width', value: 105.2, accepted: true }),
    );
    const out = runOutcome(bare, stepsOf(bare), wide, {});
    // nine decimals, rounding only
    expect(isProblem(out) ? out : out.allowances.edge?.value).toBeCloseTo(0, 9);
  });

  it('refuses what no sequence is made from', () => {
    expect(runOutcome({ ...input, boards: [] }, steps, [], {})).toMatchObject({ kind: 'problem' });
  });
});
