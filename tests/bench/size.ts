import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { launchFiles } from '../setup/launch-files.ts';
import type { BenchRow } from './bench-row.ts';

const sum = (files: readonly string[]) =>
  files.map((file) => gzipSync(readFileSync(join('dist', file)), { level: 9 }).length).reduce((a, b) => a + b);

export async function bench(): Promise<BenchRow[]> {
  const launch = sum(launchFiles('dist'));
  const worker = readFileSync('dist/sw.js', 'utf8');
  const all = sum([...worker.matchAll(/"url":"([^"]+)"/g)].map(([, url]) => url ?? ''));
  const kilobytes = (bytes: number) => `${(bytes / 1000).toFixed(1)} kB`;
  return [
    {
      what: 'JavaScript and CSS before the first screen works, gzip',
      measured: kilobytes(launch),
      bar: '30 kB',
      holds: launch <= 30_000,
    },
    { what: 'everything precached, gzip', measured: kilobytes(all), bar: '180 kB', holds: all <= 180_000 },
  ];
}
