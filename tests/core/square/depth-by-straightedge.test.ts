import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { depthByStraightedge } from '../../../src/core/square/depth-by-straightedge.ts';
import { straightedgeTest } from '../../../src/core/square/straightedge-test.ts';
import { outsideCases } from '../../setup/outside.ts';

/** Exact depth of a circle's arc over a chord: half chord squared is depth times the rest of the diameter. */
const arcDepth = (radius: number, chord: number) => radius - Math.sqrt(radius ** 2 - (chord / 2) ** 2);

const depth = (...given: Parameters<typeof depthByStraightedge>) => {
  const found = depthByStraightedge(...given);
  if (isProblem(found)) throw new Error(found.message.text);
  return found.value;
};

test('a hollow seen under an edge that is an arc itself comes out as it is', () => {
  // A circle and a parabola part by less than a hundred-thousandth of a curve as shallow as this.
  const same = outsideCases({
    what: 'hollow under a straightedge that is an arc, in parts of what the edge is out (least 0.05 mm)',
    source: 'geometry',
    at: 'Euclid III.35',
    tolerance: 2e-5,
    cases: 'random edges of 300 to 2000 mm',
  });
  fc.assert(
    fc.property(
      fc.double({ min: 300, max: 2000, noNaN: true }),
      fc.double({ min: 0.1, max: 1, noNaN: true }),
      fc.double({ min: -0.002, max: 0.002, noNaN: true }),
      fc.double({ min: 2, max: 20, noNaN: true }),
      (length, part, bend, hollow) => {
        const error = bend * length;
        if (Math.abs(error) < 1e-3) return;
        const over = part * length;
        // The edge as a circle through its error at full length; its flip test doubles what it is out.
        const radius = length ** 2 / (8 * Math.abs(error)) + Math.abs(error) / 2;
        const crown = Math.sign(error) * arcDepth(radius, over);
        const tested = straightedgeTest(2 * error, length);
        if (isProblem(tested) || hollow - crown < 0) return;
        const found = depth(hollow - crown, over, { error: tested.value, length });
        same((found - hollow) / Math.max(0.05, Math.abs(error)), 0);
      },
    ),
  );
});

test('a crowned edge hides, a hollow one adds, and below nothing there is no depth', () => {
  // By hand: a quarter of the error over half of the length.
  expect(depth(2, 450, { error: 0.4, length: 900 })).toBeCloseTo(2.1, 9);
  expect(depth(2, 450, { error: -0.4, length: 900 })).toBeCloseTo(1.9, 9);
  expect(depth(0.05, 450, { error: -0.4, length: 900 })).toBe(0);
});

test.each<[string, Parameters<typeof depthByStraightedge>]>([
  ['over', [1, 901, { error: 0.1, length: 900 }]],
  ['over', [1, 0, { error: 0.1, length: 900 }]],
  ['seen', [-1, 200, { error: 0.1, length: 900 }]],
  ['seen', [Number.NaN, 200, { error: 0.1, length: 900 }]],
  ['length', [1, 200, { error: 0.1, length: Number.NaN }]],
])('what can’t be is refused at %s', (field, given) => {
  expect(depthByStraightedge(...given)).toMatchObject({ kind: 'problem', field });
});
