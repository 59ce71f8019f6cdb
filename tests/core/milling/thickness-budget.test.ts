import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { thicknessBudget } from '../../../src/core/milling/thickness-budget.ts';
import { thicknessRemedies } from '../../../src/core/milling/thickness-remedies.ts';
import { blank, board, millingInput, part, scenarios } from './shops-and-stacks.ts';

const piece = {
  board: { thickness: 28, width: 250, length: 2400, cup: 2.5, bow: 6 },
  width: 250,
  length: 2400,
  need: 20,
  faceAllowance: 1,
  leastLength: 1000,
  leastStrip: 50,
};

describe('what gains thickness', () => {
  it('ripping in two saves three quarters of the cup, shortening the square of the length', () => {
    // by hand: 2.5 - 2.5 / 4 and 6 - 6 x (1000 / 2400)^2; nine decimals, rounding only
    const [rip, shorten, ...rest] = thicknessRemedies({ ...piece, need: 17 });
    expect(rip?.gain).toBeCloseTo(1.875, 9);
    expect(rip?.say.text).toBe('Rip in 2 before flattening: {0} more.');
    expect(shorten?.gain).toBeCloseTo(4.9583, 4);
    expect(rest).toEqual([]);
  });

  it('names the fewest strips that are enough', () => {
    // reaches 17.5 whole; two strips 19.375, three 19.722, four 19.844
    expect(thicknessRemedies({ ...piece, need: 19.6 })[0]?.say.text).toContain('Rip in 3');
  });

  it('when nothing is enough it says a thinner part or a thicker board', () => {
    const kinds = thicknessRemedies({ ...piece, need: 27 }).map(({ kind, enough }) => `${kind} ${enough}`);
    expect(kinds).toEqual([
      'rip false',
      'shorten false',
      'hidden face false',
      'thinner part true',
      'thicker board true',
    ]);
  });

  it('a thicker board with the same warp really reaches it', () => {
    fc.assert(
      fc.property(fc.double({ min: 15, max: 40, noNaN: true }), (need) => {
        const thicker = thicknessRemedies({ ...piece, need }).find(({ kind }) => kind === 'thicker board');
        const thickness = thicker?.say.quantities[0]?.value;
        if (thickness === undefined) return;
        const again = thicknessRemedies({ ...piece, need: need - 1e-9, board: { ...piece.board, thickness } });
        expect(again.some(({ kind }) => kind === 'thicker board')).toBe(false);
      }),
    );
  });
});

describe('the budget of a stack', () => {
  it('holds every piece that lies on the bed against what its part needs', () => {
    const [first, second] = budgetOf(scenarios["a twisted board that can't make it"]);
    // 27 - 1 x (84/180)^2 - 4 x (950/2400)^2 - 12 x 84/180 x 950/2400 - 2.4 by hand; four decimals
    expect(first?.reachable.value).toBeCloseTo(21.5388, 4);
    expect(first?.spare).toBeLessThan(0);
    expect(first?.remedies.map(({ kind }) => kind)).toContain('thicker board');
    // a solid rail is not ripped to save thickness
    expect(first?.remedies.map(({ kind }) => kind)).not.toContain('rip');
    expect(second?.spare).toBeGreaterThan(0);
  });

  it('offers ripping for a panel strip', () => {
    const [strip] = budgetOf(
      millingInput({
        boards: [board('B1', { width: 200, cup: 5 })],
        parts: [part('lid', 2300, 190, 23, { panel: true })],
        blanks: [blank('B1', 0, 2400, [198, 'lid'])],
      }),
    );
    expect(strip?.remedies[0]?.kind).toBe('rip');
  });

  it('refuses what the sequence refuses', () => {
    const input = scenarios['mixed thickness'];
    expect(thicknessBudget({ ...input, boards: [] })).toMatchObject({ field: 'boards' });
  });
});

function budgetOf(input: Parameters<typeof thicknessBudget>[0]) {
  const budgets = thicknessBudget(input);
  if (isProblem(budgets)) throw new Error(budgets.field);
  return budgets;
}
