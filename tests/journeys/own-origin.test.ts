import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { makeOfflineReady, openPhone, type Phone } from './phone.ts';

// Nothing leaves the phone by itself, and no script but the app's own runs: shown on every screen, with the demo shop.

let phone: Phone;
let stranger: Server;
let strangerHeard = 0;

beforeAll(async () => {
  phone = await openPhone();
  stranger = createServer((_, response) => {
    strangerHeard += 1;
    response.setHeader('access-control-allow-origin', '*').end('heard');
  });
  await new Promise<void>((done) => stranger.listen(0, '127.0.0.1', done));
});
afterAll(async () => {
  stranger.close();
  await phone.close();
});

const strangerAddress = () => `http://localhost:${(stranger.address() as AddressInfo).port}/`;
const ownAddress = (url: string) =>
  url.startsWith(phone.host.address) || url.startsWith(`blob:${new URL(phone.host.address).origin}`);

/** Every address that the app itself leads to from where it stands. */
const linksHere = () =>
  phone.page.evaluate(() =>
    [...document.querySelectorAll<HTMLAnchorElement>('a[href^="#/"]')].map((link) => link.hash),
  );

describe('the app asks its own origin alone', () => {
  test('on every screen that it leads to, and in a plan of the cuts, a backup and an import', {
    timeout: 300_000,
  }, async () => {
    const { page, host } = phone;
    await page.getByRole('button', { name: 'Load the demo shop' }).click();
    await page.getByText('The demo shop is loaded.').waitFor();
    await page.goto(`${host.address}#/breakdown/demo-piece-cabinet`);
    await page.getByRole('button', { name: 'Plan the cuts' }).click();
    await page.getByRole('link', { name: 'Mill it' }).waitFor();

    const open = ['#/'];
    const seen = new Set(open);
    for (let next = open.pop(); next !== undefined; next = open.pop()) {
      await page.goto(host.address + next);
      await page.getByRole('heading', { level: 1 }).first().waitFor();
      await page.waitForTimeout(150);
      for (const link of await linksHere()) {
        // One board and one delivery stand for their like.
        const like = link.replace(/^(#\/stock\/).{20,}$/, '$1…');
        if (!seen.has(like) && seen.size < 60) {
          seen.add(like);
          open.push(link);
        }
      }
    }
    const screens = new Set([...seen].map((link) => link.split('/')[1]));
    for (const screen of [
      'stock',
      'piece',
      'breakdown',
      'mill',
      'square',
      'glue',
      'finish',
      'movement',
      'sheet',
      'wood',
      'shop',
      'data',
    ]) {
      expect(screens, 'screens seen').toContain(screen);
    }

    await page.goto(`${host.address}#/data`);
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Take a backup' }).click();
    await page.getByLabel('File', { exact: true }).setInputFiles(await (await saving).path());
    await page.getByRole('button', { name: 'Merge it in' }).waitFor();
    await makeOfflineReady(phone);

    const scripts = await page.evaluate(() => [...document.scripts].map(({ src }) => src));
    expect(phone.asked, 'what was listened to').toEqual(expect.arrayContaining([host.address, ...scripts]));
    expect(phone.asked.filter((url) => !ownAddress(url))).toEqual([]);
    expect(phone.errors).toEqual([]);
  });

  test('and could not ask another: the policy stops it', async () => {
    const { page } = phone;
    const reply = await page.evaluate(
      (address) =>
        fetch(address).then(
          () => 'answered',
          () => 'refused',
        ),
      strangerAddress(),
    );
    await page.evaluate((address) => {
      const picture = document.createElement('img');
      picture.src = `${address}picture.png`;
      const script = document.createElement('script');
      script.src = `${address}script.js`;
      document.body.append(picture, script);
    }, strangerAddress());
    await page.waitForTimeout(300);
    expect([reply, strangerHeard]).toEqual(['refused', 0]);
    expect(phone.errors.length).toBeGreaterThanOrEqual(3);
    expect(
      phone.errors.every((error) => error.includes('Content Security Policy') || error.includes('Fetch API')),
    ).toBe(true);
  });

  test('the stranger would have been heard without the policy', async () => {
    await fetch(strangerAddress());
    expect(strangerHeard).toBe(1);
  });
});

describe('no inline script runs', () => {
  test('the page has none, and none that is put in runs', async () => {
    const { page, host } = phone;
    const text = await (await fetch(host.address)).text();
    expect([...text.matchAll(/<script\b[^>]*>([^<]*)<\/script>/g)].map(([, inside]) => inside)).toEqual(['']);
    expect(text).not.toMatch(/\son\w+=/);
    const ran = await page.evaluate(async () => {
      const script = document.createElement('script');
      script.textContent = 'window.inlineRan = true';
      const holder = document.createElement('div');
      holder.innerHTML = '<img src="nowhere.png" onerror="window.inlineRan = true">';
      document.body.append(script, holder);
      await new Promise((done) => setTimeout(done, 300));
      let evaluated = true;
      try {
        // Built from text, as a script of a hostile file would be.
        new Function('return 1')();
      } catch {
        evaluated = false;
      }
      return [(window as { inlineRan?: boolean }).inlineRan ?? false, evaluated];
    });
    expect(ran).toEqual([false, false]);
  });

  test('and no style but the page’s own takes hold', async () => {
    const spacing = await phone.page.evaluate(() => {
      const style = document.createElement('style');
      style.textContent = 'h1 { letter-spacing: 9px }';
      document.head.append(style);
      const { letterSpacing, fontFamily } = getComputedStyle(document.querySelector('h1') as HTMLElement);
      return { letterSpacing, fontFamily };
    });
    expect(spacing).toEqual({ letterSpacing: 'normal', fontFamily: 'system-ui, sans-serif' });
  });

  test('markup in a file that comes in is shown as the text that it is', async () => {
    const { page, host } = phone;
    await page.goto(`${host.address}#/data`);
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Take a backup' }).click();
    const { readFile } = await import('node:fs/promises');
    const backup = JSON.parse(await readFile(await (await saving).path(), 'utf8'));
    const markup = '<img src=x onerror="window.inlineRan = true">';
    for (const [kind, records] of Object.entries(backup.kinds) as [string, Record<string, unknown>[]][]) {
      for (const record of records)
        Object.assign(record, {
          note: markup,
          updated: Date.now(),
          ...(kind === 'piece' ? { name: markup } : {}),
        });
    }
    backup.kinds.board[0] = { id: markup };
    await page.getByRole('button', { name: 'Dismiss' }).click();
    await page.getByLabel('File', { exact: true }).setInputFiles({
      name: 'hostile.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(backup)),
    });
    await page.getByText('This file was changed after the app made it.').waitFor();
    await page.getByText('1 damaged record set aside').waitFor();
    await page.getByRole('cell', { name: markup }).first().waitFor();
    for (const choice of await page.getByRole('radio', { name: 'The file’s' }).all()) await choice.check();
    await page.getByRole('button', { name: 'Merge it in' }).click();
    await page.getByText('The records are in.').waitFor();
    await page.goto(`${host.address}#/`);
    await page.getByText(markup).first().waitFor();
    expect(await page.locator('#app img').count()).toBe(0);
  });

  test('nor does what stands in a rack list; one that is too large is refused before it is read', async () => {
    const { page, host } = phone;
    await page.goto(`${host.address}#/stock/list`);
    const markup = '<img src=x onerror="window.inlineRan = true">';
    const quoted = `"${markup.replaceAll('"', '""')}"`;
    const head = 'chalk mark,species,thickness (quarters),width (in),length (in),note';
    const choose = (text: string) =>
      page.getByLabel('Choose a CSV file').setInputFiles({
        name: 'hostile.csv',
        mimeType: 'text/csv',
        buffer: Buffer.from(text),
      });
    await choose(`${head}\r\nM1,${quoted},8,6,96,\r\n${quoted},black cherry,8,6,96,${quoted}\r\n`);
    await page.getByText('1 board can come in').waitFor();
    await page.getByText(markup).first().waitFor();
    await page.getByRole('button', { name: 'Add 1 board' }).click();
    await page.getByText('1 board added.').waitFor();
    await page.getByText(markup).first().waitFor();
    expect(await page.locator('#app img').count()).toBe(0);
    expect(await page.evaluate(() => 'inlineRan' in window)).toBe(false);

    await page.goto(`${host.address}#/stock/list`);
    await choose(`${head}\r\n${','.repeat(3_000_000)}`);
    await page.getByText('More than 20000 lines or 2 MB.').waitFor();
  });
});
