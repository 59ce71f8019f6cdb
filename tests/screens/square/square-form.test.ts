import { describe, expect, test } from 'vitest';
import {
  emptyForm,
  entriesOf,
  entryOfLine,
  readSquareForm,
  type SquareForm,
} from '../../../src/screens/square/square-form.ts';
import { outside } from '../../setup/outside.ts';

const typed = (texts: SquareForm['texts'], part: Partial<SquareForm> = {}): SquareForm => ({
  ...emptyForm,
  ...part,
  texts,
});

describe('what is measured', () => {
  test('readings are taken as soon as there is one, mixed units and all', () => {
    const { measured, problems } = readSquareForm(typed({ front: '3 ft', right: '45.7 cm', back: ' ' }), 'in');
    expect(problems.size).toBe(0);
    outside({
      what: '3 ft and 457 mm typed as readings: mm',
      source: 'nist-sp811',
      at: 'appendix B: 1 ft is 304.8 mm',
      expected: { readings: { front: 914.4, right: 457 } },
      got: measured,
    });
  });

  test('the longer diagonal gives the difference its sign', () => {
    const texts = { front: '1800', left: '800', difference: '2' };
    const stick = { way: 'stick', longer: 'diagonalBD' } as const;
    expect(readSquareForm(typed(texts, stick), 'mm').measured).toEqual({
      readings: { front: 1800, left: 800, difference: -2 },
      farEnd: 'parallel',
    });
    expect(readSquareForm(typed({ ...texts, left: '' }, stick), 'mm').measured).toBeUndefined();
  });

  test('a difference may be 0', () => {
    const texts = { front: '1800', left: '800', difference: '0' };
    expect(readSquareForm(typed(texts, { way: 'stick' }), 'mm').measured).toMatchObject({
      readings: { difference: 0 },
    });
  });

  test('what can’t be read is a problem at its entry, and nothing is answered', () => {
    const { measured, problems, values } = readSquareForm(typed({ front: '48', right: '24 x' }), 'in');
    expect([...problems.keys()]).toEqual(['right']);
    expect(values).toEqual({ front: 1219.2 });
    expect(measured).toBeUndefined();
  });

  test('who lays out from nothing has only a size', () => {
    const form = typed({ front: '48', left: '24' }, { situation: 'layout' });
    expect(entriesOf(form)).toEqual(['front', 'left']);
    expect(readSquareForm(form, 'in')).toMatchObject({ values: { front: 1219.2, left: 609.6 }, measured: undefined });
  });
});

test('every line of the drawing leads to the entry that it is typed in', () => {
  const lead = (form: Pick<SquareForm, 'way' | 'situation'>) =>
    (['front', 'right', 'back', 'left', 'diagonalAC', 'diagonalBD'] as const).map((line) => entryOfLine(line, form));
  expect(lead({ way: 'readings', situation: 'line' })).toEqual([
    ...['front', 'right', 'back', 'left', 'diagonalAC', 'diagonalBD'],
  ]);
  expect(lead({ way: 'diagonals', situation: 'line' })).toEqual([
    ...['front', 'left', 'front', 'left', 'diagonalAC', 'diagonalBD'],
  ]);
  expect(lead({ way: 'stick', situation: 'line' })).toEqual([
    ...['front', 'left', 'front', 'left', 'difference', 'difference'],
  ]);
  expect(lead({ way: 'stick', situation: 'layout' }).slice(4)).toEqual([undefined, undefined]);
});
