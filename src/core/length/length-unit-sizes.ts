export type LengthUnit = 'mm' | 'cm' | 'm' | 'in' | 'ft';

/** Tenths of a millimetre in each unit. Whole numbers, so that sums of lengths stay exact (1 in = 25.4 mm, NIST SP 811). */
export const tenthsOfMm: Readonly<Record<LengthUnit, number>> = { mm: 10, cm: 100, m: 10_000, in: 254, ft: 3048 };

export const mmPerInch = 25.4;
export const mmPerFoot = 304.8;
