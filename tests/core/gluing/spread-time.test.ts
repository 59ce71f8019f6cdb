import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { range } from '../../../src/core/answer/range.ts';
import { sayPhrase } from '../../../src/core/answer/say-phrase.ts';
import { usualPace } from '../../../src/core/gluing/pace.ts';
import { slowerKinds, spreadTime } from '../../../src/core/gluing/spread-time.ts';
import { solved } from './helpers.ts';

const seam = { length: 1000, width: 25 };
const times = { open: range(300, 600), closed: range(300, 600) };
const work = { seams: [seam, seam, seam, seam], clamps: 8, pace: usualPace };

describe('spreadTime', () => {
  it('adds spreading and closing, and clamping apart', () => {
    // 0.1 m2 x 1800 + 4 x 20, and 8 x 15.
    expect(solved(spreadTime(work, times)).value).toEqual({
      openSeconds: 260,
      closedSeconds: 120,
      fit: 'fits',
      split: [4],
    });
  });
  it('is tight between the ends of the range and late beyond', () => {
    expect(solved(spreadTime(work, { ...times, open: range(200, 260) })).value.fit).toBe('tight');
    expect(solved(spreadTime(work, { ...times, open: range(200, 259) })).value.fit).toBe('late');
    expect(solved(spreadTime(work, { ...times, closed: range(60, 119) })).value.fit).toBe('late');
  });
  it('halves with a helper', () => {
    expect(solved(spreadTime({ ...work, hands: 2 }, times)).value.openSeconds).toBe(130);
  });
  it('says in any units how it came about', () => {
    const { steps } = solved(spreadTime({ ...work, hands: 2 }, times)).working;
    const said = (unit: 'mm' | 'in') => steps.map(({ by }) => sayPhrase(by, { unit, nearest: 16 }));
    expect(said('mm')).toEqual([
      '0.1 m² at 30 min for 1 m², 4 seams at 20 s, 2 at work.',
      '8 clamps at 15 s, 2 at work.',
    ]);
    expect(said('in')[0]).toMatch(/^1.08 ft² at 30 min for 10.8 ft²/);
  });
  it.each([
    [{ seams: [] }, 'seams'],
    [{ clamps: 1.5 }, 'clamps'],
    [{ hands: 0 }, 'hands'],
    [{ pace: { ...usualPace, spread: 0 } }, 'pace.spread'],
    [{ pace: { ...usualPace, clamp: Number.POSITIVE_INFINITY } }, 'pace.clamp'],
  ])('refuses %j', (wrong, field) => {
    expect(spreadTime({ ...work, ...wrong }, times)).toMatchObject({ kind: 'problem', field });
  });
});

/** Fewest runs of neighbours that each fit, by trying every way to cut. */
function fewestByTrying(takes: readonly number[], open: number): number {
  let fewest = Number.POSITIVE_INFINITY;
  for (let cuts = 0; cuts < 2 ** (takes.length - 1); cuts++) {
    const sums = [0];
    takes.forEach((take, index) => {
      if (index > 0 && cuts & (1 << (index - 1))) sums.push(0);
      sums[sums.length - 1] = (sums.at(-1) ?? 0) + take;
    });
    if (sums.every((sum) => sum <= open)) fewest = Math.min(fewest, sums.length);
  }
  return fewest;
}

const splitOf = (...asked: Parameters<typeof spreadTime>) => solved(spreadTime(...asked)).value.split;

describe('the split', () => {
  it('cuts where the next seam would be too late', () => {
    // 65 s a seam.
    expect(splitOf(work, { ...times, open: range(130, 600) })).toEqual([2, 2]);
  });
  it('knows when splitting does not help', () => {
    expect(splitOf(work, { ...times, open: range(64, 600) })).toBeUndefined();
    expect(splitOf(work, { ...times, closed: range(119, 600) })).toBeUndefined();
  });
  it('gives the fewest stages, each seam once', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 100, max: 3000 }), { minLength: 1, maxLength: 8 }), (lengths) => {
        const seams = lengths.map((length) => ({ length, width: 100 }));
        const pace = { spread: 1000, close: 10, clamp: 10 };
        const split = splitOf({ seams, clamps: 1, pace }, { open: range(400), closed: range(400) });
        if (!split) return false;
        expect(split.reduce((sum, of) => sum + of, 0)).toBe(seams.length);
        expect(Math.min(...split)).toBeGreaterThan(0);
        expect(split.length).toBe(
          fewestByTrying(
            lengths.map((length) => length / 10 + 10),
            400,
          ),
        );
        return true;
      }),
    );
  });
});

it('slowerKinds keeps the kinds that fit, quickest first', () => {
  const kinds = [
    { name: 'slow', times: { open: range(3600), closed: range(3600) } },
    { name: 'fast', times: { open: range(60), closed: range(60) } },
    { name: 'middling', times: { open: range(300), closed: range(300) } },
  ];
  expect(slowerKinds(work, kinds).map(({ name }) => name)).toEqual(['middling', 'slow']);
});
