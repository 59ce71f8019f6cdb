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
    expect(found).toEqual({ ...paint, coverage: range(10, 12), cureSeconds: range(86400), source: 'label' });
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
