import { mmPerInch } from './length-unit-sizes.ts';
import type { LengthUnits } from './length-units.ts';

/** A length cut into what is set in type: minus sign, whole number, and a stacked fraction in lowest terms. */
export interface SplitLength {
  readonly negative: boolean;
  /** Digits before the fraction; empty when the fraction stands alone. In millimetres with the decimal, if there is one. */
  readonly whole: string;
  /** 0 when there is no fraction. */
  readonly numerator: number;
  readonly denominator: number;
  readonly unit: 'in' | 'mm';
}

/** A hair, in parts of the finest fraction, so that halves that binary numbers make a little short still round up. */
const hair = 1e-9;

/**
 * Cuts a length for showing, rounded to the maker's finest fraction, or to 0.1 mm.
 *
 * @param mm length in millimetres; may be negative
 * @param units inches with a finest fraction, or millimetres
 * @returns sign, whole number as text, fraction in lowest terms; no minus when the length rounds to 0
 * @valid any finite length
 * @example splitLength(146.05, { unit: 'in', nearest: 16 }) // => { whole: '5', numerator: 3, denominator: 4 }
 * @source 1 in = 25.4 mm exactly, NIST SP 811 appendix B
 */
export function splitLength(mm: number, units: LengthUnits): SplitLength {
  const { unit, nearest } = units;
  const parts = Math.round((unit === 'in' ? (Math.abs(mm) * nearest) / mmPerInch : Math.abs(mm) * 10) + hair);
  const negative = mm < 0 && parts > 0;
  if (unit === 'mm') return { negative, whole: String(parts / 10), numerator: 0, denominator: 1, unit };
  const whole = Math.floor(parts / nearest);
  const rest = parts - whole * nearest;
  const divisor = commonDivisor(rest, nearest);
  return {
    negative,
    whole: whole === 0 && rest > 0 ? '' : String(whole),
    numerator: rest / divisor,
    denominator: nearest / divisor,
    unit,
  };
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}
