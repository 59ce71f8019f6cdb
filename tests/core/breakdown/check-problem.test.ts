import { describe, expect, it } from 'vitest';
import { checkProblem } from '../../../src/core/breakdown/check-problem.ts';
import type { BreakdownProblem } from '../../../src/core/breakdown/problem-types.ts';
import { smallProblem } from './small-problem.ts';

type Change = (asked: BreakdownProblem) => BreakdownProblem;
const shop =
  (change: object): Change =>
  (asked) => ({ ...asked, shop: { ...asked.shop, ...change } });
const board =
  (change: object): Change =>
  (asked) => ({
    ...asked,
    boards: asked.boards.map((each, at) => (at === 0 ? { ...each, ...change } : each)),
  });
const part =
  (change: object): Change =>
  (asked) => ({
    ...asked,
    parts: asked.parts.map((each, at) => (at === 1 ? { ...each, ...change } : each)),
  });
const wishes =
  (change: object): Change =>
  (asked) => ({ ...asked, wishes: change });
const clear = { start: 0, length: 500, offset: 0, width: 100 };
const cut = { board: 'B1', start: 0, length: 500, strips: [{ width: 80, part: 'rail', unit: 1 }] };

describe('checkProblem', () => {
  it.each<[string, Change, string, RegExp]>([
    ['no jointer', shop({ jointerWidth: 0 }), 'shop.jointerWidth', /The jointer width must be more than/],
    ['strips like shavings', shop({ minStrip: 0.5 }), 'shop.minStrip', /at least/],
    ['a kerf of 100 m', shop({ ripKerf: 1e5 }), 'shop.ripKerf', /The rip kerf can’t be more than/],
    ['a part of 100 m', part({ width: 1e5 }), 'parts.1.width', /rail can’t be more than/],
    ['NaN', shop({ ripKerf: Number.NaN }), 'shop.ripKerf', /The rip kerf is missing/],
    ['least strip above most', shop({ minStrip: 120, maxStrip: 110 }), 'shop.minStrip', /wider than the widest/],
    ['least strip above jointer', shop({ jointerWidth: 40 }), 'shop.minStrip', /can be flattened/],
    ['least strip all edge', shop({ minStrip: 3, edgeAllowance: 3.2 }), 'shop.minStrip', /nothing left/],
    ['no boards', (asked) => ({ ...asked, boards: [] }), 'boards', /no boards/],
    ['no parts', (asked) => ({ ...asked, parts: [] }), 'parts', /no parts/],
    ['infinite board', board({ length: Number.POSITIVE_INFINITY }), 'boards.0.length', /board B1/],
    ['negative cup', board({ cup: -1 }), 'boards.0.cup', /board B1/],
    ['two boards alike', board({ id: 'B2' }), 'boards.1.id', /board B2/],
    ['clear beyond the board', board({ clear: [{ ...clear, width: 900 }] }), 'boards.0.clear', /beyond the board/],
    ['clear without width', board({ clear: [{ ...clear, width: 0 }] }), 'boards.0.clear', /no length or width/],
    ['clear overlapping', board({ clear: [clear, { ...clear, start: 400 }] }), 'boards.0.clear', /overlap/],
    ['part without length', part({ length: 0 }), 'parts.1.length', /rail/],
    ['half a part', part({ quantity: 1.5 }), 'parts.1.quantity', /rail/],
    ['solid wider than the jointer', part({ width: 260 }), 'parts.1.width', /rail.*flattens/],
    ['unknown species', part({ species: 'Z' }), 'parts.1.species', /no board of Z for rail/],
    ['longer than any board', part({ length: 2500 }), 'parts.1.length', /rail.*longest board/],
    ['two parts alike', part({ id: 'lid' }), 'parts.1.id', /part lid/],
    ['too many', part({ quantity: 5000 }), 'parts', /2000 is the most/],
    ['cut on no board', (asked) => ({ ...asked, cut: [{ ...cut, board: 'X' }] }), 'cut.0.board', /board X/],
    [
      'cut beyond the board',
      (asked) => ({ ...asked, cut: [{ ...cut, start: 2400 }] }),
      'cut.0.length',
      /outside board B1/,
    ],
    ['cut twice', (asked) => ({ ...asked, cut: [cut, { ...cut, start: 400 }] }), 'cut.1.start', /overlap on board B1/],
    [
      'cut for no part',
      (asked) => ({ ...asked, cut: [{ ...cut, strips: [{ width: 80, part: 'X', unit: 1 }] }] }),
      'cut.0.strips.0.part',
      /part X/,
    ],
    [
      'cut for no unit',
      (asked) => ({ ...asked, cut: [{ ...cut, strips: [{ width: 80, part: 'rail', unit: 9 }] }] }),
      'cut.0.strips.0.unit',
      /no unit 9/,
    ],
    [
      'cut without width',
      (asked) => ({ ...asked, cut: [{ ...cut, strips: [{ width: 0, part: 'rail', unit: 1 }] }] }),
      'cut.0.strips.0.width',
      /width of a strip must be more than/,
    ],
    ['keep out what is not there', wishes({ keepOut: ['X'] }), 'wishes.keepOut.0', /board X/],
    ['keep everything out', wishes({ keepOut: ['B1', 'B2', 'B3'] }), 'wishes.keepOut', /Every board/],
    [
      'fix and keep out',
      wishes({ keepOut: ['B1'], fix: [{ part: 'lid', board: 'B1' }] }),
      'wishes.fix.0.board',
      /kept out/,
    ],
    ['fix to no board', wishes({ fix: [{ part: 'lid', board: 'X' }] }), 'wishes.fix.0.board', /board X/],
    ['fix no part', wishes({ fix: [{ part: 'X', board: 'B1' }] }), 'wishes.fix.0.part', /part X/],
    [
      'fix a short board',
      (asked) => wishes({ fix: [{ part: 'lid', board: 'B1' }] })(board({ length: 900 })(asked)),
      'wishes.fix.0.board',
      /too short/,
    ],
    [
      'fix another species',
      (asked) => wishes({ fix: [{ part: 'lid', board: 'B1' }] })(board({ species: 'Z' })(asked)),
      'wishes.fix.0.board',
      /is Z/,
    ],
    [
      'keep a solid together',
      wishes({ together: [{ part: 'rail', boards: 1 }] }),
      'wishes.together.0.part',
      /panel rail/,
    ],
    ['half a board', wishes({ together: [{ part: 'lid', boards: 0.5 }] }), 'wishes.together.0.boards', /whole number/],
    [
      'together twice',
      wishes({
        together: [
          { part: 'lid', boards: 1 },
          { part: 'lid', boards: 2 },
        ],
      }),
      'wishes.together.1.part',
      /lid is kept together twice/,
    ],
  ])('%s', (_, change, field, message) => {
    expect(checkProblem(change(smallProblem))).toMatchObject({
      kind: 'problem',
      field,
      message: { text: expect.stringMatching(message) },
    });
  });

  it('lets zero kerf, zero allowances and a sled for wide solids pass', () => {
    const bare = shop({ ripKerf: 0, crosscutKerf: 0, edgeAllowance: 0, lengthAllowance: 0, faceAllowance: 0 })(
      smallProblem,
    );
    expect(checkProblem(bare)).toBe(bare);
    const sled = part({ width: 260 })(shop({ flattenBy: 'planer-sled' })(smallProblem));
    expect(checkProblem(sled)).toBe(sled);
  });
});
