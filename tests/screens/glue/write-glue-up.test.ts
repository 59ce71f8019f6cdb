import { expect, test } from 'vitest';
import { emptySeam } from '../../../src/screens/glue/glue-form.ts';
import { Stale, storeEvent, storeStart } from '../../../src/screens/glue/write-glue-up.ts';
import { glueups } from '../../../src/store/glueups.ts';
import type { Glueup } from '../../../src/store/records/glueup.ts';
import { timers } from '../../../src/store/timers.ts';
import { minutes, morning, started, typed } from './samples.ts';

test('a glue-up and its timer are stored together, event after event, with a way back', async () => {
  const fresh = started();
  await storeStart(fresh);
  const stored = async () => (await glueups.get(fresh.id)) as Glueup;
  const ofGlueup = async () => (await timers.all()).filter((timer) => timer.for.id === fresh.id);
  const running = async () => (await ofGlueup()).filter(({ doneAt }) => doneAt === undefined);
  expect((await running()).map(({ phase, endsAt }) => ({ phase, endsAt }))).toEqual([
    { phase: 'Spread and close', endsAt: morning + minutes(5) },
  ]);

  const before = await stored();
  const undo = await storeEvent(before, 'clamped', morning + minutes(4));
  expect((await running()).map(({ phase }) => phase)).toEqual(['In the clamps']);
  // Told in another tab meanwhile: refused, and nothing is stored twice.
  await expect(storeEvent(before, 'clamped', morning + minutes(5))).rejects.toBeInstanceOf(Stale);
  expect(await ofGlueup()).toHaveLength(2);

  const note = { at: morning + minutes(4), text: 'starved at one end' };
  await glueups.change(fresh.id, (now) => ({ ...now, log: [...(now.log ?? []), note] }));
  await undo();
  // What was noted in between stays; what the glue-up itself had written of it goes.
  expect((await stored()).log).toEqual([...(before.log ?? []), note]);
  expect((await running()).map(({ phase }) => phase)).toEqual(['Spread and close']);
  expect((await stored()).phases.map(({ startedAt }) => startedAt)).toEqual([
    morning,
    undefined,
    undefined,
    undefined,
    undefined,
  ]);
});

test('two taps before the screen has followed are both noted', async () => {
  const fresh = { ...started(), id: 'quick' };
  await storeStart(fresh);
  const seen = (await glueups.get('quick')) as Glueup;
  await Promise.all([
    storeEvent(seen, 'closed', morning + minutes(3)),
    storeEvent(seen, 'clamped', morning + minutes(3)),
  ]);
  expect((await glueups.get('quick'))?.phases.map(({ startedAt }) => startedAt)).toEqual([
    morning,
    morning + minutes(3),
    morning + minutes(3),
    undefined,
    undefined,
  ]);
});

test('without seams the clock alone is started, with the phases of the glue', () => {
  expect(started(typed({ seams: [emptySeam] }))).toMatchObject({
    seams: [],
    startedAt: morning,
    phases: [{ name: 'open', startedAt: morning }, {}, {}, {}, {}],
  });
});
