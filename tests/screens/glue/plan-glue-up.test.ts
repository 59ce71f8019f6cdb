import { describe, expect, test } from 'vitest';
import { isProblem, type Outcome } from '../../../src/core/answer/problem.ts';
import { outside } from '../../setup/outside.ts';
import { planned, shop, typed } from './samples.ts';

function good<T>(outcome: Outcome<T> | undefined): T {
  if (outcome === undefined || isProblem(outcome)) throw new Error('no answer');
  return outcome;
}

describe('before the glue', () => {
  test('one seam of cherry: area, glue, clamps and time', () => {
    const { plan } = planned(typed());
    const amount = good(plan.work).amount.value;
    // 1.2 m by 0.02 m; 150 to 220 g/m2 with a tenth kept by the brush (common practice).
    expect(amount.areaM2).toBeCloseTo(0.024, 12);
    expect(amount.likelyGrams).toBeCloseTo((0.024 * 185) / 0.9, 9);
    const { needed, owned } = good(plan.clamps);
    // 700 to 1700 kPa by density: cherry 0.50 gives 1129 kPa on 24 000 mm2. Doubles leave only rounding.
    outside({
      what: 'force to clamp a seam of 1.2 m by 20 mm in black cherry, newtons',
      source: 'wood-handbook-memory',
      at: 'chapter 10',
      expected: (700 + (1000 * 0.15) / 0.35) * 24,
      got: needed.value.force,
      tolerance: 5e-7,
    });
    // A heavy bar clamp gives 5250 N (middle of common practice): 27.1 kN takes six.
    expect(needed.value.clamps).toBe(6);
    expect(owned).toMatchObject({ take: [{ count: 6 }], missing: 0, missingForce: 0 });
    const { spread } = good(plan.work);
    // 1800 s/m2 and 20 s a seam, the unhurried pace.
    expect(spread.value.openSeconds).toBeCloseTo(0.024 * 1800 + 20, 9);
    expect(spread.value.fit).toBe('fits');
  });

  test('fewer clamps than it takes, and too short ones, are told with what helps', () => {
    const { plan } = planned(typed({ across: '900' }), { clamps: [{ kind: 'bar-heavy', opening: 600, count: 8 }] });
    const { owned } = good(plan.clamps);
    expect(owned.take).toEqual([]);
    expect(owned.missingForce).toBeGreaterThan(27_000);
    expect(owned.helps.length).toBeGreaterThan(2);
  });

  test('fifteen seams are too slow for PVA: split, or take a slower kind; a label with more time settles it', () => {
    const seams = [{ count: '15', length: '1200', width: '20' }];
    const time = good(planned(typed({ seams })).plan.work);
    expect(time.spread.value.fit).toBe('late');
    expect(time.spread.value.split?.reduce((sum, seams) => sum + seams, 0)).toBe(15);
    expect(time.spread.value.split?.length).toBe(4);
    expect(time.slower.map(({ id }) => id)).toContain('epoxy-slow');
    const labelled = good(planned(typed({ seams, label: { open: '30', closed: '20', clamp: '60-90' } })).plan.work);
    expect(labelled.spread.value.fit).toBe('fits');
  });

  test('a kind whose label gives less than the table is no way out of its own trouble', () => {
    const slow = good(planned(typed({ adhesive: 'epoxy-slow', label: { open: '1' } })).plan.work);
    expect(slow.spread.value.fit).toBe('late');
    expect(slow.slower.map(({ id }) => id)).not.toContain('epoxy-slow');
  });

  test('sizes of a panel count for a panel alone', () => {
    const forPanel = { across: '900', outerBoard: '50', caul: 'x' };
    const { read } = planned(typed({ ...forPanel, meets: 'other' }));
    expect(read).toMatchObject({ across: undefined, outerBoard: undefined, caul: 0 });
    expect(read.problems.size).toBe(0);
  });

  test('mitres are not pressed along their seams, and a wood that is not picked asks for none', () => {
    expect(planned(typed({ meets: 'mitre-case' })).plan.clamps).toBeUndefined();
    expect(planned(typed({ species: '' })).plan.clamps).toBeUndefined();
  });

  test('below the least temperature there is no go, unless the label says so', () => {
    const { times } = planned(typed({ celsius: '4' })).plan;
    expect(isProblem(times) && times.message.text).toMatch(/^Don’t glue at/);
    expect(isProblem(planned(typed({ celsius: '4', label: { leastCelsius: '3' } })).plan.times)).toBe(false);
  });

  test('label times the wrong way round are told', () => {
    const { times } = planned(typed({ label: { clamp: '120', cure: '1' } })).plan;
    expect(isProblem(times) && times.field).toBe('label.seconds.cure');
  });

  test('the pace of dry runs counts', () => {
    const pace = { 'glue-spread': { seconds: 120, count: 1000 }, 'glue-close': { seconds: 10, count: 1 } };
    const { spread } = good(planned(typed(), { clamps: shop.clamps, pace }).plan.work);
    // 120 s for 0.1 m2 is 1200 s/m2.
    expect(spread.value.openSeconds).toBeCloseTo(0.024 * 1200 + 10, 9);
  });
});
