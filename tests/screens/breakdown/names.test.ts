import { describe, expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { sayPhrase } from '../../../src/core/answer/say-phrase.ts';
import { checkProblem } from '../../../src/core/breakdown/check-problem.ts';
import { shortages } from '../../../src/core/breakdown/shortages.ts';
import { inNames, namesOf } from '../../../src/screens/breakdown/names.ts';
import { problemFromRecords } from '../../../src/screens/breakdown/problem-from-records.ts';
import { whereToFix } from '../../../src/screens/breakdown/where-to-fix.ts';
import type { Board } from '../../../src/store/records/board.ts';
import type { Part } from '../../../src/store/records/piece.ts';
import { board, part, piece, shop, solve } from './samples.ts';

const metric = { unit: 'mm', nearest: 16 } as const;

function trouble(boards: readonly Board[], parts: readonly Part[], wishes = {}) {
  const made = piece(parts);
  const asked = problemFromRecords(shop, boards, made, wishes);
  const found = checkProblem(inNames(asked, namesOf(made, boards)));
  if (!isProblem(found)) throw new Error('nothing is wrong');
  return { said: sayPhrase(found.message, metric), way: whereToFix(found.field, asked, made.id) };
}

describe('what the planner says, in the maker’s names', () => {
  test('no boards leads to the stock, no parts to the piece', () => {
    expect(trouble([], [part('lid')]).way?.href).toBe('#/stock');
    expect(trouble([board('a')], []).way?.href).toBe('#/piece/chest');
  });

  test('a part longer than any board: the part, what it needs, and the longest there is', () => {
    const { said, way } = trouble([board('a')], [part('p1', { name: 'Bench top', length: 2500 })]);
    expect(said).toContain('Bench top needs a blank 2550 mm long');
    expect(said).toContain('the longest board of black cherry');
    expect(said).toContain('2400 mm');
    expect(way?.label).toBe('Change the parts');
  });

  test('a solid wider than the shop flattens', () => {
    const { said } = trouble([board('a')], [part('p1', { name: 'Apron', width: 260, panel: false })]);
    expect(said).toContain('Apron is 263.2 mm wide');
    expect(said).toContain('203 mm at most');
  });

  test('wishes against each other name board and part, and are put right here', () => {
    const wishes = { keepOut: ['b1'], fix: [{ part: 'p1', board: 'b1' }] };
    const boards = [board('b1', { chalk: '7' }), board('b2')];
    const { said, way } = trouble(boards, [part('p1', { name: 'Lid' })], wishes);
    expect(said).toContain('Board 7 is fixed to Lid and kept out');
    expect(way).toBeUndefined();
  });

  test('two parts of one name are told apart', () => {
    const made = piece([part('p1', { name: 'Side' }), part('p2', { name: 'Side' })]);
    const names = namesOf(made, []);
    expect([names.of('p1'), names.of('p2')]).toEqual(['Side', 'Side (2)']);
    const asked = problemFromRecords(shop, [board('a')], made);
    expect(isProblem(checkProblem(inNames(asked, names)))).toBe(false);
  });

  test('a part with one piece has no number, with several it has', () => {
    const names = namesOf(piece([part('a'), part('b', { quantity: 2 })]), []);
    expect([names.piece('a', 1), names.piece('b', 2)]).toEqual(['a', 'b 2']);
  });

  test('what is short is said by name, with the wood by its name', () => {
    const made = piece([part('p1', { name: 'Lid', width: 700 })]);
    const names = namesOf(made, [board('a')]);
    const asked = problemFromRecords(shop, [board('a')], made);
    const [short] = shortages(inNames(asked, names), inNames(solve(asked), names));
    expect(short?.part).toBe('Lid');
    expect(short?.buy?.species).toMatch(/^black cherry/);
    expect(short && sayPhrase(short.reason, metric)).toContain('Lid');
  });
});
