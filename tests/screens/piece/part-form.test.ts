import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { nextForm, readPartForm } from '../../../src/screens/piece/part-form.ts';
import { units } from '../../../src/ui/units.ts';

const inMillimetres = () => {
  units.value = { unit: 'mm', nearest: 16 };
};
beforeEach(() => {
  units.value = { unit: 'in', nearest: 16 };
});
afterEach(inMillimetres);

const typed = {
  ...nextForm(undefined, 'cherry-black'),
  name: ' top ',
  quantity: '2',
  length: '3\' 2 1/2"',
  width: '17,5',
  thickness: '19 mm',
};
const fields = (change: Partial<typeof typed>) => [...readPartForm({ ...typed, ...change }).problems.keys()];

describe('reading a part', () => {
  test('lengths in any writing become millimetres, a comma is a point', () => {
    expect(readPartForm(typed).value).toEqual({
      name: 'top',
      species: 'cherry-black',
      panel: true,
      cut: 'flat',
      quantity: 2,
      // 38.5 and 17.5 inches of 25.4 mm (NIST SP 811); rounded once, so exact to floating point.
      length: 977.9,
      width: 444.5,
      thickness: 19,
    });
  });

  test.each([
    ['empty', { name: '', length: '', thickness: ' ' }, ['name', 'length', 'thickness']],
    ['zero', { width: '0' }, ['width']],
    ['negative', { width: '-5', quantity: '-1' }, ['quantity', 'width']],
    ['absurd', { length: '90 ft' }, ['length']],
    ['words', { thickness: 'thick', quantity: 'two' }, ['quantity', 'thickness']],
    ['two units at once', { length: '3 in 20 mm' }, ['length']],
    ['no wood chosen', { species: '' }, ['species']],
    ['half a piece', { quantity: '1.5' }, ['quantity']],
    ['not a number', { length: 'NaN', width: 'Infinity' }, ['length', 'width']],
  ])('%s is named at its field', (_, change, expected) => {
    const { value } = readPartForm({ ...typed, ...change });
    expect(value).toBeUndefined();
    expect(fields(change)).toEqual(expected);
  });

  test('a bare number means the maker’s unit', () => {
    expect(fields({ length: '600' })).toEqual(['length']);
    inMillimetres();
    expect(fields({ length: '600' })).toEqual([]);
  });
});

test('the next form carries kind, wood, cut and thickness over', () => {
  const last = readPartForm({ ...typed, kind: 'solid', cut: 'rift' }).value;
  if (!last) throw new Error('it reads');
  const next = nextForm(last, 'walnut-black');
  expect(next).toMatchObject({
    kind: 'solid',
    species: 'cherry-black',
    cut: 'rift',
    thickness: '3/4',
    name: '',
    length: '',
    quantity: '1',
  });
  // 19 mm stands as 3/4 in, 19.05 mm: carried over it is still what the last part is, and typed anew what it says.
  const second = { ...typed, thickness: next.thickness };
  expect(readPartForm(second, last).value).toMatchObject({ thickness: 19 });
  expect(readPartForm(second).value).toMatchObject({ thickness: 19.05 });
  expect(readPartForm({ ...second, thickness: '3/8' }, last).value).toMatchObject({ thickness: 9.525 });
});
