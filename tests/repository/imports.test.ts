import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';

/** What Biome says of a file with this import in this folder. */
function lint(folder: string, specifier: string): string {
  const { stdout, stderr } = spawnSync(
    'node_modules/.bin/biome',
    ['lint', '--colors=off', `--stdin-file-path=src/${folder}/probe.ts`],
    { encoding: 'utf8', input: `import { probe } from '${specifier}';\n\nexport const probed = probe;\n` },
  );
  return stdout + stderr;
}

test.each([
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
])('%s may not import %s', (folder, specifier) => expect(lint(folder, specifier)).toContain('noRestrictedImports'));

test.each([
  ['core', './answer/phrase.ts'],
  ['tables', '../core/answer/source-id.ts'],
  ['store', '../tables/sources.ts'],
  ['screens', '../store/db.ts'],
  ['ui', '../tables/sources.ts'],
])('%s may import %s', (folder, specifier) => expect(lint(folder, specifier)).not.toContain('noRestrictedImports'));
