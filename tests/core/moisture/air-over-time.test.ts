import { mean } from 'mathjs';
import { expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { airOverTime } from '../../../src/core/moisture/air-over-time.ts';
import { outside } from '../../setup/outside.ts';

const day = 86_400_000;

/** On the day of the newest reading. */
function found(...readings: Parameters<typeof airOverTime>[0]) {
  const answer = airOverTime(readings, Math.max(...readings.map(({ at }) => at)));
  if (isProblem(answer)) throw new Error(answer.message.text);
  return answer;
}

// Wood handbook (FPL-GTR-190), Table 4-2, row 70 F (21.1 C): 35 % 6.9, 50 % 9.2, 65 % 12.0; recalled, not read.
const at = (days: number, humidity: number) => ({ at: days * day, celsius: 21.1, humidity });
// The table's rounding.
const within = 1;

/** The table prints one decimal: an exact agreement may be off by half of that. */
const printed = 0.05;

test('one reading is what the table says of its air', () => {
  outside({
    what: 'air of 70 °F and 50 % holds wood at, %',
    source: 'wood-handbook-memory',
    at: 'Table 4-2',
    expected: 9.2,
    got: found(at(0, 50)).value,
    tolerance: printed,
  });
});

test('several are a mean over the last thirty days, in whatever order they came', () => {
  outside({
    what: 'air of 70 °F and 65, 35 and 50 % within a month holds wood at, %',
    source: 'mathjs',
    at: 'mean of the printed values of Wood handbook Table 4-2',
    expected: mean([12.0, 6.9, 9.2]),
    got: found(at(9, 65), at(2, 35), at(5, 50)).value,
    tolerance: printed,
  });
  // The damp month before no longer counts; the thirtieth day does.
  expect(found(at(0, 65), at(31, 35), at(61, 50)).value).toBeCloseTo(mean([6.9, 9.2]), within);
  expect(found(at(0, 65), at(31, 50)).value).toBeCloseTo(9.2, within);
});

test('the working says how many readings it rests on and how far they lie apart', () => {
  const [step] = found(at(0, 35), at(7, 65)).working.steps;
  expect(step?.by.quantities).toMatchObject({
    0: { value: 2 },
    2: { value: expect.closeTo(6.9, within) },
    3: { value: expect.closeTo(12, within) },
  });
});

test('a reading counts for thirty days, and says how old it is; then it is a problem that says so', () => {
  const readings = [at(0, 65), at(40, 50)];
  expect(airOverTime(readings, 70 * day)).toMatchObject({
    value: expect.closeTo(9.2, within),
    working: {
      holds: { quantities: { 1: { value: 30 * 86_400 } } },
      sources: expect.arrayContaining(['assumption']),
    },
  });
  expect(airOverTime(readings, 70 * day + 1)).toMatchObject({
    field: 'readings',
    message: { quantities: { 0: { value: expect.closeTo(30 * 86_400, 0) } } },
  });
  // Read under a clock that was a year ahead.
  expect(airOverTime([at(40, 50), at(405, 65)], 41 * day)).toMatchObject({ value: expect.closeTo(9.2, within) });
});

test('no reading, and a reading that can’t be, are problems', () => {
  expect(airOverTime([], 0)).toMatchObject({ kind: 'problem', field: 'readings' });
  expect(airOverTime([at(0, 50), at(1, 120)], day)).toMatchObject({ kind: 'problem', field: 'humidity' });
  expect(airOverTime([{ at: 0, celsius: Number.NaN, humidity: 50 }], 0)).toMatchObject({ field: 'celsius' });
});
