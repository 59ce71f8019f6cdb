import { describe, expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { dayPlan } from '../../../src/core/gluing/day-plan.ts';
import { tickAll } from '../../../src/core/steps/progress.ts';
import { clampsOwned, dayStages, shopHours } from '../../../src/screens/glue/day-stages.ts';
import { withEvent } from '../../../src/screens/glue/glue-events.ts';
import { withStage } from '../../../src/screens/glue/glue-form.ts';
import { stagesOfPiece } from '../../../src/screens/glue/stages-of-piece.ts';
import { mergeEvents } from '../../../src/screens/glue/timeline-events.ts';
import type { Glueup } from '../../../src/store/records/glueup.ts';
import type { Milling } from '../../../src/store/records/milling.ts';
import { said, solved } from '../../core/gluing/helpers.ts';
import * as mill from '../mill/records.ts';
import { chest, hours, minutes, morning, shop, started, typed } from './samples.ts';

const other = { ...chest, id: 'other', name: 'Other' };
const records = { pieces: [chest, other], plans: [], millings: [], glueups: [], shop, celsius: 20, now: morning };
const asked = (glueups: readonly Glueup[], now = morning) => dayStages({ ...records, glueups, now });

function times(glueups: readonly Glueup[], now = morning) {
  const { stages, running } = asked(glueups, now);
  const plan = dayPlan({ stages, running, start: now, clampsOwned: clampsOwned(shop) });
  if (isProblem(plan)) throw new Error(plan.message.text);
  return { plan, stages, running };
}

const [first] = stagesOfPiece(chest, undefined, shop);
if (!first) throw new Error();
const firstStarted = () => started(withStage(typed(), first), morning, chest);
const firstClamped = () => withEvent(firstStarted(), 'clamped', morning + minutes(5));
/** What is to be done with one glue-up, in order. */
const todo = ({ plan, running }: ReturnType<typeof times>, { id: wanted }: Glueup) =>
  mergeEvents(plan, new Set(running.map(({ id }) => id))).flatMap(({ id, does, at }) =>
    id === wanted ? [[does, at]] : [],
  );

describe('the day', () => {
  test('stages of two pieces with the same parts stay apart, and none goes before what it needs', () => {
    const { plan, stages } = times([]);
    const needs = new Map(stages.map((stage) => [stage.id, stage.needs]));
    const ready = new Map(plan.map(({ id, readyAt }) => [id, readyAt]));
    expect(plan).toHaveLength(stages.length);
    for (const { id, from } of plan)
      for (const needed of needs.get(id) ?? []) expect(from).toBeGreaterThanOrEqual(ready.get(needed) as number);
  });

  test('never more clamps than there are; who asks for more is named', () => {
    const { plan } = times([]);
    for (const { from } of plan) {
      const during = plan.filter((one) => one.from <= from && from < one.unclampAt);
      expect(during.reduce((sum, { clamps }) => sum + clamps, 0)).toBeLessThanOrEqual(8);
    }
    const poor = dayStages({ ...records, shop: { ...shop, clamps: [] } });
    expect(poor.short.length).toBeGreaterThan(0);
    expect(poor.stages.every(({ clamps }) => clamps === 0)).toBe(true);
  });

  test('what is in the clamps keeps them, and what needs it waits for its rest', () => {
    const glueup = firstClamped();
    const now = morning + minutes(30);
    const day = times([glueup], now);
    expect(day.running).toMatchObject([{ id: glueup.id, from: now, unclampAt: morning + minutes(65) }]);
    const panel = day.plan.find(({ id }) => id === 'chest:side/1');
    expect(panel?.from).toBeGreaterThanOrEqual(morning + minutes(65) + hours(24));
    expect(todo(day, glueup)).toEqual([
      ['Unclamp', morning + minutes(65)],
      ['Plane', morning + minutes(65) + hours(24)],
    ]);
  });

  test('what should be off its clamps is the first thing to do, and rests only from then on', () => {
    const glueup = firstClamped();
    const now = morning + hours(30);
    expect(todo(times([glueup], now), glueup)).toEqual([
      ['Unclamp', now],
      ['Plane', now + hours(24)],
    ]);
    const off = withEvent(glueup, 'unclamped', morning + hours(2));
    expect(todo(times([off], morning + hours(3)), off)).toEqual([['Plane', morning + hours(26)]]);
    expect(times([off], now).running).toEqual([]);
  });

  test('clamps hold and glue rests at night, whether anybody is there or not', () => {
    const glueup = firstClamped();
    const now = morning + minutes(30);
    const windows = [{ from: now + hours(12), until: now + hours(2000) }];
    const { stages, running } = asked([glueup], now);
    const plan = solved(dayPlan({ stages, running, start: now, clampsOwned: 8, windows }));
    expect(plan.slice(0, 2)).toMatchObject([
      { id: glueup.id, unclampAt: morning + minutes(65) },
      { from: now + hours(12) },
    ]);
  });

  test('two glue-ups of one name run side by side', () => {
    const two = [0, 1].map((n) => started(typed({ name: 'Feet' }), morning + n, chest));
    expect(times(two, morning + minutes(2)).running).toHaveLength(2);
  });

  test('what was glued along with the milling is glued no more', () => {
    const { steps } = mill.sequence(mill.plan('one'));
    const done = mill.run(mill.plan('one'), { ticks: steps.reduce((so, step) => tickAll(so, step, mill.now), {}) });
    const day = (millings: readonly Milling[]) =>
      dayStages({ ...records, pieces: [mill.piece], plans: [mill.plan('one')], millings }).stages.length;
    expect([day([]), day([done])]).toEqual([1, 0]);
  });

  test('too cold for the glue: nothing is planned, and why', () => {
    const cold = dayStages({ ...records, glueups: [firstClamped()], celsius: 4 });
    expect(cold.stages).toEqual([]);
    expect(cold.running).toHaveLength(1);
    expect(said(cold.refused)).toMatch(/^Don’t glue at/);
    expect(asked([]).refused).toBeUndefined();
  });

  test('straps and spring clamps press no panel', () => {
    const clamps = ['bar-heavy', 'strap', 'spring'].map((kind) => ({ kind, opening: 1200, count: 8 }));
    expect(clampsOwned({ clamps })).toBe(8);
  });

  test('hours in the shop are hours of the clock on the wall; today begins now', () => {
    const noon = new Date(2026, 2, 2, 12).getTime();
    const [today, tomorrow] = shopHours(noon, 8, 18);
    expect(today).toEqual({ from: noon, until: new Date(2026, 2, 2, 18).getTime() });
    expect(tomorrow?.from).toBe(new Date(2026, 2, 3, 8).getTime());
    const evening = new Date(2026, 2, 2, 20).getTime();
    expect(shopHours(evening, 8, 18)[0]?.from).toBe(new Date(2026, 2, 3, 8).getTime());
  });
});
