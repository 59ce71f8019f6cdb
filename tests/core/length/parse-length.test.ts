import fc from 'fast-check';
import { unit as mathUnit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { parseLength } from '../../../src/core/length/parse-length.ts';
import { outsideCases } from '../../setup/outside.ts';

describe('parseLength', () => {
  it.each([
    ['5 3/4', 'in', 146.05],
    ['5-3/4"', 'mm', 146.05],
    ['5 - 3/4 in.', 'mm', 146.05],
    ['5¾', 'in', 146.05],
    ['5⅜″', 'mm', 136.525],
    ['5 3⁄4', 'in', 146.05],
    ['½', 'in', 12.7],
    ['3/4', 'in', 19.05],
    ['5,75', 'in', 146.05],
    ['0,125', 'in', 3.175],
    ['.5', 'in', 12.7],
    ['3\' 2 1/2"', 'mm', 977.9],
    ["3'2½''", 'mm', 977.9],
    ['3′-2 1/2″', 'mm', 977.9],
    ["3' 2 1/2", 'mm', 977.9],
    ['3 ft 2 1/2 in', 'mm', 977.9],
    ['3 FEET', 'mm', 914.4],
    ['8.5 ft', 'mm', 2590.8],
    ['146', 'mm', 146],
    ['146', 'in', 3708.4],
    ['146 mm', 'in', 146],
    ['14.6 cm', 'in', 146],
    ['1.2 m', 'in', 1200],
    ['1 m 20 cm 5 mm', 'in', 1205],
    ['5 3/4', 'mm', 5.75],
    ['  96\u00a0in ', 'mm', 2438.4],
    ['0', 'mm', 0],
  ] as const)('reads %s (bare %s) as %d mm', (text, unit, mm) => {
    // Exact: the sum is one division of whole numbers, so the nearest binary number is the right answer.
    expect(parseLength(text, unit)).toBe(mm);
  });

  it.each([
    ['', 'Type a length'],
    ['  ', 'Type a length'],
    ['cherry', 'not a length'],
    ['5 constructor', 'not a length'],
    ['1e9', 'not a length'],
    ['-3', 'negative'],
    ['−3 1/2 in', 'negative'],
    ['3 in 20 mm', 'belong'],
    ['2 in 3 ft', 'larger unit first'],
    ['3 in 3 in', 'larger unit first'],
    ['5 3', 'two numbers'],
    ['1 m 20', 'two numbers'],
    ['5.5 3/4', 'two numbers'],
    ['3\' 14"', 'less than 12 in'],
    ['3.5 ft 2 in', 'whole'],
    ['5/0', '0 below'],
    ['5 5/4', 'not less than 1'],
    ['55/8', 'not less than 1'],
    ['1,234.5', 'two ways'],
    ['1,234', 'two ways'],
    ['1.2.3', 'two ways'],
    ['.', 'without a number'],
    ['5 3/4 -', 'not a length'],
    ['9'.repeat(400), 'too many digits'],
    [`1 ${'9'.repeat(400)}/${'9'.repeat(401)}`, 'too many digits'],
  ])('refuses %s, saying why', (text, words) => {
    const outcome = parseLength(text, 'in');
    expect(isProblem(outcome) && outcome.message.text).toContain(words);
    expect(outcome).toMatchObject({ kind: 'problem', field: '' });
  });

  it('agrees with mathjs in every unit', () => {
    const names = { mm: 'mm', cm: 'cm', m: 'm', in: 'inch', ft: 'foot' };
    const hundredths = fc.integer({ min: 0, max: 1_200_000 });
    // 1e-12 relative: a few roundings of binary numbers inside mathjs; ours is one rounding.
    const same = outsideCases({
      what: 'lengths typed in mm, cm, m, in and ft: read over expected',
      source: 'mathjs',
      at: 'unit',
      tolerance: 1e-12,
      cases: 'random lengths to 12 000 of each unit',
    });
    fc.assert(
      fc.property(hundredths, fc.constantFrom('mm', 'cm', 'm', 'in', 'ft'), (number, name) => {
        const length = number / 100;
        const expected = mathUnit(length, names[name]).toNumber('mm');
        const found = parseLength(`${length} ${name}`, 'mm') as number;
        if (expected === 0) expect(found).toBe(0);
        else same(found / expected, 1);
      }),
    );
  });

  it('answers any text with a finite length of 0 or more, or a problem', () => {
    const pieces = fc.constantFrom(
      '5',
      '12',
      '0',
      '/',
      '3/4',
      '¾',
      ' ',
      '-',
      '.',
      ',',
      'in',
      'mm',
      "'",
      '"',
      'ft',
      'm',
      'x',
    );
    const soup = fc.oneof(
      fc.string(),
      fc.array(pieces, { maxLength: 8 }).map((parts) => parts.join('')),
    );
    fc.assert(
      fc.property(soup, fc.constantFrom('in', 'mm'), (text, unit) => {
        const outcome = parseLength(text, unit);
        expect(isProblem(outcome) || (Number.isFinite(outcome) && outcome >= 0)).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });
});
