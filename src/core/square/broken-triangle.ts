import { cornerTriangles, type Readings } from './readings.ts';

/** Whether two sides and the diagonal across them, all measured, can't make a triangle (Euclid I.20). */
export function breaksTriangle(readings: Readings): boolean {
  return Object.values(cornerTriangles).some((names) => {
    const [a, b, c] = names.map((name) => readings[name]);
    return a !== undefined && b !== undefined && c !== undefined && 2 * Math.max(a, b, c) >= a + b + c;
  });
}
