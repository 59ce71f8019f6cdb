import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { mostJump, sandingGrits } from '../../../src/core/finishing/sanding-grits.ts';
import { grits } from '../../../src/tables/abrasives.ts';

const owned = grits.map(({ grit }) => grit);

describe('sandingGrits', () => {
  it('goes 80, 120, 180, 220 as the trade does', () => {
    expect(sandingGrits(80, 220, owned)).toEqual([80, 120, 180, 220]);
    expect(sandingGrits(220, 220, owned)).toEqual([220]);
  });
  it('never jumps too far, always gets finer, ends where asked', () => {
    const grit = fc.constantFrom(...owned);
    fc.assert(
      fc.property(grit, grit, fc.subarray(owned), (from, to, some) => {
        const order = sandingGrits(from, to, some);
        if (isProblem(order)) return from > to || order.field === 'owned';
        return (
          order[0] === from &&
          order.at(-1) === to &&
          order.every((one, index) => {
            const before = order[index - 1];
            return before === undefined || (one > before && one <= before * mostJump);
          })
        );
      }),
    );
  });
  it('says where the shelf has a gap', () => {
    expect(sandingGrits(80, 220, [])).toMatchObject({ kind: 'problem', field: 'owned' });
  });
  it.each([
    [220, 80, 'from'],
    [0, 80, 'from'],
    [80, 100.5, 'to'],
  ])('refuses %d to %d', (from, to, field) => {
    expect(sandingGrits(from, to, owned)).toMatchObject({ kind: 'problem', field });
  });
});
