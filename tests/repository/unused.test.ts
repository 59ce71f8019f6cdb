import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { documentedIn } from '../setup/docstrings.ts';

const sources = new Map(
  readdirSync('src', { recursive: true, encoding: 'utf8' })
    .map((path) => `src/${path.replaceAll('\\', '/')}`)
    .filter((path) => /\.tsx?$/.test(path))
    .map((path) => [path, readFileSync(path, 'utf8').replace(/\/\*[\s\S]*?\*\//g, '')]),
);

const all = [...sources.values()].join('\n');

/** Tests and the bench hold plans to all of the rules; the app needs those of the cuts alone. */
const forTests = ['planBreaches'];

test('every function that the core exports is used by the app', () => {
  const unused = [...sources].flatMap(([file, text]) => {
    if (!file.startsWith('src/core/')) return [];
    return documentedIn(file, text).flatMap(({ name }) => {
      const uses = all.match(new RegExp(`\\b${name}\\b`, 'g')) ?? [];
      return uses.length > 1 ? [] : [name];
    });
  });
  expect(unused).toEqual(forTests);
});
