import { describe, expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { perMetreOf, withReference } from '../../../src/screens/square/tool-error.ts';
import { type ToolSeen, toolTest } from '../../../src/screens/square/tool-test.ts';

const seen = (part: Partial<ToolSeen>): ToolSeen => ({
  kind: 'square',
  values: {},
  positive: true,
  swappedPositive: true,
  ...part,
});

function own(part: Partial<ToolSeen>) {
  const test = toolTest(seen(part));
  if (!test || isProblem(test)) throw new Error('no answer');
  return test.own;
}

describe('try square', () => {
  test('lines 0.4 apart at 200 mm: half of it is the square’s own, atan(0.2 / 200)', () => {
    const error = (Math.atan(0.2 / 200) * 180) / Math.PI;
    expect(own({ values: { length: 200, gap: 0.4 } })?.error).toBeCloseTo(error, 9);
    expect(own({ values: { length: 200, gap: 0.4 }, positive: false })?.error).toBeCloseTo(-error, 9);
  });

  test('what is remembered is what a verdict takes: 1 mm for each metre again', () => {
    const error = own({ values: { length: 200, gap: 0.4 } })?.error ?? 0;
    const tools = withReference(undefined, { tool: 'small', kind: 'square', error, at: 1 });
    expect(perMetreOf('small', tools)).toBeCloseTo(1, 9);
    expect(perMetreOf('another', tools)).toBe(0);
  });
});

test('a straightedge is crowned or hollow by half the gap', () => {
  expect(own({ kind: 'straightedge', values: { length: 900, gap: 0.6 } })).toEqual({ error: 0.3, length: 900 });
  expect(own({ kind: 'straightedge', values: { length: 900, gap: 0.6 }, positive: false })?.error).toBe(-0.3);
});

describe('winding sticks', () => {
  const board = { length: 600, width: 200 };
  test('swapped, they tell their own error', () => {
    expect(own({ kind: 'sticks', values: { ...board, gap: 3, swapped: 2 } })).toEqual({ error: 0.5, length: 600 });
  });

  test('a known error is taken out of one sight: the same wind as with both', () => {
    const both = toolTest(seen({ kind: 'sticks', values: { ...board, gap: 3, swapped: 2 } }));
    const known = toolTest(seen({ kind: 'sticks', values: { ...board, gap: 3 }, known: { error: 0.5, length: 600 } }));
    const alone = toolTest(seen({ kind: 'sticks', values: { ...board, gap: 3 } }));
    // By hand: (3 + 2) / 2 x 200 / 600 = 0.833; the sticks taken as true, 3 x 200 / 600 = 1.
    expect(known).toMatchObject({ large: { quantities: { wind: { value: expect.closeTo(5 / 6, 9) } } }, own: null });
    expect(both).toMatchObject({ large: { quantities: { wind: { value: expect.closeTo(5 / 6, 9) } } } });
    expect(alone).toMatchObject({ large: { quantities: { wind: { value: expect.closeTo(1, 9) } } }, own: null });
  });
});

test('nothing is said before all is there; what can’t be is a problem', () => {
  expect(toolTest(seen({ values: { length: 200 } }))).toBeUndefined();
  expect(toolTest(seen({ kind: 'sticks', values: { length: 600, gap: 1 } }))).toBeUndefined();
  expect(toolTest(seen({ values: { length: 200, gap: 90 } }))).toMatchObject({ kind: 'problem', field: 'gap' });
});

test('the latest test of a tool stands', () => {
  const first = withReference(undefined, { tool: 'edge', kind: 'straightedge', error: 1, length: 900, at: 1 });
  const then = withReference(first, { tool: 'edge', kind: 'straightedge', error: 2, length: 900, at: 2 });
  expect(then.map(({ error }) => error)).toEqual([2]);
});
