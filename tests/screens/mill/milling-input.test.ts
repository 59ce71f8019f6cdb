import { describe, expect, test } from 'vitest';
import { millingSequence } from '../../../src/core/milling/milling-sequence.ts';
import { millingInput, millingShop } from '../../../src/screens/mill/milling-input.ts';
import { machineLimits } from '../../../src/tables/machine-limits.ts';
import { piece, plan, rack, sequence, shop, sure } from './records.ts';

describe('what a sequence is made from', () => {
  test('boards carry their chalk mark, and twist and crook where they were measured', () => {
    const { boards } = millingInput(plan('one'), piece, rack, shop);
    expect(boards.map(({ mark, twist, crook }) => ({ mark, twist, crook }))).toMatchObject([
      { mark: 'A1', crook: undefined },
      { mark: 'A2', twist: 3, crook: 4 },
      { mark: 'A3', crook: undefined },
    ]);
  });

  test('parts carry their names', () => {
    expect(millingInput(plan('one'), piece, rack, shop).parts.map(({ name }) => name)).toEqual(['Rail', 'Lid']);
  });

  test('a panel that folds carries its sections, and its last step is to mitre them', () => {
    const sections = ['Left', 'Top'].map((name) => ({ name, length: 200 }));
    const fold = { sections, corners: [{ degrees: 90, trim: 0 }] };
    const folding = { ...piece, parts: piece.parts.map((part) => (part.panel ? { ...part, fold } : part)) };
    const input = millingInput(plan('one'), folding, rack, shop);
    expect(input.parts.map(({ folds }) => folds)).toEqual([undefined, sections]);
    expect(
      sure(millingSequence(input))
        .at(-1)
        ?.pieces.map(({ target }) => target),
    ).toEqual([200, 200]);
  });

  test('a machine that is not owned has no width', () => {
    const { machines } = shop;
    const without = {
      ...shop,
      machines: {
        ...machines,
        jointer: { ...machines.jointer, owned: false },
        planer: { ...machines.planer, owned: false, sled: true },
      },
    };
    expect(millingShop(without)).toMatchObject({ jointerWidth: null, planerWidth: null, planerSled: false });
  });

  test("the manual's figures win, and say where they are from", () => {
    const own = { ...shop, manualLimits: { jointer: { length: 250, depth: 1.6 }, planer: {} } };
    const { limits } = millingInput(plan('one'), piece, rack, own);
    expect(limits.jointer.leastLength).toEqual({ mm: 250, source: 'label' });
    expect(limits.jointer.depthPerPass).toEqual({ mm: 1.6, source: 'label' });
    expect(limits.planer).toEqual(machineLimits.planer);
  });

  test('a limit that no machine has is named', () => {
    const own = { ...shop, manualLimits: { planer: { length: 90_000 } } };
    expect(millingSequence(millingInput(plan('one'), piece, rack, own))).toMatchObject({
      kind: 'problem',
      field: 'limits.planer.leastLength',
    });
  });

  test('the plan gives a sequence with its parts by name', () => {
    const { steps } = sequence(plan('one'));
    const labels = steps.flatMap(({ pieces }) => pieces.map(({ label }) => label));
    expect(labels).toEqual(expect.arrayContaining(['A1 · Rail 1', 'Lid']));
  });
});
