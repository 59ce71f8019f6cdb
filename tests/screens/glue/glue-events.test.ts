import { describe, expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { type GlueEvent, runOf, stepOf, timerOf, timesOf, withEvent } from '../../../src/screens/glue/glue-events.ts';
import type { Glueup } from '../../../src/store/records/glueup.ts';
import { hours, minutes, morning, started, typed } from './samples.ts';

const told = (glueup: Glueup, ...events: readonly (readonly [GlueEvent, number])[]) =>
  events.reduce((now, [event, at]) => withEvent(now, event, at), glueup);

describe('a glue-up with PVA at 20 degrees: 5 min open, 5 min closed, an hour in clamps, a day of rest', () => {
  test('one timer at a time, each from what was said last', () => {
    const open = started();
    expect(timerOf(open, morning)).toMatchObject({ phase: 'Spread and close', endsAt: morning + minutes(5) });
    const closed = told(open, ['closed', morning + minutes(3)]);
    expect(timerOf(closed, morning + minutes(3))).toMatchObject({ phase: 'Clamp', endsAt: morning + minutes(8) });
    const clamped = told(closed, ['clamped', morning + minutes(6)]);
    expect(timerOf(clamped, morning + minutes(6))).toMatchObject({ endsAt: morning + minutes(66) });
    const off = told(clamped, ['unclamped', morning + minutes(70)]);
    expect(timerOf(off, morning + minutes(70))).toMatchObject({ endsAt: morning + minutes(70) + hours(24) });
    // Full strength came a day after clamping, before the rest was over: nothing is waited for any more.
    const rested = told(off, ['rested', morning + minutes(70) + hours(24)]);
    expect(timerOf(rested, morning + minutes(70) + hours(24))).toBeUndefined();
    // Planed early by the maker's own choice, the glue still sets on.
    expect(timerOf(told(off, ['rested', morning + hours(14)]), morning + hours(14))).toMatchObject({
      phase: 'To full strength',
    });
    expect([open, closed, clamped, off, rested].map(stepOf)).toEqual([0, 1, 2, 3, 4]);
  });

  test('clamped at once stands for closed as well; an event told twice counts once', () => {
    const clamped = told(started(), ['clamped', morning + minutes(4)]);
    expect(stepOf(clamped)).toBe(2);
    expect(told(clamped, ['closed', morning + minutes(9)], ['clamped', morning + minutes(9)])).toEqual(clamped);
  });

  test('what went another way is written down and not forbidden', () => {
    const log = (glueup: Glueup) => glueup.log?.map(({ text }) => text) ?? [];
    const late = told(started(), ['closed', morning + minutes(8)]);
    expect(log(late)).toContainEqual(expect.stringMatching(/^Closed 3 min after the open time/));
    const early = told(late, ['clamped', morning + minutes(9)], ['unclamped', morning + minutes(19)]);
    expect(log(early).filter((text) => text.includes('after the open time'))).toHaveLength(1);
    expect(log(early)).toContainEqual(expect.stringMatching(/^Unclamped 20 min early/));
    expect(early.unclampedAt).toBe(morning + minutes(19));
  });

  test('a clock set back a day leaves the order of events whole, and says so', () => {
    const clamped = told(started(), ['closed', morning + minutes(3)], ['clamped', morning - hours(24)]);
    expect(isProblem(runOf(clamped))).toBe(false);
    expect(clamped.log?.some(({ text }) => text.includes('set back'))).toBe(true);
  });

  test('the label’s times go before the table’s and stay with the glue-up', () => {
    const glueup = started(typed({ label: { open: '12' } }));
    expect(timerOf(glueup, morning)?.endsAt).toBe(morning + minutes(12));
    expect(timesOf(JSON.parse(JSON.stringify(glueup))).open).toEqual({ least: 720, most: 720 });
  });

  test('a kind that this version does not know keeps the times it was stored with', () => {
    const times = timesOf({ ...started(), adhesive: 'something new' });
    expect(times.open).toEqual({ least: 300, most: 300 });
    expect(times.clamp).toEqual({ least: 3600, most: 3600 });
  });
});
