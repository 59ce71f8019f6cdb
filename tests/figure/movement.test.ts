import { expect, it } from 'vitest';
import { figure } from '../../src/figure/movement.ts';

const usual = { species: 'cherry, black', cut: 'flat', width: 400, from: 8, to: 11 };
const change = (input: object): number => (figure(input) as { change: number }).change;

it('answers with the change and the equation that found it', () => {
  // 400 x 0.00248 x 3, coefficient from the Wood handbook (FPL-GTR-190), Table 13-5.
  expect(change(usual)).toBeCloseTo(2.976, 9);
  expect(figure(usual)).toMatchObject({ equation: '13-2', estimated: false });
  expect(figure({ ...usual, from: 4 })).toMatchObject({ equation: '13-3' });
});

// Wood handbook (FPL-GTR-190), p. 13-17: 1.7 mm.
it("answers the handbook's example", () => {
  expect(change({ species: 'fir, white', cut: 'flat', width: 232, from: 8, to: 11 })).toBeCloseTo(1.7, 1);
});

it("takes a wood's own shrinkage, and marks a guess", () => {
  const { species: _, ...rest } = usual;
  expect(change({ ...rest, shrinkage: { radial: 3.7, tangential: 7.1 } })).toBeCloseTo(2.98, 1);
  expect(figure({ ...rest, shrinkage: { volumetric: 11.5 } })).toMatchObject({ estimated: true });
});

it.each([
  [{ ...usual, species: 'unobtainium' }, 'species'],
  [{ ...usual, species: 7 }, 'species'],
  [{ ...usual, species: undefined }, 'species'],
  [{ ...usual, cut: 'bent' }, 'cut'],
  [{ ...usual, cut: undefined }, 'cut'],
  [{ ...usual, width: -400 }, 'width'],
  [{ ...usual, width: '400' }, 'width'],
  [{ ...usual, width: undefined }, 'width'],
  [{ ...usual, from: 31 }, 'from'],
  [{ ...usual, to: 31 }, 'to'],
  [{ ...usual, to: null }, 'to'],
  [{ ...usual, shrinkage: { radial: 4 } }, 'species'],
  [{ ...usual, species: undefined, shrinkage: 4 }, 'shrinkage'],
  [{ ...usual, species: undefined, shrinkage: { radial: 4 } }, 'species'],
  [{ ...usual, species: undefined, shrinkage: { tangential: 'x' } }, 'shrinkage.tangential'],
])('names what is wrong with %o', (input, field) => {
  expect(figure(input)).toMatchObject({ kind: 'problem', field });
});
