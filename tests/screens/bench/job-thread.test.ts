import { expect, test } from 'vitest';
import type { Ticks } from '../../../src/core/steps/progress.ts';
import { jobThread } from '../../../src/screens/bench/job-thread.ts';
import { withTicks } from '../../../src/store/records/with-ticks.ts';
import { now, piece, plan, rack, run, sequence } from '../mill/records.ts';

const ofPiece = { piece, plan: plan('one'), finish: undefined, squares: [], glueups: [] };
const mill = (ticks: Ticks) => {
  const milling = withTicks(run(plan('one')), ticks, now);
  return jobThread({ ...ofPiece, milling }, rack.length).find(({ name }) => name === 'mill');
};
const { steps } = sequence(plan('one'));
const all = Object.fromEntries(steps.map(({ id, pieces }) => [id, { pieces: pieces.map((one) => one.id), at: now }]));

test('the thread counts milling steps by the pieces that are through', () => {
  const [first, second] = steps;
  expect(mill({})).toMatchObject({ state: 'begun', next: `Step 1 of ${steps.length}` });
  expect(mill({ [first?.id ?? '']: { pieces: [], at: now } })?.next).toBe(`Step 1 of ${steps.length}`);
  expect(
    mill({
      [first?.id ?? '']: all[first?.id ?? ''],
      [second?.id ?? '']: { pieces: [], at: now, skipped: 'no' },
    } as Ticks)?.next,
  ).toBe(`Step 3 of ${steps.length}`);
});

test('milled once every step is through, and begun again when one is not', () => {
  expect(mill(all)).toMatchObject({ state: 'done', next: 'Milled' });
  const { [steps[3]?.id ?? '']: _, ...open } = all;
  expect(mill(open)?.state).toBe('begun');
});
