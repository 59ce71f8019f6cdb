import { expect, test } from 'vitest';
import { followReadings } from '../../../src/core/milling/follow-readings.ts';
import type { Measured } from '../../../src/core/milling/with-measured.ts';
import { plan, sequence } from '../../screens/mill/records.ts';

const { steps } = sequence(plan('one'));
const thickness = steps.find(({ stage }) => stage === 'thickness');
const reading = (value: number, given: Partial<Measured> = {}): Measured => ({
  step: thickness?.id ?? '',
  piece: thickness?.pieces[0]?.id ?? '',
  dimension: 'thickness',
  value,
  ...given,
});
const target = thickness?.target?.value ?? 0;

test('later targets follow each reading, and each says what it moved', () => {
  const under = reading(target - 1, { accepted: true });
  const followed = followReadings(steps, [reading(target + 1), under]);
  expect(followed.steps.find(({ id }) => id === thickness?.id)?.target?.value).toBeCloseTo(target - 1, 9);
  expect(followed.readings.map(({ notes }) => notes.length > 0)).toEqual([false, true]);
});

test('a reading that does not fit is passed over with its reason, and those after it still count', () => {
  const followed = followReadings(steps, [reading(target - 1), reading(target - 0.5, { accepted: true })]);
  expect(followed.readings[0]?.problem).toMatchObject({ kind: 'problem' });
  expect(followed.readings[1]?.problem).toBeUndefined();
  expect(followed.steps.find(({ id }) => id === thickness?.id)?.target?.value).toBeCloseTo(target - 0.5, 9);
});

test('without readings the steps are as they were made', () => {
  expect(followReadings(steps, [])).toEqual({ steps, readings: [], counted: [] });
});
