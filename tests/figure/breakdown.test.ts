import { describe, expect, it } from 'vitest';
import { isProblem } from '../../src/core/answer/problem.ts';
import { figure } from '../../src/figure/breakdown.ts';
import { smallProblem } from '../core/breakdown/small-problem.ts';

const change = (path: string, value: unknown): unknown => {
  const copy = structuredClone(smallProblem) as unknown as Record<string, unknown>;
  const steps = path.split('.');
  const last = steps.pop() ?? '';
  let at = copy;
  for (const step of steps) at = at[step] as Record<string, unknown>;
  at[last] = value;
  return copy;
};

describe('figure breakdown', () => {
  it('answers a plan, with the time it took', () => {
    const answer = figure(smallProblem) as Record<string, unknown>;
    expect(answer).toMatchObject({ short: [], blanks: expect.any(Array), milliseconds: expect.any(Number) });
    expect(answer.consumed).toBeGreaterThan(0);
    expect(JSON.stringify(answer)).not.toMatch(/null|NaN/);
  });

  it('says what to buy when something is short', () => {
    const answer = figure(change('parts.1.quantity', 200)) as { short: unknown[]; buy: unknown[] };
    expect(answer.short.length).toBeGreaterThan(0);
    expect(answer.buy.length).toBeGreaterThan(0);
  });

  it.each<[string, unknown, string]>([
    ['shop', 7, 'shop'],
    ['shop.ripKerf', '3', 'shop.ripKerf'],
    ['shop.flattenBy', 'axe', 'shop.flattenBy'],
    ['boards', undefined, 'boards'],
    ['boards.1', null, 'boards.1'],
    ['boards.0.cup', undefined, 'boards.0.cup'],
    ['boards.0.clear', [{ start: 0 }], 'boards.0.clear.0.length'],
    ['parts', {}, 'parts'],
    ['parts.0.panel', 1, 'parts.0.panel'],
    ['parts.0.length', 99999, 'parts.0.length'],
    ['cut', [{ board: 'B1', start: 0, length: 500 }], 'cut.0.strips'],
    ['wishes', [], 'wishes'],
    ['wishes', { keepOut: [1] }, 'wishes.keepOut'],
    ['boards.0.goodFace', 1, 'boards.0.goodFace'],
    ['wishes', { show: 'lid' }, 'wishes.show'],
    ['wishes', { show: ['lid'] }, 'wishes.show.0'],
    ['wishes', { fewerSeams: 'yes' }, 'wishes.fewerSeams'],
    ['wishes', { fix: [{ part: 'lid' }] }, 'wishes.fix.0.board'],
    ['wishes', { together: 3 }, 'wishes.together'],
  ])('refuses %s = %j', (path, value, field) => {
    const answer = figure(change(path, value));
    expect(isProblem(answer) && answer.field).toBe(field);
  });
});
