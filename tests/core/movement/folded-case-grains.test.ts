import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CaseSide, foldedCaseGrains } from '../../../src/core/movement/folded-case-grains.ts';
import { jointVerdict } from '../../../src/core/movement/joint-verdict.ts';
import { answered, cherry, seasons } from './woods.ts';

const side = (length: number, width: number): CaseSide => ({ length, width });
const top = side(800, 300);
const end = side(400, 300);

/** What each corner gets, all of flat-sawn cherry at 8 %. */
function advice(...sides: Parameters<typeof foldedCaseGrains>[0]): string[] {
  return answered(foldedCaseGrains(sides)).map((_, corner, grains) => {
    const part = (at: 0 | 1) =>
      ({ name: `side ${at}`, surface: 'mitre', grain: grains[(corner + at) % 4] ?? 'across', wood: cherry }) as const;
    return answered(jointVerdict({ sides: [part(0), part(1)], length: 300, seasons })).value.advice;
  });
}

describe('foldedCaseGrains', () => {
  it('glues all four where the grain runs on around', () => {
    expect(advice(top, end, top, end)).toEqual(['glue', 'glue', 'glue', 'glue']);
  });

  it('aligns the two corners of a side whose grain runs front to back', () => {
    expect(advice(top, end, side(300, 800), end)).toEqual(['glue', 'align', 'align', 'glue']);
  });

  it('takes the size that most sides share as their width for the depth', () => {
    const grains = (...sides: Parameters<typeof foldedCaseGrains>[0]) => answered(foldedCaseGrains(sides));
    const around = Array.from({ length: 4 }, () => 'across');
    // Four alike share both sizes; a cube; ends as long as the case is deep, measured a little apart.
    expect(grains(end, end, end, end)).toEqual(around);
    expect(grains(side(300, 300), end, side(300, 300), end)).toEqual(around);
    expect(grains(top, side(300, 300.5), top, side(300, 300))).toEqual(around);
  });

  it('is the same whichever side comes first', () => {
    const turns = fc.tuple(fc.boolean(), fc.boolean(), fc.boolean(), fc.boolean());
    fc.assert(
      fc.property(turns, fc.integer({ min: 100, max: 600 }), ([a, b, c, d], depth) => {
        const one = (turned: boolean, length: number) => (turned ? side(depth, length) : side(length, depth));
        const [w, x, y, z] = [one(a, 700), one(b, 800), one(c, 900), one(d, 1000)];
        const found = answered(foldedCaseGrains([w, x, y, z]));
        const turned = answered(foldedCaseGrains([x, y, z, w]));
        expect(turned).toEqual([...found.slice(1), found[0]]);
        expect(found).toEqual([a, b, c, d].map((along) => (along ? 'along' : 'across')));
      }),
    );
  });

  it('refuses sides that share no depth', () => {
    expect(foldedCaseGrains([top, end, side(800, 250), end])).toMatchObject({ kind: 'problem', field: 'sides' });
  });
});
