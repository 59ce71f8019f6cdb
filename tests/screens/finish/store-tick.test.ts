import { beforeEach, expect, test } from 'vitest';
import { coatSchedule } from '../../../src/core/finishing/coat-schedule.ts';
import { takeBack, tickAll } from '../../../src/core/steps/progress.ts';
import { keptSteps, stepsOf } from '../../../src/screens/finish/finish-steps.ts';
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

async function begun() {
  const kind = finishById('wiping-varnish');
  if (!kind) throw new Error('no such kind');
  const steps = solved(coatSchedule({ finish: kind, coats: 2, firstGrit: 220, gritsOwned: [220], sections: [] }));
  const finish = await finishes.add({
    pieceId: 'chest',
    kind: kind.id,
    coats: 2,
    area: 1,
    containers: [],
    steps: keptSteps(steps, [{ id: 'chest', name: 'Chest' }], []),
    ticks: {},
  });
  const coat = stepsOf(finish).find(({ id }) => id === 'coat-1');
  if (!coat) throw new Error('no coat');
  const tick = (now: number) =>
    storeTick(finish.id, coat, (ticks, at) => tickAll(ticks, coat, at), { done: [] }, 'Chest', now);
  const back = () => storeTick(finish.id, coat, (ticks) => takeBack(ticks, coat), 'back', 'Chest', Date.now() + 2);
  const stored = async () => ({
    ticked: Object.keys(((await finishes.get(finish.id)) as Finish).ticks),
    waits: (await timers.all()).map(({ phase }) => phase).sort(),
  });
  return { tick, back, stored };
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
