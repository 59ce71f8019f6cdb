/**
 * The six lengths of a four-cornered piece. A is front left, B front right, C back right, D back left;
 * the front edge AB is the reference.
 */
export const lineNames = ['front', 'right', 'back', 'left', 'diagonalAC', 'diagonalBD'] as const;
export type LineName = (typeof lineNames)[number];

/** What can be read: a length, or how much longer diagonal AC is than BD, taken with a stick cut to one of them. */
export const readingNames = [...lineNames, 'difference'] as const;
export type ReadingName = (typeof readingNames)[number];

/** What was measured, mm; what was not is left out. */
export type Readings = Readonly<Partial<Record<ReadingName, number>>>;

export const cornerNames = ['A', 'B', 'C', 'D'] as const;
export type CornerName = (typeof cornerNames)[number];

/** The names as a maker says them. */
export const spokenReadings: Readonly<Record<ReadingName, string>> = {
  front: 'front edge',
  right: 'right end',
  back: 'back edge',
  left: 'left end',
  diagonalAC: 'diagonal A to C',
  diagonalBD: 'diagonal B to D',
  difference: 'difference of the diagonals',
};

/** The two sides that meet at a corner and the diagonal that faces it: three readings fix the corner's angle. */
export const cornerTriangles: Readonly<Record<CornerName, readonly [LineName, LineName, LineName]>> = {
  A: ['left', 'front', 'diagonalBD'],
  B: ['front', 'right', 'diagonalAC'],
  C: ['right', 'back', 'diagonalBD'],
  D: ['back', 'left', 'diagonalAC'],
};

/** The names of what was measured, in the order of `readingNames`. */
export function measuredNames(readings: Readings): ReadingName[] {
  return readingNames.filter((name) => readings[name] !== undefined);
}

/** The readings with one taken out. */
export function withoutReading(readings: Readings, name: ReadingName): Readings {
  const { [name]: _, ...rest } = readings;
  return rest;
}
