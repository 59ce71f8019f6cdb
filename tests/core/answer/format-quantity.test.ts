import fc from 'fast-check';
import { unit as mathUnit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { formatDuration } from '../../../src/core/answer/format-duration.ts';
import { formatQuantity } from '../../../src/core/answer/format-quantity.ts';
import type { Unit } from '../../../src/core/answer/quantity.ts';
import * as us from '../../../src/core/answer/us-units.ts';
import { outside } from '../../setup/outside.ts';

const inches = { unit: 'in', nearest: 16 } as const;
const metric = { unit: 'mm', nearest: 16 } as const;

describe('formatQuantity', () => {
  it.each<[Unit, number, string, string]>([
    ['mm', 146.05, '5 3/4 in', '146.1 mm'],
    ['mm2', 1000, '1.55 in²', '1000 mm²'],
    ['m2', 3.2, '34.4 ft²', '3.2 m²'],
    ['m2', 0.00853, '13.2 in²', '85.3 cm²'],
    ['m2', 0.0929, '1 ft²', '0.0929 m²'],
    ['m3', 0.019664, '0.0197 m³', '0.0197 m³'],
    // A knob of 60 x 40 x 12 mm.
    ['m3', 0.0000288, '28.8 cm³', '28.8 cm³'],
    ['woodM3', 0.019664, '8.33 board feet', '0.0197 m³'],
    ['boardFeet', 8.3333, '8.33 board feet', '8.33 board feet'],
    ['boardFeet', 1, '1 board foot', '1 board foot'],
    ['boardFeet', 0.00424, '0.00424 board feet', '0.00424 board feet'],
    // 83 square feet of 5/4 at 9.00 are 933.75; 104 of them would be 936.
    ['boardFeet', 103.75, '103.75 board feet', '103.75 board feet'],
    ['woodM3', 0.2448, '103.74 board feet', '0.245 m³'],
    ['litres', 0.35, '11.8 fl oz', '350 ml'],
    ['litres', 1, '1.06 qt', '1 L'],
    ['litres', 0.9996, '1.06 qt', '1 L'],
    ['litres', 5, '1.32 gal', '5 L'],
    ['m2PerLitre', 12, '489 ft²/gal', '12 m²/L'],
    ['millilitres', 1.64, '1.64 ml', '1.64 ml'],
    ['grams', 200, '200 g', '200 g'],
    ['grams', 1500, '1.5 kg', '1.5 kg'],
    ['gramsPerM2', 200, '18.6 g/ft²', '200 g/m²'],
    ['kilograms', 23, '50.7 lb', '23 kg'],
    ['kgPerM3', 560, '35 lb/ft³', '560 kg/m³'],
    ['seconds', 4800, '1 h 20 min', '1 h 20 min'],
    ['celsius', 21.1, '70 °F', '21.1 °C'],
    ['celsius', -20, '−4 °F', '−20 °C'],
    // To the whole degree 64 °F, which is below it: it would be refused as below itself.
    ['celsius', 18, '64.4 °F', '18 °C'],
    ['percent', 9.234, '9.2%', '9.2%'],
    ['percent', 0.248, '0.25%', '0.25%'],
    ['degrees', 90.031, '90.03°', '90.03°'],
    ['newtons', 2000, '450 pounds of force', '2000 N'],
    ['newtons', 12_500, '2810 pounds of force', '12.5 kN'],
    ['kilopascals', 700, '102 psi', '700 kPa'],
    ['micrometres', 50, '1.97 mil', '50 µm'],
    ['money', 1234.5, '1234.50', '1234.50'],
    ['money', -0.001, '0.00', '0.00'],
    ['money', -12, '−12.00', '−12.00'],
    ['count', 12, '12', '12'],
    ['factor', 1.5, '1.5', '1.5'],
  ])('writes %s %d', (unit, value, inUs, inMetric) => {
    expect(formatQuantity({ value, unit }, inches)).toBe(inUs);
    expect(formatQuantity({ value, unit }, metric)).toBe(inMetric);
  });

  it('shows a dash for what is no number', () => {
    expect(formatQuantity({ value: Number.NaN, unit: 'mm' }, inches)).toBe('–');
    expect(formatQuantity({ value: Number.POSITIVE_INFINITY, unit: 'money' }, inches)).toBe('–');
  });

  it('never writes a minus before nothing, nor an exponent', () => {
    const units = fc.constantFrom<Unit>('mm', 'm3', 'litres', 'grams', 'percent', 'money', 'newtons', 'seconds');
    fc.assert(
      fc.property(units, fc.double({ min: -1e9, max: 1e9, noNaN: true }), (unit, value) => {
        for (const maker of [inches, metric]) {
          const text = formatQuantity({ value, unit }, maker);
          expect(text).not.toMatch(/\de|^−0(\.0*)?( |$|%)|-/);
        }
      }),
    );
  });
});

describe('US units', () => {
  it.each([
    ['mm2', us.mm2PerSquareInch, '1 sqin', 'mm^2'],
    ['m2', us.m2PerSquareFoot, '1 sqft', 'm^2'],
    ['m3', us.m3PerCubicFoot, '1 cuft', 'm^3'],
    ['fl oz', us.litresPerFluidOunce, '1 fluidounce', 'l'],
    ['qt', us.litresPerQuart, '1 quart', 'l'],
    ['gal', us.litresPerGallon, '1 gallon', 'l'],
    ['lb', us.kilogramsPerPound, '1 poundmass', 'kg'],
    ['lbf', us.newtonsPerPoundForce, '1 poundforce', 'N'],
    ['psi', us.kilopascalsPerPsi, '1 psi', 'kPa'],
    ['mil', us.micrometresPerMil, '1 mil', 'um'],
  ])('%s agrees with mathjs', (_, ours, theirs, unit) => {
    const expected = mathUnit(theirs).toNumber(unit);
    // 3e-6 relative: mathjs rounds its US volumes to four to seven digits (fluid ounce 0.02957353 L).
    outside({
      what: `${theirs} in ${unit}`,
      source: 'mathjs',
      at: 'unit',
      expected,
      got: ours,
      tolerance: 3e-6 * expected,
    });
  });

  it('are the exact values of NIST SP 811 appendix B', () => {
    const nist = { source: 'nist-sp811', at: 'appendix B' } as const;
    outside({ ...nist, what: '1 US gallon, litres', expected: 3.785411784, got: us.litresPerGallon });
    // 231 cubic inches. 12 digits: rounding of binary numbers only.
    const gallon = 231 * 25.4 ** 3 * 1e-6;
    const close = { ...nist, tolerance: 5e-13, expected: gallon };
    outside({ ...close, what: '231 cubic inches, litres', got: us.litresPerGallon });
    outside({ ...close, what: '4 US quarts, litres', got: us.litresPerQuart * 4 });
    outside({ ...close, what: '128 US fluid ounces, litres', got: us.litresPerFluidOunce * 128 });
    // Six decimals are what SP 811 gives.
    outside({ ...nist, what: '1 psi, kPa', expected: 6.894757, got: us.kilopascalsPerPsi, tolerance: 5e-7 });
  });
});

describe('formatDuration', () => {
  it.each([
    [0, '0 s'],
    [45, '45 s'],
    [59.6, '1 min'],
    [150, '2 min 30 s'],
    [599.8, '10 min'],
    [1500, '25 min'],
    [3599, '1 h'],
    [4800, '1 h 20 min'],
    [86_400, '24 h'],
    [172_799, '2 days'],
    [273_600, '3 days 4 h'],
    [-4800, '−1 h 20 min'],
    [-0.2, '0 s'],
  ])('writes %d s as %s', (seconds, text) => {
    expect(formatDuration(seconds)).toBe(text);
  });
});
