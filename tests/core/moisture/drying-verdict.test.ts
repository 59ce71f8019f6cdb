import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { dryingTimeConstant } from '../../../src/core/moisture/drying-fit.ts';
import { type DryingInput, dryingVerdict } from '../../../src/core/moisture/drying-verdict.ts';

const day = 86_400_000;
const band = { least: 7, most: 9 };
const reading = (days: number, percent: number) => ({ at: days * day, percent });

function verdict(pairs: readonly (readonly [days: number, percent: number])[], more: Partial<DryingInput> = {}) {
  const readings = pairs.map(([days, percent]) => reading(days, percent));
  const now = Math.max(...readings.map((one) => one.at));
  const answer = dryingVerdict({ readings, target: band, now, ...more });
  if (isProblem(answer)) throw new Error(answer.message.text);
  return answer.value;
}

describe('dryingVerdict', () => {
  // What ready means, and the gluing limit, are common practice.
  it.each([
    ['too-wet', [[0, 14]]],
    [
      'drying',
      [
        [0, 14],
        [10, 11],
      ],
    ],
    ['drying', [[0, 9.1]]],
    [
      'gaining',
      [
        [0, 5],
        [10, 6],
      ],
    ],
    ['settling', [[0, 8]]],
    [
      'settling',
      [
        [0, 8],
        [6, 8],
      ],
    ],
    [
      'settling',
      [
        [0, 8.6],
        [7, 8],
      ],
    ],
    [
      'settling',
      [
        [0, 8],
        [4, 8.8],
        [8, 8],
      ],
    ],
    [
      'ready',
      [
        [0, 8.4],
        [7, 8],
      ],
    ],
    [
      'ready',
      [
        [0, 14],
        [20, 8.2],
        [24, 8.1],
        [28, 8],
      ],
    ],
  ] as const)('is %s for %o', (state, pairs) => {
    expect(verdict(pairs).state).toBe(state);
  });

  it('takes readings in any order', () => {
    expect(
      verdict([
        [20, 8],
        [0, 14],
        [10, 8.2],
      ]).state,
    ).toBe('ready');
  });

  it('lets a band above the usual gluing limit be glued in', () => {
    expect(
      verdict(
        [
          [0, 12.8],
          [8, 12.8],
        ],
        { target: { least: 10, most: 13 } },
      ).state,
    ).toBe('ready');
  });

  // Worked by hand: half the way from 16 to 8 in ten days; from 12, 4 above, to 9, 1 above, two more halvings: 20 days.
  it('expects the edge of the band where the exponential crosses it', () => {
    expect(
      (verdict([
        [0, 16],
        [10, 12],
      ]).expectedAt as number) / day,
    ).toBeCloseTo(30, 6);
  });

  it('asks to read again once the day has gone by', () => {
    const pairs = [
      [0, 16],
      [10, 12],
    ] as const;
    expect(verdict(pairs).forecast?.text).toContain('away at the earliest');
    const { expectedAt, forecast } = verdict(pairs, { now: 40 * day });
    expect(expectedAt).toBeCloseTo(30 * day, -3);
    expect(forecast?.text).toContain('read it again');
  });

  it('expects wood that takes up moisture at the lower edge', () => {
    // From 4 to 6 is half the way to 8; 7 is one halving more.
    expect(
      (verdict([
        [0, 4],
        [10, 6],
      ]).expectedAt as number) / day,
    ).toBeCloseTo(20, 6);
  });

  it.each([
    ['one reading', [[0, 16]], {}],
    [
      'the air is too damp',
      [
        [0, 16],
        [10, 12],
      ],
      { equilibrium: 9 },
    ],
    [
      'the air is too dry',
      [
        [0, 5],
        [10, 6],
      ],
      { equilibrium: 6 },
    ],
    [
      'it gets wetter',
      [
        [0, 11],
        [10, 12],
      ],
      {},
    ],
    [
      'years away',
      [
        [0, 16],
        [10, 15.99],
      ],
      {},
    ],
  ] as const)('gives no date when %s, and says why', (_why, pairs, more) => {
    const { expectedAt, forecast } = verdict(pairs, more);
    expect(expectedAt).toBeUndefined();
    expect(forecast?.text).toMatch(/\w/);
  });

  it('looks no further ahead than the band', () => {
    expect(verdict([[0, 8]])).not.toHaveProperty('expectedAt');
    expect(
      verdict([
        [0, 8],
        [7, 8],
      ]),
    ).not.toHaveProperty('expectedAt');
  });

  it.each([
    ['readings', { readings: [] }],
    ['readings.0.percent', { readings: [reading(0, 101)] }],
    ['readings.1.percent', { readings: [reading(0, 10), reading(1, Number.NaN)] }],
    ['readings.0.at', { readings: [{ at: Number.NaN, percent: 8 }] }],
    ['readings.0.at', { readings: [reading(100, 8)] }],
    ['target', { target: { least: 9, most: 7 } }],
    ['equilibrium', { equilibrium: 50 }],
  ])('names %s in %o', (field, wrong) => {
    const answer = dryingVerdict({ readings: [reading(0, 10)], target: band, now: 50 * day, ...wrong });
    expect(answer).toMatchObject({ kind: 'problem', field });
  });
});

describe('dryingTimeConstant', () => {
  it('recovers the constant that readings were made from', () => {
    const readings = [0, 3, 8, 15].map((days) => reading(days, 8 + 12 * Math.exp(-days / 11)));
    expect((dryingTimeConstant(readings, 8) as number) / day).toBeCloseTo(11, 6);
  });

  it('leaves out readings that scatter about the equilibrium, and gives up below two', () => {
    expect(dryingTimeConstant([reading(0, 16), reading(30, 8.2)], 8)).toBeUndefined();
    expect(dryingTimeConstant([], 8)).toBeUndefined();
    expect(dryingTimeConstant([reading(5, 16), reading(5, 12)], 8)).toBeUndefined();
  });
});
