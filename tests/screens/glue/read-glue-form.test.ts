import { afterEach, describe, expect, test } from 'vitest';
import { emptySeam } from '../../../src/screens/glue/glue-form.ts';
import { coreProblem, readGlueForm } from '../../../src/screens/glue/read-glue-form.ts';
import { units } from '../../../src/ui/units.ts';
import { outside } from '../../setup/outside.ts';
import { planned, typed } from './samples.ts';

afterEach(() => {
  units.value = { unit: 'mm', nearest: 16 };
});

describe('a glue-up as it is typed', () => {
  test('alike seams count one by one; a row left empty is none, and a half-typed one lacks the rest', () => {
    const { seams, problems, missing } = readGlueForm(typed({ seams: [{ count: '3', length: '1200', width: '20' }] }));
    expect(seams).toEqual([1, 2, 3].map(() => ({ length: 1200, width: 20 })));
    expect([problems.size, missing.size]).toEqual([0, 0]);
    const empty = readGlueForm(typed({ seams: [emptySeam] }));
    expect(empty.seams).toEqual([]);
    expect([empty.problems.size, empty.missing.size]).toEqual([0, 0]);
    const half = readGlueForm(typed({ seams: [emptySeam, { ...emptySeam, length: '1200' }] }));
    expect([...half.missing.keys()]).toEqual(['seams.1.width']);
  });

  test('a list as long as the piece’s own is no mistake', () => {
    const { seams, problems } = readGlueForm(typed({ seams: [{ count: '100', length: '45', width: '19' }] }));
    expect([seams.length, problems.size]).toEqual([100, 0]);
  });

  test('inches and degrees Fahrenheit go together', () => {
    units.value = { unit: 'in', nearest: 16 };
    const { seams, celsius } = readGlueForm(
      typed({ seams: [{ ...emptySeam, length: "3' 4", width: '3/4' }], celsius: '68' }),
    );
    // Tolerance: rounding of doubles.
    outside({
      what: '3 ft 4 in and 3/4 in typed for a seam, 68 °F: mm, mm, °C',
      source: 'nist-sp811',
      at: 'appendix B',
      expected: [40 * 25.4, 0.75 * 25.4, 20],
      got: [seams[0]?.length, seams[0]?.width, celsius],
      tolerance: 5e-10,
    });
  });

  test.each([
    ['seams.0.length', { seams: [{ count: '1', length: 'long', width: '20' }] }],
    ['seams.0.length', { seams: [{ count: '1', length: '90 ft', width: '20' }] }],
    ['seams.0.length', { seams: [{ count: '1', length: '0', width: '20' }] }],
    ['seams.0.width', { seams: [{ count: '1', length: '1200', width: '3 in 20 mm' }] }],
    ['seams.0.count', { seams: [{ count: '0', length: '1200', width: '20' }] }],
    ['seams.0.count', { seams: [{ count: '1,5', length: '1200', width: '20' }] }],
    ['celsius', { celsius: 'warm' }],
    ['across', { across: '-5' }],
    ['label.seconds.open', { label: { open: '10-5' } }],
    ['label.atCelsius', { label: { atCelsius: 'x' } }],
  ])('what is wrong stands at %s', (field, change) => {
    const read = readGlueForm(typed(change));
    expect([...read.problems.keys()]).toEqual([field]);
    expect(JSON.stringify(read.seams)).not.toContain('null');
  });

  test.each([
    ['across', { across: '90 m' }],
    ['outerBoard', { outerBoard: '0' }],
    ['caul', { caul: '2 m' }],
    ['celsius', { celsius: '40' }],
    ['celsius', { celsius: '' }],
    ['label.seconds.open', { label: { open: '0' } }],
    ['label.seconds.clamp', { label: { clamp: '0-5' } }],
    ['label.leastCelsius', { label: { leastCelsius: '90' } }],
  ])('what the core refuses stands at %s', (entry, change) => {
    const { read, plan } = planned(typed(change));
    expect(read.problems.size).toBe(0);
    expect(coreProblem(plan, entry)).toBeDefined();
    expect(coreProblem(planned(typed()).plan, entry)).toBeUndefined();
  });

  test('clamps too weak are a problem of no entry', () => {
    const { read, plan } = planned(typed({ seams: [{ count: '1', length: '12000', width: '12000' }] }));
    expect(plan.clamps).toMatchObject({ kind: 'problem', field: 'clampForce' });
    expect(read.problems.size).toBe(0);
  });
});
