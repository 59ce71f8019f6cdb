import { lengthText } from '../length/format-length.ts';
import type { LengthUnits } from '../length/length-units.ts';
import { shownLength } from '../length/shown-length.ts';
import { formatDuration } from './format-duration.ts';
import { formatDecimals, formatSignificant } from './format-number.ts';
import type { Quantity, Unit } from './quantity.ts';
import * as us from './us-units.ts';

type Writer = (value: number) => string;

const inUnit =
  (sign: string, size = 1): Writer =>
  (value) =>
    `${formatSignificant(value / size)} ${sign}`;

const inBoardFeet: Writer = (value) => {
  const text = formatSignificant(value);
  return `${text} board ${text === '1' ? 'foot' : 'feet'}`;
};

const metricWriters: Partial<Record<Unit, Writer>> = {
  mm2: inUnit('mm²'),
  m2: inUnit('m²'),
  woodM3: inUnit('m³'),
  litres: (value) => (Math.abs(value) < 0.9995 ? inUnit('ml', 0.001)(value) : inUnit('L')(value)),
  litresPerM2: inUnit('L/m²'),
  m2PerLitre: inUnit('m²/L'),
  grams: (value) => (Math.abs(value) < 999.5 ? inUnit('g')(value) : inUnit('kg', 1000)(value)),
  gramsPerM2: inUnit('g/m²'),
  kilograms: inUnit('kg'),
  kgPerM3: inUnit('kg/m³'),
  celsius: (value) => `${formatDecimals(value, 1)} °C`,
  newtons: (value) => (Math.abs(value) < 9999.5 ? inUnit('N')(value) : inUnit('kN', 1000)(value)),
  kilopascals: inUnit('kPa'),
  micrometres: inUnit('µm'),
};

const usWriters: Partial<Record<Unit, Writer>> = {
  mm2: inUnit('in²', us.mm2PerSquareInch),
  m2: inUnit('ft²', us.m2PerSquareFoot),
  woodM3: (value) => inBoardFeet(value / us.m3PerBoardFoot),
  litres: usVolume,
  litresPerM2: inUnit('fl oz/ft²', us.litresPerFluidOunce / us.m2PerSquareFoot),
  m2PerLitre: inUnit('ft²/gal', us.m2PerSquareFoot / us.litresPerGallon),
  grams: (value) =>
    Math.abs(value) < 15.995 * us.gramsPerOunce
      ? inUnit('oz', us.gramsPerOunce)(value)
      : inUnit('lb', us.kilogramsPerPound * 1000)(value),
  gramsPerM2: inUnit('oz/ft²', us.gramsPerOunce / us.m2PerSquareFoot),
  kilograms: inUnit('lb', us.kilogramsPerPound),
  kgPerM3: inUnit('lb/ft³', us.kilogramsPerPound / us.m3PerCubicFoot),
  celsius: (value) => `${formatDecimals(value * 1.8 + 32, 0)} °F`,
  newtons: inUnit('pounds of force', us.newtonsPerPoundForce),
  kilopascals: inUnit('psi', us.kilopascalsPerPsi),
  micrometres: inUnit('mil', us.micrometresPerMil),
};

const writers: Partial<Record<Unit, Writer>> = {
  m3: inUnit('m³'),
  boardFeet: inBoardFeet,
  seconds: formatDuration,
  percent: (value) => `${Math.abs(value) < 1 ? formatSignificant(value, 2) : formatDecimals(value, 1)}%`,
  degrees: (value) => `${formatDecimals(value, 2)}°`,
  money: (value) =>
    value
      .toFixed(2)
      .replace(/^-(?=.*[1-9])/, '−')
      .replace('-', ''),
};

/**
 * Writes a quantity with its unit, in the maker's units.
 *
 * @param q the quantity, in one of the core's units; a temperature is a reading, not a difference
 * @param units the maker's length units: inches bring the other US units along (ft², US fl oz, qt, gal, oz, lb, °F,
 *   psi, pounds of force, mil) and wood in board feet, millimetres the metric ones; board feet, m³, time, percent,
 *   degrees, money and counts are the same in both
 * @returns text with about three significant digits; lengths to the finest fraction or 0.1 mm; money with two decimals
 *   and no currency, since that is the maker's own
 * @valid any finite value; one that is not finite is shown as –
 * @example formatQuantity({ value: 146.05, unit: 'mm' }, { unit: 'in', nearest: 16 }) // => '5 3/4 in'
 * @source conversions NIST SP 811 appendix B
 */
export function formatQuantity(q: Quantity, units: LengthUnits): string {
  if (!Number.isFinite(q.value)) return '–';
  if (q.unit === 'mm') return `${lengthText(shownLength(q.value, units))} ${units.unit}`;
  const write = writers[q.unit] ?? (units.unit === 'in' ? usWriters : metricWriters)[q.unit] ?? formatSignificant;
  return write(q.value);
}

function usVolume(litres: number): string {
  const size = Math.abs(litres);
  if (size < us.litresPerQuart * 0.9995) return inUnit('fl oz', us.litresPerFluidOunce)(litres);
  if (size < us.litresPerGallon * 0.9995) return inUnit('qt', us.litresPerQuart)(litres);
  return inUnit('gal', us.litresPerGallon)(litres);
}
