import { describe, expect, it } from 'vitest';
import { range } from '../../../src/core/answer/range.ts';
import type { Finish } from '../../../src/core/finishing/finish.ts';
import { withFinishLabel } from '../../../src/core/finishing/finish-label.ts';
import { finishById } from '../../../src/tables/finishes.ts';
import { solved } from '../gluing/helpers.ts';

const paint = finishById('paint') as Finish;

describe('withFinishLabel', () => {
  it('lets the can win and says so', () => {
    const found = solved(withFinishLabel(paint, { coverage: range(10, 12), cureSeconds: range(86400) }));
    expect(found).toMatchObject({
      ...paint,
      coverage: range(10, 12),
      cureSeconds: range(86400),
      source: 'label',
      useAfterSeconds: {},
    });
  });
  it('keeps use before full cure, where the can gives one of them alone', () => {
    const day = 86400;
    // The table: use after 2 to 4 days, full cure after 14 to 30.
    expect(withFinishLabel(paint, { cureSeconds: range(3 * day) })).toMatchObject({
      useAfterSeconds: range(2 * day, 3 * day),
    });
    expect(withFinishLabel(paint, { useAfterSeconds: range(20 * day) })).toMatchObject({
      cureSeconds: range(20 * day, 30 * day),
    });
  });
  it('leaves the table as it is when nothing was typed in', () => {
    expect(withFinishLabel(paint, {})).toEqual(paint);
  });
  it.each([
    [{ coverage: range(0) }, 'coverage'],
    [{ waitSeconds: range(7200, 3600) }, 'waitSeconds'],
    [{ waitSeconds: range(-60, 50) }, 'waitSeconds.least'],
    [{ cureSeconds: range(1e9) }, 'cureSeconds'],
    [{ useAfterSeconds: range(86400), cureSeconds: range(3600) }, 'cureSeconds'],
  ])('refuses %j', (label, field) => {
    expect(withFinishLabel(paint, label)).toMatchObject({ kind: 'problem', field });
  });
});
