import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { type AlignmentKind, alignmentSize } from '../../../src/core/movement/alignment-size.ts';
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

  it('leaves just enough to both faces of an edge', () => {
    expect(answered(alignmentSize({ kind: 'dowel', thickness: 12, angle: 90 })).value.thickness).toBe(4);
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
        (kind, stock, angle) => {
          const answer = alignmentSize({ kind, thickness: stock, angle });
          if (isProblem(answer)) return;
          const { thickness, depth, offset } = answer.value;
          const slope = (angle * Math.PI) / 180;
          // The outer corner of the mortise's bottom: up the mitre from the outer corner, then in square to it.
          const along = stock / Math.sin(slope) - offset - thickness / 2;
          const fromOuterFace = along * Math.sin(slope) - depth * Math.cos(slope);
          expect(fromOuterFace).toBeGreaterThanOrEqual(4 - 1e-9);
          expect(offset - thickness / 2).toBeGreaterThanOrEqual(4 - 1e-9);
        },
      ),
    );
  });

  it.each([
    ['thickness', { thickness: 8 }],
    ['thickness', { thickness: 0 }],
    ['angle', { angle: 10 }],
    ['thickness', { thickness: 11.9, angle: 90 }],
  ])('names %s', (field, wrong) => {
    expect(alignmentSize({ kind: 'loose-tenon', thickness: 20, angle: 45, ...wrong })).toMatchObject({
      kind: 'problem',
      field,
    });
  });
});
