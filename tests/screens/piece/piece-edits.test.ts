import { expect, test } from 'vitest';
import {
  changePart,
  changeSides,
  nextName,
  putBack,
  withCopy,
  withoutPart,
  withPart,
} from '../../../src/screens/piece/piece-edits.ts';
import type { Part, Piece } from '../../../src/store/records/piece.ts';

const part = (id: string): Part => ({
  id,
  name: id,
  species: 'cherry-black',
  length: 600,
  width: 300,
  thickness: 19,
  quantity: 1,
  panel: true,
});
const chest: Piece = {
  id: 'chest',
  created: 0,
  updated: 0,
  revision: 1,
  name: 'chest',
  parts: [part('front'), part('side'), part('lid')],
  joints: [
    { id: 'j1', kind: 'corner', parts: ['front', 'side'] },
    { id: 'j2', kind: 'cleat', parts: ['lid', 'front'] },
  ],
  stages: [{ id: 's', name: 'case', parts: ['front', 'side'] }],
};

test('a part goes with its joints and its place in the stages, and comes back as it was', () => {
  const without = withoutPart(chest, 'side');
  expect(without.parts.map(({ id }) => id)).toEqual(['front', 'lid']);
  expect(without.joints.map(({ id }) => id)).toEqual(['j2']);
  expect(without.stages[0]?.parts).toEqual(['front']);
  const back = putBack(without, chest, 'side');
  expect(back.parts).toEqual(chest.parts);
  expect(new Set(back.joints)).toEqual(new Set(chest.joints));
  expect(back.stages).toEqual(chest.stages);
});

test('what changed in between stays when a part comes back, and it comes back once', () => {
  const meanwhile = changePart(withoutPart(chest, 'side'), 'lid', { width: 450 });
  const back = putBack(meanwhile, chest, 'side');
  expect(back.parts.find(({ id }) => id === 'lid')?.width).toBe(450);
  expect(putBack(back, chest, 'side')).toBe(back);
});

test('a part is added at the end, a copy behind what it copies as that stands by then', () => {
  expect(withPart(chest, part('base')).parts.map(({ id }) => id)).toEqual(['front', 'side', 'lid', 'base']);
  const { parts } = withCopy(changePart(chest, 'side', { width: 450 }), 'side', 'copy');
  expect(parts.map(({ id }) => id)).toEqual(['front', 'side', 'copy', 'lid']);
  expect(parts[2]).toEqual({ ...part('side 2'), id: 'copy', width: 450 });
  expect(withCopy(chest, 'gone', 'copy')).toBe(chest);
});

test('a copy gets the next free name', () => {
  expect(nextName('side', ['side'])).toBe('side 2');
  expect(nextName('side 2', ['side', 'side 2', 'side 3'])).toBe('side 4');
  expect(nextName('A4', ['A4'])).toBe('A4 2');
  expect(nextName('', [''])).toBe('2');
});

test('two choices of sides in quick succession both stay', () => {
  const faces = { faces: ['shown', 'bare'] } as const;
  const ends = { ends: ['bare', 'bare'] } as const;
  const changed = changeSides(changeSides(chest, 'lid', faces), 'lid', ends);
  expect(changed.parts[2]?.surfaces).toEqual({ ...faces, ...ends });
  expect(changed.parts[0]).toBe(chest.parts[0]);
});
