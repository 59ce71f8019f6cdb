import { describe, expect, it } from 'vitest';
import { type CasePanel, type FoldedCase, foldedCaseCorners } from '../../../src/core/movement/folded-case-corners.ts';
import { answered, cherry } from './woods.ts';

const panel = (name: string, grain: CasePanel['grain'] = 'around'): CasePanel => ({
  name,
  grain,
  wood: cherry,
  today: 8,
});
const box: FoldedCase = {
  panels: [panel('top'), panel('right'), panel('bottom'), panel('left')],
  depth: 300,
  seasons: { dry: 6, wet: 11 },
};
const advice = (input: FoldedCase) => answered(foldedCaseCorners(input)).map((corner) => corner.verdict.value.advice);

describe('foldedCaseCorners', () => {
  it('glues all four where the grain runs on around', () => {
    expect(advice(box)).toEqual(['glue', 'glue', 'glue', 'glue']);
  });

  it('gives each corner its own verdict: the two of a crossing panel are aligned', () => {
    const crossing: FoldedCase = {
      ...box,
      panels: [panel('top'), panel('right'), panel('bottom', 'front-to-back'), panel('left')],
    };
    expect(advice(crossing)).toEqual(['glue', 'align', 'align', 'glue']);
    expect(answered(foldedCaseCorners(crossing))[3]?.panels).toEqual(['left', 'top']);
  });

  it('heeds the limit', () => {
    const mixed = {
      ...box,
      panels: [{ ...panel('top'), today: 9 }, panel('right'), panel('bottom'), panel('left')],
    } as const;
    // One percent apart over 300 mm: 300 x 0.00248 = 0.744 mm.
    expect(advice(mixed)).toEqual(['align', 'glue', 'glue', 'align']);
    expect(advice({ ...mixed, limit: 0.8 })).toEqual(['glue', 'glue', 'glue', 'glue']);
  });

  it('names what is wrong', () => {
    expect(foldedCaseCorners({ ...box, depth: 0 })).toMatchObject({ kind: 'problem', field: 'depth' });
    const damp = {
      ...box,
      panels: [panel('top'), panel('right'), { ...panel('bottom'), today: 31 }, panel('left')],
    } as const;
    expect(foldedCaseCorners(damp)).toMatchObject({ kind: 'problem', field: 'corners.1.second.today' });
  });
});
