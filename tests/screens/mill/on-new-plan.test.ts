import { describe, expect, test } from 'vitest';
import type { MillingStep } from '../../../src/core/milling/milling-step.ts';
import { tickAll } from '../../../src/core/steps/progress.ts';
import { backToPlan, onNewPlan } from '../../../src/screens/mill/on-new-plan.ts';
import type { PlanBlank } from '../../../src/store/records/plan.ts';
import { blanks, now, plan, run, sequence } from './records.ts';

const first = sequence(plan('one'));
const everything = first.steps.reduce((ticks, step) => tickAll(ticks, step, now), {});
const done = run(plan('one'), { ticks: everything, finishedAt: now });

/** The lid's second length comes from board a3 after all, wider. */
const other: readonly PlanBlank[] = [
  ...blanks.slice(0, 3),
  { board: 'a3', start: 0, length: 850, strips: [{ width: 170, part: 'p2', unit: 1 }] },
];
const next = sequence(plan('two', other));
const of = (steps: readonly MillingStep[], stage: string) => steps.filter((step) => step.stage === stage);

describe('a run that goes on by another plan', () => {
  const after = onNewPlan(done, 'two', next.input, next.steps, now + 5);

  test('follows that plan, and is open again', () => {
    expect(after).toMatchObject({ planId: 'two', id: 'run' });
    expect(after.steps).toEqual(next.steps);
    expect(after.finishedAt).toBeUndefined();
  });

  test('what is done stays done, and only the new blank is to be crosscut', () => {
    const [crosscut] = of(next.steps, 'crosscut rough');
    const ids = crosscut?.pieces.map(({ id }) => id) ?? [];
    expect(after.ticks[crosscut?.id ?? '']?.pieces).toEqual(ids.filter((id) => !id.startsWith('a3')));
    expect(ids.filter((id) => id.startsWith('a3'))).toHaveLength(1);
  });

  test('work to another figure is to be done again', () => {
    const wider = blanks.map((blank) => ({
      ...blank,
      strips: blank.strips.map((s) => ({ ...s, width: s.width + 5 })),
    }));
    const again = sequence(plan('three', wider));
    const { ticks } = onNewPlan(done, 'three', again.input, again.steps, now);
    const edges = of(again.steps, 'sawn edge').flatMap((step) =>
      step.pieces.filter(({ label }) => label.includes('Lid')).map(({ id }) => ticks[step.id]?.pieces.includes(id)),
    );
    expect(edges.length).toBeGreaterThan(0);
    expect(edges).not.toContain(true);
  });

  test('the same plan again changes nothing', () => {
    expect(onNewPlan(done, 'one', first.input, first.steps, now + 5)).toEqual({ ...done, measured: [], lost: {} });
  });

  test('what is lost stays lost, until the plan has done without it', () => {
    const lost = run(plan('one'), { lost: { 'a1@0/2': 'split' } });
    expect(onNewPlan(lost, 'two', next.input, next.steps, now).lost).toEqual({ 'a1@0/2': 'split' });
    const around = blanks.map((blank, at) =>
      at === 0
        ? { ...blank, strips: blank.strips.map((strip, n) => (n === 1 ? { ...strip, spoilt: true } : strip)) }
        : blank,
    );
    const without = sequence(plan('three', around));
    expect(onNewPlan(lost, 'three', without.input, without.steps, now).lost).toEqual({});
  });

  test('a reason for skipping stays', () => {
    const [face] = of(first.steps, 'face');
    const skipped = run(plan('one'), { ticks: { [face?.id ?? '']: { pieces: [], skipped: 'flat', at: now } } });
    expect(onNewPlan(skipped, 'two', next.input, next.steps, now).ticks[face?.id ?? '']?.skipped).toBe('flat');
  });

  test('readings stay where the new sequence has their piece', () => {
    const thickness = of(first.steps, 'thickness')[0];
    const reading = (piece: string) =>
      ({ step: thickness?.id ?? '', piece, dimension: 'thickness', value: 21 }) as const;
    const [kept = '', ...rest] = thickness?.pieces.map(({ id }) => id) ?? [];
    const gone = rest.find(
      (id) => !of(next.steps, 'thickness').some(({ pieces }) => pieces.some((one) => one.id === id)),
    );
    const measured = run(plan('one'), { measured: [reading(kept), reading(gone ?? 'none')] });
    expect(onNewPlan(measured, 'two', next.input, next.steps, now).measured).toEqual([reading(kept)]);
  });
});

describe('the way back to the plan before', () => {
  const measured = { step: 'x', piece: 'p', dimension: 'thickness', value: 20 } as const;
  const before = { ...done, lost: { 'a2@853.2/1': 'split' }, measured: [measured] };
  const went = onNewPlan(before, 'two', next.input, next.steps, now);

  test('brings all of it back while nothing was done since', () => {
    const back = backToPlan(went, before, went, now + 9);
    const inAnyOrder = ({ ticks, ...run }: typeof back) => ({
      ...run,
      ticks: Object.fromEntries(
        Object.entries(ticks).map(([id, tick]) => [id, { ...tick, pieces: tick.pieces.toSorted() }]),
      ),
    });
    expect(inAnyOrder(back)).toEqual(inAnyOrder({ ...before, finishedAt: now + 9 }));
  });

  test('keeps what was ticked, taken back, measured and spoilt since', () => {
    const [crosscut] = of(next.steps, 'crosscut rough');
    const id = crosscut?.id ?? '';
    const [gone, ...others] = went.ticks[id]?.pieces ?? [];
    const onA3 = crosscut?.pieces.find((piece) => piece.id.startsWith('a3'))?.id ?? '';
    const [reading] = [{ ...measured, value: 21 }];
    const since = {
      ...went,
      revision: 7,
      ticks: { ...went.ticks, [id]: { at: now + 5, pieces: [...others, onA3] } },
      lost: { ...went.lost, 'a1@0/2': 'knot' },
      measured: [reading],
    };
    const back = backToPlan(since, before, went, now + 9);
    expect(back.revision).toBe(7);
    expect(back.planId).toBe('one');
    const all = before.ticks[id]?.pieces ?? [];
    expect(new Set(back.ticks[id]?.pieces)).toEqual(new Set(all.filter((piece) => piece !== gone)));
    expect(back.lost).toEqual({ 'a2@853.2/1': 'split', 'a1@0/2': 'knot' });
    expect(back.measured).toEqual([measured, reading]);
  });
});
