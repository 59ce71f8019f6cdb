import { describe, expect, it } from 'vitest';
import { figure } from '../../src/figure/gluing.ts';

const input = {
  seams: [{ length: 1200, width: 20 }],
  adhesive: 'pva-interior',
  species: 'cherry, black',
  clampForce: 2000,
};

describe('figure gluing', () => {
  it('answers area, glue, clamps, spacing and force', () => {
    const found = figure(input) as Record<string, number>;
    // 0.024 m2 at 150 to 220 g/m2; black cherry at 0.50 asks for 700 + 1000 x 0.15 / 0.35 kPa.
    expect(found.area).toBeCloseTo(0.024, 12);
    expect(found.grams).toBeCloseTo(0.024 * 185, 9);
    expect(found.force).toBeCloseTo(0.024 * (700 + (1000 * 0.15) / 0.35) * 1000, 6);
    expect(found.clamps).toBe(14);
    expect(found.spacing).toBeCloseTo(1200 / 14, 9);
  });
  it('takes names in the words of the trade, a density, a tool, a temperature and the spread of pressure', () => {
    const more = {
      adhesive: 'slow epoxy',
      species: 'black cherry',
      tool: 'roller',
      celsius: 20,
      outerBoard: 60,
      caul: 40,
    };
    expect(figure({ ...input, ...more })).toMatchObject({
      clamps: 6,
      seconds: { open: { least: 1800 } },
    });
    expect(figure({ ...input, species: undefined, specificGravity: 0.7 })).toMatchObject({ kilopascals: 1700 });
  });
  it('shows each seam by itself as well', () => {
    const seams = [
      { length: 1200, width: 20 },
      { length: 600, width: 20 },
    ];
    expect(figure({ ...input, seams })).toMatchObject({ clamps: 14, perSeam: [{ clamps: 14 }, { clamps: 7 }] });
  });
  it.each([
    [{}, 'seams'],
    [{ ...input, seams: [] }, 'seams'],
    [{ ...input, seams: [null] }, 'seams.0'],
    [{ ...input, seams: [{ length: '1200', width: 20 }] }, 'seams.0.length'],
    [{ ...input, seams: [{ length: 1200 }] }, 'seams.0.width'],
    [{ ...input, seams: [{ length: 1200, width: -20 }] }, 'seams.0.width'],
    [{ ...input, adhesive: 'mud' }, 'adhesive'],
    [{ ...input, adhesive: 7 }, 'adhesive'],
    [{ ...input, species: 'unobtainium' }, 'species'],
    [{ ...input, species: 'honeylocust' }, 'species'],
    [{ ...input, specificGravity: 'dense' }, 'specificGravity'],
    [{ ...input, clampForce: 0 }, 'clampForce'],
    [{ ...input, clampForce: undefined }, 'clampForce'],
    [{ ...input, tool: 'toString' }, 'tool'],
    [{ ...input, celsius: 2 }, 'celsius'],
    [{ ...input, caul: '5' }, 'caul'],
  ])('names the field in %j', (wrong, field) => {
    expect(figure(wrong)).toMatchObject({ kind: 'problem', field });
  });
});
