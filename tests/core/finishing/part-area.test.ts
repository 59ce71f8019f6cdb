import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { type FinishPart, partsArea } from '../../../src/core/finishing/part-area.ts';
import { said, solved } from '../gluing/helpers.ts';

const board: FinishPart = { name: 'Shelf', length: 1000, width: 200, thickness: 20 };
const bare = ['bare', 'bare'] as const;

describe('partsArea', () => {
  it('is two faces, two edges and two ends', () => {
    const { total, finishedM2 } = solved(partsArea([board])).value;
    expect(finishedM2).toBeCloseTo(0.448, 12);
    expect(total).toEqual({ shown: finishedM2, inside: 0, bare: 0 });
  });
  it('leaves out what is joined, and what is bare', () => {
    const part = {
      ...board,
      surfaces: { faces: ['shown', 'inside'], edges: ['shown', 'bare'] },
      joined: { ends: [4000, 0] },
    } as const;
    const { total, finishedM2 } = solved(partsArea([part])).value;
    expect(total.inside).toBeCloseTo(0.2, 12);
    expect(total.bare).toBeCloseTo(0.02, 12);
    expect(total.shown).toBeCloseTo(0.2 + 0.02 + 0.004, 12);
    expect(finishedM2).toBeCloseTo(total.shown + total.inside, 12);
  });
  it('keeps species apart, counts, and adds shapes by hand', () => {
    const cherry = { ...board, species: 'cherry, black', count: 2 };
    const leg = { name: 'Leg', areaM2: 0.1, treatment: 'shown', count: 4, species: 'maple, red' } as const;
    const { bySpecies, finishedM2 } = solved(partsArea([cherry], [leg])).value;
    expect(bySpecies.get('cherry, black')?.shown).toBeCloseTo(0.896, 12);
    expect(bySpecies.get('maple, red')?.shown).toBeCloseTo(0.4, 12);
    expect(finishedM2).toBeCloseTo(1.296, 12);
  });
  it('never makes nor loses area: all treatments add up to all surfaces less what is joined', () => {
    const treatment = fc.constantFrom('shown', 'inside', 'bare');
    const size = fc.integer({ min: 1, max: 3000 });
    fc.assert(
      fc.property(
        size,
        size,
        size,
        fc.array(treatment, { minLength: 6, maxLength: 6 }),
        (length, width, thickness, given) => {
          const part = {
            name: 'x',
            length,
            width,
            thickness,
            surfaces: { faces: given.slice(0, 2), edges: given.slice(2, 4), ends: given.slice(4) },
            joined: { faces: [1, 1], edges: [1, 1], ends: [1, 1] },
          } as unknown as FinishPart;
          const found = partsArea([part]);
          if (isProblem(found)) return found.field === 'parts';
          const { shown, inside, bare } = found.value.total;
          const all = (2 * (length * width + length * thickness + width * thickness) - 6) / 1e6;
          return Math.abs(shown + inside + bare - all) < 1e-9;
        },
      ),
    );
  });
  it('says which part is missing a size', () => {
    const found = partsArea([board, { ...board, name: 'Left door', thickness: Number.NaN }]);
    expect(found).toMatchObject({ kind: 'problem', field: 'parts.1.thickness' });
    expect(said(found)).toContain('Left door');
  });
  it.each([
    [[], [], 'parts'],
    [[{ ...board, surfaces: { faces: bare, edges: bare, ends: bare } }], [], 'parts'],
    [[{ ...board, joined: { ends: [0, 5000] } }], [], 'parts.0.joined.ends.1'],
    [[{ ...board, count: 0 }], [], 'parts.0.count'],
    [[board], [{ name: 'Leg', areaM2: 0, treatment: 'shown' }], 'shapes.0.areaM2'],
  ])('refuses %j and %j', (parts, shapes, field) => {
    expect(partsArea(parts as FinishPart[], shapes as [])).toMatchObject({ kind: 'problem', field });
  });
});
