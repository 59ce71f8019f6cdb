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

/** Wood is paid by the hundredth: 103.75 board feet are not charged as 104. */
const inBoardFeet: Writer = (value) => {
  const text = Math.abs(value) < 1 ? formatSignificant(value) : formatDecimals(value, 2);
  return `${text} board ${text === '1' ? 'foot' : 'feet'}`;
};

/** One writer for amounts below a limit, another from there on. */
const upTo =
  (limit: number, below: Writer, from: Writer): Writer =>
  (value) =>
    (Math.abs(value) < limit ? below : from)(value);

const both = (write: Writer) => [write, write] as const;

/** How each unit is written beside millimetres, and beside inches; what is not here is a bare number. */
const writers: Partial<Record<Unit, readonly [metric: Writer, us: Writer]>> = {
  mm2: [inUnit('mm²'), inUnit('in²', us.mm2PerSquareInch)],
  m2: [
    upTo(0.009995, inUnit('cm²', 1e-4), inUnit('m²')),
    upTo(us.m2PerSquareFoot * 0.9995, inUnit('in²', us.mm2PerSquareInch * 1e-6), inUnit('ft²', us.m2PerSquareFoot)),
  ],
  m3: both(upTo(0.001, inUnit('cm³', 1e-6), inUnit('m³'))),
  woodM3: [inUnit('m³'), (value) => inBoardFeet(value / us.m3PerBoardFoot)],
  boardFeet: both(inBoardFeet),
  litres: [
    upTo(0.9995, inUnit('ml', 0.001), inUnit('L')),
    upTo(
      us.litresPerQuart * 0.9995,
      inUnit('fl oz', us.litresPerFluidOunce),
      upTo(us.litresPerGallon * 0.9995, inUnit('qt', us.litresPerQuart), inUnit('gal', us.litresPerGallon)),
    ),
  ],
  m2PerLitre: [inUnit('m²/L'), inUnit('ft²/gal', us.m2PerSquareFoot / us.litresPerGallon)],
  millilitres: both(inUnit('ml')),
  // Glue and resin are weighed on a kitchen scale, in grams whatever the tape says: an ounce is too coarse for them.
  grams: both(upTo(999.5, inUnit('g'), inUnit('kg', 1000))),
  gramsPerM2: [inUnit('g/m²'), inUnit('g/ft²', 1 / us.m2PerSquareFoot)],
  kilograms: [inUnit('kg'), inUnit('lb', us.kilogramsPerPound)],
  kgPerM3: [inUnit('kg/m³'), inUnit('lb/ft³', us.kilogramsPerPound / us.m3PerCubicFoot)],
  seconds: both(formatDuration),
  celsius: [(value) => `${formatDecimals(value, 1)} °C`, (value) => `${formatDecimals(value * 1.8 + 32, 1)} °F`],
  percent: both((value) => `${Math.abs(value) < 1 ? formatSignificant(value, 2) : formatDecimals(value, 1)}%`),
  degrees: both((value) => `${formatDecimals(value, 2)}°`),
  newtons: [upTo(9999.5, inUnit('N'), inUnit('kN', 1000)), inUnit('pounds of force', us.newtonsPerPoundForce)],
  kilopascals: [inUnit('kPa'), inUnit('psi', us.kilopascalsPerPsi)],
  micrometres: [inUnit('µm'), inUnit('mil', us.micrometresPerMil)],
  money: both((value) =>
    value
      .toFixed(2)
      .replace(/^-(?=.*[1-9])/, '−')
      .replace('-', ''),
  ),
};

/**
 * Writes a quantity with its unit, in the maker's units.
 *
 * @param q the quantity, in one of the core's units; a temperature is a reading, not a difference
 * @param units the maker's length units: inches bring the other US units along (ft², US fl oz, qt, gal, lb, °F, psi,
 *   pounds of force, mil) and wood in board feet, millimetres the metric ones; board feet, m³, grams, millilitres,
 *   time, percent, degrees, money and counts are the same in both
 * @returns text with about three significant digits; board feet to a hundredth; lengths to the finest fraction or 0.1 mm; money with two decimals
 *   and no currency, since that is the maker's own
 * @valid any finite value; one that is not finite is shown as –
 * @example formatQuantity({ value: 146.05, unit: 'mm' }, { unit: 'in', nearest: 16 }) // => '5 3/4 in'
 * @source conversions NIST SP 811 appendix B
 */
export function formatQuantity(q: Quantity, units: LengthUnits): string {
  if (!Number.isFinite(q.value)) return '–';
  if (q.unit === 'mm') return `${lengthText(shownLength(q.value, units))} ${units.unit}`;
  const [metric, american] = writers[q.unit] ?? both(formatSignificant);
  return (units.unit === 'in' ? american : metric)(q.value);
}
