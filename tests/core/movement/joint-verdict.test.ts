import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { phrasePieces } from '../../../src/core/answer/phrase.ts';
import type { GrainAtSeam, JointSide, Surface } from '../../../src/core/movement/joint-side.ts';
import { type JointInput, jointVerdict } from '../../../src/core/movement/joint-verdict.ts';
import type { Wood } from '../../../src/core/movement/part-movement.ts';
import { outside } from '../../setup/outside.ts';
import { answered, cherry, wood } from './woods.ts';

const seasons = { today: 8, dry: 6, wet: 11 };
const maple = wood('maple, red');
const quartered = wood('cherry, black', 'quarter');

function side(name: string, surface: Surface, grain: GrainAtSeam, of: Wood = cherry): JointSide {
  return { name, surface, grain, wood: of };
}

interface Case {
  readonly joint: string;
  readonly first: JointSide;
  readonly second: JointSide;
  readonly length: number;
  readonly breadth?: number;
  readonly advice: string;
  /** Movement apart in mm, by hand: width x coefficient x change from 8 %, the larger of both ways. */
  readonly worst: number;
  readonly because: string;
}

const joints: readonly Case[] = [
  {
    joint: 'two boards of a panel, edge to edge',
    first: side('board 1', 'edge', 'along'),
    second: side('board 2', 'edge', 'along'),
    length: 1200,
    advice: 'glue',
    worst: 0,
    because: 'Long grain to long grain',
  },
  {
    joint: 'a cherry edge to a maple edge',
    first: side('cherry', 'edge', 'along'),
    second: side('maple', 'edge', 'along', maple),
    length: 1200,
    advice: 'glue',
    worst: 0,
    because: 'Long grain to long grain',
  },
  {
    joint: 'two faces laminated, the grain of both the same way',
    first: side('ply 1', 'face', 'along'),
    second: side('ply 2', 'face', 'along'),
    length: 900,
    breadth: 80,
    advice: 'glue',
    worst: 0,
    because: 'Long grain to long grain',
  },
  {
    joint: 'a wide quarter-sawn face on a flat-sawn one, the same way',
    first: side('core', 'face', 'along', quartered),
    second: side('skin', 'face', 'along'),
    length: 900,
    breadth: 400,
    advice: 'float',
    // 400 x (0.00248 - 0.00126) x 3
    worst: 1.464,
    because: 'don’t move alike',
  },
  {
    joint: 'a cleat across a chest lid',
    first: side('lid', 'face', 'across'),
    second: side('cleat', 'face', 'along'),
    length: 450,
    breadth: 40,
    advice: 'float',
    // 450 x 0.00248 x 3
    worst: 3.348,
    because: 'crosses',
  },
  {
    joint: 'a runner across a narrow case side',
    first: side('side', 'face', 'across'),
    second: side('runner', 'edge', 'along'),
    length: 150,
    breadth: 15,
    advice: 'glue-stretch',
    // 150 x 0.00248 x 3
    worst: 1.116,
    because: 'Glue one stretch',
  },
  {
    joint: 'a runner across a quarter-sawn narrow side',
    first: side('side', 'face', 'across', quartered),
    second: side('runner', 'edge', 'along'),
    length: 150,
    breadth: 15,
    advice: 'glue',
    // 150 x 0.00126 x 3
    worst: 0.567,
    because: 'only {0} apart',
  },
  {
    joint: 'a half lap of two narrow rails',
    first: side('rail', 'face', 'across'),
    second: side('stile', 'face', 'along'),
    length: 60,
    breadth: 60,
    advice: 'glue',
    // 60 x 0.00248 x 3
    worst: 0.4464,
    because: 'only {0} apart',
  },
  {
    joint: 'two wide faces that cross',
    first: side('top', 'face', 'across'),
    second: side('base', 'face', 'along'),
    length: 300,
    breadth: 400,
    advice: 'float',
    // The base across the seam: 400 x 0.00248 x 3.
    worst: 2.976,
    because: 'crosses',
  },
  {
    joint: 'a mitred case corner, the grain running on around',
    first: side('top', 'mitre', 'across'),
    second: side('side', 'mitre', 'across'),
    length: 300,
    advice: 'glue',
    worst: 0,
    because: 'runs on around the mitre',
  },
  {
    joint: 'a mitred corner along the grain of both',
    first: side('front', 'mitre', 'along'),
    second: side('side', 'mitre', 'along'),
    length: 800,
    advice: 'glue',
    worst: 0,
    because: 'Long grain to long grain',
  },
  {
    joint: "a mitred corner where one side's grain runs on and the other's crosses",
    first: side('side', 'mitre', 'across'),
    second: side('back', 'mitre', 'along'),
    length: 300,
    advice: 'align',
    // 300 x 0.00248 x 3
    worst: 2.232,
    because: 'The grain of side runs on around the corner, that of back crosses',
  },
  {
    joint: 'the same the other way round',
    first: side('back', 'mitre', 'along'),
    second: side('side', 'mitre', 'across'),
    length: 300,
    advice: 'align',
    worst: 2.232,
    because: 'The grain of side runs on around the corner, that of back crosses',
  },
  {
    joint: 'such a corner so shallow that it moves within the limit',
    first: side('side', 'mitre', 'across'),
    second: side('back', 'mitre', 'along'),
    length: 50,
    advice: 'align',
    // 50 x 0.00248 x 3
    worst: 0.372,
    because: 'end grain meets long grain',
  },
  {
    joint: 'a deep mitred corner of a flat-sawn and a quarter-sawn panel',
    first: side('top', 'mitre', 'across'),
    second: side('side', 'mitre', 'across', quartered),
    length: 300,
    advice: 'align',
    // 300 x (0.00248 - 0.00126) x 3
    worst: 1.098,
    because: 'don’t move alike',
  },
  {
    joint: "a rail's end to a post's edge",
    first: side('rail', 'end', 'across'),
    second: side('post', 'edge', 'along'),
    length: 70,
    advice: 'mechanical',
    // 70 x 0.00248 x 3
    worst: 0.5208,
    because: 'tenon, dovetails, dowels or screws',
  },
  {
    joint: 'a breadboard end',
    first: side('top', 'end', 'across'),
    second: side('breadboard', 'edge', 'along'),
    length: 600,
    advice: 'mechanical',
    // 600 x 0.00248 x 3
    worst: 4.464,
    because: 'let it move',
  },
  {
    joint: 'a dovetailed drawer corner',
    first: side('front', 'face', 'across'),
    second: side('side', 'end', 'across'),
    length: 120,
    advice: 'mechanical',
    worst: 0,
    because: 'End grain to long grain',
  },
  {
    joint: 'two boards end to end',
    first: side('board 1', 'end', 'across'),
    second: side('board 2', 'end', 'across'),
    length: 120,
    advice: 'mechanical',
    worst: 0,
    because: 'End grain to end grain',
  },
];

describe('jointVerdict', () => {
  it.each(joints)('$joint: $advice', ({ joint, first, second, length, breadth, advice, worst, because }) => {
    const { value, working } = answered(
      jointVerdict({ sides: [first, second], length, seasons, ...(breadth !== undefined && { breadth }) }),
    );
    // By hand to four decimals.
    const what = `${joint}: movement apart, mm`;
    outside({ what, source: 'wood-handbook', at: 'Table 13-5', expected: worst, got: value.worst, tolerance: 5e-5 });
    outside({ what: `${joint}: verdict`, source: 'common-practice', expected: advice, got: value.advice });
    expect(value.reason.text).toContain(because);
    expect(working.sources).toContain('common-practice');
    // No placeholder is left without its quantity.
    expect(phrasePieces(value.reason).some((piece) => typeof piece === 'string' && piece.includes('{'))).toBe(false);
  });

  const lid: JointInput = {
    sides: [side('lid', 'face', 'across'), side('cleat', 'face', 'along')],
    length: 450,
    seasons,
  };

  it('says how long a stretch stays within the limit', () => {
    const { glueStretch } = answered(jointVerdict(lid)).value;
    // As long as 0.6 mm of movement over 3 %: 0.6 / (0.00248 x 3).
    expect(glueStretch).toBeCloseTo(80.645, 3);
    expect(answered(jointVerdict({ ...lid, length: glueStretch * 0.999 })).value.advice).toBe('glue');
  });

  it('counts the moisture that the parts read today', () => {
    // From 12 % the lid shrinks 6 % and never swells: 450 x 0.00248 x 6.
    expect(answered(jointVerdict({ ...lid, seasons: { ...seasons, today: 12 } })).value).toMatchObject({
      worst: expect.closeTo(6.696, 9),
      shrink: expect.closeTo(6.696, 9),
      swell: 0,
    });
  });

  it('marks what rests on a guess', () => {
    const guessed: Wood = { figures: { shrinkage: { volumetric: 12, source: 'label' } }, cut: 'flat' };
    expect(
      answered(jointVerdict({ ...lid, sides: [side('lid', 'face', 'across', guessed), lid.sides[1]] })).value.estimated,
    ).toBe(true);
  });

  it('is the same whichever part is named first', () => {
    const surfaces = fc.constantFrom<[Surface, GrainAtSeam]>(
      ['edge', 'along'],
      ['face', 'along'],
      ['face', 'across'],
      ['end', 'across'],
    );
    const woods = fc.constantFrom(cherry, maple, quartered);
    fc.assert(
      fc.property(
        surfaces,
        surfaces,
        woods,
        woods,
        fc.integer({ min: 10, max: 2000 }),
        fc.integer({ min: 0, max: 600 }),
        (a, b, woodA, woodB, length, breadth) => {
          const first = side('a', ...a, woodA);
          const second = side('b', ...b, woodB);
          const one = answered(jointVerdict({ sides: [first, second], length, breadth, seasons })).value;
          const other = answered(jointVerdict({ sides: [second, first], length, breadth, seasons })).value;
          expect(other.advice).toBe(one.advice);
          expect(other.worst).toBeCloseTo(one.worst, 9);
        },
      ),
    );
  });

  it('never gets bolder as the joint gets longer', () => {
    const boldness = ['float', 'glue-stretch', 'glue'];
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 2000 }), fc.integer({ min: 1, max: 500 }), (length, more) => {
        const at = (long: number): number =>
          boldness.indexOf(answered(jointVerdict({ ...lid, length: long })).value.advice);
        return at(length + more) <= at(length);
      }),
    );
  });

  it.each([
    ['sides', { sides: [side('a', 'edge', 'across'), lid.sides[1]] }],
    ['sides', { sides: [lid.sides[0], side('a', 'end', 'along')] }],
    ['sides', { sides: [side('a', 'mitre', 'across'), lid.sides[1]] }],
    ['length', { length: 0 }],
    ['length', { length: Number.NaN }],
    ['breadth', { breadth: -1 }],
    ['seasons.today', { seasons: { ...seasons, today: 35 } }],
    ['seasons.today', { seasons: { ...seasons, today: -1 } }],
    ['seasons.wet', { seasons: { ...seasons, dry: 11, wet: 6 } }],
    ['species', { sides: [side('lid', 'face', 'across', { figures: {}, cut: 'flat' }), lid.sides[1]] }],
    ['species', { breadth: 40, sides: [lid.sides[0], side('cleat', 'face', 'along', { figures: {}, cut: 'flat' })] }],
  ] as const)('names %s', (field, wrong) => {
    expect(jointVerdict({ ...lid, ...wrong })).toMatchObject({ kind: 'problem', field });
  });
});
