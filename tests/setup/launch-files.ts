import { readFileSync } from 'node:fs';
import { join } from 'node:path';

interface Chunk {
  readonly file: string;
  readonly imports?: readonly string[];
  readonly css?: readonly string[];
  readonly isEntry?: boolean;
}

/** The built scripts and styles that load before the given first screen works: the entry, the screen, and all they import. */
export function launchFiles(folder: string, firstScreen: string): string[] {
  const manifest = JSON.parse(readFileSync(join(folder, '.vite/manifest.json'), 'utf8')) as Record<string, Chunk>;
  const entry = Object.keys(manifest).find((key) => manifest[key]?.isEntry);
  if (!entry || !manifest[firstScreen]) throw new Error('The build manifest lacks the entry or the first screen.');
  const seen = new Set<string>();
  const files = new Set<string>();
  const visit = (key: string) => {
    const chunk = manifest[key];
    if (!chunk || seen.has(key)) return;
    seen.add(key);
    files.add(chunk.file);
    for (const style of chunk.css ?? []) files.add(style);
    for (const next of chunk.imports ?? []) visit(next);
  };
  visit(entry);
  visit(firstScreen);
  return [...files];
}
