import { lengthsOf, type Quadrilateral } from './quadrilateral.ts';
import { measuredNames, type ReadingName, type Readings } from './readings.ts';

/** One measured thing, mm: a length, or how much longer diagonal AC is than BD, taken with a stick. */
export interface Observation {
  readonly of: ReadingName | 'difference';
  readonly value: number;
}

/** What was read, mm, as observations in the order of `readingNames`. */
export function observationsOf(readings: Readings): Observation[] {
  return measuredNames(readings).map((name) => ({ of: name, value: readings[name] ?? 0 }));
}

/** What would be read off this shape, mm, in the order of the observations. */
export function expectedOf(shape: Quadrilateral, observations: readonly Observation[]): number[] {
  const lengths = lengthsOf(shape);
  return observations.map(({ of }) => (of === 'difference' ? lengths.diagonalAC - lengths.diagonalBD : lengths[of]));
}

/** Length and width, mm, of the rectangle that these observations suggest: where a fit starts. */
export function nominalSize(observations: readonly Observation[]): { length: number; width: number } {
  const mean = (...names: ReadingName[]) => {
    const found = observations.filter(({ of }) => names.includes(of as ReadingName));
    return found.length === 0 ? undefined : found.reduce((sum, { value }) => sum + value, 0) / found.length;
  };
  const diagonal = mean('diagonalAC', 'diagonalBD');
  const front = mean('front', 'back');
  const side = mean('right', 'left');
  const other = (known: number | undefined) =>
    diagonal === undefined
      ? (known ?? 1)
      : known === undefined
        ? diagonal / Math.SQRT2
        : Math.sqrt(Math.max(diagonal ** 2 - known ** 2, (known / 100) ** 2));
  return { length: front ?? other(side), width: side ?? other(front) };
}
