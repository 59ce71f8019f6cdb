import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { runOutcome } from '../../../src/core/milling/run-outcome.ts';
import { stripRecords } from '../../../src/core/milling/strip-records.ts';
import type { Measured } from '../../../src/core/milling/with-measured.ts';
import { blank, board, millingInput, part, scenarios, stepsOf } from './shops-and-stacks.ts';

const input = scenarios['a wide and long panel, a full shop'];
const steps = stepsOf(input);
/** Only strips of which something was noted. */
const noted = (...given: Parameters<typeof stripRecords>) =>
  stripRecords(...given).flatMap(({ strip, blank: _, ...record }) =>
    Object.keys(record).length > 0 ? [{ strip: strip.id, ...record }] : [],
  );
const idOf = (stage: string): string => steps.find((step) => step.stage === stage)?.id ?? '';

const reading = (stage: string, piece: string, dimension: Measured['dimension'], value: number): Measured => ({
  step: idOf(stage),
  piece,
  dimension,
  value,
});

describe('what was noted of each strip', () => {
  it('its finished width is the last one read where the sawn edge is jointed', () => {
    const readings = [
      reading('rip parallel', 'B1@0/1', 'width', 138),
      reading('sawn edge', 'B1@0/1', 'width', 136.7),
      reading('sawn edge', 'B1@0/1', 'width', 136.6),
      reading('thickness', 'B1@0/1', 'thickness', 20),
    ];
    expect(noted(input, steps, readings, {})).toEqual([{ strip: 'B1@0/1', finishedWidth: 136.6 }]);
  });

  it('a thickness counts only when both faces came clean at it, and goes to all strips of its blank', () => {
    const whole = millingInput({
      boards: [board('B1')],
      parts: [part('rail', 900, 60, 20, { quantity: 2 })],
      blanks: [blank('B1', 0, 950, [64, 'rail', 1], [64, 'rail', 2])],
    });
    const run = stepsOf(whole);
    const step = run.find(({ stage }) => stage === 'first thickness');
    const piece = step?.pieces[0]?.id ?? '';
    // The premise: the blank is planed whole and ripped after that, so that the strips have other ids than it.
    expect(piece).toBe('B1@0');
    const readings: Measured[] = [
      { step: step?.id ?? '', piece, dimension: 'thickness', value: 24, clean: true },
      { step: step?.id ?? '', piece, dimension: 'thickness', value: 22 },
    ];
    expect(noted(whole, run, readings, {})).toEqual([
      { strip: 'B1@0/1', cleanThickness: 24 },
      { strip: 'B1@0/2', cleanThickness: 24 },
    ]);
  });

  it('a lost strip is noted with its reason, and its panel must be made up', () => {
    const records = noted(input, steps, [], { 'B1@0/2': 'split' });
    expect(records).toEqual([{ strip: 'B1@0/2', lost: 'split' }]);
    const outcome = runOutcome(input, steps, [], { 'B1@0/2': 'split' });
    expect(isProblem(outcome) ? outcome : outcome.toMake.map(({ part: id }) => id)).toEqual(['lid']);
  });

  it('readings of other steps and pieces say nothing', () => {
    expect(noted(input, steps, [reading('no such step', 'nothing', 'width', 100)], {})).toEqual([]);
  });
});
