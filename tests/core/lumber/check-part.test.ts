import fc from 'fast-check';
import { expect, test } from 'vitest';
import { badPartSize, checkPart, partLimits } from '../../../src/core/lumber/check-part.ts';

const top = { name: 'top', length: 1000, width: 450, thickness: 19, quantity: 1 };
const fields = (part: Partial<typeof top>) => checkPart({ ...top, ...part }).map(({ field }) => field);

test('a sensible part has no problem', () => {
  expect(checkPart(top)).toEqual([]);
});

test.each([
  ['no name', { name: '  ' }, ['name']],
  ['90 ft long', { length: 90 * 304.8 }, ['length']],
  ['no width', { width: 0 }, ['width']],
  ['negative thickness', { thickness: -19 }, ['thickness']],
  ['not a number', { length: Number.NaN }, ['length']],
  ['endless', { width: Number.POSITIVE_INFINITY }, ['width']],
  ['half a piece', { quantity: 1.5 }, ['quantity']],
  ['none', { quantity: 0 }, ['quantity']],
  ['several at once', { name: '', thickness: 0 }, ['name', 'thickness']],
])('%s', (_, part, expected) => {
  expect(fields(part)).toEqual(expected);
});

test('any number inside the limits passes and any outside is named at its field', () => {
  fc.assert(
    fc.property(
      fc.constantFrom('length', 'width', 'thickness' as const),
      fc.double({ noNaN: true, min: -1e6, max: 1e6 }),
      (size, value) => {
        const { least, most } = partLimits[size];
        const bad = badPartSize(size, value);
        expect(bad?.field).toBe(value >= least && value <= most ? undefined : size);
      },
    ),
  );
});
