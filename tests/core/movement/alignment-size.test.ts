import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { type AlignmentKind, alignmentSize } from '../../../src/core/movement/alignment-size.ts';
import { mortiseLength } from '../../../src/core/movement/mortise-length.ts';
import { answered } from './woods.ts';

describe('alignmentSize', () => {
  it('follows the rules of thumb in an edge', () => {
    expect(answered(alignmentSize({ kind: 'loose-tenon', thickness: 21, angle: 90 })).value).toEqual({
      thickness: 7,
      depth: 21,
      offset: 10.5,
    });
    expect(answered(alignmentSize({ kind: 'spline', thickness: 20, angle: 90 })).value).toMatchObject({
      thickness: 5,
      depth: 7.5,
    });
  });

  // Plane geometry: in a 45 degree mitre a hole square to it, whose outer wall lies u from the outer corner along the mitre,
  // meets the outer face at depth u; 4 mm left square to the face take 4 x sqrt 2 off.
  it('keeps the room that a mitre has', () => {
    const { value } = answered(alignmentSize({ kind: 'loose-tenon', thickness: 20, angle: 45 }));
    const outerWall = 20 * Math.SQRT2 - 4 - 20 / 3;
    expect(value.depth).toBeCloseTo(outerWall - 4 * Math.SQRT2, 9);
    expect(value.offset).toBeCloseTo(4 + 10 / 3, 9);
  });

  it('never comes nearer to a face than it was told', () => {
    const kinds = fc.constantFrom<AlignmentKind>('loose-tenon', 'dowel', 'spline');
    fc.assert(
      fc.property(
        kinds,
        fc.double({ min: 5, max: 100, noNaN: true }),
        fc.double({ min: 20, max: 89, noNaN: true }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        (kind, stock, angle, remain) => {
          const answer = alignmentSize({ kind, thickness: stock, angle, remain });
          if (isProblem(answer)) return;
          const { thickness, depth, offset } = answer.value;
          const slope = (angle * Math.PI) / 180;
          // The outer corner of the mortise's bottom: up the mitre from the outer corner, then in square to it.
          const along = stock / Math.sin(slope) - offset - thickness / 2;
          const fromOuterFace = along * Math.sin(slope) - depth * Math.cos(slope);
          expect(fromOuterFace).toBeGreaterThanOrEqual(remain - 1e-9);
          expect(offset - thickness / 2).toBeGreaterThanOrEqual(remain - 1e-9);
        },
      ),
    );
  });

  it.each([
    ['thickness', { thickness: 8 }],
    ['thickness', { thickness: 0 }],
    ['angle', { angle: 10 }],
    ['remain', { remain: -1 }],
    ['kind', { kind: 'nail' as AlignmentKind }],
  ])('names %s', (field, wrong) => {
    expect(alignmentSize({ kind: 'loose-tenon', thickness: 20, angle: 45, ...wrong })).toMatchObject({
      kind: 'problem',
      field,
    });
  });
});

describe('mortiseLength', () => {
  it('is snug where it is glued, wide where it floats', () => {
    expect(answered(mortiseLength({ width: 40 })).value).toBe(40);
    expect(answered(mortiseLength({ width: 40, floats: { shrink: 1, swell: 1.5 } })).value).toBe(44.5);
  });

  it.each([
    ['width', { width: 0 }],
    ['margin', { margin: -1 }],
    ['floats.shrink', { floats: { shrink: -1, swell: 0 } }],
    ['floats.swell', { floats: { shrink: 1, swell: Number.NaN } }],
  ])('names %s', (field, wrong) => {
    expect(mortiseLength({ width: 40, ...wrong })).toMatchObject({ kind: 'problem', field });
  });
});
