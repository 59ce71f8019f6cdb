import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { range } from '../../../src/core/answer/range.ts';
import { adhesiveTimes, warmestCelsius } from '../../../src/core/gluing/adhesive-times.ts';
import { adhesives } from '../../../src/tables/adhesives.ts';
import { kind, said, solved } from './helpers.ts';

const pva = kind('pva-interior');

describe('adhesiveTimes', () => {
  it("gives the table's own times at its own temperature", () => {
    for (const adhesive of adhesives) expect(solved(adhesiveTimes(adhesive, 20)).value).toEqual(adhesive.seconds);
  });

  it('halves a resin time with 10 degrees more: the usual doubling of a reaction, van t Hoff rule of thumb', () => {
    const epoxy = kind('epoxy-slow');
    const { open, cure } = solved(adhesiveTimes(epoxy, 30)).value;
    // Exact but for rounding of doubles.
    expect(open.least).toBeCloseTo(900, 9);
    expect(cure.most).toBeCloseTo((168 * 3600) / 2, 6);
  });

  it('leaves hot hide glue more time to close in a warm room, and dries it faster all the same', () => {
    const { open, clamp } = solved(adhesiveTimes(kind('hide-hot'), 30)).value;
    expect(open.least).toBeCloseTo(90, 9);
    expect(clamp.most).toBeLessThan(kind('hide-hot').seconds.clamp.most);
  });

  it('keeps every range in order at every temperature at which it answers', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...adhesives),
        fc.double({ min: 5, max: warmestCelsius, noNaN: true }),
        (one, now) => {
          const times = adhesiveTimes(one, now);
          if (isProblem(times)) return now < one.leastCelsius;
          return Object.values(times.value).every(
            ({ least, most }) => least > 0 && least <= most && Number.isFinite(most),
          );
        },
      ),
    );
  });

  it('lets the label win, at the temperature the label gives, and says so', () => {
    const label = { seconds: { open: range(480, 480) }, atCelsius: 25 };
    const at25 = solved(adhesiveTimes(pva, 25, label));
    expect(at25.value.open).toEqual(range(480, 480));
    expect(at25.working.sources).toContain('label');
    // The closed time is still the table's, from 20 degrees.
    expect(at25.value.closed.least).toBeCloseTo(300 * 0.67 ** 0.5, 9);
    expect(solved(adhesiveTimes(pva, 25)).working.sources).not.toContain('label');
  });

  it("uses the label's least temperature", () => {
    expect(isProblem(adhesiveTimes(pva, 8))).toBe(true);
    expect(isProblem(adhesiveTimes(pva, 8, { leastCelsius: 7 }))).toBe(false);
  });

  it('says do not, and why, below the least temperature', () => {
    for (const adhesive of adhesives) {
      const cold = adhesiveTimes(adhesive, adhesive.leastCelsius - 0.1);
      expect(cold).toMatchObject({ kind: 'problem', field: 'celsius' });
      expect(said(cold)).toMatch(/^Don’t glue at .*: below .* Warm the wood/);
      expect(said(cold)).toContain(adhesive.tooCold);
    }
  });

  it.each([
    ['reversed', { seconds: { open: range(600, 300) } }, 20, 'label.seconds.open'],
    ['zero', { seconds: { clamp: range(0, 300) } }, 20, 'label.seconds.clamp.least'],
    ['absurd', { seconds: { cure: range(1e9) } }, 20, 'label.seconds.cure'],
    ['cured before unclamped', { seconds: { clamp: range(7200), cure: range(3600) } }, 20, 'label.seconds.cure'],
    ['unclamped while open', { seconds: { open: range(7200), clamp: range(600) } }, 20, 'label.seconds.clamp'],
    ['label temperature', { atCelsius: 200 }, 20, 'label.atCelsius'],
    ['least temperature', { leastCelsius: Number.NaN }, 20, 'label.leastCelsius'],
    ['too warm', {}, 36, 'celsius'],
    ['no temperature', {}, Number.NaN, 'celsius'],
  ])('refuses a label or a day that can not be: %s', (_, label, now, field) => {
    expect(adhesiveTimes(pva, now, label)).toMatchObject({ kind: 'problem', field });
  });
});
