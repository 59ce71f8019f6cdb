import fc from 'fast-check';
import { det } from 'mathjs';
import { expect, it } from 'vitest';
import { fitQuadrilateral } from '../../../src/core/square/fit-quadrilateral.ts';
import { cornerAngles, isConvex, lengthsOf, type Quadrilateral } from '../../../src/core/square/quadrilateral.ts';
import { lineNames, type Readings, withoutReading } from '../../../src/core/square/readings.ts';
import { anyShape, parallelogram } from '../../../src/core/square/shape-family.ts';
import { slidesOf } from '../../../src/core/square/slide.ts';
import { outside, outsideCases } from '../../setup/outside.ts';
import { crooked, errors, precision, read, size } from './random-pieces.ts';

const fitted = (readings: Readings): Quadrilateral => fitQuadrilateral(anyShape, readings).shape;

function expectSameShape(found: Quadrilateral, real: Quadrilateral, within: number): void {
  for (const name of ['A', 'B', 'C', 'D'] as const) {
    expect(Math.abs(found[name].x - real[name].x)).toBeLessThan(within);
    expect(Math.abs(found[name].y - real[name].y)).toBeLessThan(within);
  }
}

it('recovers the corners from six true readings, and from any five', () => {
  fc.assert(
    fc.property(crooked, fc.constantFrom(undefined, ...lineNames), (real, left) => {
      fc.pre(isConvex(real));
      const all = read(real);
      // The fit stops at steps of 1e-11 of the piece; a thin piece multiplies that by its length over its width, 120.
      expectSameShape(fitted(left ? withoutReading(all, left) : all), real, 1e-5 * real.B.x + 1e-4);
    }),
  );
});

it('recovers the slides from noisy readings within what their precision allows', () => {
  fc.assert(
    fc.property(crooked, errors, precision, (real, off, given) => {
      const { length, width } = { length: real.B.x, width: (real.C.y + real.D.y) / 2 };
      const reach = Math.min(given, length / 100, width / 100);
      const found = slidesOf(fitted(read(real, off, reach)));
      // Near a rectangle the least-squares slide is half of (front - back) + (right - left) width / length +
      // (BD - AC) diagonal / length, so errors of `reach` move it by at most reach (length + width + diagonal) / length.
      // A quarter more for a shape 3 percent off and for the second order.
      const most = (1.25 * reach * (length + width + Math.hypot(length, width))) / length + 1e-3;
      const real2 = slidesOf(real);
      expect(Math.abs(found.C - real2.C)).toBeLessThan(most);
      expect(Math.abs(found.D - real2.D)).toBeLessThan(most);
    }),
  );
});

it('lays four points in one plane: the Cayley-Menger determinant of the fitted lengths is 0', () => {
  // A pure number in units of the piece's diagonal; rounding of 5 x 5 is about 1e-14.
  const flat = outsideCases({
    what: 'Cayley-Menger determinant of fitted lengths: 0, four points in one plane',
    source: 'mathjs',
    at: 'det',
    tolerance: 1e-10,
    cases: 'random crooked pieces',
  });
  fc.assert(
    fc.property(crooked, errors, precision, (real, off, reach) => {
      const fit = lengthsOf(fitted(read(real, off, Math.min(reach, real.B.x / 100, real.C.y / 100))));
      const unit = fit.diagonalAC;
      const q = (name: keyof typeof fit) => (fit[name] / unit) ** 2;
      // 288 V² = 0 for points A, B, C, D in a plane.
      const volume = det([
        [0, 1, 1, 1, 1],
        [1, 0, q('front'), q('diagonalAC'), q('left')],
        [1, q('front'), 0, q('right'), q('diagonalBD')],
        [1, q('diagonalAC'), q('right'), 0, q('back')],
        [1, q('left'), q('diagonalBD'), q('back'), 0],
      ]);
      flat(volume, 0);
    }),
  );
});

it("encloses Bretschneider's area, and its corners add up to 360 degrees", () => {
  const cases = 'random crooked pieces';
  // Relative: the square root of a difference of squares of up to 1e14.
  const area = outsideCases({
    what: "area of a fitted piece over Bretschneider's",
    source: 'geometry',
    at: "Bretschneider's formula",
    tolerance: 1e-8,
    cases,
  });
  const angles = outsideCases({
    what: 'corners of a fitted piece added up, degrees',
    source: 'geometry',
    at: 'Euclid I.32',
    tolerance: 5e-10,
    cases,
  });
  fc.assert(
    fc.property(crooked, (real) => {
      const shape = fitted(read(real));
      const { front: a, right: b, back: c, left: d, diagonalAC: p, diagonalBD: q } = lengthsOf(shape);
      // 16 K² = 4 p² q² - (b² + d² - a² - c²)².
      const bretschneider = Math.sqrt(4 * p ** 2 * q ** 2 - (b ** 2 + d ** 2 - a ** 2 - c ** 2) ** 2) / 4;
      const { B, C, D } = shape;
      const shoelace = (B.x * C.y + (C.x * D.y - D.x * C.y)) / 2;
      area(shoelace / bretschneider, 1);
      const { A, B: atB, C: atC, D: atD } = cornerAngles(shape);
      angles(A + atB + atC + atD, 360);
    }),
  );
});

it('keeps the parallelogram law when both ends lean alike', () => {
  // Relative: rounding of squares and roots.
  const law = outsideCases({
    what: 'AC² + BD² over 2 (length² + width²) of a leaning panel',
    source: 'geometry',
    at: 'parallelogram law',
    tolerance: 5e-10,
    cases: 'random leaning panels',
  });
  fc.assert(
    fc.property(size, size, fc.double({ min: -0.02, max: 0.02, noNaN: true }), (length, width, lean) => {
      const difference = lean * Math.min(length, width);
      const { shape } = fitQuadrilateral(parallelogram, { front: length, left: width, difference });
      const { diagonalAC, diagonalBD } = lengthsOf(shape);
      law((diagonalAC ** 2 + diagonalBD ** 2) / (2 * (length ** 2 + width ** 2)), 1);
      expect(diagonalAC - diagonalBD).toBeCloseTo(difference, 5);
    }),
  );
});

it('stays as near to a rectangle as too few readings let it', () => {
  const shape = fitted({ front: 300, right: 400, diagonalAC: 500 });
  // What the fit leaves when it stops.
  outside({
    what: 'sides of 300 and 400 mm and their diagonal of 500 mm: corner, degrees',
    source: 'geometry',
    at: 'Euclid I.48, 3 4 5',
    expected: 90,
    got: cornerAngles(shape).B,
    tolerance: 5e-7,
  });
  expect(lengthsOf(shape).left).toBeCloseTo(400, 3);
  expect(lengthsOf(fitted({ diagonalAC: 500 })).diagonalAC).toBeCloseTo(500, 6);
  expect(lengthsOf(fitted({ diagonalAC: 500, left: 400 })).front).toBeCloseTo(300, 3);
});
