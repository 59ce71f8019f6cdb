import { expect, test } from 'vitest';
import { tickAll } from '../../../src/core/steps/progress.ts';
import { gluedByRun } from '../../../src/screens/glue/glued-by-run.ts';
import { progressOf } from '../../../src/screens/glue/stage-progress.ts';
import { stagesOfPiece } from '../../../src/screens/glue/stages-of-piece.ts';
import { now, piece, plan, run, sequence, shop } from '../mill/records.ts';

const { steps } = sequence(plan('one'));
const milled = (done: number) =>
  run(plan('one'), { ticks: steps.slice(0, done).reduce((so, step) => tickAll(so, step, now), {}) });
const gluing = steps.findIndex(({ machine }) => machine === 'clamps');

test('a panel that the run has glued is not glued again', () => {
  const stages = stagesOfPiece(piece, plan('one'), shop);
  expect(stages.map(({ id }) => id)).toEqual(['p2/1']);
  expect(progressOf(stages, [], now, milled(gluing)).now).toEqual(stages);
  const after = progressOf(stages, [], now, milled(gluing + 1));
  expect([after.now, [...after.ready]]).toEqual([[], ['p2/1']]);
});

test('however its sub-panels are parted; other stages are the run’s no more than before', () => {
  const stages = ['p2/1', 'p2/1/1', 'p2/1/2', 'p2/2', 'p1/1', 'case'];
  expect(gluedByRun(stages, milled(gluing))).toEqual([]);
  expect(gluedByRun(stages, milled(steps.length))).toEqual(['p2/1', 'p2/1/1', 'p2/1/2']);
  expect(gluedByRun(stages, undefined)).toEqual([]);
});
