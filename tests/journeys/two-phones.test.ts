import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeFindings } from './axe.ts';
import { makeOfflineReady, openPhone, type Phone } from './phone.ts';
import { stored } from './stored.ts';

// One shop, two phones, no server: what one sends the other takes in, however often, by every way there is.

let mine: Phone;
let theirs: Phone;
beforeAll(async () => {
  [mine, theirs] = await Promise.all([openPhone(), openPhone()]);
  await makeOfflineReady(theirs);
});
afterAll(async () => {
  await Promise.all([mine.close(), theirs.close()]);
});

const records = ({ page, host }: Phone) => page.goto(`${host.address}#/data`);

async function saved(page: Page, button: string): Promise<{ path: string; name: string }> {
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: button, exact: true }).click();
  const download = await saving;
  return { path: await download.path(), name: download.suggestedFilename() };
}

async function merge(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Merge it in' }).click();
  await page.getByText('The records are in.').waitFor();
}

const pieceName = async ({ page, host }: Phone, name: string) => {
  await page.goto(`${host.address}#/piece/demo-piece-cabinet`);
  const field = page.getByRole('textbox', { name: 'Name of the piece' });
  await field.fill(name);
  await field.blur();
};

let sent: { path: string; name: string };

describe('a piece goes to another phone', () => {
  test('as a file that holds it alone, and is merged there', async () => {
    await mine.page.getByRole('button', { name: 'Load the demo shop' }).click();
    await mine.page.getByText('The demo shop is loaded.').waitFor();
    await records(mine);
    await mine.page.getByLabel('What to send').selectOption({ label: 'Hanging tool cabinet' });
    sent = await saved(mine.page, 'Send it');
    expect(sent.name).toMatch(/^boardwright-hanging-tool-cabinet-\d{4}-\d{2}-\d{2}\.json$/);

    await records(theirs);
    await theirs.page.getByLabel('File', { exact: true }).setInputFiles(sent.path);
    await theirs.page.getByText('1 new to this phone').waitFor();
    // Nobody loses a shop to one piece: there is no way to replace everything with it.
    expect(await theirs.page.getByText('Replace everything').count()).toBe(0);
    await merge(theirs.page);
    expect(await stored(theirs.page, 'piece')).toBe(1);
  });

  test('again: nothing is doubled', async () => {
    await theirs.page.getByLabel('File', { exact: true }).setInputFiles([]);
    await theirs.page.getByLabel('File', { exact: true }).setInputFiles(sent.path);
    await theirs.page.getByText('1 the same').waitFor();
    await merge(theirs.page);
    expect(await stored(theirs.page, 'piece')).toBe(1);
  });
});

describe('it comes in', () => {
  test('shared from another app, through the worker', async () => {
    const { page, host } = theirs;
    const text = await readFile(sent.path, 'utf8');
    await page.goto(`${host.address}#/`);
    const landed = await page.evaluate(async (shared) => {
      const form = new FormData();
      form.append('file', new File([shared], 'piece.json.txt', { type: 'text/plain' }));
      return (await fetch('./receive', { method: 'POST', body: form })).url;
    }, text);
    expect(landed).toContain(host.address);
    await records(theirs);
    await page.getByText('Hanging tool cabinet, taken out').waitFor();
    // Taken once: it doesn't come up again.
    await page.reload();
    await page.getByRole('heading', { name: 'Bring records in' }).waitFor();
    await page.waitForTimeout(300);
    expect(await page.getByText('taken out').count()).toBe(0);
  });

  test('opened from the phone’s files', async () => {
    const { page } = theirs;
    // Stands in for the queue in which a browser hands a file to an installed app.
    await page.addInitScript(
      (text) => {
        Object.defineProperty(window, 'launchQueue', {
          value: {
            setConsumer: (take: (launch: { files: { getFile(): Promise<File> }[] }) => void) =>
              take({ files: [{ getFile: async () => new File([text], 'piece.json') }] }),
          },
        });
      },
      await readFile(sent.path, 'utf8'),
    );
    await page.reload();
    await page.getByText('Hanging tool cabinet, taken out').waitFor();
  });

  test('pasted from a message', async () => {
    const { page } = mine;
    await mine.context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await page.getByRole('button', { name: 'Copy as text' }).click();
    await page.getByText('Copied.').waitFor();
    await page.getByText('Or paste it').click();
    await page.getByLabel('What was sent').focus();
    await page.keyboard.press('ControlOrMeta+V');
    await page.getByRole('button', { name: 'Look at it' }).click();
    await page.getByText('Hanging tool cabinet, taken out').waitFor();
    await page.getByText('1 the same').waitFor();
    await page.getByLabel('What was sent').fill('Here is the piece I told you about');
    await page.getByRole('button', { name: 'Look at it' }).click();
    await page.getByText('This is not a backup').waitFor();
  });
});

describe('changed on both phones', () => {
  test('both sides are shown, the maker says which stays, and the next merge doesn’t ask again', async () => {
    await pieceName(mine, 'Cabinet for chisels');
    await pieceName(theirs, 'Cabinet for planes');
    await records(mine);
    const all = await saved(mine.page, 'Take a backup');
    await records(theirs);
    const { page } = theirs;
    await page.getByLabel('File', { exact: true }).setInputFiles(all.path);
    await page.getByRole('table', { name: /^Piece Cabinet for/ }).waitFor();
    await page.getByRole('cell', { name: 'Cabinet for planes' }).waitFor();
    await page.getByRole('cell', { name: 'Cabinet for chisels' }).waitFor();
    for (const theme of ['light', 'dark', 'contrast']) {
      await page.evaluate((name) => {
        document.documentElement.dataset.theme = name;
      }, theme);
      expect(await axeFindings(page), theme).toEqual([]);
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
    // Said both ways, so that it is the maker's word whichever side was proposed.
    await page.getByRole('radio', { name: 'The one here' }).check();
    await page.getByRole('radio', { name: 'The file’s' }).check();
    await merge(page);
    await page.goto(`${theirs.host.address}#/`);
    await page.getByText('Cabinet for chisels').first().waitFor();

    await records(theirs);
    await page.getByLabel('File', { exact: true }).setInputFiles([]);
    await page.getByLabel('File', { exact: true }).setInputFiles(all.path);
    // What both phones now say alike is the same, whichever of them has counted further.
    await page.getByText('19 the same').waitFor();
    expect(await page.getByText('Changed on both sides').count()).toBe(0);
  });

  test('and the snapshot from before the merge brings the other side back', async () => {
    const { page } = theirs;
    await page.getByRole('listitem').filter({ hasText: 'before a merge' }).first().getByRole('button').click();
    await page.getByText('The snapshot is back in place.').waitFor();
    await page.goto(`${theirs.host.address}#/`);
    await page.getByText('Cabinet for planes').first().waitFor();
  });

  test('replacing takes the file’s side of everything', async () => {
    await records(mine);
    const all = await saved(mine.page, 'Take a backup');
    await records(theirs);
    await theirs.page.getByLabel('File', { exact: true }).setInputFiles(all.path);
    await theirs.page.getByRole('radio', { name: 'Replace everything' }).check();
    await theirs.page.getByRole('button', { name: 'Replace everything with it' }).click();
    await theirs.page.getByText('The records are in.').waitFor();
    for (const kind of ['piece', 'board', 'delivery', 'shop']) {
      expect(await stored(theirs.page, kind), kind).toBe(await stored(mine.page, kind));
    }
    expect([...mine.errors, ...theirs.errors]).toEqual([]);
  });
});

describe('erasing', () => {
  test('asks once, offers a backup first, and leaves nothing', async () => {
    const { page } = theirs;
    await page.getByRole('button', { name: 'Erase everything…' }).click();
    await saved(page, 'Back up first');
    await page.getByRole('button', { name: 'Erase all records' }).click();
    await page.getByText('Never backed up').waitFor();
    expect(await stored(page, 'piece')).toBe(0);
    expect(await page.getByText('Snapshots on this phone').count()).toBe(0);
  });
});
