import { describe, expect, it } from 'vitest';
import { mitreClamping } from '../../../src/core/gluing/mitre-clamping.ts';
import { solved } from './helpers.ts';

const todo = (work: Parameters<typeof mitreClamping>[0]) =>
  solved(mitreClamping(work))
    .map(({ text }) => text)
    .join(' ');

describe('mitreClamping', () => {
  it('takes straps with packing at hand, as many as the width asks for', () => {
    expect(todo({ kind: 'case', width: 300, hasStraps: true })).toMatch(/^.*3 straps.*Packing/s);
    expect(todo({ kind: 'frame', width: 60, hasStraps: true })).toContain('One strap');
  });
  it('takes glued blocks otherwise, and warns of clamps along the sides', () => {
    expect(todo({ kind: 'frame', width: 60, hasStraps: false })).toMatch(/blocks.*Never with clamps along the sides/s);
    expect(todo({ kind: 'case', width: 60, hasStraps: false })).toContain('A long block');
  });
  it('refuses a width that makes no sense', () => {
    expect(mitreClamping({ kind: 'case', width: 0, hasStraps: true })).toMatchObject({
      kind: 'problem',
      field: 'width',
    });
  });
});
