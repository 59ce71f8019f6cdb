import { mkdtempSync, readlinkSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { inject } from 'vitest';
import { launchBrowser } from '../setup/launch-browser.ts';
import { type Served, serve } from '../setup/serve.ts';

/** What is served: the built app, or another build of it that BOARDWRIGHT_DIST names. */
const builtApp = process.env.BOARDWRIGHT_DIST ?? 'dist';

/** A phone at the bench: the built app on a sub-path of a static host, in a browser with a profile of its own. */
export interface Phone {
  readonly page: Page;
  readonly context: BrowserContext;
  readonly host: Served;
  /** What the page logged as errors; a journey ends by expecting none. */
  readonly errors: string[];
  /** Every address that a page, a worker or the service worker of this browser has asked, the first page on. */
  readonly asked: readonly string[];
  /** Closes the browser and starts it again on the same profile. */
  restart(): Promise<Phone>;
  /** Ends the browser as an empty battery would, in the middle of whatever it does, and starts it again. */
  kill(): Promise<Phone>;
  close(): Promise<void>;
}

type Options = Parameters<typeof launchBrowser>[2];

export async function openPhone(options: Options = {}): Promise<Phone> {
  const profile = mkdtempSync(join(tmpdir(), 'boardwright-'));
  const host = await serve(builtApp, '/shops/bench/');
  return start(profile, host, options);
}

async function start(profile: string, host: Served, options: Options): Promise<Phone> {
  const context = await launchBrowser(inject('browserPath'), profile, options);
  const page = context.pages()[0] ?? (await context.newPage());
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  const asked: string[] = [];
  context.on('request', (request) => asked.push(request.url()));
  await page.goto(host.address);
  await page.getByRole('heading', { level: 1 }).waitFor();
  return {
    page,
    context,
    host,
    errors,
    asked,
    restart: async () => {
      // No hand lets go of the last key and ends the browser within a twentieth of a second.
      await page.evaluate(() => new Promise((done) => setTimeout(done, 50))).catch(() => {});
      await context.close();
      return start(profile, host, options);
    },
    kill: async () => {
      const gone = new Promise((done) => context.once('close', done));
      process.kill(browserProcess(profile), 'SIGKILL');
      await gone;
      return start(profile, host, options);
    },
    close: async () => {
      await context.close();
      await host.stop();
      rmSync(profile, { recursive: true, force: true });
    },
  };
}

/** The browser notes its process beside its profile: `host-4711`. */
const browserProcess = (profile: string): number =>
  Number(readlinkSync(join(profile, 'SingletonLock')).replace(/^.*-/, ''));

/** Waits until the worker has everything in its cache and answers for the page. */
export async function makeOfflineReady(phone: Phone): Promise<void> {
  await phone.page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await phone.page.reload();
  await phone.page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await phone.page.getByRole('heading', { level: 1 }).waitFor();
}
