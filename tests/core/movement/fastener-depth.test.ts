import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { fastenerDepth } from '../../../src/core/movement/fastener-depth.ts';
import { answered } from './woods.ts';

const screw = { length: 30, thickness: 25, through: 20, counterbore: 8 };

describe('fastenerDepth', () => {
  it('gives reach, hole, wood remaining and the depth stop', () => {
    expect(answered(fastenerDepth(screw)).value).toEqual({ reach: 18, hole: 19, remaining: 6, depthStop: 39 });
  });

  it('takes an insert, which goes through nothing first', () => {
    expect(answered(fastenerDepth({ length: 13, thickness: 20 })).value).toEqual({
      reach: 13,
      hole: 14,
      remaining: 6,
      depthStop: 14,
    });
  });

  it.each([
    ['a screw that comes out of the far side', { ...screw, length: 38 }],
    ['a screw that just reaches the face', { ...screw, length: 37 }],
    ['a hole that comes through though the screw does not', { ...screw, length: 36.5 }],
    ['an insert as long as the part is thick', { length: 20, thickness: 20 }],
  ])('stops %s', (_what, input) => {
    expect(fastenerDepth(input)).toMatchObject({
      field: 'length',
      message: { text: expect.stringContaining('come through') },
    });
  });

  it('asks for the wood that must remain', () => {
    expect(fastenerDepth({ ...screw, length: 34 })).toMatchObject({
      message: { text: expect.stringContaining('remain') },
    });
    expect(fastenerDepth({ ...screw, length: 34, remain: 2 })).not.toHaveProperty('field');
  });

  it("says when it doesn't reach", () => {
    expect(fastenerDepth({ ...screw, length: 12 })).toMatchObject({
      message: { text: expect.stringContaining('reach') },
    });
  });

  it('never lets a hole through', () => {
    const size = fc.double({ min: 0.1, max: 100, noNaN: true });
    fc.assert(
      fc.property(size, size, size, (length, thickness, through) => {
        const answer = fastenerDepth({ length, thickness, through });
        return isProblem(answer) || (answer.value.hole <= thickness - 3 + 1e-9 && answer.value.reach > 0);
      }),
    );
  });

  it.each([
    ['length', { length: 0 }],
    ['thickness', { thickness: Number.NaN }],
    ['through', { through: -1 }],
    ['counterbore', { counterbore: -1 }],
    ['counterbore', { counterbore: 20 }],
    ['remain', { remain: -1 }],
  ])('names %s', (field, wrong) => {
    expect(fastenerDepth({ ...screw, ...wrong })).toMatchObject({ kind: 'problem', field });
  });
});
