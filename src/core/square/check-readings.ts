import { badNumber } from '../answer/bad-number.ts';
import { type Problem, problem } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import { breaksTriangle } from './broken-triangle.ts';
import { fitQuadrilateral } from './fit-quadrilateral.ts';
import { type Measured, questionOf } from './measured.ts';
import { isConvex } from './quadrilateral.ts';
import {
  cornerTriangles,
  measuredNames,
  type ReadingName,
  type Readings,
  spokenReadings,
  withoutReading,
} from './readings.ts';
import { type SlippedDigit, slippedDigit } from './slipped-digit.ts';
import { distanceFromRectangle } from './suspect-reading.ts';

/** Longer than any piece of furniture, mm: a reading above it has slipped. */
const longest = 30_000;

/** Why a length can't have been read off a piece. */
export function badLength(field: string, name: string, value: number): Problem | undefined {
  return badNumber(field, name, value, 'mm', { above: 0, most: longest });
}

function saySlip({ name, kind, likely, or }: SlippedDigit, value: number): Problem {
  if (or !== null) {
    const both = `${spokenReadings[name]}, {value}, and the ${spokenReadings[or]}`;
    return problem(name, `The ${both} don't fit: a digit slipped in one. Measure both again.`, {
      value: mm(value),
    });
  }
  const what = {
    tenth: 'looks ten times too short',
    tenfold: 'looks ten times too long',
    inches: 'looks like inches',
    'inches twice': 'looks turned into mm twice',
  }[kind];
  return problem(name, `The ${spokenReadings[name]}, {value}, ${what}: about {likely} would fit. Measure it again.`, {
    value: mm(value),
    likely: mm(Math.round(likely * 10) / 10),
  });
}

/** A triangle that can't be, blamed on the reading without which the others fit best; on the diagonal when all six aren't there. */
function badTriangle(readings: Readings): Problem | undefined {
  for (const [one, other, diagonal] of Object.values(cornerTriangles)) {
    const [a, b, d] = [readings[one], readings[other], readings[diagonal]];
    if (a === undefined || b === undefined || d === undefined) continue;
    if (d < a + b && d > Math.abs(a - b)) continue;
    const blame = likeliest(readings, [diagonal, one, other]);
    const limit = d >= a + b ? 'longer than both together' : 'too short';
    return problem(
      blame,
      `No corner: ${spokenReadings[one]} {a}, ${spokenReadings[other]} {b}, diagonal {d}, ${limit}. ` +
        `Measure the ${spokenReadings[blame]} again.`,
      { a: mm(a), b: mm(b), d: mm(d) },
    );
  }
  return undefined;
}

function likeliest(readings: Readings, names: readonly [ReadingName, ...ReadingName[]]): ReadingName {
  if (measuredNames(readings).length < 6) return names[0];
  const distances = names.map((name) => {
    const rest = withoutReading(readings, name);
    return breaksTriangle(rest) ? Number.POSITIVE_INFINITY : distanceFromRectangle(rest);
  });
  return names[distances.indexOf(Math.min(...distances))] ?? names[0];
}

function badReadings(readings: Readings): Problem | undefined {
  const names = measuredNames(readings);
  if (names.length === 0) return problem('readings', 'Measure a side or a diagonal.');
  for (const name of names) {
    const bad = badLength(name, `The ${spokenReadings[name]}`, readings[name] ?? 0);
    if (bad) return bad;
  }
  const slip = slippedDigit(readings);
  if (slip) return saySlip(slip, readings[slip.name] ?? 0);
  const triangle = badTriangle(readings);
  if (triangle) return triangle;
  const { family, observations } = questionOf({ way: 'readings', readings });
  const { shape } = fitQuadrilateral(family, observations);
  // A back edge across the front edge's way is no panel, and nothing could slide along it.
  const runsAlong = shape.C.x - shape.D.x > 0.1 * Math.abs(shape.C.y - shape.D.y);
  return isConvex(shape) && runsAlong
    ? undefined
    : problem(names[0] ?? 'readings', 'These make no four-cornered piece. Measure all again.');
}

/**
 * Whether what was measured can belong to a piece at all.
 *
 * @param measured mm
 * @param precision the reading error of one measurement, mm
 * @returns undefined when all is well, or the problem, its field the reading to take again: a length missing, zero,
 *   negative or over 30 m; a broken triangle; a slipped digit; inches among millimetres; a difference of diagonals that
 *   no such piece has; a precision that is negative or a tenth of the piece
 * @valid always
 * @example checkMeasured({ way: 'readings', readings: { front: 1800, right: 800, diagonalAC: 900 } }, 0.5)
 *   // => { field: 'diagonalAC' }
 * @source plane geometry (Euclid I.20: two sides of a triangle are longer than the third)
 */
export function checkMeasured(measured: Measured, precision: number): Problem | undefined {
  if (measured.way === 'readings') {
    const { readings } = measured;
    const shortest = () => Math.min(...measuredNames(readings).map((name) => readings[name] ?? 0));
    return badReadings(readings) ?? badPrecision(precision, shortest());
  }
  const { length, width } = measured;
  return (
    badLength('length', 'The length', length) ??
    badLength('width', 'The width', width) ??
    (measured.way === 'stick' ? badDifference(measured) : badDiagonals(measured)) ??
    badPrecision(precision, Math.min(length, width))
  );
}

function badPrecision(precision: number, shortest: number): Problem | undefined {
  return badNumber('precision', 'The precision', precision, 'mm', { least: 0, most: shortest / 10 });
}

function badDifference({ length, width, difference }: { length: number; width: number; difference: number }) {
  const most = Math.min(length, width) / 2;
  return badNumber('difference', 'The difference of the diagonals', difference, 'mm', { least: -most, most });
}

function badDiagonals(measured: Measured & { way: 'diagonals' }): Problem | undefined {
  const { length, width, diagonalAC, diagonalBD } = measured;
  const bad = badReadings({ front: length, left: width, right: width, diagonalAC, diagonalBD });
  if (!bad) return undefined;
  const field = { front: 'length', back: 'length', left: 'width', right: 'width' }[bad.field] ?? bad.field;
  return { ...bad, field };
}
