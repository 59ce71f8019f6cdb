import { describe, expect, it } from 'vitest';
import { sayPhrase } from '../../../src/core/answer/say-phrase.ts';
import { glueUp } from '../../../src/core/gluing/glue-up.ts';
import { phaseAt } from '../../../src/core/gluing/phase-at.ts';
import { kind, said, solved } from './helpers.ts';

const times = kind('pva-interior').seconds; // open 5-10 min, closed 5-10, clamp 30-60, rest 12-24 h, cure 24 h
const minute = 60_000;
const hour = 60 * minute;
const start = Date.UTC(2026, 2, 29, 0, 30); // half an hour before clocks change in much of Europe
const at = (minutes: number) => start + minutes * minute;

describe('glueUp', () => {
  it('lays out all phases from the start', () => {
    const { phases, remarks } = solved(glueUp(times, { startedAt: start }));
    expect(phases.map(({ id, from, until }) => [id, (from - start) / minute, (until - start) / minute])).toEqual([
      ['open', 0, 5],
      ['closed', 5, 10],
      ['clamp', 10, 70],
      ['rest', 70, 70 + 24 * 60],
      ['cure', 10, 10 + 24 * 60],
    ]);
    expect(remarks).toEqual([]);
  });
  it('moves with what really happened', () => {
    const { phases } = solved(
      glueUp(times, { startedAt: start, closedAt: at(3), clampedAt: at(6), unclampedAt: at(90) }),
    );
    expect(phases.map(({ from }) => (from - start) / minute)).toEqual([0, 3, 6, 90, 6]);
    expect(phases.map(({ over }) => over)).toEqual([true, true, true, false, false]);
  });
  it('logs early unclamping and late closing, and forbids neither', () => {
    const { remarks } = solved(
      glueUp(times, { startedAt: start, closedAt: at(8), clampedAt: at(20), unclampedAt: at(40) }),
    );
    const texts = remarks.map((remark) => sayPhrase(remark, { unit: 'mm', nearest: 16 }));
    expect(texts).toHaveLength(3);
    expect(texts[0]).toMatch(/^Closed 3 min after/);
    expect(texts[1]).toMatch(/^Clamped 7 min after/);
    expect(texts[2]).toMatch(/^Unclamped 10 min early/);
  });
  it('takes a joint as closed and clamped when only the unclamping was ticked', () => {
    const { phases } = solved(glueUp(times, { startedAt: start, unclampedAt: at(4) }));
    expect(phases.every(({ from }) => from <= at(4))).toBe(true);
  });
  it.each([
    [{ startedAt: Number.NaN }, 'startedAt'],
    [{ startedAt: start, closedAt: start - 24 * hour }, 'closedAt'],
    [{ startedAt: start, closedAt: at(5), clampedAt: at(4) }, 'clampedAt'],
    [{ startedAt: start, unclampedAt: 9e15 }, 'unclampedAt'],
    [{ startedAt: start, unclampedAt: at(90), restedAt: at(80) }, 'restedAt'],
  ])('refuses %j', (events, field) => {
    expect(glueUp(times, events)).toMatchObject({ kind: 'problem', field });
  });
});

describe('phaseAt', () => {
  const { phases } = solved(glueUp(times, { startedAt: start }));
  const minutesAt = (of: typeof phases, now: number) => {
    const { phase, left } = solved(phaseAt(of, now));
    return [phase?.id, left / 60];
  };
  it('counts down the open time', () => {
    expect(minutesAt(phases, at(4))).toEqual(['open', 1]);
  });
  it('says how long ago a missed end was, until it is ticked', () => {
    expect(minutesAt(phases, at(5 + 180))).toEqual(['open', -180]);
    const clamped = solved(glueUp(times, { startedAt: start, closedAt: at(4), clampedAt: at(8) })).phases;
    expect(minutesAt(clamped, at(68 + 180))).toEqual(['clamp', -180]);
  });
  it('goes from rest to full strength when the maker says so, and is done by itself', () => {
    const events = { startedAt: start, closedAt: at(4), clampedAt: at(8), unclampedAt: at(30 * 60) };
    const long = { ...times, cure: { least: 90 * 3600, most: 90 * 3600 } };
    const resting = solved(glueUp(long, events)).phases;
    expect(minutesAt(resting, at(40 * 60))).toEqual(['rest', 14 * 60]);
    expect(minutesAt(resting, at(55 * 60))).toEqual(['rest', -60]);
    const rested = solved(glueUp(long, { ...events, restedAt: at(55 * 60) })).phases;
    expect(minutesAt(rested, at(55 * 60))).toEqual(['cure', 8 + 90 * 60 - 55 * 60]);
    expect(minutesAt(rested, at(200 * 60))).toEqual([undefined, 0]);
  });
  it('is done when all is ticked, and where there is nothing to wait for', () => {
    const over = phases.map((phase) => ({ ...phase, over: true }));
    expect(minutesAt(over, at(9))).toEqual([undefined, 0]);
    expect(minutesAt([], at(9))).toEqual([undefined, 0]);
  });
  it('notices a clock set back a day', () => {
    const back = phaseAt(phases, at(-24 * 60));
    expect(back).toMatchObject({ kind: 'problem', field: 'now' });
    expect(said(back)).toContain('24 h before the start');
  });
  it('refuses no clock', () => {
    expect(phaseAt(phases, Number.NaN)).toMatchObject({ kind: 'problem', field: 'now' });
  });
});
