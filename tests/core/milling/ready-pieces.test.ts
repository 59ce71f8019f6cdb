import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineage } from '../../../src/core/milling/lineage.ts';
import type { MillingStep } from '../../../src/core/milling/milling-step.ts';
import { readyPieces } from '../../../src/core/milling/ready-pieces.ts';
import { isThrough, skip, type Ticks, tick, tickAll } from '../../../src/core/steps/progress.ts';
import { scenarios, stepsOf } from './shops-and-stacks.ts';

const now = 1_700_000_000_000;
const steps = stepsOf(scenarios['a wide and long panel, a full shop']);
const at = (stage: MillingStep['stage']): MillingStep => {
  const found = steps.find((step) => step.stage === stage);
  if (!found) throw new Error(`The scenario has no step ${stage}.`);
  return found;
};

/** All steps before this one ticked. */
const until = (stage: MillingStep['stage']): Ticks =>
  steps.slice(0, steps.indexOf(at(stage))).reduce((ticks: Ticks, step) => tickAll(ticks, step, now), {});

const ticked = (ticks: Ticks, step: MillingStep, piece: string): Ticks => tick(ticks, step, [piece], now);

describe('lineage', () => {
  it('a panel was its strips, and each strip its blank', () => {
    const panel = at('panel order').pieces[0]?.id ?? '';
    const was = lineage(steps).get(panel) ?? new Set();
    for (const strip of at('sawn edge').pieces) expect(was).toContain(strip.id);
    for (const blank of at('crosscut rough').pieces) expect(was).toContain(blank.id);
  });
});

describe('pieces that are ready', () => {
  it('at the start all of them at the first step, and none elsewhere', () => {
    const [first] = steps;
    expect([...readyPieces(steps, {})]).toEqual([[first?.id, first?.pieces.map(({ id }) => id)]]);
  });

  it('a strip that is ahead of the others waits at its next machine', () => {
    const face = at('face');
    const [one, ...others] = face.pieces.map(({ id }) => id);
    const ready = readyPieces(steps, ticked(until('face'), face, one ?? ''));
    expect(ready.get(face.id)).toEqual(others);
    expect(ready.get(at('mark face').id)).toEqual([one]);
  });

  it('a panel waits for the last of its strips', () => {
    const seams = at('sawn edge');
    const order = at('panel order');
    const [last = '', ...others] = seams.pieces.map(({ id }) => id);
    const nearly = others.reduce((ticks, id) => ticked(ticks, seams, id), until('sawn edge'));
    expect(readyPieces(steps, nearly).has(order.id)).toBe(false);
    expect(readyPieces(steps, ticked(nearly, seams, last)).get(order.id)).toEqual(order.pieces.map(({ id }) => id));
  });

  it('a skipped step holds nothing back', () => {
    const face = at('face');
    const after = skip(until('face'), face, 'flat already', now);
    expect(readyPieces(steps, after).get(at('mark face').id)).toHaveLength(face.pieces.length);
  });

  it('doing what is ready, in any order, comes to the end of every run', () => {
    fc.assert(
      fc.property(fc.constantFrom(...Object.values(scenarios)), fc.infiniteStream(fc.nat()), (input, choices) => {
        const run = stepsOf(input);
        let ticks: Ticks = {};
        for (let taps = run.reduce((sum, { pieces }) => sum + pieces.length, 0); taps > 0; taps--) {
          const ready = [...readyPieces(run, ticks)].flatMap(([step, ids]) => ids.map((id) => ({ step, id })));
          const next = ready[choices.next().value % ready.length];
          const step = run.find(({ id }) => id === next?.step);
          if (!next || !step) throw new Error('Nothing is ready, and the run is not through.');
          ticks = ticked(ticks, step, next.id);
        }
        expect(isThrough(ticks, run)).toBe(true);
        expect(readyPieces(run, ticks).size).toBe(0);
      }),
      { numRuns: 30 },
    );
  });
});
