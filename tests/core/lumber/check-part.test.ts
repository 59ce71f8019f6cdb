import fc from 'fast-check';
import { expect, test } from 'vitest';
import { badPartSize, type PartSize, partLimits, partName } from '../../../src/core/lumber/check-part.ts';

test('a sensible part has no problem', () => {
  const top = { length: 1000, width: 450, thickness: 19, quantity: 1 };
  for (const [size, value] of Object.entries(top)) expect(badPartSize(size as PartSize, value)).toBeUndefined();
  expect(partName(' top ')).toBe('top');
  expect(partName('  ')).toMatchObject({ field: 'name' });
});

test.each([
  ['90 ft long', 'length', 90 * 304.8],
  ['no width', 'width', 0],
  ['negative thickness', 'thickness', -19],
  ['not a number', 'length', Number.NaN],
  ['endless', 'width', Number.POSITIVE_INFINITY],
  ['half a piece', 'quantity', 1.5],
  ['none', 'quantity', 0],
] as const)('%s', (_, size, value) => {
  expect(badPartSize(size, value)?.field).toBe(size);
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
