import { afterEach, expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { dimensionalChange } from '../../../src/core/movement/dimensional-change.ts';
import { checkedWood } from '../../../src/screens/wood/checked-wood.ts';
import { ownWoods } from '../../../src/ui/own-woods.ts';
import { woodById } from '../../../src/ui/wood-by-id.ts';
import { outside } from '../../setup/outside.ts';

afterEach(() => {
  ownWoods.value = [];
});

const plum = { name: 'plum', tangential: 7.1, radial: 3.7, gravity: 0.7, openPores: true };

test('a name is kept without its spare spaces, and what is not said of a wood is left out', () => {
  expect(checkedWood({ ...plum, name: '  plum ' })).toEqual(plum);
  expect(checkedWood({ name: 'quince', volumetric: 12, openPores: false })).toEqual({ name: 'quince', volumetric: 12 });
});

test.each([
  ['name', { name: ' ', tangential: 7 }],
  ['name', { name: 'Black Cherry', tangential: 7 }],
  ['tangential', { name: 'plum' }],
  ['tangential', { name: 'plum', tangential: -3 }],
  ['radial', { name: 'plum', tangential: 4, radial: 7 }],
  ['volumetric', { name: 'plum', volumetric: 41 }],
  ['gravity', { name: 'plum', tangential: 7, gravity: 14 }],
])('%s is refused in %o', (field, typed) => {
  const read = checkedWood(typed);
  expect(isProblem(read) && read.field).toBe(field);
});

test('a wood of the maker’s own moves by its own figures, and says so', () => {
  expect(woodById('plum')).toBeUndefined();
  ownWoods.value = [plum, { name: 'cherry-black', tangential: 30 }];
  const figures = woodById('plum');
  if (!figures) throw new Error('plum is there');
  expect(figures).toMatchObject({ pores: 'open', specificGravity: { value: 0.7, source: 'label' } });
  const moved = dimensionalChange({ figures, cut: 'flat', width: 400, from: 8, to: 11 });
  if (isProblem(moved)) throw new Error(moved.message.text);
  // 400 x 3 / (3000 / 7.1 - 30 + 8). Doubles leave only rounding.
  outside({
    what: "a wood of the maker's own, shrinkage 7.1 %, flat, 400 mm, 8 to 11 %: change, mm",
    source: 'wood-handbook',
    at: 'Eq. 13-3',
    expected: 1200 / (3000 / 7.1 - 22),
    got: moved.value.change,
    tolerance: 5e-10,
  });
  expect(moved.working.sources).toContain('label');
  // A row of the table can't be overruled by a record that took its id.
  expect(woodById('cherry-black')?.shrinkage?.source).toBe('wood-handbook');
});
