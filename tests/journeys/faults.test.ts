import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { loadDemo, startMilling } from './demo-shop.ts';
import { openPhone, type Phone } from './phone.ts';
import { stored } from './stored.ts';

// Each test causes one fault of a phone at the bench, and looks at what is left of the maker's work.

let phone: Phone;
beforeEach(async () => {
  phone = await openPhone();
});
afterEach(async () => {
  await phone.close();
});

const page = (): Page => phone.page;
const at = (hash: string, where = phone.page) => where.goto(`${phone.host.address}#/${hash}`);

async function beginPiece(name: string, where = phone.page): Promise<void> {
  await at('piece/new', where);
  await where.getByRole('textbox', { name: /^Name of the piece/ }).fill(name);
  await where.getByRole('button', { name: 'List its parts' }).click();
}

/** Ends the tab's process, as a phone short of memory does, and opens a new tab on the same address. */
async function killTab(): Promise<void> {
  const address = page().url();
  const session = await phone.context.newCDPSession(page());
  const gone = new Promise((done) => page().once('crash', done));
  session.send('Page.crash').catch(() => {});
  await gone;
  const next = await phone.context.newPage();
  await next.goto(address);
  await next.getByRole('heading', { level: 1 }).waitFor();
  phone = { ...phone, page: next };
}

/** Another page of the same origin that isn't the app, for what other code could do to the app's storage. */
async function besideTheApp(): Promise<Page> {
  const other = await phone.context.newPage();
  await other.goto(`${phone.host.address}robots.txt`);
  return other;
}

describe('the tab is killed', () => {
  const entries = [
    'stock',
    'piece/new',
    'piece/demo-piece-chest',
    'square',
    'movement/demo-piece-chest',
    'glue/demo-piece-chest',
    'finish/demo-piece-chest',
  ];

  /** Forms beside entries of other kinds (a search, a name), which stand there before the form is read from the phone. */
  const besideOthers: Record<string, string> = { stock: 'Next board', 'piece/demo-piece-chest': 'Next part' };

  test.each(entries)('in the middle of an entry of %s: what was typed is there again', async (hash) => {
    await loadDemo(page());
    await at(hash);
    // Entries of forms; those that are stored as soon as they are left (a name, a shop's limit) are no half-typed form.
    const form = page().locator(hash in besideOthers ? `main [aria-label="${besideOthers[hash]}"]` : 'main');
    const box = form.locator('input:not([type])').filter({ visible: true }).first();
    await box.waitFor();
    const label = (await box.evaluate((input: HTMLInputElement) => input.labels?.[0]?.textContent)) ?? '';
    await box.fill('17');
    const typed = await box.inputValue();
    expect(typed).toContain('17');
    // Every key goes to the phone at once; this is time for the last one to arrive.
    await page().waitForTimeout(500);
    await killTab();
    const again = page().getByLabel(label.trim(), { exact: false }).first();
    await expect.poll(() => again.inputValue(), { timeout: 5000 }).toBe(typed);
  });

  test('in the middle of milling: the ticks are kept, and the same step stands there', async () => {
    await loadDemo(page());
    await startMilling(page());
    await killTab();
    await page()
      .getByRole('heading', { name: /^Step 2 of/ })
      .waitFor();
  });
});

describe('the tab is killed in the middle of a finish', () => {
  test('the ticks are kept, and the same step stands there', async () => {
    await loadDemo(page());
    await at('finish/demo-piece-chest');
    await page().getByRole('button', { name: 'Start the finish' }).click();
    await page()
      .getByRole('heading', { name: /^Step 1 of/ })
      .waitFor();
    await page().getByRole('button', { name: 'Done, next' }).click();
    await page()
      .getByRole('heading', { name: /^Step 2 of/ })
      .waitFor();
    // Time for the tick to arrive.
    await page().waitForTimeout(500);
    await killTab();
    await page()
      .getByRole('heading', { name: /^Step 2 of/ })
      .waitFor();
  });
});

describe('the browser is killed during a write', () => {
  test('all of it is stored or nothing, and the app opens', { timeout: 240_000 }, async () => {
    const found = new Set<number>();
    for (const wait of [0, 2, 5, 10, 20, 40]) {
      await page()
        .getByRole('button', { name: 'Load the demo shop' })
        .evaluate((button: HTMLElement) => button.click());
      await page().waitForTimeout(wait);
      phone = await phone.kill();
      await page().getByRole('link', { name: 'New piece' }).waitFor();
      const [boards, pieces, deliveries] = await Promise.all(
        ['board', 'piece', 'delivery'].map((kind) => stored(page(), kind)),
      );
      found.add(pieces ?? -1);
      expect([pieces, deliveries], `after ${wait} ms`).toEqual(boards === 0 ? [0, 0] : [2, 2]);
      if (boards !== 0) break;
    }
    expect([...found].every((pieces) => pieces === 0 || pieces === 2)).toBe(true);
  });

  test('what the screen has said is stored stays stored', async () => {
    await loadDemo(page());
    phone = await phone.kill();
    expect(await stored(page(), 'piece')).toBe(2);
    await page().getByText('Plan the cuts').first().waitFor();
  });
});

describe('the phone is full', () => {
  test('the change stays on view with the form as typed, can be taken out, and is stored once there is room', async () => {
    // Before the first write: the browser asks for the quota only now and then.
    const session = await phone.context.newCDPSession(page());
    const { origin } = new URL(phone.host.address);
    await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
    await beginPiece('Blanket chest');
    await page().getByText('One change is not stored yet: the phone is full.').waitFor();
    expect(await page().getByRole('textbox', { name: /^Name/ }).inputValue()).toBe('Blanket chest');
    expect(await stored(page(), 'piece')).toBe(0);

    const saving = page().waitForEvent('download');
    await page().getByRole('button', { name: 'Take it out' }).click();
    expect(await readFile(await (await saving).path(), 'utf8')).toContain('Blanket chest');

    // Also through a killed tab.
    await killTab();
    await page().getByText('One change is not stored yet').waitFor();
    await (await phone.context.newCDPSession(page())).send('Storage.overrideQuotaForOrigin', { origin });
    await page().getByRole('button', { name: 'Try again' }).click();
    await expect.poll(() => stored(page(), 'piece')).toBe(1);
    await expect.poll(() => page().getByText('not stored yet').count()).toBe(0);
  });
});

describe('the database goes away under the app', () => {
  test('deleted: it is said, and the app starts anew', async () => {
    await beginPiece('Blanket chest');
    await page().getByRole('heading', { name: /part/i }).first().waitFor();
    const other = await besideTheApp();
    await other.evaluate(
      () =>
        new Promise<void>((done, failed) => {
          const deleting = indexedDB.deleteDatabase('boardwright');
          deleting.onsuccess = () => done();
          deleting.onerror = () => failed(deleting.error);
        }),
    );
    await page().getByText('erased outside the app').waitFor();
    await page().getByRole('button', { name: 'Load again' }).click();
    await beginPiece('Tool cabinet');
    await expect.poll(() => stored(page(), 'piece')).toBe(1);
  });

  test('closed by the browser, with all it holds cleared: the next entry is stored', async () => {
    await beginPiece('Blanket chest');
    await page().getByRole('heading', { name: /part/i }).first().waitFor();
    const session = await phone.context.newCDPSession(page());
    await session.send('Storage.clearDataForOrigin', {
      origin: new URL(phone.host.address).origin,
      storageTypes: 'indexeddb',
    });
    await beginPiece('Tool cabinet');
    await expect.poll(() => stored(page(), 'piece')).toBe(1);
  });
});

describe('two tabs', () => {
  test('what one stores the other shows, and both can write', async () => {
    await loadDemo(page());
    const second = await phone.context.newPage();
    await second.goto(phone.host.address);
    await second.getByRole('heading', { name: 'What now?' }).waitFor();
    await beginPiece('Hall bench', second);
    await page().getByRole('button', { name: 'Hall bench' }).waitFor();
    await beginPiece('Side table');
    await at('', second);
    await second.getByRole('button', { name: 'Side table' }).waitFor();
    expect(phone.errors).toEqual([]);
  });

  test('a newer version has been opened in another: this one says so, stores nothing, and loses nothing typed', async () => {
    await loadDemo(page());
    await at('piece/new');
    await page().getByRole('textbox', { name: /^Name/ }).fill('Hall bench');
    const other = await besideTheApp();
    await other.evaluate(
      () =>
        new Promise<void>((done, failed) => {
          const opening = indexedDB.open('boardwright', 99);
          opening.onsuccess = () => {
            opening.result.close();
            done();
          };
          opening.onerror = () => failed(opening.error);
        }),
    );
    await page().getByText('A newer version is open in another tab.').waitFor();
    await page().getByRole('button', { name: 'List its parts' }).click();
    await page().getByText('One change is not stored yet').waitFor();
    expect(await stored(other, 'piece')).toBe(2);
    expect(await page().getByRole('textbox', { name: /^Name/ }).inputValue()).toBe('Hall bench');
    // The old tab can still hand everything out, the change that is not stored included.
    await at('data');
    const saving = page().waitForEvent('download');
    await page().getByRole('button', { name: 'Take a backup' }).click();
    const backup = JSON.parse(await readFile(await (await saving).path(), 'utf8'));
    expect(backup.kinds.piece.map(({ name }: { name: string }) => name)).toContain('Hall bench');
    expect(backup.kinds.piece).toHaveLength(3);
  });
});

describe('the clock is wrong', () => {
  test('years ahead, then right again: work goes on, and no backup hides it', async () => {
    await page().clock.setFixedTime(new Date('2041-05-01T08:00:00Z'));
    await at('data');
    const saving = page().waitForEvent('download');
    await page().getByRole('button', { name: 'Take a backup' }).click();
    await saving;
    await page().getByText('Backed up just now').waitFor();
    await beginPiece('Blanket chest');
    await page().getByRole('heading', { name: /part/i }).first().waitFor();

    await page().clock.setFixedTime(new Date());
    await at('data');
    await page().getByText('Never backed up').waitFor();
    await page().getByText('Records changed since: 1.').waitFor();
    // The record's last change lies in the future; the next one still takes its place.
    await at('');
    await page()
      .getByRole('link', { name: /^Piece/ })
      .click();
    const name = page().getByRole('textbox', { name: 'Name of the piece' });
    await name.fill('Toy chest');
    await name.blur();
    await at('');
    await page().reload();
    await page().getByText('Toy chest').first().waitFor();
    expect(phone.errors).toEqual([]);
  });
});
