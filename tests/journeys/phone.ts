import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { inject } from 'vitest';
import { type Served, serve } from '../setup/serve.ts';

const args = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** What is served: the built app, or another build of it that BOARDWRIGHT_DIST names. */
const builtApp = process.env.BOARDWRIGHT_DIST ?? 'dist';

/** A phone at the bench: the built app on a sub-path of a static host, in a browser with a profile of its own. */
export interface Phone {
  readonly page: Page;
  readonly context: BrowserContext;
  readonly host: Served;
  /** What the page logged as errors; a journey ends by expecting none. */
  readonly errors: string[];
  /** Kills the browser and starts it again on the same profile. */
  restart(): Promise<Phone>;
  close(): Promise<void>;
}

interface Options {
  readonly width?: number;
  readonly height?: number;
  readonly colorScheme?: 'light' | 'dark';
}

export async function openPhone(options: Options = {}): Promise<Phone> {
  const profile = mkdtempSync(join(tmpdir(), 'boardwright-'));
  const host = await serve(builtApp, '/shops/bench/');
  return start(profile, host, options);
}

async function start(profile: string, host: Served, options: Options): Promise<Phone> {
  const { width = 360, height = 740, colorScheme = 'light' } = options;
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: inject('browserPath'),
    args,
    viewport: { width, height },
    colorScheme,
    hasTouch: true,
    locale: 'en-US',
    acceptDownloads: true,
  });
  const page = context.pages()[0] ?? (await context.newPage());
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  await page.goto(host.address);
  await page.getByRole('heading', { level: 1 }).waitFor();
  return {
    page,
    context,
    host,
    errors,
    restart: async () => {
      await context.close();
      return start(profile, host, options);
    },
    close: async () => {
      await context.close();
      await host.stop();
      rmSync(profile, { recursive: true, force: true });
    },
  };
}

/** Waits until the worker has everything in its cache and answers for the page. */
export async function makeOfflineReady(phone: Phone): Promise<void> {
  await phone.page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await phone.page.reload();
  await phone.page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await phone.page.getByRole('heading', { level: 1 }).waitFor();
}
