import { describe, expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { dayPlan } from '../../../src/core/gluing/day-plan.ts';
import { clampsOwned, dayStages, shopHours } from '../../../src/screens/glue/day-stages.ts';
import { withEvent } from '../../../src/screens/glue/glue-events.ts';
import { withStage } from '../../../src/screens/glue/glue-form.ts';
import { stagesOfPiece } from '../../../src/screens/glue/stages-of-piece.ts';
import { mergeEvents } from '../../../src/screens/glue/timeline-events.ts';
import type { Glueup } from '../../../src/store/records/glueup.ts';
import { chest, hours, minutes, morning, shop, started, typed } from './samples.ts';

const other = { ...chest, id: 'other', name: 'Other' };
const asked = (glueups: readonly Glueup[], now = morning) =>
  dayStages({ pieces: [chest, other], plans: [], glueups, shop, celsius: 20, now });

function times(glueups: readonly Glueup[], now = morning) {
  const { stages, running } = asked(glueups, now);
  const plan = dayPlan({ stages, start: now, clampsOwned: clampsOwned(shop) });
  if (isProblem(plan)) throw new Error(plan.message.text);
  return { plan, stages, running };
}

const firstClamped = () => {
  const [first] = stagesOfPiece(chest, undefined, shop);
  if (!first) throw new Error();
  return withEvent(started(withStage(typed(), first), morning, chest), 'clamped', morning + minutes(5));
};

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
    const poor = dayStages({
      pieces: [chest],
      plans: [],
      glueups: [],
      shop: { ...shop, clamps: [] },
      celsius: 20,
      now: 0,
    });
    expect(poor.short.length).toBeGreaterThan(0);
    expect(poor.stages.every(({ clamps }) => clamps === 0)).toBe(true);
  });

  test('what is in the clamps keeps them, and what needs it waits for its rest', () => {
    const glueup = firstClamped();
    const now = morning + minutes(30);
    const { plan, running } = times([glueup], now);
    const held = plan.find(({ id }) => id === 'chest:side/1/1');
    expect([...running]).toEqual(['chest:side/1/1']);
    expect(held).toMatchObject({ from: now, unclampAt: morning + minutes(65) });
    const panel = plan.find(({ id }) => id === 'chest:side/1');
    expect(panel?.from).toBeGreaterThanOrEqual(morning + minutes(65) + hours(24));
    const mine = mergeEvents(plan, running).filter(({ id }) => id === 'chest:side/1/1');
    expect(mine.map(({ does }) => does)).toEqual(['Unclamp', 'Plane']);
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
