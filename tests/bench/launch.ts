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

const rounds = 31;

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

/** Taps the first link to the shop as soon as it is there; notes when the heading answers, and when the screen stands below it. */
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
    } else if (heading !== first) {
      window.answered ??= performance.now();
      if (document.querySelector('main')?.childElementCount) window.stood ??= performance.now();
    }
  }).observe(document, { childList: true, subtree: true, characterData: true });
`;

interface Start {
  /** Milliseconds from the start of an offline navigation until the tap on the first link has changed the heading. */
  readonly answered: number;
  /** Milliseconds until the screen that was tapped stands below its heading. */
  readonly stood: number;
}

async function startOffline(context: BrowserContext, address: string): Promise<Start> {
  const page = await context.newPage();
  await page.addInitScript(tapAtOnce);
  await page.goto(address, { waitUntil: 'commit' });
  await page.waitForFunction(() => 'stood' in window);
  const start = await page.evaluate(() => {
    const { answered, stood } = window as unknown as Start;
    return { answered, stood };
  });
  await page.close();
  return start;
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
    const ours: Start[] = [];
    const theirs: Start[] = [];
    for (let round = 0; round < rounds; round++) {
      theirs.push(await startOffline(context, page.address));
      ours.push(await startOffline(context, app.address));
    }
    const compared = (moment: keyof Start) => {
      const [app, bare] = [ours, theirs].map((starts) => median(starts.map((start) => start[moment]))) as [
        number,
        number,
      ];
      const ratio = app / bare;
      return { ratio, measured: `${app.toFixed(0)} ms against ${bare.toFixed(0)} ms: ${ratio.toFixed(2)} times` };
    };
    const answered = compared('answered');
    return [
      {
        what: `start offline until the first tap is answered, against a bare Preact page (medians of ${rounds})`,
        measured: answered.measured,
        bar: '1.5 times',
        holds: answered.ratio <= 1.5,
      },
      {
        what: 'the same, until the screen that was tapped stands below its question',
        measured: compared('stood').measured,
      },
    ];
  } finally {
    await context.close();
    await Promise.all([app.stop(), page.stop()]);
    rmSync(profile, { recursive: true, force: true });
    rmSync(bare.root, { recursive: true, force: true });
  }
}
