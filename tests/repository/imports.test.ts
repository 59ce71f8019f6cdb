import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, expect, test } from 'vitest';

const refused = [
  ['core', '../tables/sources.ts'],
  ['core', '../store/db.ts'],
  ['core', '../ui/say.tsx'],
  ['core', 'preact'],
  ['core', 'node:fs'],
  ['tables', '../store/db.ts'],
  ['tables', 'valibot'],
  ['store', '../app/shop.ts'],
  ['store', '../screens/bench/bench.tsx'],
  ['workers', '../ui/say.tsx'],
  ['figure', '../app/shop.ts'],
  ['ui', '../screens/bench/bench.tsx'],
  ['app', '../screens/bench/bench.tsx'],
] as const;

const allowed = [
  ['core', './answer/phrase.ts'],
  ['tables', '../core/answer/source-id.ts'],
  ['store', '../tables/sources.ts'],
  ['screens', '../store/db.ts'],
  ['ui', '../tables/sources.ts'],
] as const;

/** A folder with this project's lint rules, in which files may be written that break them. */
const folder = mkdtempSync(join(tmpdir(), 'boardwright-imports-'));
afterAll(() => rmSync(folder, { recursive: true }));

function breaches(): string {
  const rules = JSON.parse(readFileSync('biome.json', 'utf8'));
  writeFileSync(join(folder, 'biome.json'), JSON.stringify({ ...rules, $schema: undefined, vcs: undefined }));
  for (const [n, [from, specifier]] of [...refused, ...allowed].entries()) {
    const path = join(folder, `src/${from}/probe-${n}.ts`);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, `import { probe } from '${specifier}';\n\nexport const probed = probe;\n`);
  }
  const biome = resolve('node_modules/.bin/biome');
  const { stdout, stderr } = spawnSync(biome, ['lint', '--colors=off', '--max-diagnostics=none', 'src'], {
    cwd: folder,
    encoding: 'utf8',
  });
  return stdout + stderr;
}

const said = breaches();
const breach = (from: string, n: number) => `src/${from}/probe-${n}.ts:1:23 lint/style/noRestrictedImports`;

test.each(refused.map((pair, n) => [...pair, n] as const))('%s may not import %s', (from, _, n) =>
  expect(said).toContain(breach(from, n)),
);

test.each(allowed.map((pair, n) => [...pair, refused.length + n] as const))('%s may import %s', (from, _, n) =>
  expect(said).not.toContain(breach(from, n)),
);
