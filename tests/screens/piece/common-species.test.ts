import { expect, test } from 'vitest';
import { commonSpecies } from '../../../src/screens/piece/common-species.ts';
import { pairOf, sidePairs } from '../../../src/screens/piece/side-pairs.ts';
import type { Board } from '../../../src/store/records/board.ts';
import type { Part } from '../../../src/store/records/piece.ts';

test('the last part’s wood comes first, then the other parts’, then the rack’s by number of boards', () => {
  const parts = [{ species: 'oak-white' }, { species: 'cherry-black' }] as Part[];
  const rack = ['teak', 'maple-red', 'maple-red', 'cherry-black'].map((species) => ({ species })) as Board[];
  expect(commonSpecies(parts, rack)).toEqual(['cherry-black', 'oak-white', 'maple-red', 'teak']);
  expect(commonSpecies([], rack)[0]).toBe('maple-red');
});

test('every pair of sides is offered once, and a part without any is all shown', () => {
  expect(sidePairs).toHaveLength(6);
  expect(pairOf({}, 'faces')).toBe('shown-shown');
  expect(pairOf({ surfaces: { faces: ['bare', 'shown'] } }, 'faces')).toBe('shown-bare');
  for (const { value, sides } of sidePairs) expect(pairOf({ surfaces: { ends: sides } }, 'ends')).toBe(value);
});
