import { phrase } from '../answer/phrase.ts';
import { type Problem, problem } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import { brokenTriangle } from './broken-triangle.ts';
import { cornerTriangles, measuredNames, type ReadingName, type Readings, spokenReadings } from './readings.ts';

/** What turns a slipped reading back: a digit lost or doubled, or inches written where millimetres belong. */
const slips = [
  { by: 10, looks: 'ten times too short' },
  { by: 1 / 10, looks: 'ten times too long' },
  { by: 25.4, looks: 'like inches read as mm' },
  { by: 1 / 25.4, looks: 'like mm read as inches' },
] as const;

const opposite: readonly (readonly [ReadingName, ReadingName])[] = [
  ['front', 'back'],
  ['right', 'left'],
  ['diagonalAC', 'diagonalBD'],
];

/**
 * How far readings are from those of any rectangle.
 *
 * @param readings mm, all above 0
 * @returns the worst logarithm of a ratio that should be 1: opposite sides, both diagonals, a diagonal to its sides; 0
 *   when there is nothing to compare
 * @valid pieces meant as rectangles
 * @example mismatch({ front: 1800, back: 900 }) // => 0.693
 * @source plane geometry
 */
export function mismatch(readings: Readings): number {
  const ratios: number[] = [0];
  for (const [one, other] of opposite) {
    const [a, b] = [readings[one], readings[other]];
    if (a !== undefined && b !== undefined) ratios.push(Math.abs(Math.log(a / b)));
  }
  for (const [one, other, diagonal] of Object.values(cornerTriangles)) {
    const [a, b, d] = [readings[one], readings[other], readings[diagonal]];
    if (a !== undefined && b !== undefined && d !== undefined) ratios.push(Math.abs(Math.log(d / Math.hypot(a, b))));
  }
  return Math.max(...ratios);
}

/** Near enough to a rectangle for a slip to be the whole story: the logarithm of 5 percent. */
const nearRectangle = Math.log(1.05);
/** Repairs that differ by less, 1 percent, can't be told apart. */
const asNear = 0.01;
/** Less than this could be a crooked piece; a slip of ten is well above. */
const manifold = Math.log(5);

/**
 * The one reading that is ten times too long or short, or in inches among millimetres: put right, it
 * makes a near rectangle of readings that were nothing like one.
 *
 * @param readings mm, all above 0
 * @returns a `Problem` on the one, that says how it slipped and what it should be, or undefined when no single slip
 *   explains the readings. With only two to compare nobody can tell which: then it names both
 * @valid pieces meant as rectangles
 * @example slippedDigit({ front: 1800, right: 80, diagonalAC: 1970 })
 *   // => { field: 'right', message: { quantities: { 1: { value: 800 } } } }
 * @source assumption: a slip is a factor of 10 or 25.4, and leaves the rest within 5 percent of a rectangle
 */
export function slippedDigit(readings: Readings): Problem | undefined {
  if (mismatch(readings) < manifold && !brokenTriangle(readings)) return undefined;
  const repairs = measuredNames(readings).flatMap((name) =>
    slips.map(({ by, looks }) => {
      const value = readings[name] ?? 0;
      const likely = value * by;
      return { name, value, looks, likely, left: mismatch({ ...readings, [name]: likely }) };
    }),
  );
  const [best, ...rest] = repairs.sort((one, other) => one.left - other.left);
  if (!best || best.left >= nearRectangle) return undefined;
  const { name, value, looks, likely } = best;
  const rival = rest.find((other) => other.name !== name && other.left < best.left + asNear);
  const said = phrase`The ${spokenReadings[name]}, ${mm(value)},`;
  return rival
    ? problem(
        name,
        phrase`${said} and the ${spokenReadings[rival.name]} don’t fit: a digit slipped in one. Measure both again.`,
      )
    : problem(
        name,
        phrase`${said} looks ${looks}: about ${mm(Math.round(likely * 10) / 10)} would fit. Measure it again.`,
      );
}
