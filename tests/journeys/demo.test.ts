import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeFindings } from './axe.ts';
import { openPhone, type Phone } from './phone.ts';

// A fresh visitor loads the demo shop and goes through every screen; each is looked at in all three themes.

let phone: Phone;
beforeAll(async () => {
  phone = await openPhone();
});
afterAll(async () => {
  await phone.close();
});

const themes = ['light', 'dark', 'contrast'] as const;

/** Screens by the link on the home screen that leads to them. */
async function follow(name: string): Promise<void> {
  const { page } = phone;
  await page.goto(`${phone.host.address}#/`);
  await page.getByRole('heading', { name: 'What now?' }).waitFor();
  await page
    .getByRole('link', { name: new RegExp(`^${name}`) })
    .first()
    .click();
  await page.getByRole('heading', { level: 1, name: /^(?!What now)/ }).waitFor();
}

async function lookInEveryTheme(): Promise<void> {
  const { page } = phone;
  for (const theme of themes) {
    await page.evaluate((name) => {
      document.documentElement.dataset.theme = name;
    }, theme);
    expect(await axeFindings(page), `${page.url()} in ${theme}`).toEqual([]);
  }
  await page.evaluate(() => {
    delete document.documentElement.dataset.theme;
  });
  const { scroll, width } = await page.evaluate(() => ({
    scroll: document.documentElement.scrollWidth,
    width: innerWidth,
  }));
  expect(scroll, `${page.url()} is wider than the phone`).toBeLessThanOrEqual(width);
}

/** Whether the tab key alone reaches the thing that the thumb would press. */
async function keyboardReaches(selector: string): Promise<boolean> {
  const { page } = phone;
  for (let presses = 0; presses < 200; presses++) {
    await page.keyboard.press('Tab');
    if (await page.evaluate((wanted) => document.activeElement?.matches(wanted) ?? false, selector)) return true;
  }
  return false;
}

describe('the demo shop', () => {
  test('the check finds a picture without words when there is one', async () => {
    await phone.page.evaluate(() => document.querySelector('main')?.append(document.createElement('img')));
    expect(await axeFindings(phone.page)).toEqual([expect.stringContaining('image-alt')]);
    await phone.page.evaluate(() => document.querySelector('main > img')?.remove());
  });

  test('a first visit offers something to do, and the demo', async () => {
    await lookInEveryTheme();
    await follow('Records and demo');
    await phone.page.getByRole('button', { name: 'Load the demo shop' }).click();
    await phone.page.getByText('The demo shop is loaded.').waitFor();
    await lookInEveryTheme();
  });

  test('home says what is next for the piece in hand', async () => {
    await phone.page.goto(`${phone.host.address}#/`);
    await phone.page.getByText('Plan the cuts').first().waitFor();
    await lookInEveryTheme();
  });

  test.each([
    'Shop',
    'Stock',
    'Piece',
    'New piece',
    'Breakdown',
    'Mill',
    'Glue-up',
    'Square',
    'Finish',
    'Print the sheet',
  ])('%s', async (name) => {
    await follow(name);
    await lookInEveryTheme();
    expect(await keyboardReaches('.foot a, .foot button')).toBe(true);
  });

  test('the plan of a demo piece has enough wood', async () => {
    await follow('Breakdown');
    await phone.page.getByRole('button', { name: 'Plan the cuts' }).click();
    await phone.page.getByText(/^Enough/).waitFor();
    await lookInEveryTheme();
  });

  test('it goes in one tap, and leaves nothing', async () => {
    await follow('Records and demo');
    await phone.page.getByRole('button', { name: 'Remove the demo shop' }).click();
    await phone.page.getByText(/The demo shop is gone/).waitFor();
    await phone.page.goto(`${phone.host.address}#/`);
    await phone.page.getByText('Boards have come').waitFor();
    expect(phone.errors).toEqual([]);
  });
});
