import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldLine } from '../../../src/core/calendar/fold-line.ts';
import { outside } from '../../setup/outside.ts';

const octets = (text: string) => new TextEncoder().encode(text).length;

describe('foldLine, by RFC 5545 section 3.1', () => {
  it('leaves 75 octets as they are and cuts at 76', () => {
    expect(foldLine('a'.repeat(75))).toBe('a'.repeat(75));
    outside({
      what: 'a line of 80 octets, folded: octets of its two lines',
      source: 'rfc-5545',
      at: 'section 3.1',
      expected: [75, 6],
      got: foldLine('a'.repeat(80)).split('\r\n').map(octets),
    });
  });
  it('counts octets, not characters, and never cuts inside one', () => {
    expect(foldLine('ü'.repeat(40))).toBe(`${'ü'.repeat(37)}\r\n ${'ü'.repeat(3)}`);
    expect(foldLine('木'.repeat(26))).toBe(`${'木'.repeat(25)}\r\n ${'木'}`);
    expect(foldLine('🪵'.repeat(19))).toBe(`${'🪵'.repeat(18)}\r\n ${'🪵'}`);
  });
  it('keeps every line within 75 octets and unfolds to what it was', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 300 }), (text) => {
        const line = text.replace(/[\r\n]/g, '');
        const folded = foldLine(line);
        expect(folded.replaceAll('\r\n ', '')).toBe(line);
        for (const piece of folded.split('\r\n')) expect(octets(piece)).toBeLessThanOrEqual(75);
      }),
    );
  });
});
