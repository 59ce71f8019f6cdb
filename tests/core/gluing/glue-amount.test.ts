import { evaluate } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { formatQuantity } from '../../../src/core/answer/format-quantity.ts';
import { range } from '../../../src/core/answer/range.ts';
import { sayPhrase } from '../../../src/core/answer/say-phrase.ts';
import { type GlueUse, glueAmount, glueLoss } from '../../../src/core/gluing/glue-amount.ts';
import { outside } from '../../setup/outside.ts';
import { solved } from './helpers.ts';

const use: GlueUse = {
  seams: [{ length: 1200, width: 20 }],
  gramsPerM2: range(150, 250),
  kgPerM3: 1100,
  source: 'common-practice',
};

describe('glueAmount', () => {
  it('agrees with a unit library', () => {
    const { areaM2, likelyGrams, likelyMillilitres } = solved(glueAmount(use)).value;
    const grams = evaluate('1200 mm * 20 mm * 200 g/m^2 to g').toNumber('g');
    const millilitres = evaluate(`(${grams} g / (1100 kg/m^3)) to ml`).toNumber('ml');
    // Doubles on both sides: nothing but rounding.
    expect(areaM2).toBeCloseTo(0.024, 12);
    outside({
      what: 'glue for a seam of 1200 x 20 mm at 200 g/m2 and 1100 kg/m3: grams, millilitres',
      source: 'mathjs',
      at: 'evaluate',
      expected: [grams, millilitres],
      got: [likelyGrams, likelyMillilitres],
      tolerance: 5e-10,
    });
  });

  it('says in any units how it came about', () => {
    const said = (unit: 'mm' | 'in') =>
      solved(glueAmount({ ...use, loss: 0.1 })).working.steps.map(({ by, gives }) => [
        sayPhrase(by, { unit, nearest: 16 }),
        formatQuantity(gives, { unit, nearest: 16 }),
      ]);
    expect(said('in')).toEqual([
      ['37.2 in², length times width of each seam, at 18.6 g/ft².', '4.8 g'],
      ['Tool and tray keep 10% of it.', '5.33 g'],
      ['Grams over 1.1 g/ml.', '4.85 ml'],
    ]);
    expect(said('mm')[0]).toEqual(['0.024 m², length times width of each seam, at 200 g/m².', '4.8 g']);
  });

  it('adds seams up and gives the range', () => {
    const seams = [
      { length: 1000, width: 20 },
      { length: 500, width: 40 },
    ];
    const { areaM2, grams } = solved(glueAmount({ ...use, seams })).value;
    expect(areaM2).toBeCloseTo(0.04, 12);
    expect(grams.least).toBeCloseTo(6, 9);
    expect(grams.most).toBeCloseTo(10, 9);
  });

  it('counts what the brush keeps as a share of what is poured', () => {
    expect(solved(glueAmount({ ...use, loss: glueLoss.brush })).value.likelyGrams).toBeCloseTo(4.8 / 0.9, 9);
  });

  it.each([
    ['no seams', { seams: [] }, 'seams'],
    ['no length', { seams: [{ length: Number.NaN, width: 20 }] }, 'seams.0.length'],
    [
      'no width',
      {
        seams: [
          { length: 100, width: 20 },
          { length: 100, width: 0 },
        ],
      },
      'seams.1.width',
    ],
    ['a negative length', { seams: [{ length: -5, width: 20 }] }, 'seams.0.length'],
    ['spread', { gramsPerM2: range(0) }, 'gramsPerM2'],
    ['spread reversed', { gramsPerM2: range(250, 150) }, 'gramsPerM2'],
    ['density', { kgPerM3: 1.1 }, 'kgPerM3'],
    ['loss', { loss: 1 }, 'loss'],
  ])('refuses %s', (_, wrong, field) => {
    expect(glueAmount({ ...use, ...wrong })).toMatchObject({ kind: 'problem', field });
  });
});
