import { breaksTriangle } from './broken-triangle.ts';
import { cornerTriangles, measuredNames, type ReadingName, type Readings } from './readings.ts';

/** What turns a slipped reading back: a digit lost or doubled, or inches written where millimetres belong. */
const slips = [
  { by: 10, kind: 'tenth' },
  { by: 1 / 10, kind: 'tenfold' },
  { by: 25.4, kind: 'inches' },
  { by: 1 / 25.4, kind: 'inches twice' },
] as const;

export interface SlippedDigit {
  readonly name: ReadingName;
  readonly kind: (typeof slips)[number]['kind'];
  /** What it should be, near enough, mm. */
  readonly likely: number;
  /** Another reading that may be the slipped one just as well: with only two to compare nobody can tell. */
  readonly or: ReadingName | null;
}

const opposite: readonly (readonly [ReadingName, ReadingName])[] = [
  ['front', 'back'],
  ['right', 'left'],
  ['diagonalAC', 'diagonalBD'],
];

/** How far the readings are from those of any rectangle: the worst logarithm of a ratio that should be 1. */
function mismatch(readings: Readings): number {
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
 * @returns which one and how it slipped, or undefined when no single slip explains the readings
 * @valid pieces meant as rectangles
 * @example slippedDigit({ front: 1800, right: 80, diagonalAC: 1970 }) // => { name: 'right', likely: 800 }
 * @source assumption: a slip is a factor of 10 or 25.4, and leaves the rest within 5 percent of a rectangle
 */
export function slippedDigit(readings: Readings): SlippedDigit | undefined {
  const before = mismatch(readings);
  if (before < manifold && !breaksTriangle(readings)) return undefined;
  const repairs = measuredNames(readings).flatMap((name) =>
    slips.map(({ by, kind }) => {
      const likely = (readings[name] ?? 0) * by;
      return { name, kind, likely, left: mismatch({ ...readings, [name]: likely }) };
    }),
  );
  const [best, ...rest] = repairs.sort((one, other) => one.left - other.left);
  if (!best || best.left >= nearRectangle) return undefined;
  const rival = rest.find(({ name, left }) => name !== best.name && left < best.left + asNear);
  return { name: best.name, kind: best.kind, likely: best.likely, or: rival?.name ?? null };
}
