import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { boardWeight } from '../../../src/core/lumber/board-weight.ts';
import { outside } from '../../setup/outside.ts';

const cherry = { specificGravity: 0.5, source: 'wood-handbook-memory', moisture: 12 } as const;

describe('boardWeight', () => {
  it('follows the relation density = 1000 G (1 + M / 100)', () => {
    const found = boardWeight(cherry, 0.0196644768);
    if (isProblem(found)) throw new Error(found.message.text);
    // Binary noise only.
    outside({
      what: 'specific gravity 0.50 at 12 % moisture: density, kg/m3',
      source: 'wood-handbook-memory',
      at: 'density = 1000 G (1 + M / 100)',
      expected: 560,
      got: found.kilograms.working.steps[0]?.gives.value,
      tolerance: 5e-10,
    });
    expect(found.kilograms.value).toBeCloseTo(11.0121, 4); // 560 × 0.0196645 by hand, four decimals
    expect(found.caution).toBeUndefined();
  });
  it('cautions above 23 kg (common practice)', () => {
    expect(boardWeight(cherry, 23.1 / 560)).toHaveProperty('caution');
    expect(boardWeight(cherry, 22.9 / 560)).not.toHaveProperty('caution');
  });
  it.each([
    ['specificGravity', { specificGravity: 0 }, 0.02],
    ['specificGravity', { specificGravity: 560 }, 0.02],
    ['moisture', { moisture: -1 }, 0.02],
    ['moisture', { moisture: Number.NaN }, 0.02],
    ['cubicMetres', {}, 0],
    ['cubicMetres', {}, 100],
  ])('refuses a bad %s', (field, change, volume) => {
    expect(boardWeight({ ...cherry, ...change }, volume)).toMatchObject({ kind: 'problem', field });
  });
});
