import { describe, expect, it } from 'vitest';
import { seasonalWidth } from '../../../src/core/movement/seasonal-width.ts';
import { answered, cherry, seasons } from './woods.ts';

describe('seasonalWidth', () => {
  const points = answered(seasonalWidth(cherry, 400, seasons)).value;
  const widest = points.reduce((a, b) => (b.width > a.width ? b : a));
  const narrowest = points.reduce((a, b) => (b.width < a.width ? b : a));

  // 400 mm + 2.976 and - 1.984 by the coefficient; a point every five days misses the crest by less than 0.01 mm.
  it("reaches both seasons' widths, half a year apart", () => {
    expect(widest.width).toBeCloseTo(402.976, 2);
    expect(narrowest.width).toBeCloseTo(398.016, 2);
    expect(Math.abs(widest.day - 226)).toBeLessThanOrEqual(2.5);
    expect(Math.abs(narrowest.day - 43.5)).toBeLessThanOrEqual(2.5);
  });

  it('closes: the year ends where it began', () => {
    expect(points[0]?.day).toBe(0);
    expect(points.at(-1)?.day).toBe(365);
    expect(points.at(-1)?.width).toBeCloseTo(points[0]?.width ?? 0, 9);
  });

  it.each([
    ['width', 0, seasons],
    ['seasons.today', 400, { ...seasons, today: 40 }],
  ] as const)('names %s', (field, width, year) => {
    expect(seasonalWidth(cherry, width, year)).toMatchObject({ kind: 'problem', field });
  });
});
