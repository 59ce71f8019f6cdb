import { execFileSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/**
 * Builds the app with some modules replaced: by the end of their path, the text that stands in their place.
 * Gives the folder. It runs in a process of its own, since a test's environment would make another build.
 */
export function buildVariant(replaced: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'boardwright-variant-'));
  const script = `
    import { build } from 'vite';
    const replaced = Object.entries(${JSON.stringify(replaced)});
    const missing = new Set(replaced.map(([end]) => end));
    await build({
      logLevel: 'error',
      build: { outDir: ${JSON.stringify(folder)}, emptyOutDir: true },
      plugins: [{
        name: 'replaced', enforce: 'pre',
        load(id) {
          const found = replaced.find(([end]) => id.replaceAll('\\\\', '/').endsWith(end));
          if (found) missing.delete(found[0]);
          return found?.[1];
        },
      }],
    });
    if (missing.size > 0) throw new Error('Never built: ' + [...missing].join(', '));
  `;
  const { VITEST: _, VITEST_MODE: __, ...env } = process.env;
  execFileSync(process.execPath, ['--input-type=module', '-e', script], {
    env: { ...env, NODE_ENV: 'production' },
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  return folder;
}
