import { describe, expect, test } from 'vitest';
import { nextForm, readPartForm } from '../../../src/screens/piece/part-form.ts';

const typed = {
  ...nextForm(undefined, 'cherry-black'),
  name: ' top ',
  quantity: '2',
  length: '3\' 2 1/2"',
  width: '17,5',
  thickness: '19 mm',
};
const fields = (change: Partial<typeof typed>, unit: 'in' | 'mm' = 'in') => [
  ...readPartForm({ ...typed, ...change }, unit).problems.keys(),
];

describe('reading a part', () => {
  test('lengths in any writing become millimetres, a comma is a point', () => {
    expect(readPartForm(typed, 'in').value).toEqual({
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
    const { value } = readPartForm({ ...typed, ...change }, 'in');
    expect(value).toBeUndefined();
    expect(fields(change)).toEqual(expected);
  });

  test('a bare number means the maker’s unit', () => {
    expect(fields({ length: '600' })).toEqual(['length']);
    expect(fields({ length: '600' }, 'mm')).toEqual([]);
  });
});

test('the next form carries kind, wood, cut and thickness over', () => {
  const last = readPartForm({ ...typed, kind: 'solid', cut: 'rift' }, 'in').value;
  if (!last) throw new Error('it reads');
  expect(nextForm({ ...last, id: '1' }, 'walnut-black', '3/4')).toMatchObject({
    kind: 'solid',
    species: 'cherry-black',
    cut: 'rift',
    thickness: '3/4',
    name: '',
    length: '',
    quantity: '1',
  });
});
