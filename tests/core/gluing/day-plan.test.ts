import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { busiest } from '../../../src/core/gluing/busiest.ts';
import { canBeginNow } from '../../../src/core/gluing/can-begin-now.ts';
import { dayPlan, type PlannedStage } from '../../../src/core/gluing/day-plan.ts';
import { said, solved } from './helpers.ts';

const minute = 60_000;
const stage = (id: string, needs: string[] = [], more: Partial<PlannedStage> = {}): PlannedStage => ({
  id,
  name: id,
  needs,
  handSeconds: 600,
  clampSeconds: 3600,
  restSeconds: 0,
  clamps: 4,
  ...more,
});
const begins = (plan: readonly { id: string; from: number }[]) => plan.map(({ id, from }) => [id, from / minute]);

describe('dayPlan', () => {
  it('goes on with the next stage while the first is in clamps, if there are clamps for both', () => {
    const stages = [stage('a'), stage('b'), stage('lid', ['a', 'b'])];
    const at8 = solved(dayPlan({ stages, start: 0, clampsOwned: 8 }));
    expect(begins(at8)).toEqual([
      ['a', 0],
      ['b', 10],
      ['lid', 80],
    ]);
    const at4 = solved(dayPlan({ stages, start: 0, clampsOwned: 4 }));
    expect(begins(at4)).toEqual([
      ['a', 0],
      ['b', 70],
      ['lid', 140],
    ]);
  });
  it('lets another piece slip in while one rests', () => {
    const stages = [
      stage('a', [], { restSeconds: 7200 }),
      stage('plane', ['a'], { clamps: 0, clampSeconds: 0 }),
      stage('frame'),
    ];
    expect(begins(solved(dayPlan({ stages, start: 0, clampsOwned: 8 })))).toEqual([
      ['a', 0],
      ['frame', 10],
      ['plane', 190],
    ]);
  });
  it('keeps hands to the hours in the shop, and lets glue set outside them', () => {
    const windows = [
      { from: 0, until: 15 * minute },
      { from: 1000 * minute, until: 1100 * minute },
    ];
    const stages = [stage('a'), stage('b', ['a'])];
    expect(begins(solved(dayPlan({ stages, start: 0, clampsOwned: 4, windows })))).toEqual([
      ['a', 0],
      ['b', 1000],
    ]);
    const short = dayPlan({ stages, start: 0, clampsOwned: 4, windows: [{ from: 0, until: 5 * minute }] });
    expect(short).toMatchObject({ kind: 'problem', field: 'windows' });
  });
  it('leaves what runs as it is, whatever the hours and the clamps, and counts the clamps that it holds', () => {
    const held = {
      id: 'held',
      name: 'held',
      from: 0,
      clampedAt: 0,
      unclampAt: 50 * minute,
      readyAt: 90 * minute,
      clamps: 6,
    };
    const windows = [{ from: 20 * minute, until: 1000 * minute }];
    const plan = solved(
      dayPlan({ stages: [stage('a', ['held']), stage('b')], running: [held], start: 0, clampsOwned: 4, windows }),
    );
    expect(plan[0]).toBe(held);
    expect(begins(plan.slice(1))).toEqual([
      ['b', 50],
      ['a', 120],
    ]);
    expect(dayPlan({ stages: [stage('held')], running: [held], start: 0, clampsOwned: 4 })).toMatchObject({
      field: 'stages.0.id',
    });
  });
  it('keeps every wait, one pair of hands and the clamps there are, for any stages', () => {
    const any = fc.array(
      fc.record({
        needs: fc.array(fc.nat(), { maxLength: 3 }),
        handSeconds: fc.integer({ min: 0, max: 2000 }),
        clampSeconds: fc.integer({ min: 0, max: 9000 }),
        restSeconds: fc.integer({ min: 0, max: 90000 }),
        clamps: fc.integer({ min: 0, max: 6 }),
      }),
      { maxLength: 10 },
    );
    fc.assert(
      fc.property(any, (rows) => {
        const stages = rows.map((row, index) => ({
          ...row,
          id: `s${index}`,
          name: `s${index}`,
          needs: index ? row.needs.map((need) => `s${need % index}`) : [],
        }));
        const plan = dayPlan({ stages, start: 5000, clampsOwned: 6 });
        if (isProblem(plan)) return false;
        const byId = new Map(plan.map((one) => [one.id, one]));
        const waits = stages.every(({ id, needs }) =>
          needs.every((need) => (byId.get(need)?.readyAt ?? Number.POSITIVE_INFINITY) <= (byId.get(id)?.from ?? -1)),
        );
        const hands = plan.every((one, index) => one.from >= (plan[index - 1]?.clampedAt ?? 5000));
        return plan.length === stages.length && waits && hands && (busiest(plan)?.clamps ?? 0) <= 6;
      }),
    );
  });
  it.each([
    [{ stages: [stage('a', ['x'])] }, 'stages.0.needs'],
    [{ stages: [stage('a', [], { clamps: 9 })] }, 'stages.0.clamps'],
    [{ stages: [stage('a', [], { restSeconds: -1 })] }, 'stages.0.restSeconds'],
    [{ start: Number.NaN }, 'start'],
    [{ clampsOwned: -2 }, 'clampsOwned'],
  ])('refuses %j', (wrong, field) => {
    expect(dayPlan({ stages: [stage('a')], start: 0, clampsOwned: 8, ...wrong })).toMatchObject({
      kind: 'problem',
      field,
    });
  });
});

const needing = (id: string, ...needs: string[]) =>
  stage(id, needs, { name: id.toUpperCase(), handSeconds: 0, clampSeconds: 0, clamps: 0 });
const order = (stages: readonly PlannedStage[]) => dayPlan({ stages, start: 0, clampsOwned: 0 });
const ids = (stages: readonly { readonly id: string }[]) => stages.map(({ id }) => id);

/** Stages without rings, in any order: each may only need those numbered lower. */
const solvable = fc
  .array(fc.array(fc.nat(), { maxLength: 4 }), { maxLength: 12 })
  .map((all) =>
    all.map((needs, index) => needing(`s${index}`, ...(index ? needs.map((need) => `s${need % index}`) : []))),
  )
  .chain((stages) => fc.shuffledSubarray(stages, { minLength: stages.length }));

describe('the order of stages', () => {
  it('puts sub-panels before the panel and the panel before the case', () => {
    const given = [
      needing('case', 'panel', 'side'),
      needing('panel', 'a', 'b'),
      needing('a'),
      needing('b'),
      needing('side'),
    ];
    expect(ids(solved(order(given)))).toEqual(['a', 'b', 'panel', 'side', 'case']);
  });
  it('keeps the order given where nothing waits', () => {
    expect(ids(solved(order([needing('b'), needing('a'), needing('c')])))).toEqual(['b', 'a', 'c']);
    expect(order([])).toEqual([]);
  });
  it('never puts a stage before what it needs, and loses none', () => {
    fc.assert(
      fc.property(solvable, (stages) => {
        const found = order(stages);
        if (isProblem(found)) return false;
        const place = new Map(found.map(({ id }, index) => [id, index]));
        return (
          new Set(ids(found)).size === stages.length &&
          stages.every(({ id, needs }) =>
            needs.every((need) => (place.get(need) ?? Number.POSITIVE_INFINITY) < (place.get(id) ?? -1)),
          )
        );
      }),
    );
  });
  it('names a ring, and only the ring', () => {
    const ring = order([needing('case', 'lid'), needing('lid', 'rail'), needing('rail', 'lid'), needing('foot')]);
    expect(ring).toMatchObject({ kind: 'problem', field: 'stages' });
    expect(said(ring)).toContain('LID, RAIL');
    expect(said(ring)).not.toMatch(/CASE|FOOT/);
    expect(said(order([needing('self', 'self')]))).toContain('SELF');
  });
  it('refuses a need that is not there and an id that is there twice', () => {
    expect(order([needing('a'), needing('b', 'x')])).toMatchObject({ kind: 'problem', field: 'stages.1.needs' });
    expect(order([needing('a'), needing('a')])).toMatchObject({ kind: 'problem', field: 'stages.1.id' });
  });
});

it('busiest finds the moment at which most clamps are spoken for', () => {
  const at = (id: string, from: number, unclampAt: number, clamps: number) => ({
    id,
    name: id,
    from,
    clampedAt: from,
    unclampAt,
    readyAt: unclampAt,
    clamps,
  });
  const times = [at('a', 0, 100, 6), at('b', 60, 200, 5), at('plane', 70, 90, 0)];
  expect(busiest(times)).toEqual({ from: 60, clamps: 11, stages: ['a', 'b'] });
  expect(busiest(times.slice(0, 1))).toEqual({ from: 0, clamps: 6, stages: ['a'] });
  expect(busiest([])).toBeUndefined();
});

it('canBeginNow offers what waits for nothing that is not ready', () => {
  const stages = [stage('a'), stage('b', ['a']), stage('c')];
  expect(canBeginNow(stages, new Set(['a']), new Set()).map(({ id }) => id)).toEqual(['c']);
  expect(canBeginNow(stages, new Set(['a']), new Set(['a'])).map(({ id }) => id)).toEqual(['b', 'c']);
});
