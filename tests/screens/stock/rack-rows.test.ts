import { expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { writeRackCsv } from '../../../src/core/lumber/write-rack-csv.ts';
import { type RackImport, rackRow, readRackImport } from '../../../src/screens/stock/files/rack-rows.ts';
import { speciesFromName } from '../../../src/screens/stock/files/species-from-name.ts';
import type { Board } from '../../../src/store/records/board.ts';
import { species } from '../../../src/tables/species.ts';
import { ownWoods } from '../../../src/ui/own-woods.ts';

const header = 'chalk mark,species,thickness (quarters),width (mm),length (mm),state';

function read(text: string, existing: readonly Board[] = []): RackImport {
  const found = readRackImport(text, existing, 1000);
  if (isProblem(found)) throw new Error(found.message.text);
  return found;
}

test('every wood of the table is known by its own name', () => {
  for (const { id, name } of species) {
    expect(speciesFromName(name)).toBe(id);
    expect(speciesFromName(`  ${name.toUpperCase()} `)).toBe(id);
  }
  expect(speciesFromName('unobtainable')).toBeUndefined();
});

test('a wood of the maker’s own is known by its name, and goes out by it', () => {
  ownWoods.value = [{ name: 'plum', tangential: 9 }];
  expect(speciesFromName(' Plum')).toBe('plum');
  expect(rackRow({ species: 'plum', thickness: { mm: 20 }, state: 'rack' } as Board).species).toBe('plum');
  ownWoods.value = [];
  expect(speciesFromName('plum')).toBeUndefined();
});

test('what went out comes in: marks, tapers, state, note and moisture', () => {
  const boards = [
    { chalk: '=A1', species: 'cherry-black', thickness: { quarters: 4 }, width: 150.5, length: 2400, state: 'rack' },
    {
      chalk: 'A2',
      species: 'maple-red',
      thickness: { mm: 27.4 },
      width: 200,
      farWidth: 180,
      length: 3000.1,
      state: 'cut',
      note: 'wane, "left" edge',
      readings: [{ at: 5, percent: 8.5 }],
    },
  ] as unknown as Board[];
  for (const unit of ['mm', 'in'] as const) {
    const { boards: got, problems } = read(writeRackCsv(boards.map(rackRow), unit));
    expect(problems).toEqual([]);
    expect(got).toEqual(
      boards.map((one) => ({ ...one, ...(one.readings && { readings: [{ at: 1000, percent: 8.5 }] }) })),
    );
  }
});

test('lines that can’t come in are told by number; the others are not touched by them', () => {
  const existing = [{ chalk: 'B1' }] as Board[];
  const { boards, problems } = read(
    `${header}\r\nb1,black cherry,4,150,2400,\r\nB2,nowood,4,150,2400,lost\r\n,black cherry,4,150,2400,set aside\r\n,black cherry,4,160,2400,rack\r\nB3,black cherry,4,160,2400,\r\nb3,black cherry,4,160,2400,`,
    existing,
  );
  expect(problems.map(({ line, problem }) => `${line} ${problem.field}`)).toEqual([
    '2 chalk mark',
    '3 species',
    '3 state',
    '7 chalk mark',
  ]);
  expect(problems.at(-1)?.problem.message.text).toContain('on line 6');
  // Marks that are missing are given, past those in the rack and in the file.
  expect(boards.map(({ chalk, state }) => `${chalk} ${state}`)).toEqual(['B2 setAside', 'B4 rack', 'B3 rack']);
});

test('a file that is far too long is refused before anything is stored', () => {
  const line = '\r\n,black cherry,4,150,2400,';
  expect(readRackImport(header + line.repeat(50_000), [], 1)).toMatchObject({ kind: 'problem', field: '' });
  expect(read(header + line.repeat(300)).boards.length).toBe(300);
});
