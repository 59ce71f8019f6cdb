import fc from 'fast-check';
import { multiply, subtract } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { reachableThickness, warpCost } from '../../../src/core/milling/reachable-thickness.ts';
import { straightWidth } from '../../../src/core/milling/straight-width.ts';
import { outside, outsideCases } from '../../setup/outside.ts';

const flat = { thickness: 28, width: 250, length: 2400, cup: 0, bow: 0, twist: 0 };

/** Depth of a true circular arc over a shorter chord, found from its radius. */
function arcDepth(depth: number, chord: number, shorter: number): number {
  const radius = (chord ** 2 / 4 + depth ** 2) / (2 * depth);
  return radius - Math.sqrt(radius ** 2 - shorter ** 2 / 4);
}

/** Thickest flat slab inside a twisted board z = k x y of constant thickness, found corner by corner with matrices. */
function slabInTwist(thickness: number, lift: number): number {
  const corners = [
    [-0.5, -0.5],
    [0.5, -0.5],
    [0.5, 0.5],
    [-0.5, 0.5],
  ];
  // The corner opposite to three that rest lifts by k w l; about the middle the corners stand at k x y.
  const heights = corners.map(([x = 0, y = 0]) => multiply(multiply(x, y), lift) as number);
  return subtract(thickness / 2 + Math.min(...heights), Math.max(...heights) - thickness / 2);
}

describe('reachable thickness', () => {
  it('is 24.33 for the worked example', () => {
    // 28 - 2.5 x (125 / 250)^2 - 6 x (1000 / 2400)^2 - 2 x 1 by hand; two decimals as it was stated
    expect(reachableThickness({ ...flat, cup: 2.5, bow: 6 }, 125, 1000, 1)).toBeCloseTo(24.33, 2);
  });

  it('loses to cup and bow what a true arc would, within a hundredth for shallow curves', () => {
    // tolerance: the square law drops terms of the order depth^3 / chord^2, under 0.01 mm for these depths
    const same = outsideCases({
      what: 'what cup and bow cost in thickness, against a true circular arc, mm',
      source: 'geometry',
      at: 'Euclid III.35',
      tolerance: 0.01,
      cases: 'random boards, cup and bow of 0.1 to 6 mm',
    });
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 6, noNaN: true }),
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        (depth, share) => {
          const cost = warpCost({ ...flat, cup: depth, bow: depth }, 250 * share, 2400 * share);
          same([cost.cup, cost.bow], [arcDepth(depth, 250, 250 * share), arcDepth(depth, 2400, 2400 * share)]);
        },
      ),
    );
  });

  it('loses to twist half the lift of a corner: the thickest slab in a twisted board', () => {
    // exact but for rounding
    const same = outsideCases({
      what: 'thickness left in a twisted board, against the slab found corner by corner with matrices, mm',
      source: 'mathjs',
      at: 'multiply, subtract',
      tolerance: 5e-10,
      cases: 'random twists up to 20 mm',
    });
    fc.assert(
      fc.property(fc.double({ min: 0, max: 20, noNaN: true }), (lift) => {
        const left = reachableThickness({ ...flat, twist: lift }, 250, 2400, 0);
        same(left, slabInTwist(28, lift));
      }),
    );
  });

  it('never falls when a piece is made shorter or narrower, and never below zero', () => {
    const side = fc.double({ min: 0.05, max: 1, noNaN: true });
    fc.assert(
      fc.property(side, side, fc.nat(30), fc.nat(60), fc.nat(40), (across, along, cup, bow, twist) => {
        const warped = { ...flat, cup, bow, twist };
        const left = reachableThickness(warped, 250 * across, 2400 * along, 1);
        expect(left).toBeGreaterThanOrEqual(0);
        expect(reachableThickness(warped, 125 * across, 2400 * along, 1)).toBeGreaterThanOrEqual(left);
        expect(reachableThickness(warped, 250 * across, 1200 * along, 1)).toBeGreaterThanOrEqual(left);
      }),
    );
  });
});

describe('straight width', () => {
  it('loses the arc of the crook over the blank’s length', () => {
    expect(straightWidth(200, 2400, 12, 1200)).toBe(197);
    // within a hundredth as above
    outside({
      what: '200 x 2400 mm with 12 mm of crook, blank of 900 mm, against a true circular arc: straight width, mm',
      source: 'geometry',
      at: 'Euclid III.35',
      expected: 200 - arcDepth(12, 2400, 900),
      got: straightWidth(200, 2400, 12, 900),
      tolerance: 0.005,
    });
    expect(straightWidth(5, 2400, 30, 2400)).toBe(0);
  });
});
