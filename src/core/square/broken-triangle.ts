import { cornerTriangles, type Readings } from './readings.ts';

/** Two sides and the diagonal across them, all measured, that can't make a triangle (Euclid I.20); undefined when all can. */
export function brokenTriangle(readings: Readings) {
  return Object.values(cornerTriangles).find((names) => {
    const [a = 0, b = 0, c = 0] = names.map((name) => readings[name]);
    return a > 0 && b > 0 && c > 0 && 2 * Math.max(a, b, c) >= a + b + c;
  });
}
