import { expect, test } from 'vitest';
import { recordDifferences } from '../../../src/screens/data/record-differences.ts';
import { recordName } from '../../../src/screens/data/record-name.ts';
import type { Board } from '../../../src/store/records/board.ts';
import type { Piece } from '../../../src/store/records/piece.ts';
import { oneOfEach } from '../../store/samples.ts';

const board: Board = oneOfEach.board;
const piece: Piece = oneOfEach.piece;

test('two sides that say the same don’t differ, whatever their stamps', () => {
  expect(recordDifferences(board, { ...board, revision: 9, updated: 1 })).toEqual([]);
});

test('a changed, a new and a lost property are told with both sides', () => {
  const { note: _, cost: __, ...plain } = board;
  const mine: Board = { ...plain, note: 'wet' };
  const theirs: Board = { ...plain, width: 99, cost: 12 };
  const found = recordDifferences(mine, theirs);
  expect(found).toHaveLength(3);
  expect(found).toContainEqual({ path: ['width'], mine: board.width, theirs: 99 });
  expect(found).toContainEqual({ path: ['cost'], mine: undefined, theirs: 12 });
  expect(found).toContainEqual({ path: ['note'], mine: 'wet', theirs: undefined });
});

test('a part is found by its id, and goes by its name', () => {
  const [first] = piece.parts;
  if (!first) throw new Error('The sample has parts.');
  const theirs = {
    ...piece,
    parts: [
      { ...first, id: 'put before' },
      { ...first, width: first.width + 5 },
    ],
  };
  expect(recordDifferences(piece, theirs)).toContainEqual({
    path: ['parts', first.name, 'width'],
    mine: first.width,
    theirs: first.width + 5,
  });
});

test('a property goes by its words', () => {
  const { shop, square } = oneOfEach;
  const changed = { ...shop, machines: { ...shop.machines, tableSaw: { owned: true, kerf: 9 } } };
  expect(recordDifferences(shop, changed).map(({ path }) => path)).toEqual([['machines', 'table saw', 'kerf']]);
  const read = { ...square, readings: { ...square.readings, diagonalAC: 9 } };
  expect(recordDifferences(square, read).map(({ path }) => path)).toEqual([['readings', 'diagonalAC']]);
});

test('names inherited from Object are not taken for properties', () => {
  const odd = { ...board, constructor: 'a' } as unknown as Board;
  expect(recordDifferences(board, odd)).toEqual([{ path: ['constructor'], mine: undefined, theirs: 'a' }]);
});

test('a record goes by what the maker calls it', () => {
  expect(recordName('board', board)).toBe(`Board ${board.chalk}`);
  expect(recordName('piece', piece)).toBe(`Piece ${piece.name}`);
  expect(recordName('constructor', undefined)).toBe('“constructor”');
});
