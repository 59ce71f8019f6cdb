import { describe, expect, it } from 'vitest';
import { figure } from '../../src/figure/length.ts';

describe('figure length', () => {
  it('turns text into millimetres', () => {
    expect(figure({ text: '5 3/4', unit: 'in' })).toEqual({ mm: 146.05 });
    expect(figure({ text: '5,75', unit: 'mm' })).toEqual({ mm: 5.75 });
  });
  it('turns millimetres into text', () => {
    expect(figure({ mm: 146.05, unit: 'in', nearest: 16 })).toEqual({ text: '5 3/4' });
    expect(figure({ mm: 146.05, unit: 'in' })).toEqual({ text: '5 3/4' });
    expect(figure({ mm: 146, unit: 'mm' })).toEqual({ text: '146' });
  });
  it.each([
    [{}, 'unit'],
    [{ text: '5', unit: 'ft' }, 'unit'],
    [{ unit: 'in' }, 'text'],
    [{ text: 5, unit: 'in' }, 'text'],
    [{ text: 'oak', unit: 'in' }, 'text'],
    [{ text: '5', mm: 5, unit: 'in' }, 'text'],
    [{ mm: '5', unit: 'in' }, 'mm'],
    [{ mm: Number.NaN, unit: 'mm' }, 'mm'],
    [{ mm: 1e30, unit: 'mm' }, 'mm'],
    [{ mm: null, unit: 'mm' }, 'mm'],
    [{ mm: 5, unit: 'in', nearest: 3 }, 'nearest'],
    [{ mm: 5, unit: 'in', nearest: '16' }, 'nearest'],
  ])('names the field in %j', (input, field) => {
    expect(figure(input)).toMatchObject({ kind: 'problem', field });
  });
});
