import { oneStep } from '../answer/one-step.ts';
import { type Phrase, phrase } from '../answer/phrase.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';

/** Hollow for each mm of width, and curve for each mm of length, of a board that nobody has measured. */
const cupShare = 0.01;
const bowShare = 0.0025;

/**
 * The warp that is assumed of a board until it is measured.
 *
 * An assumption, chosen on the careful side for air-dried flat-sawn boards: lay a straightedge on the board instead.
 *
 * @param width mm
 * @param length mm
 * @returns cup across the full width and bow over the full length, mm, each with its working
 * @valid air-dried flat-sawn boards
 * @example assumedWarp(200, 2400) // => { cup: { value: 2 }, bow: { value: 6 } }
 * @source assumption
 */
export function assumedWarp(width: number, length: number): { cup: Worked; bow: Worked } {
  return {
    cup: assumed('cup', cupShare * width, phrase`width ${mm(width)} ÷ 100`),
    bow: assumed('bow', bowShare * length, phrase`length ${mm(length)} ÷ 400`),
  };
}

const assumed = (finds: string, value: number, by: Phrase): Worked =>
  oneStep(finds, by, mm(value), ['assumption'], phrase`Assumed. Lay a straightedge on the board to know.`);
