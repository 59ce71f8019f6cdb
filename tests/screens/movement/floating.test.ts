import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isProblem, type Outcome } from '../../../src/core/answer/problem.ts';
import { attachTop, usualAttached } from '../../../src/screens/movement/attach-top.ts';
import { caseCorners } from '../../../src/screens/movement/case-corners.ts';
import { needsSlots } from '../../../src/screens/movement/joint-slots.ts';
import { laterCuts } from '../../../src/screens/movement/later-cuts.ts';
import { mortises } from '../../../src/screens/movement/mortises.ts';
import { type Judged, judge } from '../../../src/screens/movement/read-joint.ts';
import type { Joint, Part } from '../../../src/store/records/piece.ts';
import { outside } from '../../setup/outside.ts';
import { cleat, joint, lid, part, seasons } from './samples.ts';

function answered<T>(outcome: Outcome<T>): T {
  return isProblem(outcome) ? expect.fail(`${outcome.field}: ${outcome.message.text}`) : outcome;
}

const apron = part('apron', 480, 90, 20, { panel: false });
const judged = (of: Joint, ...parts: Part[]): Judged => answered(judge(of, parts, seasons));

describe('a top on an apron', () => {
  const top = judged(joint('top', lid, apron), lid, apron);

  // Movement by hand with cherry's coefficient 0.00248, 240 mm from the middle:
  // shrinks 240 x 0.00248 x 2 = 1.19, swells 240 x 0.00248 x 3 = 1.79 mm.
  const swell = 240 * 0.00248 * 3;
  const shrink = 240 * 0.00248 * 2;

  test('hangs on buttons with room to swell', () => {
    const set = answered(attachTop(top, usualAttached('button', top.contact.length)));
    // Doubles leave only rounding.
    outside({
      what: 'button under a black cherry top, 240 mm from its middle, 8 to 11 %: gap, mm',
      source: 'wood-handbook',
      at: 'Table 13-5',
      expected: swell + 1,
      got: set.value.setting,
      tolerance: 5e-10,
    });
    expect(set.working.sources).toContain('wood-handbook');
  });

  test('hangs on brackets whose spare is the same both ways', () => {
    const slotted = answered(attachTop(top, usualAttached('slotted-bracket', 480)));
    expect(slotted.value.setting).toBeCloseTo(swell + (16 - 4 - swell - shrink) / 2, 9);
    const swivel = answered(attachTop(top, usualAttached('swivel-bracket', 480)));
    expect(swivel.value.setting).toBeCloseTo(swell + (12 - swell - shrink) / 2, 9);
  });

  test.each([
    ['distance', { kind: 'button', distance: 0, grooveDepth: 10 }],
    ['distance', { kind: 'button', distance: 500, grooveDepth: 10 }],
    ['grooveDepth', { kind: 'button', distance: 240, grooveDepth: 6 }],
    ['slot', { kind: 'slotted-bracket', distance: 240, slot: 8, shank: 4 }],
    ['swing', { kind: 'swivel-bracket', distance: 240, swing: 4 }],
  ] as const)('refuses %s of %o', (field, attached) => {
    expect(attachTop(top, attached)).toMatchObject({ kind: 'problem', field });
  });

  test('needs neither where the panel floats in grooves', () => {
    expect(needsSlots(top)).toBe(true);
    expect(needsSlots(judged(joint('groove', lid, apron), lid, apron))).toBe(false);
  });
});

describe('mortises', () => {
  const lengths = (found: ReturnType<typeof mortises>) => answered(found).value.map(({ length }) => length);
  const board = part('board', 900, 120, 22);
  const crossing: Joint = {
    ...joint('mitre', board, lid),
    meets: [
      { surface: 'mitre', grain: 'across' },
      { surface: 'mitre', grain: 'along' },
    ],
    length: 400,
  };

  test('are snug along a seam that is glued', () => {
    const seam = judged(joint('seam', board, board), board);
    expect(lengths(mortises(seam, [100, 450, 800], 40))).toEqual([40, 40, 40]);
  });

  test('grow from the middle of a corner that is only aligned', () => {
    const corner = judged(crossing, board, lid);
    const found = answered(mortises(corner, [50, 200, 350], 40));
    // 40 + 150 x 0.00248 x (2 + 3) + twice 1, coefficient as above.
    expect(lengths(found)).toEqual([expect.closeTo(43.86, 9), 40, expect.closeTo(43.86, 9)]);
    expect(found.working.steps.at(-1)?.gives.value).toBeCloseTo(43.86, 9);
  });

  test('are wide where two woods run the same way and move unlike', () => {
    const beech = part('beech', 900, 120, 22, { species: 'beech-american' });
    const corner = judged({ ...joint('mitre', board, beech), length: 400 }, board, beech);
    expect(corner.verdict.value.advice).toBe('align');
    // Beech 0.00431, cherry 0.00248 (Table 13-5): 150 x 0.00183 x 5 + 40 + 2.
    const [first] = lengths(mortises(corner, [50, 200, 350], 40));
    expect(first).toBeCloseTo(42 + 150 * 0.00183 * 5, 6);
  });

  test('say which width is no width', () => {
    expect(mortises(judged(crossing, board, lid), [50], 0)).toMatchObject({ field: 'shank' });
  });
});

describe('later cuts along a seam', () => {
  const side = part('side', 900, 120, 20);
  const seam = judged(joint('seam', side, side), side);

  test('are none where the piece says nothing of them: half a kerf around any that is typed', () => {
    expect(laterCuts(seam, [], 3)).toEqual({ bevel: 0, crosscuts: [], reach: 1.5 });
  });

  test('a mitred corner takes its thickness off each end', () => {
    const corner = joint('mitre', side, lid);
    expect(laterCuts(seam, [corner], 3).bevel).toBe(20);
    // Where the mitre runs along the grain it cuts no seam.
    const along = {
      ...corner,
      meets: [{ surface: 'mitre', grain: 'along' } as const, { surface: 'mitre', grain: 'across' } as const] as const,
    };
    expect(laterCuts(seam, [along], 3).bevel).toBe(0);
    expect(laterCuts(seam, [joint('corner', side, lid)], 3).bevel).toBe(0);
  });

  test('a panel that folds is cut at its corners, with the bevel on both sides', () => {
    const fold = {
      sections: [
        { name: 'a', length: 448 },
        { name: 'b', length: 448 },
      ],
      corners: [{ degrees: 90, trim: 0 }],
    };
    const folded = part('folded', 900, 120, 20, { fold });
    const cuts = laterCuts(judged(joint('seam', folded, folded), folded), [], 3);
    // By geometry: a saw tilted by 45 degrees takes 3 / cos 45 = 4.24 mm of the face; the wedge reaches 20 mm beyond.
    const takes = 3 * Math.SQRT2;
    expect(cuts.crosscuts).toEqual([expect.closeTo(448 + takes / 2, 9)]);
    expect(cuts.reach).toBeCloseTo(takes / 2 + 20, 9);
  });
});

describe('the four corners of a case', () => {
  const ids = ['top', 'end', 'bottom', 'end'];
  const sides = [part('top', 800, 300, 19), part('end', 400, 300, 19, { quantity: 2 }), part('bottom', 300, 800, 19)];

  test('are four mitres, each with its own verdict', () => {
    const corners = answered(caseCorners(sides, ids)).map((corner, at) => ({ ...corner, id: `${at}` }));
    expect(corners.map(({ parts }) => parts)).toEqual([
      ['top', 'end'],
      ['end', 'bottom'],
      ['bottom', 'end'],
      ['end', 'top'],
    ]);
    const verdicts = corners.map((corner) => judged(corner, ...sides));
    expect(verdicts.map(({ verdict }) => verdict.value.advice)).toEqual(['glue', 'align', 'align', 'glue']);
    expect(verdicts.map(({ contact }) => contact.length)).toEqual([300, 300, 300, 300]);
  });

  test('need four sides as deep as each other', () => {
    expect(caseCorners(sides, ids.with(3, ''))).toMatchObject({ field: 'sides' });
    expect(caseCorners([...sides, cleat], ids.with(3, 'cleat'))).toMatchObject({ field: 'sides' });
  });
});

test('a longer way from where the top is fixed never needs less room', () => {
  const top = judged(joint('top', lid, apron), lid, apron);
  const distance = fc.double({ min: 1, max: 240, noNaN: true });
  const setting = (at: number) =>
    answered(attachTop(top, { kind: 'button', distance: at, grooveDepth: 20 })).value.setting;
  fc.assert(
    fc.property(distance, distance, (a, b) => {
      expect(setting(Math.max(a, b))).toBeGreaterThanOrEqual(setting(Math.min(a, b)));
    }),
  );
});
