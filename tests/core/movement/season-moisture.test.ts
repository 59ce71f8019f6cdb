import { describe, expect, it } from 'vitest';
import { seasonMoisture } from '../../../src/core/movement/season-moisture.ts';
import { climates } from '../../../src/tables/climates.ts';
import { answered } from './woods.ts';

describe('seasonMoisture', () => {
  // Wood handbook (FPL-GTR-190), Table 4-2, row 70 F, recalled: 6.2 % at 30 % humidity, 11.0 % at 60 %; one decimal.
  it('is the equilibrium of each season', () => {
    const { value } = answered(
      seasonMoisture({ dry: { celsius: 21.1, humidity: 30 }, wet: { celsius: 21.1, humidity: 60 } }),
    );
    expect(value.dry).toBeCloseTo(6.2, 1);
    expect(value.wet).toBeCloseTo(11.0, 1);
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
