import { describe, expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { perMetreOf, withReference } from '../../../src/screens/square/tool-error.ts';
import { type ToolSeen, toolTest } from '../../../src/screens/square/tool-test.ts';

function own(seen: ToolSeen) {
  const test = toolTest(seen);
  if (isProblem(test)) throw new Error('no answer');
  return test.own;
}

describe('try square', () => {
  test('lines 0.4 apart at 200 mm: half of it is the square’s own, atan(0.2 / 200)', () => {
    const error = (Math.atan(0.2 / 200) * 180) / Math.PI;
    expect(own({ kind: 'square', length: 200, gap: 0.4 })?.error).toBeCloseTo(error, 9);
    expect(own({ kind: 'square', length: 200, gap: -0.4 })?.error).toBeCloseTo(-error, 9);
  });

  test('what is remembered is what a verdict takes: 1 mm for each metre again', () => {
    const error = own({ kind: 'square', length: 200, gap: 0.4 })?.error ?? 0;
    const tools = withReference([], { tool: 'small', kind: 'square', error, at: 1 });
    expect(perMetreOf('small', tools)).toBeCloseTo(1, 9);
    expect(perMetreOf('another', tools)).toBe(0);
  });
});

test('a straightedge is crowned or hollow by half the gap', () => {
  expect(own({ kind: 'straightedge', length: 900, gap: 0.6 })).toEqual({ error: 0.3, length: 900 });
  expect(own({ kind: 'straightedge', length: 900, gap: -0.6 })?.error).toBe(-0.3);
});

describe('winding sticks', () => {
  const board = { length: 600, width: 200 };
  test('swapped, they tell their own error', () => {
    expect(own({ kind: 'sticks', ...board, gap: 3, swapped: 2 })).toEqual({ error: 0.5, length: 600 });
  });

  test('a known error is taken out of one sight: the same wind as with both', () => {
    const both = toolTest({ kind: 'sticks', ...board, gap: 3, swapped: 2 });
    const known = toolTest({
      kind: 'sticks',
      ...board,
      gap: 3,
      known: { tool: 'oak', error: 0.5, length: 600, at: 1 },
    });
    const alone = toolTest({ kind: 'sticks', ...board, gap: 3 });
    // By hand: (3 + 2) / 2 x 200 / 600 = 0.833; the sticks taken as true, 3 x 200 / 600 = 1.
    expect(known).toMatchObject({ large: { quantities: { 0: { value: expect.closeTo(5 / 6, 9) } } }, own: null });
    expect(both).toMatchObject({ large: { quantities: { 0: { value: expect.closeTo(5 / 6, 9) } } } });
    expect(alone).toMatchObject({ large: { quantities: { 0: { value: expect.closeTo(1, 9) } } }, own: null });
  });
});

test('what can’t be is a problem', () => {
  expect(toolTest({ kind: 'square', length: 200, gap: 90 })).toMatchObject({ kind: 'problem', field: 'gap' });
  expect(toolTest({ kind: 'sticks', length: 600, gap: 1 })).toMatchObject({ kind: 'problem', field: 'width' });
});

test('the latest test of a tool stands', () => {
  const first = withReference([], { tool: 'edge', kind: 'straightedge', error: 1, length: 900, at: 1 });
  const then = withReference(first, { tool: 'edge', kind: 'straightedge', error: 2, length: 900, at: 2 });
  expect(then.map(({ error }) => error)).toEqual([2]);
});
