import { expect, test } from 'vitest';
import { cutErrors, emptyMitres } from '../../../src/screens/square/mitre-form.ts';

test('one saw setting stands for all eight cuts', () => {
  const { errors } = cutErrors({ ...emptyMitres, texts: { all: '44.9' } });
  expect(errors).toHaveLength(8);
  // 44.9 - 45 in binary: the last digits only.
  for (const error of errors ?? []) expect(error).toBeCloseTo(-0.1, 9);
});

test('points that aren’t measured are taken as true; with none at all there is no answer', () => {
  const each = { ...emptyMitres, angles: 'each' } as const;
  expect(cutErrors({ ...each, texts: { 'A left': '45.5' } }).errors).toEqual([0, 0.5, 0, 0, 0, 0, 0, 0]);
  expect(cutErrors({ ...each, texts: { all: '44' } }).errors).toBeUndefined();
});

test('an angle that can’t be read is a problem at its cut', () => {
  const { errors, problems } = cutErrors({ ...emptyMitres, angles: 'each', texts: { 'C back': 'x' } });
  expect(errors).toBeUndefined();
  expect([...problems.keys()]).toEqual(['C back']);
});
