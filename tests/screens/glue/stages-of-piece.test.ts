import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { withEvent } from '../../../src/screens/glue/glue-events.ts';
import { withStage } from '../../../src/screens/glue/glue-form.ts';
import { progressOf } from '../../../src/screens/glue/stage-progress.ts';
import { stagesOfPiece } from '../../../src/screens/glue/stages-of-piece.ts';
import type { Plan } from '../../../src/store/records/plan.ts';
import { chest, hours, minutes, morning, shop, started, typed } from './samples.ts';

const plan: Plan = {
  id: 'plan',
  created: 0,
  updated: 0,
  revision: 1,
  pieceId: 'chest',
  problem: { shop: { planerWidth: 330, edgeAllowance: 3, lengthAllowance: 50 }, boards: [], parts: [] },
  blanks: [
    {
      board: 'b1',
      start: 0,
      length: 1050,
      strips: [123, 123, 123, 123].map((width) => ({ width, part: 'lid', unit: 1 })),
    },
  ],
  short: [],
};

describe('the stages of a piece', () => {
  test('sub-panels that pass the planer, then the panel, by the strips of the plan', () => {
    const lid = stagesOfPiece(chest, plan, shop).filter(({ id }) => id.startsWith('lid'));
    expect(lid.map(({ id, name, needs, guessed }) => ({ id, name, needs, guessed }))).toEqual([
      { id: 'lid/1/1', name: 'lid, sub-panel 1', needs: [], guessed: false },
      { id: 'lid/1/2', name: 'lid, sub-panel 2', needs: [], guessed: false },
      { id: 'lid/1', name: 'lid', needs: ['lid/1/1', 'lid/1/2'], guessed: false },
    ]);
    // As long as the blank and as thick as the part; two strips of 120 mm once jointed.
    expect(lid[0]).toMatchObject({ seams: [{ length: 1050, width: 19 }], width: 240, outerBoard: 120 });
  });

  test('what has no plan yet is guessed, and says so', () => {
    const sides = stagesOfPiece(chest, undefined, shop).filter(({ id }) => id.startsWith('side/2'));
    expect(sides.every(({ guessed }) => guessed)).toBe(true);
    // 400 mm in strips of at most 146.8 mm: three, of which two pass a 330 mm planer side by side.
    expect(sides.map(({ name }) => name)).toEqual(['side 2, sub-panel 1', 'side 2']);
  });

  test('the corners wait for their panels; a cleat that floats is not glued', () => {
    const assembly = stagesOfPiece(chest, plan, shop).at(-1);
    expect(assembly).toMatchObject({ name: 'Assembly', meets: 'mitre-case' });
    // Two sides and two ends meet at four corners.
    expect(assembly?.seams).toEqual(Array.from({ length: 4 }, () => ({ length: 400, width: 19 })));
    expect(assembly?.needs).toEqual(expect.arrayContaining(['side/1', 'side/2', 'end/1', 'end/2']));
  });

  test('each end of a rail is glued once, however many legs there are', () => {
    const [, , , cleat] = chest.parts;
    if (!cleat) throw new Error();
    const table = {
      ...chest,
      parts: [
        { ...cleat, id: 'apron', quantity: 2 },
        { ...cleat, id: 'leg', quantity: 4 },
      ],
      joints: [{ id: 'aprons', kind: 'rail', parts: ['apron', 'leg'] }],
    };
    expect(stagesOfPiece(table, undefined, shop).at(-1)?.seams).toHaveLength(4);
  });

  test('corners listed one by one are glued once each', () => {
    const corners = ['1', '2', '3', '4'].map((id, at) => ({
      id,
      kind: 'mitre',
      parts: at % 2 === 0 ? ['side', 'end'] : ['end', 'side'],
    }));
    const assembly = stagesOfPiece({ ...chest, joints: corners }, plan, shop).at(-1);
    expect(assembly?.seams).toHaveLength(4);
  });

  test('a list of panels has no glue-up of its own; its corner belongs to the case', () => {
    const stages = [
      { id: 'panels', name: 'Panels', parts: ['side', 'end', 'lid'] },
      { id: 'case', name: 'Case', parts: ['side', 'end'] },
    ];
    const names = stagesOfPiece({ ...chest, stages }, plan, shop).map(({ name }) => name);
    expect(names).toContain('Case');
    expect(names).not.toContain('Panels');
  });

  test('never a stage before what it needs, whatever the piece', () => {
    const anyPiece = fc.record({
      widths: fc.array(fc.integer({ min: 40, max: 1200 }), { minLength: 1, maxLength: 5 }),
      quantity: fc.integer({ min: 1, max: 3 }),
    });
    fc.assert(
      fc.property(anyPiece, ({ widths, quantity }) => {
        const parts = widths.map((width, at) => ({ ...chest.parts[0], id: `p${at}`, name: `p${at}`, width, quantity }));
        const joints = parts.slice(1).map(({ id }, at) => ({ id: `j${at}`, kind: 'mitre', parts: [`p${at}`, id] }));
        const stages = stagesOfPiece({ ...chest, parts, joints } as typeof chest, undefined, shop);
        const seen = new Set<string>();
        for (const { id, needs, seams } of stages) {
          expect(needs.every((needed) => seen.has(needed))).toBe(true);
          expect(seams.length).toBeGreaterThan(0);
          seen.add(id);
        }
      }),
    );
  });

  test('a panel can be glued once its sub-panels have rested', () => {
    const stages = stagesOfPiece(chest, plan, shop).filter(({ id }) => id.startsWith('lid'));
    const glue = (at: number) => {
      const form = withStage(typed(), stages[at] as (typeof stages)[number]);
      return withEvent(
        withEvent(started(form, morning, chest), 'clamped', morning + minutes(4)),
        'unclamped',
        morning + hours(2),
      );
    };
    const both = [glue(0), glue(1)];
    expect(progressOf(stages, [], morning).now.map(({ id }) => id)).toEqual(['lid/1/1', 'lid/1/2']);
    expect(progressOf(stages, both, morning + hours(3)).now).toEqual([]);
    // A day of rest from unclamping (common practice for PVA).
    expect(progressOf(stages, both, morning + hours(26)).now.map(({ id }) => id)).toEqual(['lid/1']);
    const rested = both.map((one) => withEvent(one, 'rested', morning + hours(5)));
    expect(progressOf(stages, rested, morning + hours(5)).now.map(({ id }) => id)).toEqual(['lid/1']);
    // Left in the clamps for days: not one to plane yet.
    const clampedOnly = withEvent(
      started(withStage(typed(), stages[0] as (typeof stages)[number]), morning, chest),
      'clamped',
      morning,
    );
    expect(progressOf(stages, [clampedOnly], morning + hours(200)).ready.size).toBe(0);
  });
});
