import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { sources } from '../../src/tables/sources.ts';
import { keepSection, section, sectionOf, table, titles } from '../setup/outside-page.ts';
import { outsideSources } from '../setup/outside-sources.ts';
import { tableFigures } from '../setup/table-figures.ts';

/** Writes a section of the page when asked to, and holds the page to it. */
function holds(title: string, text: string): void {
  if (process.env.UPDATE_CHECKS) keepSection(title, section(title, text));
  expect(sectionOf(title)).toBe(section(title, text));
}

test('the page lists every source with its kind', () => {
  const rows = Object.entries(outsideSources).map(([id, { kind, title }]) => [id, kind, title]);
  holds('Sources', table(['source', 'kind', 'what it is'], rows));
});

const tables = import.meta.glob<object>('../../src/tables/*.ts', { eager: true });

test('the page lists every figure in the tables with the kind of its source', () => {
  const rows = Object.entries(tables).flatMap(([path, exported]) =>
    tableFigures(Object.values(exported)).map(({ of, figures, source }) =>
      [path.replace(/.*\/|\.ts$/g, ''), of, figures, source, sources[source].kind].join('\t'),
    ),
  );
  expect(rows.length).toBeGreaterThan(200);
  const cells = [...new Set(rows)].map((row) => row.split('\t'));
  holds('Figures in the tables', table(['table', 'of', 'figures', 'source', 'kind'], cells));
});

test('the page has a section for each test that asks the outside, and no other', () => {
  const files = readdirSync('tests', { recursive: true, encoding: 'utf8' })
    .map((path) => `tests/${path.replaceAll('\\', '/')}`)
    .filter((path) => path.endsWith('.test.ts') && /from '[./]+setup\/outside.ts'/.test(readFileSync(path, 'utf8')));
  const gone = titles().filter((title) => title.startsWith('tests/') && !existsSync(title));
  if (process.env.UPDATE_CHECKS) for (const title of gone) keepSection(title, undefined);
  expect(titles().filter((title) => title.startsWith('tests/'))).toEqual(files.sort());
});
