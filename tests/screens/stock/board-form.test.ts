import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { parseLength } from '../../../src/core/length/parse-length.ts';
import { type BoardForm, formAfter, freeMark, readBoardForm } from '../../../src/screens/stock/board-form.ts';
import type { Board } from '../../../src/store/records/board.ts';
import { outside } from '../../setup/outside.ts';

const inches = { unit: 'in', nearest: 64 } as const;
const free: (mark: string) => boolean = () => false;
const good: BoardForm = {
  ...formAfter([], inches),
  chalk: 'C1',
  species: 'cherry-black',
  width: '6 1/4',
  length: '96',
};

test('a board reads in mm; an empty length is the last one’s', () => {
  const { value } = readBoardForm(good, free, inches);
  outside({
    what: '6 1/4 in by 96 in typed for a board: mm',
    source: 'nist-sp811',
    at: 'appendix B: 1 in is 25.4 mm',
    expected: [158.75, 2438.4],
    got: [value?.width, value?.length],
  });
  expect(value).toMatchObject({ chalk: 'C1', species: 'cherry-black', thickness: { quarters: 4 }, alike: 1 });
  expect(readBoardForm({ ...good, length: ' ', lastLength: '96' }, free, inches).value).toMatchObject({
    length: 2438.4,
  });
  expect(readBoardForm({ ...good, length: '60', lastLength: '96' }, free, inches).value).toMatchObject({
    length: 1524,
  });
});

test('each slip stands at its own field', () => {
  const fieldsOf = (form: BoardForm, isTaken = free) => [...readBoardForm(form, isTaken, inches).problems.keys()];
  expect(fieldsOf({ ...formAfter([], inches), quarters: 'measured', tapers: true, alike: '2.5' }).sort()).toEqual([
    'alike',
    'farWidth',
    'length',
    'species',
    'thickness',
    'width',
  ]);
  expect(fieldsOf({ ...good, chalk: ' c7 ' }, (mark) => mark === 'c7')).toEqual(['chalk']);
  expect(fieldsOf({ ...good, chalk: '  ' })).toEqual(['chalk']);
  expect(freeMark(' c8 ', (mark) => mark === 'c7')).toBe('c8');
  expect(fieldsOf({ ...good, width: '0' })).toEqual(['width']);
  expect(fieldsOf({ ...good, length: '90 ft' })).toEqual(['length']);
  expect(fieldsOf({ ...good, quarters: 'measured', thickness: '8' })).toEqual(['thickness']);
  expect(fieldsOf({ ...good, tapers: true, farWidth: '1 in 3 mm' })).toEqual(['farWidth']);
});

test('wood, thickness and length of the last board stand for the next as they were, however coarse the fractions', () => {
  const size = (least: number, most: number) =>
    fc.oneof(
      fc.integer({ min: least * 64, max: most * 64 }).map((n) => (n * 25.4) / 64),
      fc.integer({ min: least * 254, max: most * 254 }).map((tenths) => tenths / 10),
    );
  const units = fc.record({ unit: fc.constantFrom('in', 'mm'), nearest: fc.constantFrom(2, 4, 8, 16, 32, 64) });
  fc.assert(
    fc.property(
      size(12, 400),
      fc.oneof(
        fc.constantFrom(2.5, 4, 5, 8, 16).map((quarters) => ({ quarters })),
        size(1, 4).map((mm) => ({ mm })),
      ),
      units,
      (length, thickness, units) => {
        const last = { id: 'x', chalk: 'A1', species: 'oak-white', thickness, width: 200, length } as Board;
        const form = { ...formAfter([last], units), width: '7 in' };
        const next = readBoardForm(form, free, units, last).value;
        expect(next).toMatchObject({ chalk: 'A2', species: 'oak-white' });
        // Half a millionth of a millimetre is what a record is rounded by.
        expect(next?.length).toBeCloseTo(length, 5);
        const mm = 'mm' in thickness ? thickness.mm : thickness.quarters * 6.35;
        const got = next?.thickness ?? { mm: 0 };
        expect('mm' in got ? got.mm : got.quarters * 6.35).toBeCloseTo(mm, 5);
      },
    ),
  );
});

test('whatever is typed, no board comes out with a number that is none', () => {
  fc.assert(
    fc.property(fc.string(), fc.string(), fc.string(), (width, length, alike) => {
      const { value, problems } = readBoardForm({ ...good, width, length, alike }, free, { unit: 'mm', nearest: 16 });
      expect(value === undefined).toBe(problems.size > 0);
      if (value) expect(Number.isFinite(value.width) && Number.isFinite(value.length)).toBe(true);
      if (isProblem(parseLength(width, 'mm'))) expect(problems.has('width')).toBe(true);
    }),
  );
});
