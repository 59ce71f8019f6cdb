import { readFileSync } from 'node:fs';
import { join } from 'node:path';

interface Chunk {
  readonly file: string;
  readonly imports?: readonly string[];
}

/** What loads before the first screen works: the page with the style in it, what it names, and all that this imports. */
export function launchFiles(folder: string): string[] {
  const manifest = JSON.parse(readFileSync(join(folder, '.vite/manifest.json'), 'utf8')) as Record<string, Chunk>;
  const page = readFileSync(join(folder, 'index.html'), 'utf8');
  const named = [...page.matchAll(/(?:src|href)="\.\/([^"]+\.(?:js|css))"/g)].map(([, file]) => file ?? '');
  const files = new Set(['index.html']);
  const visit = (file: string) => {
    if (files.has(file)) return;
    files.add(file);
    const chunk = Object.values(manifest).find((candidate) => candidate.file === file);
    for (const key of chunk?.imports ?? []) visit(manifest[key]?.file ?? key);
  };
  for (const file of named) visit(file);
  if (files.size < 2) throw new Error('The built page names no script.');
  return [...files];
}
