import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airFactor } from '../../../src/core/finishing/air-factor.ts';
import { type CoatScheduleInput, coatSchedule } from '../../../src/core/finishing/coat-schedule.ts';
import { ragsTodo } from '../../../src/core/finishing/finish-cautions.ts';
import { grits } from '../../../src/tables/abrasives.ts';
import { finishById, finishes } from '../../../src/tables/finishes.ts';
import { solved } from '../gluing/helpers.ts';

function input(id: string, more: Partial<CoatScheduleInput> = {}): CoatScheduleInput {
  const finish = finishById(id);
  if (!finish) throw new Error(`no finish ${id}`);
  return { finish, coats: 2, firstGrit: 120, gritsOwned: grits.map(({ grit }) => grit), ...more };
}
const ids = (asked: CoatScheduleInput) => solved(coatSchedule(asked)).map(({ id }) => id);
const any = fc.record({ finish: fc.constantFrom(...finishes), coats: fc.integer({ min: 1, max: 20 }) });

describe('coatSchedule', () => {
  it('runs from sanding to cure', () => {
    expect(ids(input('oil-varnish'))).toEqual([
      'sand-120',
      'sand-180',
      'sand-220',
      'sample',
      'coat-1',
      'rags-1',
      'between-1',
      'coat-2',
      'rags-2',
      'rub-out',
      'cure',
    ]);
  });
  it('leaves wood that is sealed already as it is but for its gloss', () => {
    const sealed = solved(coatSchedule(input('water-borne', { sealed: true, gritsOwned: [] })));
    expect(sealed.slice(0, 2).map(({ id, title }) => [id, title.text])).toEqual([
      ['between-0', 'Rub the sealed wood dull'],
      ['sample', 'Sample board'],
    ]);
    expect(sealed[0]?.todo.text).toMatch(/^Lightly with 320, not through the edges/);
  });
  it('raises the grain for water-borne finishes, and only for them', () => {
    expect(ids(input('water-borne'))).toEqual(expect.arrayContaining(['raise-grain', 'cut-grain']));
    expect(ids(input('shellac'))).not.toContain('raise-grain');
  });
  it('ends every coat with the rags where the finish holds a drying oil, and says how', () => {
    fc.assert(
      fc.property(any, ({ finish, coats }) => {
        const steps = solved(coatSchedule(input(finish.id, { coats, firstGrit: 80 })));
        const rags = steps.filter(({ stage }) => stage === 'rags');
        expect(rags).toHaveLength(finish.dryingOil ? coats : 0);
        for (const one of rags) {
          expect(one.todo).toEqual(ragsTodo);
          expect(steps[steps.indexOf(one) - 1]?.stage).toBe('coat');
        }
      }),
    );
  });
  it('gives each step an id of its own and survives being stored as JSON', () => {
    fc.assert(
      fc.property(any, ({ finish, coats }) => {
        const steps = solved(
          coatSchedule(input(finish.id, { coats, sections: ['Case', 'Door'], beforeAssembly: true })),
        );
        expect(new Set(steps.map(({ id }) => id)).size).toBe(steps.length);
        expect(JSON.parse(JSON.stringify(steps))).toEqual(steps);
      }),
    );
  });
  it('coats in sections, each wiped off, with the wait before the next coat after the last section', () => {
    const steps = solved(coatSchedule(input('hard-wax-oil', { sections: ['Case', 'Door'] })));
    const names = (id: string) => steps.find((step) => step.id === id)?.waits.map(({ name }) => name);
    expect(names('coat-1-1')).toEqual(['Wipe off']);
    expect(names('coat-1-2')).toEqual(['Wipe off', 'Before coat 2']);
    expect(names('coat-2-2')).toEqual(['Wipe off', 'Until it can be handled']);
  });
  it('warns of vapour where there is solvent, and of nothing it lacks', () => {
    const cautions = (id: string) =>
      JSON.stringify(solved(coatSchedule(input(id))).find((step) => step.id === 'coat-1')?.cautions);
    expect(cautions('lacquer-brushed')).toContain('flame');
    expect(cautions('water-borne')).not.toContain('flame');
    const oilPaint = { ...input('paint').finish, solvent: true };
    expect(JSON.stringify(solved(coatSchedule({ ...input('paint'), finish: oilPaint })))).toContain('flame');
  });
  it('waits longer in cold air', () => {
    const wait = (factor: number) =>
      solved(coatSchedule(input('oil-varnish', { airFactor: factor }))).find(({ id }) => id === 'coat-1')?.waits[0];
    expect(wait(2)?.leastSeconds).toBe(2 * (wait(1)?.leastSeconds ?? 0));
  });
  it('masks for glue before assembly', () => {
    expect(ids(input('shellac', { beforeAssembly: true }))[0]).toBe('mask');
  });
  it.each([
    [{ coats: 0 }, 'coats'],
    [{ coats: 40 }, 'coats'],
    [{ firstGrit: 400 }, 'from'],
    [{ gritsOwned: [] }, 'owned'],
    [{ airFactor: 0 }, 'airFactor'],
  ])('refuses %j', (wrong, field) => {
    expect(coatSchedule(input('oil-varnish', wrong))).toMatchObject({ kind: 'problem', field });
  });
});

describe('airFactor', () => {
  it('doubles each 10 degrees colder, and in damp air up to twice', () => {
    expect(solved(airFactor(20, 50)).value).toBe(1);
    expect(solved(airFactor(10, 50)).value).toBe(2);
    expect(solved(airFactor(20, 85)).value).toBe(2);
    expect(solved(airFactor(15, 50)).value).toBeCloseTo(Math.SQRT2, 12);
  });
  it('never makes a wait shorter', () => {
    expect(solved(airFactor(35, 10)).value).toBe(1);
  });
  it.each([
    [5, 50, 'celsius'],
    [20, 95, 'humidity'],
  ])('refuses %d degrees at %d percent', (celsius, humidity, field) => {
    expect(airFactor(celsius, humidity)).toMatchObject({ kind: 'problem', field });
  });
});
