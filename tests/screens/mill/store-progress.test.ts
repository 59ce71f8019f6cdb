import { expect, test, vi } from 'vitest';
import { tickAll } from '../../../src/core/steps/progress.ts';
import { stepsOfRun } from '../../../src/screens/mill/steps-of-run.ts';
import { changeRun, loseStrips } from '../../../src/screens/mill/store-progress.ts';
import { millings } from '../../../src/store/millings.ts';
import { plans } from '../../../src/store/plans.ts';
import { timers } from '../../../src/store/timers.ts';
import { put } from '../../store/put.ts';
import { plan, run } from './records.ts';

test('a run and its plan are told in one transaction, and a strip that is good after all is good in both', async () => {
  const one = await put('plan', plan('one'));
  const begun = await put('milling', run(one));
  const spoilt = async () =>
    (await plans.get('one'))?.blanks.flatMap(({ strips }) => strips.map((strip) => strip.spoilt === true));

  const transactions = vi.spyOn(IDBDatabase.prototype, 'transaction');
  await loseStrips(begun, ['a1@953.2/2'], 'split');
  expect(transactions).toHaveBeenCalledTimes(1);
  transactions.mockRestore();
  expect(await spoilt()).toEqual([false, false, false, true, false, false]);

  await loseStrips(begun, ['a1@953.2/2'], undefined);
  expect((await millings.get('run'))?.lost).toEqual({});
  expect((await plans.get('one'))?.blanks).toEqual(one.blanks);
});

test('a step that is through ends its wait in the same transaction; one that is open leaves its own running', async () => {
  await put('plan', plan('one'));
  const begun = await put('milling', run(plan('one'), { id: 'third' }));
  const [first, second] = stepsOfRun(begun);
  if (!first || !second) throw new Error('no steps');
  const wait = {
    name: 'Chest',
    for: { kind: 'milling', id: 'third' },
    phase: 'Rest',
    startedAt: 0,
    endsAt: 1,
  } as const;
  await timers.addMany([first, second].map(({ id: step }) => ({ ...wait, step })));
  const transactions = vi.spyOn(IDBDatabase.prototype, 'transaction');
  await changeRun('third', (now) => ({ ...now, ticks: tickAll(now.ticks, first, 5) }));
  expect(transactions).toHaveBeenCalledTimes(1);
  transactions.mockRestore();
  const running = (await timers.all()).filter(({ doneAt }) => doneAt === undefined);
  expect(running.map(({ step }) => step)).toEqual([second.id]);
});

test('a strip that the maker called spoilt in the plan itself stays so, whatever the run says of others', async () => {
  const own = plan('two').blanks.map((blank, at) => ({
    ...blank,
    strips: blank.strips.map((strip, n) => (at === 0 && n === 0 ? { ...strip, spoilt: true } : strip)),
  }));
  await put('plan', { ...plan('two'), blanks: own });
  const begun = await put('milling', run(plan('two'), { id: 'second' }));
  await loseStrips(begun, ['a1@0/2'], 'split');
  await loseStrips(begun, ['a1@0/2'], undefined);
  expect((await plans.get('two'))?.blanks).toEqual(own);
  await changeRun('nobody', (none) => none);
});
