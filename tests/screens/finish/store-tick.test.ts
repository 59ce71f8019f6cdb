import { beforeEach, expect, test } from 'vitest';
import { coatSchedule } from '../../../src/core/finishing/coat-schedule.ts';
import { takeBack, tick, tickAll, untick } from '../../../src/core/steps/progress.ts';
import { type KeptStep, keptSteps, stepsOf } from '../../../src/screens/finish/finish-steps.ts';
import { storeTick } from '../../../src/screens/finish/store-tick.ts';
import { retryFailedWrites } from '../../../src/store/failed-writes.ts';
import { finishes } from '../../../src/store/finishes.ts';
import type { Finish } from '../../../src/store/records/finish.ts';
import { timers } from '../../../src/store/timers.ts';
import { finishById } from '../../../src/tables/finishes.ts';
import { solved } from '../../core/gluing/helpers.ts';
import { emptyDatabase } from '../../store/empty-database.ts';
import { fillPhone } from '../../store/fill-phone.ts';

beforeEach(emptyDatabase);

const names: Readonly<Record<string, string>> = { chest: 'Chest', box: 'Box' };

async function begun(ids = ['chest']) {
  const kind = finishById('wiping-varnish');
  if (!kind) throw new Error('no such kind');
  const steps = solved(coatSchedule({ finish: kind, coats: 2, firstGrit: 220, gritsOwned: [220], sections: [] }));
  const finish = await finishes.add({
    pieceId: 'chest',
    kind: kind.id,
    coats: 2,
    area: 1,
    containers: [],
    steps: keptSteps(
      steps,
      ids.map((id) => ({ id, name: names[id] ?? '' })),
      [],
    ),
    ticks: {},
  });
  const coat = stepsOf(finish).find(({ id }) => id === 'coat-1');
  if (!coat) throw new Error('no coat');
  const tickIt = (now: number) =>
    storeTick(finish.id, coat, (ticks, at) => tickAll(ticks, coat, at), { done: [] }, 'Chest', now);
  const back = () => storeTick(finish.id, coat, (ticks) => takeBack(ticks, coat), 'back', 'Chest', Date.now() + 2);
  const tickOne = (id: string, now: number) =>
    storeTick(finish.id, coat, (ticks, at) => tick(ticks, coat, [id], at), { done: [id] }, 'Chest', now);
  const untickOne = (id: string) =>
    storeTick(finish.id, coat, (ticks) => untick(ticks, coat, [id]), 'back', 'Chest', Date.now());
  const waitFor = async () =>
    (await timers.all()).map(({ phase, name, doneAt }) => `${phase}: ${name}${doneAt ? ', over' : ''}`).sort();
  const stored = async () => ({
    ticked: Object.keys(((await finishes.get(finish.id)) as Finish).ticks),
    waits: (await timers.all()).map(({ phase }) => phase).sort(),
  });
  return { finish, coat, tick: tickIt, tickOne, untickOne, back, waitFor, stored };
}

test('a coat and its waits are stored together, or not at all', async () => {
  const { tick, stored } = await begun();
  const makeRoom = fillPhone('finish');
  await expect(tick(Date.now())).rejects.toThrow('The phone is full.');
  makeRoom();
  expect(await stored()).toEqual({ ticked: [], waits: [] });
  await retryFailedWrites();
  expect(await stored()).toEqual({ ticked: ['coat-1'], waits: ['Before coat 2', 'Wipe off'] });
});

test('ticked twice, in two tabs or by two quick taps, its waits begin once; taken back, they go', async () => {
  const { tick, back, stored } = await begun();
  await Promise.all([tick(Date.now()), tick(Date.now() + 1)]);
  expect(await stored()).toEqual({ ticked: ['coat-1'], waits: ['Before coat 2', 'Wipe off'] });
  await back();
  expect(await stored()).toEqual({ ticked: [], waits: [] });
});

test('of several pieces each takes its own waits with it, whichever was ticked last', async () => {
  const { tickOne, untickOne, waitFor } = await begun(['chest', 'box']);
  await tickOne('chest', 1000);
  await tickOne('box', 2000);
  await untickOne('chest');
  expect(await waitFor()).toEqual(['Before coat 2: Box', 'Wipe off: Box']);
  await untickOne('box');
  expect(await waitFor()).toEqual([]);
});

test('ticked in one go they wait together, and one taken back leaves the wait of the other', async () => {
  const { finish, coat, untickOne, waitFor } = await begun(['chest', 'box']);
  const done = ['chest', 'box'];
  await storeTick(finish.id, coat, (ticks, at) => tickAll(ticks, coat, at), { done }, 'Chest', 1000);
  await untickOne('chest');
  expect(await waitFor()).toEqual(['Before coat 2: Box', 'Wipe off: Box']);
});

test('a wait that a tick ended goes on once that is taken back', async () => {
  const { finish, tick, waitFor } = await begun();
  await tick(1000);
  const coat2 = stepsOf(finish).find(({ id }) => id === 'coat-2') as KeptStep;
  await storeTick(finish.id, coat2, (ticks, at) => tickAll(ticks, coat2, at), { done: [] }, 'Chest', 2000);
  expect(await waitFor()).toContain('Before coat 2: Chest, over');
  await storeTick(finish.id, coat2, (ticks) => takeBack(ticks, coat2), 'back', 'Chest', 3000);
  expect(await waitFor()).toEqual(['Before coat 2: Chest', 'Wipe off: Chest']);
});
