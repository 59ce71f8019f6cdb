import fc from 'fast-check';
import { expect, it } from 'vitest';
import { isProblem, type Outcome } from '../../../src/core/answer/problem.ts';
import { bevelWidth } from '../../../src/core/square/bevel-width.ts';
import { foldedBox } from '../../../src/core/square/folded-box.ts';
import { mitreFrame } from '../../../src/core/square/mitre-frame.ts';
import { mitreGap } from '../../../src/core/square/mitre-gap.ts';
import { oppositeParts } from '../../../src/core/square/opposite-parts.ts';
import { outsideCases } from '../../setup/outside.ts';

function answer<T>(found: Outcome<{ value: T }>): T {
  if (isProblem(found)) throw new Error(found.field);
  return found.value;
}

it('bevels as wide as the board is thick at 45 degrees, and closes a right triangle at any tilt', () => {
  expect(answer(bevelWidth(20))).toMatchObject({
    onFace: expect.closeTo(20, 9),
    bevel: expect.closeTo(20 * Math.SQRT2, 9),
  });
  // Rounding of sines and roots.
  const same = outsideCases({
    what: 'bevel width against the hypotenuse of its own face and thickness, mm',
    source: 'geometry',
    at: 'Euclid I.47',
    tolerance: 5e-10,
    cases: 'random boards of 1 to 100 mm, tilts of 1 to 60 degrees',
  });
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 100, noNaN: true }),
      fc.double({ min: 1, max: 60, noNaN: true }),
      (thickness, angle) => {
        const { onFace, bevel } = answer(bevelWidth(thickness, angle));
        same(bevel, Math.hypot(onFace, thickness));
      },
    ),
  );
});

it('folds into a box whose inside is two bevels less than its outside', () => {
  const inside = answer(foldedBox(300, 200, 12, 'inside', 4));
  expect(inside).toEqual({ longPoints: [324, 224, 324, 224], shortPoints: [300, 200, 300, 200], board: 1108 });
  expect(answer(foldedBox(324, 224, 12, 'outside', 4))).toEqual(inside);
});

/** Two pieces at a square corner, points of 45 + half the error each: how far their cuts part, by laying them out. */
function laidOut(error: number, joint: number): number {
  const point = ((45 + error / 2) * Math.PI) / 180;
  // Too sharp: points meet at the corner; the heels, `joint` along each cut, part by 2 joint sin(half the opening).
  const opening = Math.PI / 2 - 2 * point;
  return 2 * joint * Math.sin(Math.abs(opening) / 2);
}

it('opens a mitre where the points do not meet', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -3, max: 3, noNaN: true }),
      fc.double({ min: 10, max: 200, noNaN: true }),
      (error, joint) => {
        const { gap, opens } = answer(mitreGap(error, joint));
        // Tangent against chord: the third order of 3 degrees, 0.11 percent.
        expect(Math.abs(gap - laidOut(error, joint))).toBeLessThan(gap * 2e-3 + 1e-9);
        expect(opens).toBe(error === 0 ? null : error < 0 ? 'inside' : 'outside');
      },
    ),
  );
});

it('adds eight cuts up to the last corner, and the shared correction closes it', () => {
  // 8 x -0.1 = -0.8 degrees; 80 x tan 0.8 = 1.117.
  const found = answer(mitreFrame(new Array(8).fill(-0.1), 80));
  expect(found.sum).toBeCloseTo(-0.8, 12);
  expect(found.last.gap).toBeCloseTo(1.117, 3);
  expect(found.last.opens).toBe('inside');
  expect(found.say.text).toBe('Cut every point {0} blunter and the last corner closes.');
  expect(found.lastCorner).toBeCloseTo(0.4, 12);
  fc.assert(
    fc.property(fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 8, maxLength: 8 }), (errors) => {
      const { eachCut, lastCorner, sum } = answer(mitreFrame(errors, 80));
      expect(
        answer(
          mitreFrame(
            errors.map((error) => error + eachCut),
            80,
          ),
        ).last.gap,
      ).toBeCloseTo(0, 9);
      expect(sum + 2 * lastCorner).toBeCloseTo(0, 9);
    }),
  );
  expect(answer(mitreFrame([0.5, -0.5, 0, 0, 0, 0, 0, 0], 80))).toMatchObject({
    last: { opens: null },
    say: { text: 'The last corner closes.' },
  });
});

it('looks at opposite parts first', () => {
  const lengths = { front: 401.5, back: 400, right: 300, left: 300.8 };
  expect(answer(oppositeParts(lengths, 0.5))).toMatchObject({
    trims: [{ part: 'front', by: 1.5 }],
    say: { text: 'Trim the front part by {0}.', quantities: { 0: { value: 1.5, unit: 'mm' } } },
  });
  expect(answer(oppositeParts(lengths, 0.2)).trims.map(({ part }) => part)).toEqual(['front', 'left']);
  expect(answer(oppositeParts(lengths, 1)).say.text).toBe('Opposite parts are equal.');
});

it.each([
  [bevelWidth(0), 'thickness'],
  [bevelWidth(20, 90), 'angle'],
  [foldedBox(300, 200, -1, 'inside', 4), 'thickness'],
  [foldedBox(300, 200, 12, 'inside', -4), 'loss'],
  [foldedBox(0, 200, 12, 'inside', 4), 'length'],
  [foldedBox(300, 20, 12, 'outside', 4), 'width'],
  [mitreGap(20, 80), 'error'],
  [mitreGap(1, 0), 'joint'],
  [mitreFrame([1], 80), 'errors'],
  [mitreFrame([0, 0, 0, Number.NaN, 0, 0, 0, 0], 80), 'errors.3'],
  [mitreFrame(new Array(8).fill(2), 80), 'errors'],
  [mitreFrame(new Array(8).fill(0.1), 0), 'joint'],
  [oppositeParts({ front: 1, back: 1, right: 0, left: 1 }, 0.5), 'right'],
  [oppositeParts({ front: 1, back: 1, right: 1, left: 1 }, -1), 'precision'],
])('refuses impossible input %#', (found, field) => {
  expect(found).toMatchObject({ kind: 'problem', field });
});
