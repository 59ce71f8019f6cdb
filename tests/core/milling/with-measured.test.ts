import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import type { MillingStep, Stage } from '../../../src/core/milling/milling-step.ts';
import { type Followed, type Measured, withMeasured } from '../../../src/core/milling/with-measured.ts';
import { scenarios, stepsOf } from './shops-and-stacks.ts';

const steps = stepsOf(scenarios['a wide and long panel, a full shop']);
const at = (stage: Stage, among: readonly MillingStep[] = steps): MillingStep => {
  const found = among.find((step) => step.stage === stage);
  if (!found) throw new Error(`no step ${stage}`);
  return found;
};
const reading = (stage: Stage, index: number, value: number, given: Partial<Measured> = {}): Measured => {
  const step = at(stage);
  const dimension = step.target?.dimension ?? 'thickness';
  return { step: step.id, piece: step.pieces[index]?.id ?? '', dimension, value, ...given };
};
const measuredAs = (...readings: Measured[]): Followed =>
  readings.reduce(
    (before: Followed, one) => {
      const followed = withMeasured(before.steps, one);
      if (isProblem(followed)) throw new Error(`${followed.field}: ${followed.message.text}`);
      return { steps: followed.steps, notes: [...before.notes, ...followed.notes] };
    },
    { steps, notes: [] },
  );

describe('what was measured', () => {
  it('within the tolerance moves no target', () => {
    const { steps: same, notes } = measuredAs(reading('thickness', 0, 19.9));
    expect(notes).toEqual([]);
    expect(same.map(({ target }) => target)).toEqual(steps.map(({ target }) => target));
  });

  it('too thin by a little: the setting follows, the panel is still planed to its thickness', () => {
    const { steps: now, notes } = measuredAs(reading('thickness', 0, 19.6, { accepted: true }));
    expect(at('thickness', now).target?.value).toBe(19.6);
    expect(at('rip parallel', now).pieces.map(({ size }) => size.thickness)).toEqual([19.6, 19.6, 19.6, 19.6]);
    expect(at('level panel', now).target?.value).toBe(19);
    expect(at('level panel', now).pieces[0]?.size.thickness).toBe(19.6);
    expect(notes[0]?.text).toContain('All pieces of this setting');
  });

  it('thinner than the part: every later thickness follows', () => {
    const { steps: now, notes } = measuredAs(reading('thickness', 1, 18.2, { accepted: true }));
    expect(at('level panel', now).target?.value).toBe(18.2);
    expect(at('level panel', now).title.quantities[0]?.value).toBe(18.2);
    expect(at('flush seams', now).pieces[0]?.target).toBe(18.2);
    expect(notes.length).toBeGreaterThan(1);
  });

  it('a strip ripped too narrow: its sawn edge and its panel lose as much, the others nothing', () => {
    const { steps: now } = measuredAs(reading('rip parallel', 0, 130, { accepted: true }));
    const edges = at('sawn edge', now).pieces;
    // 137.6 was ripped to 130: 7.6 less all the way; nine decimals, rounding only
    expect(edges[0]?.target).toBeCloseTo(136.8 - 7.6, 9);
    expect(edges[1]?.target).toBeCloseTo(136.8, 9);
    const whole = at('panel order', steps).pieces[0]?.size.width ?? 0;
    expect(at('panel order', now).pieces[0]?.size.width).toBeCloseTo(whole - 7.6, 9);
    expect(at('final width', now).target?.value).toBe(520);
  });

  it('so narrow that the panel lacks width: the final width follows and says so', () => {
    const { steps: now, notes } = measuredAs(reading('rip parallel', 0, 100, { accepted: true }));
    // four strips of 136.8, one of them 37.6 narrower
    const left = 4 * 136.8 - 37.6;
    expect(at('final width', now).target?.value).toBeCloseTo(left, 9);
    expect(notes.some(({ text }) => text.includes('width comes to'))).toBe(true);
  });

  it('a blank cut too short shortens what is made of it', () => {
    const { steps: now } = measuredAs(reading('crosscut rough', 0, 1790, { accepted: true }));
    expect(at('crosscut', now).target?.value).toBe(1790);
  });

  it('several readings add up, the same again and again', () => {
    const readings = [
      reading('rip parallel', 0, 136, { accepted: true }),
      reading('rip parallel', 1, 135, { accepted: true }),
    ];
    const whole = at('panel order', steps).pieces[0]?.size.width ?? 0;
    expect(at('panel order', measuredAs(...readings).steps).pieces[0]?.size.width).toBeCloseTo(whole - 1.6 - 2.6, 9);
    expect(measuredAs(...readings)).toEqual(measuredAs(...readings));
  });

  it('never raises a target and never touches an earlier step', () => {
    const stages: Stage[] = ['thickness', 'rip parallel', 'sawn edge', 'level panel', 'final width'];
    const share = fc.double({ min: 0.5, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...stages), share, (stage, part) => {
        const size = at(stage).pieces[0]?.size[at(stage).target?.dimension ?? 'thickness'] ?? 0;
        const { steps: now } = measuredAs(reading(stage, 0, size * part, { accepted: true }));
        const place = steps.findIndex((step) => step.stage === stage);
        expect(now.slice(0, place)).toEqual(steps.slice(0, place));
        now.forEach((step, index) => {
          expect(step.target?.value ?? 0).toBeLessThanOrEqual((steps[index]?.target?.value ?? 0) + 1e-9);
        });
      }),
    );
  });
});

describe('bad readings', () => {
  const cases: [string, Measured, string][] = [
    ['an unknown step', reading('thickness', 0, 20, { step: 'x' }), 'step'],
    ['a piece of another step', reading('thickness', 0, 20, { piece: 'x' }), 'piece'],
    ['zero', reading('thickness', 0, 0), 'value'],
    ['no number', reading('thickness', 0, Number.NaN), 'value'],
    ['thicker than before', reading('thickness', 0, 30), 'value'],
    ['a target already passed', reading('thickness', 0, 19.4), 'value'],
  ];
  for (const [name, wrong, field] of cases) {
    it(name, () => expect(withMeasured(steps, wrong)).toMatchObject({ kind: 'problem', field }));
  }

  it('thicker than an earlier reading of the same piece', () => {
    const first = reading('thickness', 0, 19, { accepted: true });
    const later = { ...first, step: at('rip parallel').id, value: 19.9 };
    expect(withMeasured(measuredAs(first).steps, later)).toMatchObject({ field: 'value' });
  });
});
