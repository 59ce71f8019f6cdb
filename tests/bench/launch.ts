import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

import type { BrowserContext } from 'playwright-core';
import { build } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { findBrowser } from '../setup/find-browser.ts';
import { launchBrowser } from '../setup/launch-browser.ts';
import { serve } from '../setup/serve.ts';
import { type BenchRow, median } from './bench-row.ts';

const rounds = 15;

/** The least that a Preact page can be: one button that answers a tap, precached by a worker like the app's. */
async function bareFolder(): Promise<{ root: string; dist: string }> {
  const root = mkdtempSync(join(resolve('node_modules'), '.bench-bare-'));
  writeFileSync(
    join(root, 'index.html'),
    '<!doctype html><html lang="en"><title>bare</title><div id="app"></div><script type="module" src="/main.tsx"></script></html>',
  );
  writeFileSync(
    join(root, 'main.tsx'),
    `import { render } from 'preact';
import { useState } from 'preact/hooks';
function Bare() {
  const [answer, setAnswer] = useState('What next?');
  return <main><h1>{answer}</h1><a href="#/x" onClick={() => setAnswer('answered')}>Shop</a></main>;
}
render(<Bare />, document.getElementById('app')!);
navigator.serviceWorker.register('./sw.js');
`,
  );
  writeFileSync(join(root, 'sw.ts'), "export * from '../../src/sw.ts';\n");
  await build({
    root,
    base: './',
    configFile: false,
    logLevel: 'silent',
    oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
    plugins: [
      VitePWA({
        strategies: 'injectManifest',
        srcDir: '../../src',
        filename: 'sw.ts',
        injectRegister: false,
        manifest: false,
      }),
    ],
  });
  return { root, dist: join(root, 'dist') };
}

/** Taps the first link to the shop as soon as it is there, and notes when the heading has changed. */
const tapAtOnce = `
  let first;
  new MutationObserver(() => {
    const heading = document.querySelector('h1')?.textContent;
    if (!heading) return;
    if (first === undefined) {
      const link = [...document.querySelectorAll('a')].find(({ textContent }) => textContent === 'Shop');
      if (!link) return;
      first = heading;
      link.click();
    } else if (heading !== first) window.answered ??= performance.now();
  }).observe(document, { childList: true, subtree: true, characterData: true });
`;

/** Milliseconds from the start of an offline navigation until the tap on the first link has changed the heading. */
async function startToFirstAnswer(context: BrowserContext, address: string): Promise<number> {
  const page = await context.newPage();
  await page.addInitScript(tapAtOnce);
  await page.goto(address, { waitUntil: 'commit' });
  const answered = await page.waitForFunction(() => (window as unknown as { answered?: number }).answered);
  const milliseconds = (await answered.jsonValue()) as number;
  await page.close();
  return milliseconds;
}

async function prepare(context: BrowserContext, address: string): Promise<void> {
  const page = await context.newPage();
  await page.goto(address);
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await page.reload();
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await page.close();
}

export async function bench(): Promise<BenchRow[]> {
  const bare = await bareFolder();
  const profile = mkdtempSync(join(tmpdir(), 'boardwright-bench-'));
  const app = await serve('dist', '/app/');
  const page = await serve(bare.dist, '/bare/');
  const context = await launchBrowser(findBrowser(), profile);
  try {
    await prepare(context, app.address);
    await prepare(context, page.address);
    await context.setOffline(true);
    const ours: number[] = [];
    const theirs: number[] = [];
    for (let round = 0; round < rounds; round++) {
      theirs.push(await startToFirstAnswer(context, page.address));
      ours.push(await startToFirstAnswer(context, app.address));
    }
    const ratio = median(ours) / median(theirs);
    return [
      {
        what: `start offline until the first tap is answered, against a bare Preact page (medians of ${rounds})`,
        measured: `${median(ours).toFixed(0)} ms against ${median(theirs).toFixed(0)} ms: ${ratio.toFixed(2)} times`,
        bar: '1.5 times',
        holds: ratio <= 1.5,
      },
    ];
  } finally {
    await context.close();
    await Promise.all([app.stop(), page.stop()]);
    rmSync(profile, { recursive: true, force: true });
    rmSync(bare.root, { recursive: true, force: true });
  }
}
