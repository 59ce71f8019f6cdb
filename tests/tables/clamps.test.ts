import { expect, it } from 'vitest';
import { clampKinds } from '../../src/tables/clamps.ts';

it('has each kind of clamp once', () => {
  expect(new Set(clampKinds.map(({ id }) => id)).size).toBe(clampKinds.length);
});

it.each(clampKinds)(
  '$name gives a force that a hand can make, marked as a habit of the trade',
  ({ newtons, source }) => {
    expect(source).toBe('common-practice');
    expect(newtons.least).toBeGreaterThan(0);
    expect(newtons.most).toBeGreaterThan(newtons.least);
    // An arm's 200 N at a handle of 25 mm radius on a screw of 4 mm pitch gives about 8 kN by work alone, half lost to friction
    // at best: 2 pi x 25 / 4 x 200 = 7854 N.
    expect(newtons.most).toBeLessThanOrEqual(8000);
  },
);

it('orders spring, trigger and pipe clamps as anyone who has used them does', () => {
  const most = (id: string) => clampKinds.find((row) => row.id === id)?.newtons.most ?? Number.NaN;
  expect(most('spring')).toBeLessThan(most('trigger'));
  expect(most('trigger')).toBeLessThan(most('f-clamp'));
  expect(most('f-clamp')).toBeLessThan(most('pipe'));
});
