import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { launchFiles } from '../setup/launch-files.ts';

const kilobyte = 1000;
const gzipSize = (path: string) => gzipSync(readFileSync(path), { level: 9 }).length;

/** The addresses in the list that the worker precaches. */
function precached(): string[] {
  const worker = readFileSync('dist/sw.js', 'utf8');
  return [...worker.matchAll(/"url":"([^"]+)"/g)].map(([, url]) => url ?? '');
}

test('JavaScript and CSS before the first screen works: 30 kB at most, gzip', () => {
  const files = launchFiles('dist');
  expect(files.length).toBeGreaterThanOrEqual(2);
  const total = files.map((file) => gzipSize(join('dist', file))).reduce((a, b) => a + b);
  console.log(`before the first screen: ${total} bytes gzip in ${files.length} files`);
  expect(total).toBeGreaterThan(5 * kilobyte);
  expect(total).toBeLessThanOrEqual(30 * kilobyte);
});

test('everything precached: 180 kB at most, gzip', () => {
  const files = precached();
  expect(files).toContain('index.html');
  const total = files.map((file) => gzipSize(join('dist', file))).reduce((a, b) => a + b);
  console.log(`precached: ${total} bytes gzip in ${files.length} files`);
  expect(total).toBeLessThanOrEqual(180 * kilobyte);
});

test('all that is built is precached, so that nothing is missing offline', () => {
  const files = new Set(precached());
  const built = readdirSync('dist', { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => statSync(join('dist', file)).isFile())
    .filter((file) => !/^(sw\.js|robots\.txt|\.vite\/|icons\/.*\.png$)/.test(file));
  expect(built.filter((file) => !files.has(file))).toEqual([]);
});
