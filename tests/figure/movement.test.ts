import { expect, it } from 'vitest';
import { figure } from '../../src/figure/movement.ts';
import { outside } from '../setup/outside.ts';

const usual = { species: 'cherry, black', cut: 'flat', width: 400, from: 8, to: 11 };
const change = (input: object): number => (figure(input) as { change: number }).change;

it('answers with the change and the equation that found it', () => {
  // 400 x 0.00248 x 3. Doubles leave only rounding.
  outside({
    what: 'figure: black cherry, flat, 400 mm, 8 to 11 %: change, mm',
    source: 'wood-handbook',
    at: 'Table 13-5',
    expected: 2.976,
    got: change(usual),
    tolerance: 5e-10,
  });
  expect(figure(usual)).toMatchObject({ equation: '13-2', estimated: false });
  expect(figure({ ...usual, from: 4 })).toMatchObject({ equation: '13-3' });
});

it("answers the handbook's example", () => {
  // Half of the printed decimal.
  outside({
    what: 'figure: white fir, flat, 232 mm, 8 to 11 %: change, mm',
    source: 'wood-handbook',
    at: 'example on p. 13-17',
    expected: 1.7,
    got: change({ species: 'fir, white', cut: 'flat', width: 232, from: 8, to: 11 }),
    tolerance: 0.05,
  });
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
