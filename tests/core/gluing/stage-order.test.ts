import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { type Needing, stageOrder } from '../../../src/core/gluing/stage-order.ts';
import { said, solved } from './helpers.ts';

const stage = (id: string, ...needs: string[]): Needing => ({ id, name: id.toUpperCase(), needs });
const ids = (stages: readonly Needing[]) => stages.map(({ id }) => id);

/** Stages without rings, in any order: each may only need those numbered lower. */
const solvable = fc
  .array(fc.array(fc.nat(), { maxLength: 4 }), { maxLength: 12 })
  .map((all) =>
    all.map((needs, index) => stage(`s${index}`, ...(index ? needs.map((need) => `s${need % index}`) : []))),
  )
  .chain((stages) => fc.shuffledSubarray(stages, { minLength: stages.length }));

describe('stageOrder', () => {
  it('puts sub-panels before the panel and the panel before the case', () => {
    const given = [stage('case', 'panel', 'side'), stage('panel', 'a', 'b'), stage('a'), stage('b'), stage('side')];
    expect(ids(solved(stageOrder(given)))).toEqual(['a', 'b', 'panel', 'side', 'case']);
  });
  it('keeps the order given where nothing waits', () => {
    expect(ids(solved(stageOrder([stage('b'), stage('a'), stage('c')])))).toEqual(['b', 'a', 'c']);
    expect(stageOrder([])).toEqual([]);
  });
  it('never puts a stage before what it needs, and loses none', () => {
    fc.assert(
      fc.property(solvable, (stages) => {
        const order = stageOrder(stages);
        if (isProblem(order)) return false;
        const place = new Map(order.map(({ id }, index) => [id, index]));
        return (
          new Set(order).size === stages.length &&
          order.every(({ needs }, index) =>
            needs.every((need) => (place.get(need) ?? Number.POSITIVE_INFINITY) < index),
          )
        );
      }),
    );
  });
  it('names a ring, and only the ring', () => {
    const ring = stageOrder([stage('case', 'lid'), stage('lid', 'rail'), stage('rail', 'lid'), stage('foot')]);
    expect(ring).toMatchObject({ kind: 'problem', field: 'stages' });
    expect(said(ring)).toContain('LID, RAIL');
    expect(said(ring)).not.toMatch(/CASE|FOOT/);
    expect(said(stageOrder([stage('self', 'self')]))).toContain('SELF');
  });
  it('refuses a need that is not there and an id that is there twice', () => {
    expect(stageOrder([stage('a'), stage('b', 'x')])).toMatchObject({ kind: 'problem', field: 'stages.1.needs' });
    expect(stageOrder([stage('a'), stage('a')])).toMatchObject({ kind: 'problem', field: 'stages.0.id' });
  });
});
