import { expect, test } from 'vitest';
import { boards } from '../../src/store/boards.ts';
import { readInPages } from '../../src/store/read-in-pages.ts';

const board = (chalk: string) => ({
  chalk,
  species: 'cherry-black',
  thickness: { quarters: 4 },
  width: 150,
  length: 2400,
  state: 'rack' as const,
});

test('pages give what one read gives, whatever the count', async () => {
  expect(await readInPages('board')).toEqual([]);
  await boards.addMany(Array.from({ length: 799 }, (_, at) => board(`A${at}`)));
  expect(await readInPages('board')).toEqual(await boards.all());
  await boards.add(board('B'));
  expect((await readInPages('board')).length).toBe(800);
  await boards.addMany(Array.from({ length: 1700 }, (_, at) => board(`C${at}`)));
  const all = await readInPages('board');
  expect(all).toEqual(await boards.all());
  expect(new Set(all.map(({ id }) => id)).size).toBe(2500);
});
