import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { formatLength } from '../../../src/core/length/format-length.ts';
import { parseLength } from '../../../src/core/length/parse-length.ts';
import { type BoardForm, formAfter, formOf, readBoardForm } from '../../../src/screens/stock/board-form.ts';
import type { Board } from '../../../src/store/records/board.ts';
import { outside } from '../../setup/outside.ts';

const inches = { unit: 'in', nearest: 64 } as const;
const free: (mark: string) => boolean = () => false;
const good: BoardForm = { ...formAfter(undefined, 'cherry-black'), width: '6 1/4', length: '96' };

test('a board reads in mm; an empty length is the last one’s; the proposed mark stands until another is typed', () => {
  const { board, alike } = readBoardForm(good, 'C1', free, 'in');
  outside({
    what: '6 1/4 in by 96 in typed for a board: mm',
    source: 'nist-sp811',
    at: 'appendix B: 1 in is 25.4 mm',
    expected: [158.75, 2438.4],
    got: [board?.width, board?.length],
  });
  expect(board).toMatchObject({ chalk: 'C1', species: 'cherry-black', thickness: { quarters: 4 } });
  expect(alike).toBe(1);
  const next = { ...formAfter(good, ''), width: '7' };
  expect(readBoardForm(next, 'C2', free, 'in').board).toMatchObject({ length: 2438.4, species: 'cherry-black' });
  expect(formAfter(next, '').lastLength).toBe('96');
});

test('each slip stands at its own field', () => {
  const fieldsOf = (form: BoardForm, isTaken = free) => [...readBoardForm(form, 'C1', isTaken, 'in').problems.keys()];
  expect(fieldsOf({ ...formAfter(undefined, ''), thickness: 'measured', tapers: true, alike: '2.5' }).sort()).toEqual([
    'alike',
    'farWidth',
    'length',
    'species',
    'thickness',
    'width',
  ]);
  expect(fieldsOf({ ...good, chalk: ' c7 ' }, (mark) => mark === 'c7')).toEqual(['chalk']);
  expect(fieldsOf({ ...good, chalk: '  ' })).toEqual(['chalk']);
  expect(fieldsOf({ ...good, width: '0' })).toEqual(['width']);
  expect(fieldsOf({ ...good, length: '90 ft' })).toEqual(['length']);
  expect(fieldsOf({ ...good, thickness: 'measured', measured: '8' })).toEqual(['thickness']);
  expect(fieldsOf({ ...good, tapers: true, farWidth: '1 in 3 mm' })).toEqual(['farWidth']);
});

test('a logged board put into the form reads back as it was, whatever its sixty-fourths', () => {
  const size = (least: number, most: number) =>
    fc.integer({ min: least * 64, max: most * 64 }).map((n) => (n * 25.4) / 64);
  fc.assert(
    fc.property(
      size(1, 50),
      fc.option(size(1, 50), { nil: undefined }),
      size(12, 400),
      fc.oneof(
        fc.constantFrom(2.5, 4, 5, 8, 16).map((quarters) => ({ quarters })),
        size(1, 4).map((mm) => ({ mm })),
      ),
      (width, farWidth, length, thickness) => {
        const board = {
          id: 'x',
          chalk: 'A1',
          species: 'oak-white',
          thickness,
          width,
          ...(farWidth !== undefined && { farWidth }),
          length,
        } as Board;
        const form = formOf(board, (mm) => formatLength(mm, inches));
        const again = readBoardForm(form, '', free, 'in').board;
        // A tenth of a micrometre is what binary numbers may lose; the text holds each 1/64 in exactly.
        expect(again?.width).toBeCloseTo(width, 4);
        expect(again?.length).toBeCloseTo(length, 4);
        expect(again?.farWidth === undefined).toBe(farWidth === undefined);
        if (farWidth !== undefined) expect(again?.farWidth).toBeCloseTo(farWidth, 4);
        const mm = 'mm' in thickness ? thickness.mm : thickness.quarters * 6.35;
        const got = again?.thickness ?? { mm: 0 };
        expect('mm' in got ? got.mm : got.quarters * 6.35).toBeCloseTo(mm, 4);
      },
    ),
  );
});

test('whatever is typed, no board comes out with a number that is none', () => {
  fc.assert(
    fc.property(fc.string(), fc.string(), fc.string(), (width, length, alike) => {
      const { board, problems } = readBoardForm({ ...good, width, length, alike }, 'C1', free, 'mm');
      expect(board === undefined).toBe(problems.size > 0);
      if (board) expect(Number.isFinite(board.width) && Number.isFinite(board.length)).toBe(true);
      if (isProblem(parseLength(width, 'mm'))) expect(problems.has('width')).toBe(true);
    }),
  );
});
