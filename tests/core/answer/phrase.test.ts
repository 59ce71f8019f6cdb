import fc from 'fast-check';
import { expect, it } from 'vitest';
import { phrase } from '../../../src/core/answer/phrase.ts';
import { problem } from '../../../src/core/answer/problem.ts';
import { mm, seconds } from '../../../src/core/answer/quantity.ts';
import { sayPhrase } from '../../../src/core/answer/say-phrase.ts';

const units = { unit: 'mm', nearest: 16 } as const;
/** Words of a maker who likes braces. */
const words = fc
  .array(fc.constantFrom('{', '}', '{0}', '{1}', '{{}', 'lid', ' '), { maxLength: 6 })
  .map((all) => all.join(''));

it('says each quantity where it stands', () => {
  expect(phrase`${mm(20)} for ${seconds(60)}`).toEqual({
    text: '{0} for {1}',
    quantities: { 0: { value: 20, unit: 'mm' }, 1: { value: 60, unit: 'seconds' } },
  });
});

it('takes no brace of a maker for the place of a quantity', () => {
  fc.assert(
    fc.property(words, words, (before, after) => {
      const said = phrase`${before}: ${mm(20)}, ${after}`;
      expect(sayPhrase(said, units)).toBe(`${before}: 20 mm, ${after}`);
      expect(sayPhrase(problem('', said).message, units)).toBe(`${before}: 20 mm, ${after}`);
      expect(sayPhrase(problem('', before).message, units)).toBe(before);
    }),
  );
});

it('makes a phrase part of another, each with its own quantities', () => {
  fc.assert(
    fc.property(words, (name) => {
      const inner = phrase`${name} of ${mm(20)}`;
      expect(sayPhrase(phrase`Rip ${mm(50)}, then ${inner} and ${inner} to ${mm(30)}.`, units)).toBe(
        `Rip 50 mm, then ${name} of 20 mm and ${name} of 20 mm to 30 mm.`,
      );
    }),
  );
});

it('reads the names of a phrase kept from before, also within another', () => {
  const kept = { text: 'Rip to {width}, {length} {long}.', quantities: { width: mm(50), length: mm(900) } };
  expect(sayPhrase(kept, units)).toBe('Rip to 50 mm, 900 mm {long}.');
  expect(sayPhrase(phrase`First: ${kept}`, units)).toBe('First: Rip to 50 mm, 900 mm {long}.');
});
