import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  isSettled,
  isThrough,
  nextPlace,
  type Step,
  settledCount,
  skip,
  type Ticks,
  takeBack,
  throughOf,
  tick,
  tickAll,
  untick,
} from '../../../src/core/steps/progress.ts';

const face: Step = { id: 'face', pieces: [{ id: 'a' }, { id: 'b' }] };
const coat: Step = { id: 'coat' };
const steps = [face, coat];
const now = 1_700_000_000_000;

describe('a step with pieces', () => {
  test('is settled once all of them are through', () => {
    const one = tick({}, face, ['a'], now);
    expect([...throughOf(one, face)]).toEqual(['a']);
    expect(isSettled(one, face)).toBe(false);
    expect(isSettled(tick(one, face, ['b'], now), face)).toBe(true);
  });

  test('ticking again changes nothing, not even when it was ticked', () => {
    const one = tick({}, face, ['a'], now);
    expect(tick(one, face, ['a'], now + 5)).toBe(one);
    const all = tickAll(one, face, now);
    expect(tickAll(all, face, now + 5)).toBe(all);
  });

  test('a piece of another step is never ticked', () => {
    expect(tick({}, face, ['z'], now)).toEqual({});
    expect(tick({}, coat, ['a'], now)).toEqual({});
    expect(tick({}, face, ['z', 'b'], now)).toEqual({ face: { pieces: ['b'], at: now } });
  });

  test('a tick taken back leaves nothing behind', () => {
    const one = tick({}, face, ['a'], now);
    expect(untick(one, face, ['a'])).toEqual({});
    expect(untick(one, face, ['b'])).toBe(one);
    expect(untick(tickAll({}, face, now), face, ['b'])).toEqual(one);
  });

  test('ticks of pieces that a new plan no longer has count for nothing', () => {
    const old: Ticks = { face: { pieces: ['a', 'gone'], at: now }, cut: { pieces: [], at: now } };
    expect(throughOf(old, face).size).toBe(1);
    expect(isSettled(old, face)).toBe(false);
  });
});

describe('a step without pieces', () => {
  test('is ticked as a whole, and that is taken back as a whole', () => {
    expect(isSettled({}, coat)).toBe(false);
    const done = tickAll({}, coat, now);
    expect(done).toEqual({ coat: { pieces: [], at: now } });
    expect(isSettled(done, coat)).toBe(true);
    expect(takeBack(done, coat)).toEqual({});
  });
});

describe('a skip', () => {
  test('settles the step; taken back, what was ticked stays ticked', () => {
    const one = tick({}, face, ['a'], now);
    const skipped = skip(one, face, 'by hand', now);
    expect(skipped.face?.skipped).toBe('by hand');
    expect(isSettled(skipped, face)).toBe(true);
    expect(takeBack(skipped, face)).toEqual(one);
    expect(takeBack(skip({}, coat, 'no need', now), coat)).toEqual({});
  });

  test('or a tick as a whole: what settled the step is taken back', () => {
    const one = tick({}, face, ['a'], now);
    expect(takeBack(skip(one, face, 'no power', now), face)).toEqual(one);
    expect(takeBack(tickAll({}, coat, now), coat)).toEqual({});
  });

  test('is over when the step is done after all', () => {
    const skipped = skip({}, face, 'no power', now);
    expect(untick(tick(skipped, face, ['a'], now), face, ['a'])).toEqual(skipped);
    expect(tickAll(skipped, face, now + 1)).toEqual({ face: { pieces: ['a', 'b'], at: now + 1 } });
  });
});

test('the whole list: how many are settled, where to go on, whether it is through', () => {
  expect([settledCount({}, steps), nextPlace({}, steps), isThrough({}, steps)]).toEqual([0, 0, false]);
  const half = tickAll({}, face, now);
  expect([settledCount(half, steps), nextPlace(half, steps), isThrough(half, steps)]).toEqual([1, 1, false]);
  const all = tickAll(half, coat, now);
  expect([settledCount(all, steps), nextPlace(all, steps), isThrough(all, steps)]).toEqual([2, 1, true]);
  expect([nextPlace({}, []), isThrough({}, [])]).toEqual([0, false]);
});

test('whatever is tapped: ticks come twice without harm, and taking all back leaves nothing', () => {
  const tap = fc.record({ step: fc.constantFrom(face, coat), piece: fc.constantFrom('a', 'b', 'all') });
  fc.assert(
    fc.property(fc.array(tap), (taps) => {
      const put = (ticks: Ticks, { step, piece }: (typeof taps)[number]) =>
        piece === 'all' ? tickAll(ticks, step, now) : tick(ticks, step, [piece], now);
      const once = taps.reduce(put, {});
      expect(taps.reduce(put, once)).toEqual(once);
      expect(steps.reduce(takeBack, once)).toEqual({});
      const all = ['a', 'b'];
      expect(untick(once, face, all)).not.toHaveProperty('face');
    }),
  );
});
