import { describe, expect, test } from 'vitest';
import { type Ticks, tickAll } from '../../../src/core/steps/progress.ts';
import { boardsCut, planAfter, stripsOf } from '../../../src/screens/mill/plan-progress.ts';
import { now, plan, sequence } from './records.ts';

const one = plan('one');
const { input, steps } = sequence(one);
const crosscut = steps.find(({ stage }) => stage === 'crosscut rough');
const ticked = (...pieces: string[]): Ticks => ({ [crosscut?.id ?? '']: { pieces, at: now } });

describe('what a run tells its plan', () => {
  test('a board is cut once all its blanks are', () => {
    const [first = '', second = ''] = crosscut?.pieces.map(({ id }) => id) ?? [];
    expect(boardsCut(input, steps, ticked(first))).toEqual([]);
    expect(boardsCut(input, steps, ticked(first, second))).toEqual(['a1']);
    const all = crosscut ? tickAll({}, crosscut, now) : {};
    expect(planAfter(one, input, steps, all, {}).cutDone).toEqual(['a1', 'a2']);
    // A tick taken back makes the board whole again; boards of other runs are left alone.
    expect(planAfter({ ...one, cutDone: ['a1', 'z'] }, input, steps, ticked(first), {}).cutDone).toEqual(['z']);
  });

  test('a lost strip is spoilt in its blank, and no other', () => {
    const { blanks } = planAfter(one, input, steps, {}, { 'a1@953.2/2': 'split' });
    expect(blanks.flatMap((blank) => blank.strips.map(({ spoilt = false }) => spoilt))).toEqual([
      ...[false, false, false, true],
      ...[false, false],
    ]);
  });

  test('with a blank its strips are lost, with a strip it alone, with a panel nothing is said', () => {
    expect(stripsOf(input, steps, 'a1@0')).toEqual(['a1@0/1', 'a1@0/2']);
    expect(stripsOf(input, steps, 'a1@0/2')).toEqual(['a1@0/2']);
    expect(stripsOf(input, steps, 'p2#1')).toEqual([]);
  });

  test('of a blank that lost a strip before, only the others go, and so only they come back', () => {
    expect(stripsOf(input, steps, 'a1@0', { 'a1@0/1': 'knot' })).toEqual(['a1@0/2']);
  });
});
