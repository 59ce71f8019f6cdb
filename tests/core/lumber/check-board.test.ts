import { describe, expect, it } from 'vitest';
import { narrowestWidth } from '../../../src/core/lumber/board-width.ts';
import { checkBoard } from '../../../src/core/lumber/check-board.ts';
import { board } from './boards.ts';

const good = board(4, 8, 8);

describe('checkBoard', () => {
  it('has nothing against a board', () => {
    expect(checkBoard(good)).toEqual([]);
    expect(checkBoard({ ...good, farWidth: 150, thickness: { mm: 27.4 } })).toEqual([]);
    expect(checkBoard({ ...good, thickness: { quarters: 2.5 } })).toEqual([]);
  });

  it.each([
    ['length', { length: 90 * 304.8 }],
    ['length', { length: 0 }],
    ['length', { length: -2400 }],
    ['length', { length: Number.NaN }],
    ['width', { width: 1501 }],
    ['width', { width: 0 }],
    ['width', { width: Number.POSITIVE_INFINITY }],
    ['farWidth', { farWidth: 0 }],
    ['farWidth', { farWidth: 2000 }],
    ['thickness', { thickness: { mm: 500 } }],
    ['thickness', { thickness: { mm: 0 } }],
    ['quarters', { thickness: { quarters: 0 } }],
    ['quarters', { thickness: { quarters: 100 } }],
    ['quarters', { thickness: { quarters: 4.3 } }],
  ])('names %s in %j', (field, change) => {
    expect(checkBoard({ ...good, ...change })).toMatchObject([{ kind: 'problem', field }]);
  });

  it('names everything that is wrong', () => {
    const bad = checkBoard({ thickness: { quarters: -1 }, width: -1, farWidth: -1, length: -1 });
    expect(bad.map(({ field }) => field)).toEqual(['quarters', 'width', 'farWidth', 'length']);
  });
});

describe('narrowestWidth', () => {
  it('is the narrow end, whichever it is', () => {
    expect(narrowestWidth({ ...good, width: 200, farWidth: 180 })).toBe(180);
    expect(narrowestWidth({ ...good, width: 180, farWidth: 200 })).toBe(180);
    expect(narrowestWidth({ ...good, width: 200 })).toBe(200);
  });
});
