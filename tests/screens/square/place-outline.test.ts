import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exaggeratedOutline } from '../../../src/core/square/exaggerated-outline.ts';
import { cornerNames, lineNames } from '../../../src/core/square/readings.ts';
import { lineValues, plainOutline } from '../../../src/screens/square/outline-of.ts';
import { drawingWidth, placeArrow, placeLine, placeOutline } from '../../../src/screens/square/place-outline.ts';
import { emptyForm } from '../../../src/screens/square/square-form.ts';

const pieces = fc
  .record({
    length: fc.integer({ min: 50, max: 6000 }),
    width: fc.integer({ min: 50, max: 6000 }),
    lean: fc.double({ min: -0.05, max: 0.05, noNaN: true }),
  })
  .map(({ length, width, lean }) => ({
    A: { x: 0, y: 0 },
    B: { x: length, y: 0 },
    C: { x: length + lean * width, y: width },
    D: { x: lean * width, y: width },
  }));

test('the piece, its letters, values and arrows stay on the drawing, to one scale, the front edge lowest', () => {
  fc.assert(
    fc.property(pieces, (shape) => {
      const outline = exaggeratedOutline(shape);
      const placed = placeOutline(outline);
      const points = [
        ...cornerNames.map((name) => placed.corners[name]),
        ...lineNames.map((line) => placeLine(line, placed)),
        ...(['C', 'B'] as const).flatMap((corner) => {
          const { from, to } = placeArrow(corner, corner === 'C' ? 'D' : 'A', false, placed);
          return [from, to];
        }),
      ];
      for (const { x, y } of points) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(drawingWidth);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(placed.height);
      }
      expect(placed.corners.A.y).toBeGreaterThan(placed.corners.D.y);
      // To scale both ways; a millionth is rounding alone.
      const across = (placed.square.B.x - placed.square.A.x) / (outline.square.B.x - outline.square.A.x);
      const deep = (placed.square.A.y - placed.square.D.y) / (outline.square.D.y - outline.square.A.y);
      expect(across / deep).toBeCloseTo(1, 6);
    }),
  );
});

test('an arrow points the way that the corner goes', () => {
  const placed = placeOutline(plainOutline({ front: 1000, left: 500 }));
  const towards = placeArrow('C', 'D', true, placed);
  expect(towards.to.x).toBeLessThan(towards.from.x);
  const away = placeArrow('C', 'D', false, placed);
  expect(away.to.x).toBeGreaterThan(away.from.x);
});

test('before there is a shape the rectangle is as long and wide as typed, unless a size has slipped', () => {
  expect(plainOutline({ front: 1800, right: 600 }).corners.B.x).toBe(3);
  expect(plainOutline({ front: 1800, right: 60 }).corners.B.x).toBe(2);
});

test('values stand along their lines; with a stick, on the longer diagonal', () => {
  const units = { unit: 'in', nearest: 16 } as const;
  expect(lineValues({ ...emptyForm, way: 'readings' }, { front: 1219.2 }, units)).toEqual({ front: '48' });
  expect(
    lineValues({ ...emptyForm, way: 'stick', longer: 'diagonalBD' }, { front: 1219.2, difference: 6.35 }, units),
  ).toEqual({ front: '48', back: '48', diagonalBD: '+1/4' });
});
