import { existsSync } from 'node:fs';
import type { BenchRow } from './bench-row.ts';

// npm run bench               all of it
// npm run bench -- launch pad  some of it
const names = ['size', 'launch', 'pad', 'stock', 'breakdown'];
const wanted = process.argv.slice(2);
if (!existsSync('dist/index.html')) throw new Error('Build first: npm run build');

const rows: BenchRow[] = [];
for (const name of names) {
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  const { bench } = (await import(`./${name}.ts`)) as { bench(): Promise<BenchRow[]> };
  const measured = await bench();
  rows.push(...measured);
  for (const row of measured) console.error(`${row.what}: ${row.measured}`);
}
console.log('| what | measured | bar | kept |\n| --- | --- | --- | --- |');
for (const { what, measured, bar = '', holds } of rows)
  console.log(`| ${what} | ${measured} | ${bar} | ${holds === undefined ? '' : holds ? 'yes' : 'no'} |`);
