import { describe, expect, it } from 'vitest';
import { movesOver } from '../../../src/core/movement/moves.ts';
import { partMovement } from '../../../src/core/movement/part-movement.ts';
import { outside } from '../../setup/outside.ts';
import { answered, cherry, seasons } from './woods.ts';

const whole = answered(partMovement(cherry, 600, seasons));

describe('movesOver', () => {
  it('says how far the panel stands out of a breadboard end or falls short', () => {
    const { shrink, swell } = answered(movesOver(whole, 600, 300)).value;
    // Half the panel: 300 x 0.00248 x 2 and x 3.
    expect(shrink).toBeCloseTo(1.488, 9);
    // Doubles leave only rounding.
    outside({
      what: 'breadboard end of black cherry, 600 mm, middle peg fixed, 8 to 11 %: panel stands out, mm',
      source: 'wood-handbook',
      at: 'Table 13-5',
      expected: 2.232,
      got: swell,
      tolerance: 5e-10,
    });
  });

  it('is as far as that much of the wood moves, and its working ends with it', () => {
    const over = answered(movesOver(whole, 600, 540));
    expect(over.value.swell).toBeCloseTo(answered(partMovement(cherry, 540, seasons)).value.swell, 9);
    expect(over.working.steps.at(-1)?.gives.value).toBeCloseTo(540 * 0.00248 * 3, 9);
    expect(over.working.sources).toContain('wood-handbook');
  });

  it.each([0, -5, 601, Number.NaN])('refuses %s of 600', (distance) => {
    expect(movesOver(whole, 600, distance)).toMatchObject({ kind: 'problem', field: 'distance' });
  });
});
