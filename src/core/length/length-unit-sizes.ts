export type LengthUnit = 'mm' | 'cm' | 'm' | 'in' | 'ft';

/** Tenths of a millimetre in each unit. Whole numbers, so that sums of lengths stay exact (1 in = 25.4 mm, NIST SP 811). */
export const tenthsOfMm: Readonly<Record<LengthUnit, number>> = { mm: 10, cm: 100, m: 10_000, in: 254, ft: 3048 };

export const mmPerInch = 25.4;
export const mmPerFoot = 304.8;

/** Every way of writing a unit, in lower case and without a full stop. */
export const unitNames: Readonly<Record<string, LengthUnit>> = {
  mm: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  cm: 'cm',
  centimetre: 'cm',
  centimetres: 'cm',
  centimeter: 'cm',
  centimeters: 'cm',
  m: 'm',
  metre: 'm',
  metres: 'm',
  meter: 'm',
  meters: 'm',
  in: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  "'": 'ft',
};
