import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { SourceId } from '../../src/core/answer/source-id.ts';
import { parseLength } from '../../src/core/length/parse-length.ts';
import { sources } from '../../src/tables/sources.ts';
import { species } from '../../src/tables/species.ts';
import { surfacedThicknesses } from '../../src/tables/surfaced-thickness.ts';
import { outside } from '../setup/outside.ts';

interface Published<Row> {
  readonly source: string;
  readonly rows: Readonly<Record<string, Row>>;
}

/** The rows of the published tables as they were read, each table with its source; kept apart from the app's own. */
const published = JSON.parse(readFileSync(new URL('published.json', import.meta.url), 'utf8')) as {
  dimensionalChange: Published<number[]>;
  shrinkage: Published<number[]>;
  shrinkageRecalled: Published<number[]>;
  surfacedThickness: Published<string>;
};

/** Every row of a table, and none left out. */
function same(table: string, source: SourceId, rows: readonly unknown[][], read: Readonly<Record<string, unknown>>) {
  expect(rows.map(([name]) => name).sort()).toEqual(Object.keys(read).sort());
  const kind = sources[source].kind === 'published' ? 'read' : 'recalled';
  outside({
    what: `${table}, ${kind}: rows that agree with the copy of the table kept in the tests`,
    source,
    expected: Object.keys(read).length,
    got: rows.filter(([name, figures]) => JSON.stringify(read[String(name)]) === JSON.stringify(figures)).length,
  });
}

describe('what is marked as read in a published table stands there, and nothing there is left out', () => {
  it('coefficients of dimensional change', () => {
    const rows = species.flatMap(({ name, coefficients: figures }) => {
      expect(sources[figures?.source ?? 'wood-handbook'].kind).toBe('published');
      return figures ? [[name, [figures.radial, figures.tangential]]] : [];
    });
    same('Table 13-5: coefficients of dimensional change', 'wood-handbook', rows, published.dimensionalChange.rows);
  });

  it.each([
    ['wood-handbook', 'published', published.shrinkage],
    ['wood-handbook-memory', 'from-memory', published.shrinkageRecalled],
  ] as const)('shrinkage by %s', (id, kind, { rows: read }) => {
    const rows = species.flatMap(({ name, shrinkage }) =>
      shrinkage?.source === id ? [[name, [shrinkage.radial, shrinkage.tangential, shrinkage.volumetric]]] : [],
    );
    expect(sources[id].kind).toBe(kind);
    same('Tables 4-3 and 4-4: shrinkage', id, rows, read);
  });

  it('surfaced thicknesses', () => {
    const rows = surfacedThicknesses.map(({ quarters, mm }) => [quarters, mm]);
    const read = Object.entries(published.surfacedThickness.rows).map(([quarters, inches]) => [
      Number(quarters),
      parseLength(inches, 'in'),
    ]);
    same(
      'standard thicknesses surfaced on two sides',
      'surfaced-thickness',
      rows.map(([quarters, mm]) => [String(quarters), mm]),
      Object.fromEntries(read),
    );
  });

  it('specific gravities are recalled, and say so', () => {
    const marks = species.flatMap(({ specificGravity }) => (specificGravity ? [specificGravity.source] : []));
    expect(new Set(marks.map((id) => sources[id].kind))).toEqual(new Set(['from-memory']));
  });
});

/** Paths of the numbers in a value that stand neither in nor below an object with a known source. */
function unsourced(value: unknown, path: string): string[] {
  if (typeof value === 'number') return [path];
  if (typeof value !== 'object' || value === null) return [];
  const { source } = value as { source?: string };
  if (source !== undefined && Object.hasOwn(sources, source)) return [];
  return Object.entries(value).flatMap(([key, inner]) => unsourced(inner, `${path}.${key}`));
}

const folder = new URL('../../src/tables/', import.meta.url);

it.each(readdirSync(folder))('every figure in %s has a source', async (file) => {
  const exported = (await import(new URL(file, folder).href)) as Record<string, unknown>;
  expect(unsourced(exported, file)).toEqual([]);
});

it('a figure without a source, or with one that nobody knows, is found', () => {
  const row = { waits: { least: 1, most: 2 } };
  expect(unsourced([{ ...row, source: 'label' }], 'row')).toEqual([]);
  expect(unsourced([row], 'row')).toEqual(['row.0.waits.least', 'row.0.waits.most']);
  expect(unsourced({ ...row, source: 'hearsay' }, 'row')).toHaveLength(2);
});

it('no source is listed that nothing rests on', () => {
  const src = new URL('../../src/', import.meta.url);
  const cited = readdirSync(src, { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.tsx?$/.test(path) && !/(tables.sources|source-id)\.ts$/.test(path))
    .map((path) => readFileSync(new URL(path, src), 'utf8'))
    .join('\n');
  expect(Object.keys(sources).filter((id) => !cited.includes(`'${id}'`))).toEqual([]);
});
