import { describe, expect, it } from 'vitest';
import { attachment } from '../../../src/core/movement/attachment.ts';
import { answered } from './woods.ts';

const moves = { value: { shrink: 1, swell: 1.5 }, working: { steps: [], sources: [] } };

describe('attachment', () => {
  it('sets a button with room to swell, held when dry', () => {
    expect(answered(attachment(moves, { kind: 'button', grooveDepth: 10 })).value.setting).toBe(2.5);
    // Gap 2.5, shrinking 1, hold 4: 7.5 mm is the least.
    expect(attachment(moves, { kind: 'button', grooveDepth: 7.5 })).not.toHaveProperty('field');
    expect(attachment(moves, { kind: 'button', grooveDepth: 7.4 })).toMatchObject({ field: 'grooveDepth' });
  });

  it('sets a slotted bracket so that both ways keep the same spare', () => {
    // Travel 12 - 4 = 8, of which 2.5 are needed: 2.75 spare each way.
    expect(answered(attachment(moves, { kind: 'slotted-bracket', slot: 12, shank: 4 })).value.setting).toBe(4.25);
    expect(attachment(moves, { kind: 'slotted-bracket', slot: 8.4, shank: 4 })).toMatchObject({ field: 'slot' });
  });

  it('asks whether a swivel bracket swings far enough', () => {
    expect(answered(attachment(moves, { kind: 'swivel-bracket', swing: 5 })).value.setting).toBe(2.75);
    expect(attachment(moves, { kind: 'swivel-bracket', swing: 4 })).toMatchObject({ field: 'swing' });
  });

  it.each([
    ['margin', { kind: 'button', grooveDepth: 10, margin: -1 }],
    ['grooveDepth', { kind: 'button', grooveDepth: 0 }],
    ['hold', { kind: 'button', grooveDepth: 10, hold: -1 }],
    ['slot', { kind: 'slotted-bracket', slot: Number.NaN, shank: 4 }],
    ['slot', { kind: 'slotted-bracket', slot: 3, shank: 4 }],
    ['shank', { kind: 'slotted-bracket', slot: 3, shank: 0 }],
    ['swing', { kind: 'swivel-bracket', swing: 0 }],
  ] as const)('names %s', (field, by) => {
    expect(attachment(moves, by)).toMatchObject({ kind: 'problem', field });
  });
});
