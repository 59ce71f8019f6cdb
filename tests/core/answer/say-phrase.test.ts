import { expect, it } from 'vitest';
import { phrase } from '../../../src/core/answer/phrase.ts';
import { count, mm } from '../../../src/core/answer/quantity.ts';
import { sayPhrase } from '../../../src/core/answer/say-phrase.ts';

const inches = { unit: 'in', nearest: 16 } as const;

it('puts the quantities of a phrase in the maker’s units', () => {
  const said = phrase`Rip ${count(3)} strips to ${mm(146.05)}.`;
  expect(sayPhrase(said, inches)).toBe('Rip 3 strips to 5 3/4 in.');
  expect(sayPhrase(said, { ...inches, unit: 'mm' })).toBe('Rip 3 strips to 146.1 mm.');
});

it('leaves a placeholder without a quantity as it stands', () => {
  expect(sayPhrase({ text: 'Rip to {width}.', quantities: {} }, inches)).toBe('Rip to {width}.');
});

it('leaves a name in braces that every object knows', () => {
  expect(sayPhrase({ text: 'Board {constructor}.', quantities: {} }, inches)).toBe('Board {constructor}.');
});
