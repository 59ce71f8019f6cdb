import { expect, test } from 'vitest';
import { notice } from '../../../src/app/notices.ts';
import { problemFromRecords } from '../../../src/screens/breakdown/problem-from-records.ts';
import { choosePlan, keepPlan, setAside, tickCut } from '../../../src/screens/breakdown/store-plan.ts';
import { boards } from '../../../src/store/boards.ts';
import { retryFailedWrites } from '../../../src/store/failed-writes.ts';
import { plans } from '../../../src/store/plans.ts';
import type { Plan } from '../../../src/store/records/plan.ts';
import { fillPhone } from '../../store/fill-phone.ts';
import { putMany } from '../../store/put.ts';
import { board, part, piece, shop, solve } from './samples.ts';

const rack = [board('a'), board('b')];
const chest = piece([part('lid')]);
const asked = problemFromRecords(shop, rack, chest);
const found = solve(asked);
const chosen = async () => (await plans.where('pieceId', chest.id)).filter((plan) => plan.chosen).map(({ id }) => id);

test('of a piece’s plans one is chosen, also where two were made at the same moment', async () => {
  await Promise.all([keepPlan(chest, asked, found), keepPlan(chest, asked, found)]);
  const [first, second] = await plans.where('pieceId', chest.id);
  expect(await chosen()).toHaveLength(1);
  await choosePlan(first as Plan);
  await choosePlan(second as Plan);
  expect(await chosen()).toEqual([second?.id]);
});

test('a board is cut in the plan and in the rack, or in neither', async () => {
  await putMany('board', rack);
  const [plan] = (await plans.where('pieceId', chest.id)) as [Plan];
  const stands = async () => [(await plans.get(plan.id))?.cutDone, (await boards.get('a'))?.state];
  const makeRoom = fillPhone('board');
  await tickCut(plan, 'a', true);
  makeRoom();
  expect(await stands()).toEqual([[], 'rack']);
  await retryFailedWrites();
  expect(await stands()).toEqual([['a'], 'cut']);
});

test('boards set aside go back to the rack, but for one that is cut by then', async () => {
  await putMany('board', rack);
  const [plan] = (await plans.where('pieceId', chest.id)) as [Plan];
  await setAside(rack, chest);
  const undo = notice.value?.action;
  await tickCut(plan, 'a', true);
  await undo?.run();
  const stored = await boards.all();
  expect(stored.map(({ id, state, pieceId }) => [id, state, pieceId])).toEqual([
    ['a', 'cut', chest.id],
    ['b', 'rack', undefined],
  ]);
});
