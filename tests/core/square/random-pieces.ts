import fc from 'fast-check';
import { lengthsOf, type Quadrilateral } from '../../../src/core/square/quadrilateral.ts';
import { lineNames, type Readings } from '../../../src/core/square/readings.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

/** Sizes of furniture, mm. */
export const size = between(50, 6000);

export const rectangleOf = (length: number, width: number): Quadrilateral => ({
  A: { x: 0, y: 0 },
  B: { x: length, y: 0 },
  C: { x: length, y: width },
  D: { x: 0, y: width },
});

/** A rectangle with its back corners moved by up to 3 percent of the shorter side. */
export const crooked = fc
  .record({ length: size, width: size, off: fc.tuple(...Array.from({ length: 4 }, () => between(-0.03, 0.03))) })
  .map(({ length, width, off: [cx = 0, cy = 0, dx = 0, dy = 0] }): Quadrilateral => {
    const by = Math.min(length, width);
    const { A, B, C, D } = rectangleOf(length, width);
    return { A, B, C: { x: C.x + cx * by, y: C.y + cy * by }, D: { x: D.x + dx * by, y: D.y + dy * by } };
  });

/** Errors of the six readings, from -1 to 1 times the precision. */
export const errors = fc.tuple(...Array.from({ length: 6 }, () => between(-1, 1)));

export const precision = between(0, 2);

/** What a maker would read off the piece, each reading off by its error times the precision. */
export function read(shape: Quadrilateral, by: readonly number[] = [], reach = 0): Readings {
  const lengths = lengthsOf(shape);
  return Object.fromEntries(lineNames.map((name, i) => [name, lengths[name] + (by[i] ?? 0) * reach]));
}
