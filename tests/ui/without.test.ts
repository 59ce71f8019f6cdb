import { expect, test } from 'vitest';
import { without } from '../../src/ui/without.ts';

test('of two readings alike, taken on one day, one goes and the other stays', () => {
  const noon = { at: 1_700_000_000_000, percent: 9 };
  const readings = [{ ...noon }, { at: 1, percent: 9 }, { ...noon }];
  expect(without(readings, noon)).toEqual([noon, { at: 1, percent: 9 }]);
  expect(without(without(readings, noon), noon)).toEqual([{ at: 1, percent: 9 }]);
  expect(without(readings, { at: 2, percent: 9 })).toEqual(readings);
  expect(without(undefined, noon)).toEqual([]);
});
