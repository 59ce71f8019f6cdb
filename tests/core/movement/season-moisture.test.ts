import { describe, expect, it } from 'vitest';
import { seasonMoisture } from '../../../src/core/movement/season-moisture.ts';
import { climates } from '../../../src/tables/climates.ts';
import { outside } from '../../setup/outside.ts';
import { answered } from './woods.ts';

describe('seasonMoisture', () => {
  it('is the equilibrium of each season', () => {
    const { value } = answered(
      seasonMoisture({ dry: { celsius: 21.1, humidity: 30 }, wet: { celsius: 21.1, humidity: 60 } }),
    );
    // The table has one decimal.
    outside({
      what: 'seasons of 30 % and 60 % relative humidity at 70 F: moisture, %',
      source: 'wood-handbook-memory',
      at: 'Table 4-2',
      expected: [6.2, 11],
      got: [value.dry, value.wet],
      tolerance: 0.05,
    });
  });

  it('answers for every preset, the wet season damper by at least one percent, marked as an assumption', () => {
    for (const climate of climates) {
      const { value } = answered(seasonMoisture(climate));
      expect(value.wet - value.dry).toBeGreaterThan(1);
      expect(climate.source).toBe('assumption');
    }
  });

  it.each([
    ['dry.humidity', { dry: { celsius: 20, humidity: 101 }, wet: { celsius: 20, humidity: 60 } }],
    ['wet.celsius', { dry: { celsius: 20, humidity: 30 }, wet: { celsius: Number.NaN, humidity: 60 } }],
    ['wet', { dry: { celsius: 20, humidity: 60 }, wet: { celsius: 20, humidity: 30 } }],
  ])('names %s', (field, climate) => {
    expect(seasonMoisture(climate)).toMatchObject({ kind: 'problem', field });
  });
});
