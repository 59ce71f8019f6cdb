import { expect, test } from 'vitest';
import { coatSchedule } from '../../../src/core/finishing/coat-schedule.ts';
import { skip, takeBack, tickAll } from '../../../src/core/steps/progress.ts';
import { overBy, potLifePhase, timersOf } from '../../../src/screens/finish/coat-timers.ts';
import { findFinish } from '../../../src/screens/finish/find-finish.ts';
import { keptSteps, stepsOf } from '../../../src/screens/finish/finish-steps.ts';
import { latestOf } from '../../../src/screens/finish/latest-of.ts';
import type { Finish } from '../../../src/store/records/finish.ts';
import type { Timer } from '../../../src/store/records/timer.ts';
import { withTicks } from '../../../src/store/records/with-ticks.ts';
import { finishById } from '../../../src/tables/finishes.ts';
import { solved } from '../../core/gluing/helpers.ts';
import { part, pieceOf } from './cabinet.ts';

const hour = 3_600_000;
const two = [
  { id: 'chest', name: 'Chest' },
  { id: 'box', name: 'Box' },
];

function finishOf(pieces: readonly { id: string; name: string }[], sections: readonly string[] = []): Finish {
  const kind = finishById('wiping-varnish');
  if (!kind) throw new Error('no such kind');
  const steps = solved(coatSchedule({ finish: kind, coats: 2, firstGrit: 220, gritsOwned: [220], sections }));
  return {
    id: 'finish',
    created: 0,
    updated: 0,
    revision: 1,
    pieceId: pieces[0]?.id ?? '',
    kind: kind.id,
    coats: 2,
    area: 1,
    containers: [],
    steps: keptSteps(steps, pieces, [{ coatLitres: 0.2 }, { coatLitres: 0.1 }]),
    ticks: {},
  };
}

const step = (finish: Finish, id: string) => {
  const found = stepsOf(finish).find((one) => one.id === id);
  if (!found) throw new Error(`no step ${id}`);
  return found;
};
const stored = (fields: ReturnType<typeof timersOf>): Timer[] =>
  fields.map((one, at) => ({ ...one, id: `timer-${at}`, created: 0, updated: 0, revision: 1 }));

test('it is finished with the last step, skipped ones count, and taking one back opens it again', () => {
  const start = finishOf(two);
  const steps = stepsOf(start);
  const ticks = steps.reduce(
    (so, one, at) => (at === 1 ? skip(so, one, 'no scrap', 8) : tickAll(so, one, 9)),
    start.ticks,
  );
  const [first] = steps;
  if (!first) throw new Error('no steps');
  expect(withTicks(start, takeBack(ticks, first), 9).finishedAt).toBeUndefined();
  const all = withTicks(start, ticks, 9);
  expect(all.finishedAt).toBe(9);
  expect(withTicks(all, ticks, 99).finishedAt).toBe(9);
  expect(withTicks(all, takeBack(ticks, first), 10).finishedAt).toBeUndefined();
});

test('one piece is ticked step by step, several are ticked one by one', () => {
  expect(step(finishOf(two.slice(0, 1)), 'coat-1').pieces).toEqual([]);
  expect(step(finishOf(two), 'coat-1').pieces.map(({ label }) => label)).toEqual(['Chest', 'Box']);
});

test('rags stand after every coat with a drying oil, and a coat knows what it takes', () => {
  const finish = finishOf(two);
  const ids = stepsOf(finish).map(({ id }) => id);
  expect(ids.indexOf('rags-1')).toBe(ids.indexOf('coat-1') + 1);
  expect(ids.indexOf('rags-2')).toBe(ids.indexOf('coat-2') + 1);
  expect(stepsOf(finish).map(({ coatLitres }) => coatLitres)).toEqual(
    ids.map((id) => ({ 'coat-1': 0.2, 'coat-2': 0.1 })[id]),
  );
});

test('ticking a coat starts its waits; wiping off is over with the rags, the wait with the next coat', () => {
  const finish = finishOf(two);
  const coat = step(finish, 'coat-1');
  const timers = stored(timersOf('finish', coat.waits, 'Box', 1000));
  // The table: wipe off after 5 min, 6 h between coats.
  expect(timers.map(({ name, phase, endsAt }) => [name, phase, endsAt])).toEqual([
    ['Box', 'Wipe off', 1000 + 300_000],
    ['Box', 'Before coat 2', 1000 + 6 * hour],
  ]);
  // The table: wiped off by 15 min, the next coat by 24 h; a wait that has no end is never late.
  expect(timers.map((timer) => latestOf(timer, stepsOf(finish)))).toEqual([1000 + 900_000, 1000 + 24 * hour]);
  expect(latestOf({ phase: 'Full cure', startedAt: 0 }, stepsOf(finish))).toBeUndefined();
  const over = (id: string, now: number) => overBy(timers, finish, step(finish, id), ['box'], now).map((t) => t.phase);
  expect(over('rags-1', 1000 + 200_000)).toEqual([]);
  expect(over('rags-1', 1000 + 400_000)).toEqual(['Wipe off']);
  expect(over('coat-1', 1000 + 400_000)).toEqual([]);
  expect(over('coat-2', 1000 + 7 * hour)).toEqual(['Before coat 2']);
  // Coated again before its time, it waits for that no longer.
  expect(over('coat-2', 1000 + hour)).toEqual([]);
  expect(
    overBy(timers, finish, step(finish, 'coat-2'), ['chest', 'box'], 1000 + 60_000).map(({ phase }) => phase),
  ).toEqual(['Before coat 2']);
});

test('a batch’s pot life is over once its coat is on every piece and section', () => {
  const finish = finishOf(two, ['Case', 'Door']);
  const [waits] = stored(timersOf('finish', step(finish, 'coat-1-1').waits, 'Chest', 0));
  if (!waits) throw new Error('no wait');
  const potLife: Timer = { ...waits, phase: potLifePhase(step(finish, 'coat-1-1'), 1), endsAt: hour };
  const over = (now: Finish, id: string, pieces: string[]) => overBy([potLife], now, step(now, id), pieces, 5).length;
  expect(over(finish, 'coat-1-1', ['chest', 'box'])).toBe(0);
  expect(over(finish, 'coat-1-2', ['chest'])).toBe(0);
  const chest = { ...finish, ticks: { 'coat-1-2': { pieces: ['chest'], at: 1 } } };
  expect(over(chest, 'coat-1-2', ['box'])).toBe(1);
  expect(potLifePhase(step(finish, 'coat-1-2'), 2)).toBe('Pot life, coat 1, batch 2');
});

test('an address finds a finish by its own id, and by each of its pieces; the running one first', () => {
  const running = finishOf(two);
  const done = { ...running, id: 'done', created: 9, finishedAt: 10 };
  const box = pieceOf([part('lid')], { id: 'box' });
  const other = pieceOf([], { id: 'other' });
  expect(findFinish('finish', [done, running], [box]).finish).toBe(running);
  expect(findFinish('box', [done, running], [box]).finish).toBe(running);
  expect(findFinish('box', [done], [box]).finish).toBe(done);
  expect(findFinish('other', [running], [box, other])).toEqual({ piece: other });
  expect(findFinish('nobody', [running], [box])).toEqual({});
});
