import { expect, test } from 'vitest';
import { partsArea } from '../../../src/core/finishing/part-area.ts';
import { finishParts } from '../../../src/screens/finish/finish-parts.ts';
import { solved } from '../../core/gluing/helpers.ts';
import { bare, part, pieceOf } from './cabinet.ts';

const areaOf = (piece: Parameters<typeof finishParts>[0]) => solved(partsArea(finishParts(piece))).value.total;

test('what a part does not say is shown', () => {
  // By hand: 2 x 0.2 + 2 x 0.02 + 2 x 0.004 m2. Doubles leave only rounding.
  expect(areaOf(pieceOf([part('side')])).shown).toBeCloseTo(0.448, 12);
});

test('one face shown, one inside, and bare ends are told apart', () => {
  const side = part('side', { surfaces: { faces: ['shown', 'inside'], ends: bare }, quantity: 2 });
  expect(areaOf(pieceOf([side]))).toEqual({
    shown: expect.closeTo(2 * (0.2 + 0.04), 12),
    inside: expect.closeTo(2 * 0.2, 12),
    bare: expect.closeTo(2 * 0.008, 12),
  });
});

test('an end on a face hides both, on the inside where there is one', () => {
  const side = part('side', { surfaces: { faces: ['shown', 'inside'] } });
  const shelf = part('shelf');
  const joint = {
    id: 'dado',
    kind: 'dado',
    parts: ['shelf', 'side'],
    meets: [
      { surface: 'end', grain: 'across' },
      { surface: 'face', grain: 'across' },
    ],
    length: 200,
  } as const;
  const without = areaOf(pieceOf([side, shelf]));
  const joined = areaOf(pieceOf([side, shelf], { joints: [joint] }));
  // 200 x 20 mm of the end and as much of the inside face.
  expect(without.shown - joined.shown).toBeCloseTo(0.004, 12);
  expect(without.inside - joined.inside).toBeCloseTo(0.004, 12);
});

test('a joint never hides more than there is, and one without a length hides nothing', () => {
  const meets = [
    { surface: 'end', grain: 'across' },
    { surface: 'face', grain: 'across' },
  ] as const;
  const two = [part('shelf'), part('side')];
  const joint = { id: 'dado', kind: 'dado', parts: ['shelf', 'side'], meets };
  expect(areaOf(pieceOf(two, { joints: [joint] }))).toEqual(areaOf(pieceOf(two)));
  const long = areaOf(pieceOf(two, { joints: [{ ...joint, length: 9000 }] }));
  expect(long.shown).toBeGreaterThan(0);
});
