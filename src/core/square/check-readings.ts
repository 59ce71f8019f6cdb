import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import { type Problem, problem } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import { brokenTriangle } from './broken-triangle.ts';
import { fitQuadrilateral } from './fit-quadrilateral.ts';
import { familyOf, type Measured } from './measured.ts';
import { isConvex } from './quadrilateral.ts';
import { measuredNames, type ReadingName, type Readings, spokenReadings, withoutReading } from './readings.ts';
import { mismatch, slippedDigit } from './slipped-digit.ts';

/** Longer than any piece of furniture, mm: a reading above it has slipped. */
export const longest = 30_000;

/** Why a length can't have been read off a piece. */
export function badLength(field: string, name: string, value: number): Problem | undefined {
  return badNumber(field, name, value, 'mm', { above: 0, most: longest });
}

/** Without it the others are nearest to a rectangle's; the diagonal, unless there are six to compare. */
function likeliest(readings: Readings, diagonal: ReadingName): ReadingName {
  const names = measuredNames(readings);
  if (names.length < 6) return diagonal;
  const left = (name: ReadingName) => mismatch(withoutReading(readings, name));
  return names.reduce((best, name) => (left(name) < left(best) ? name : best), diagonal);
}

/** A triangle that can't be, blamed on the likeliest. */
function badTriangle(readings: Readings): Problem | undefined {
  const triangle = brokenTriangle(readings);
  if (!triangle) return undefined;
  const [one, other, diagonal] = triangle;
  const [a = 0, b = 0, d = 0] = triangle.map((name) => readings[name]);
  const blame = likeliest(readings, diagonal);
  const limit = d >= a + b ? 'longer than both together' : 'too short';
  return problem(
    blame,
    phrase`No corner: ${spokenReadings[one]} ${mm(a)}, ${spokenReadings[other]} ${mm(b)}, diagonal ${mm(d)}, ${limit}. Measure the ${spokenReadings[blame]} again.`,
  );
}

/**
 * Whether what was measured can belong to a piece at all.
 *
 * @param measured mm
 * @param precision the reading error of one measurement, mm
 * @returns undefined when all is well, or the problem, its field the reading to take again: a length zero, negative or
 *   over 30 m; a broken triangle; a slipped digit; inches among millimetres; a difference of diagonals that no such piece
 *   has; a precision that is negative or a tenth of the piece
 * @valid always
 * @example checkMeasured({ readings: { front: 1800, right: 800, diagonalAC: 900 } }, 0.5)
 *   // => { field: 'diagonalAC' }
 * @source plane geometry (Euclid I.20: two sides of a triangle are longer than the third)
 */
export function checkMeasured(measured: Measured, precision: number): Problem | undefined {
  const { difference = 0, ...taken } = measured.readings;
  const { front = 0, left = 0 } = taken;
  const lengths: Readings = measured.farEnd ? { ...taken, front, left } : taken;
  const names = measuredNames(lengths);
  if (names.length === 0) return problem('readings', 'Measure a side or a diagonal.');
  for (const name of names) {
    const bad = badLength(name, `The ${spokenReadings[name]}`, lengths[name] ?? 0);
    if (bad) return bad;
  }
  const shortest = Math.min(...names.map((name) => lengths[name] ?? 0));
  const bad =
    badNumber('precision', 'The precision', precision, 'mm', { least: 0, most: shortest / 10 }) ??
    badNumber('difference', 'The difference of the diagonals', difference, 'mm', {
      least: -shortest / 2,
      most: shortest / 2,
    });
  if (bad) return bad;
  // Where the left end alone was measured, the right one is as long, or nearly.
  const all: Readings = measured.farEnd ? { ...lengths, right: left } : lengths;
  const slipped = slippedDigit(all) ?? badTriangle(all);
  if (slipped) return slipped;
  const { shape } = fitQuadrilateral(familyOf(measured), measured.readings);
  // A back edge across the front edge's way is no panel, and nothing could slide along it.
  const runsAlong = shape.C.x - shape.D.x > 0.1 * Math.abs(shape.C.y - shape.D.y);
  return isConvex(shape) && runsAlong
    ? undefined
    : problem(names[0] ?? 'readings', 'These make no four-cornered piece. Measure all again.');
}
