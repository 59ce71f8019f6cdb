import { describe, expect, test } from 'vitest';
import { jobThread, nextStage, type Records } from '../../../src/screens/bench/job-thread.ts';
import type { Milling } from '../../../src/store/records/milling.ts';
import type { Plan } from '../../../src/store/records/plan.ts';

const stamps = { created: 1, updated: 1, revision: 1 };
const part = {
  id: 'lid',
  name: 'Lid',
  species: 'cherry-black',
  length: 900,
  width: 400,
  thickness: 19,
  quantity: 1,
  panel: true,
};
const nothing: Records = {
  boards: [],
  piece: { ...stamps, id: 'chest', name: 'Chest', parts: [], joints: [], stages: [] },
  plans: [],
  millings: [],
  squares: [],
  glueups: [],
  finishes: [],
};
const board = {
  ...stamps,
  id: 'b1',
  chalk: '1',
  species: 'cherry-black',
  thickness: { quarters: 4 },
  width: 200,
  length: 2400,
  state: 'rack',
} as const;
const plan: Plan = { ...stamps, id: 'p1', pieceId: 'chest', problem: {}, blanks: [], short: [], chosen: true };
const steps = [
  { id: 'a', pieces: [{ id: '1' }, { id: '2' }] },
  { id: 'b', pieces: [{ id: '1' }] },
  { id: 'c', pieces: [] },
];
const milling = (ticks: Milling['ticks'], finishedAt?: number): Milling =>
  ({
    ...stamps,
    id: 'm1',
    pieceId: 'chest',
    planId: 'p1',
    steps,
    ticks,
    ...(finishedAt && { finishedAt }),
  }) as unknown as Milling;

const nextOf = (records: Partial<Records>) => nextStage(jobThread({ ...nothing, ...records }))?.next;
const planned = { boards: [board], piece: { ...nothing.piece, parts: [part] }, plans: [plan] };

describe('the thread of a piece, from boards to cure', () => {
  test('stages stand in the order of the trade', () =>
    expect(jobThread(nothing).map(({ name }) => name)).toEqual([
      'stock',
      'piece',
      'breakdown',
      'mill',
      'glue',
      'square',
      'finish',
    ]));

  test('first boards, then parts, then the plan', () => {
    expect(nextOf({})).toBe('Log the boards you have');
    expect(nextOf({ boards: [board] })).toBe('List its parts');
    expect(nextOf({ boards: [board], piece: planned.piece })).toBe('Plan the cuts');
    expect(nextOf(planned)).toBe('Mill the blanks');
  });

  test('a plan that is short comes before what follows', () =>
    expect(nextOf({ ...planned, plans: [{ ...plan, short: [{ part: 'lid', unit: 1, missingWidth: 30 }] }] })).toBe(
      'Short of wood: see what is missing',
    ));

  test('a run says which step it is at', () => {
    expect(nextOf({ ...planned, millings: [milling({})] })).toBe('Step 1 of 3');
    expect(nextOf({ ...planned, millings: [milling({ a: { pieces: ['1'], at: 1 } })] })).toBe('Step 1 of 3');
    expect(nextOf({ ...planned, millings: [milling({ a: { pieces: ['1', '2'], at: 1 } })] })).toBe('Step 2 of 3');
    expect(nextOf({ ...planned, millings: [milling({}, 5)] })).toBe('Glue up');
  });

  test('what is begun comes before what is only open', () => {
    const early = jobThread({ ...nothing, millings: [milling({})] });
    expect(nextStage(early)?.name).toBe('mill');
  });
});
