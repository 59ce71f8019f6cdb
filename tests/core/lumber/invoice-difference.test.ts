import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { invoiceDifference } from '../../../src/core/lumber/invoice-difference.ts';
import { tally } from '../../../src/core/lumber/tally.ts';
import { outside } from '../../setup/outside.ts';
import { anyBoard, board } from './boards.ts';

const ten = Array.from({ length: 10 }, () => board(8, 6, 8));

describe('invoiceDifference', () => {
  it('gives board feet and money, and says when rounding explains it', () => {
    const invoice = { tallied: 103, invoiced: 110, unit: 'boardFeet', price: 9 } as const;
    expect(invoiceDifference(invoice, ten)).toMatchObject({
      volume: { value: 7 },
      money: { value: 63 },
      roundingBound: { value: 10 },
      roundingExplains: true,
    });
    expect(invoiceDifference({ ...invoice, invoiced: 113 }, ten)).toMatchObject({ roundingExplains: true });
    expect(invoiceDifference({ ...invoice, invoiced: 114 }, ten)).toMatchObject({ roundingExplains: false });
    expect(invoiceDifference({ ...invoice, invoiced: 92 }, ten)).toMatchObject({ roundingExplains: false });
  });

  it('takes cubic metres', () => {
    const found = invoiceDifference({ tallied: 0.25, invoiced: 0.28, unit: 'm3', price: 3000 }, ten);
    if (isProblem(found)) throw new Error(found.message.text);
    expect(found.money.value).toBeCloseTo(90, 9); // binary noise only
    // Seven digits.
    outside({
      what: 'what rounding may do to ten 8/4 boards, a board foot each: m3',
      source: 'nist-sp811',
      at: 'appendix B',
      expected: 10 * 2.359737e-3,
      got: found.roundingBound.value,
      tolerance: 5e-9,
    });
    expect(found.roundingExplains).toBe(false);
  });

  it('always puts down to rounding what rounding did: rule against unrounded faces of whole feet', () => {
    fc.assert(
      fc.property(fc.array(anyBoard, { minLength: 1, maxLength: 30 }), (boards) => {
        const wholeFeet = boards.map((each) => ({ ...each, length: Math.floor(each.length / 304.8 + 1e-9) * 304.8 }));
        const found = tally(wholeFeet);
        if (isProblem(found)) throw new Error(found.message.text);
        const unrounded = wholeFeet.reduce((sum, { width, length, thickness }) => {
          const inches = 'quarters' in thickness ? Math.max(4, thickness.quarters) / 4 : 1;
          return sum + ((width * length) / 304.8 ** 2) * inches;
        }, 0);
        const invoice = { tallied: found.boardFeet.value, invoiced: unrounded, unit: 'boardFeet', price: 9 } as const;
        expect(invoiceDifference(invoice, boards)).toMatchObject({ roundingExplains: true });
      }),
    );
  });

  it.each([
    ['invoiced', { invoiced: -1 }],
    ['invoiced', { invoiced: Number.NaN }],
    ['price', { price: -1 }],
    ['tallied', { tallied: Number.NaN }],
  ])('refuses a bad %s', (field, change) => {
    const invoice = { tallied: 1, invoiced: 1, unit: 'boardFeet', price: 1, ...change } as const;
    expect(invoiceDifference(invoice, ten)).toMatchObject({ kind: 'problem', field });
  });
});
