import { readFileSync } from 'node:fs';
import ICAL from 'ical.js';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { axeFindings } from './axe.ts';
import { openPhone, type Phone } from './phone.ts';
import { holdUpStoring } from './stored.ts';

// Glue-ups with a clock that the test moves: seconds pass by themselves as well, so times are read to the minute.

let phone: Phone;
const page = (): Page => phone.page;
const entry = (name: RegExp) => page().getByRole('textbox', { name });
const press = (name: string) => page().getByRole('button', { name, exact: true }).click();
const heading = (name: string | RegExp) => page().getByRole('heading', { name, level: 1 }).waitFor();
const says = (text: string | RegExp) => page().getByText(text).first().waitFor();

async function setClock(time: string): Promise<void> {
  page().setDefaultTimeout(8000);
  await page().clock.install({ time: new Date(time) });
  await page().reload();
  await page().getByRole('heading', { level: 1 }).waitFor();
}

async function open(address: string): Promise<void> {
  await page().evaluate((hash) => {
    location.hash = hash;
  }, address);
}

/** Starts a glue-up of one seam under a name, with PVA at 68 °F: 5 min open, an hour in the clamps, a day of rest. */
async function start(name: string): Promise<void> {
  await open('#/');
  await open('#/glue/new');
  await entry(/^Name of the glue-up/).fill(name);
  await entry(/^Seam length/).fill('36');
  await entry(/^Seam thickness/).fill('3/4');
  await page().locator('.pad button', { hasText: '▾' }).click();
  await press('Start spreading');
  await heading(name);
}

/** From the bench, along the thread of the piece in hand. */
const toGlueUp = () =>
  page()
    .getByRole('navigation', { name: /^Stages of/ })
    .getByRole('link', { name: /Glue-up/ })
    .click();

const clamped = () => page().getByRole('button', { name: 'Unclamped' }).waitFor();

const countdown = () => page().getByRole('timer').textContent();

async function withPhone(time: string): Promise<void> {
  phone = await openPhone();
  await setClock(time);
}

describe('a lid in two sub-panels', () => {
  beforeAll(() => withPhone('2026-03-02T09:00:00'));
  afterAll(() => phone.close());

  test('a piece with one wide panel', async () => {
    await page().getByRole('link', { name: 'New piece' }).click();
    await entry(/^Name of the piece/).fill('Blanket chest');
    await press('List its parts');
    const form = page().getByRole('region', { name: 'Next part' });
    await form.getByRole('radio', { name: 'Panel, glued up' }).check({ force: true });
    for (const [name, text] of [
      ['Name', 'Lid'],
      ['How many', '1'],
      ['Length', '40'],
      ['Width', '22'],
      ['Thickness', '3/4'],
    ])
      await form.getByRole('textbox', { name: new RegExp(`^${name}`) }).fill(text as string);
    await form.getByLabel('Wood').selectOption({ label: 'black cherry' });
    await form.getByRole('button', { name: 'Add part', exact: true }).last().click();
    await says('Lid is on the list.');
    await page().getByRole('link', { name: 'Bench' }).click();
  });

  test('the first sub-panel comes first, and is enough', async () => {
    await toGlueUp();
    await heading('Enough glue, time and clamps?');
    await page().getByLabel('What is glued').waitFor();
    expect(await page().getByLabel('What is glued').locator('option').allTextContents()).toEqual([
      'Lid, sub-panel 1',
      'Lid, sub-panel 2',
      'Lid (waits)',
      'Something else',
    ]);
    await says('Enough time');
    await press('Start spreading');
    await heading('Blanket chest: Lid, sub-panel 1');
    expect(await countdown()).toMatch(/^(5 min|4 min 5\d s)$/);
  });

  test('closed, clamped, and off the clamps too early: written down, not forbidden', async () => {
    await page().clock.fastForward('02:00');
    await says(/^2 min \d+ s$|^3 min$/);
    await press('All closed');
    await press('All clamped');
    await says(/^(1 h|59 min)$/);
    await page().clock.fastForward('20:00');
    await press('Unclamped');
    await says(/Unclamped \d+ min early/);
    await page().getByRole('button', { name: 'Undo' }).click();
    await says(/^(40|39) min$/);
  });

  test('the second sub-panel goes into the clamps beside it', async () => {
    await page().getByRole('link', { name: 'Bench' }).click();
    await toGlueUp();
    await says('Enough time');
    await press('Start spreading');
    await heading('Blanket chest: Lid, sub-panel 2');
    await press('All clamped');
    await says(/Blanket chest: Lid, sub-panel 1 · In the clamps/);
  });

  test('an hour on, both come off; next day both are planed and joined', async () => {
    await page().clock.fastForward('01:01:00');
    await says(/1 min( \d+ s)? ago/);
    await press('Unclamped');
    await says(/Glue swells the wood/);
    await page()
      .getByRole('link', { name: /sub-panel 1/ })
      .click();
    await says(/ago$/);
    await press('Unclamped');
    await page().clock.fastForward('24:05:00');
    await says(/^5 min( \d+ s)? ago/);
    await press('Rest is over');
    await page()
      .getByRole('link', { name: /sub-panel 2/ })
      .click();
    await press('Rest is over');
    await page().getByRole('link', { name: 'What next?' }).click();
    await heading('Enough glue, time and clamps?');
    expect(await page().getByLabel('What is glued').inputValue()).toMatch(/\/1$/);
    await says('Enough time');
    await press('Start spreading');
    await heading('Blanket chest: Lid');
    await press('All clamped');
    await page().clock.fastForward('01:00:01');
    await press('Unclamped');
    await page().getByRole('link', { name: 'Bench' }).click();
    await says('3 unclamped');
    expect(phone.errors).toEqual([]);
  });
});

describe('the clock', () => {
  afterEach(async () => {
    expect(phone.errors).toEqual([]);
    await phone.close();
  });

  test('a browser killed in open time says afterwards how long ago it ended', async () => {
    await withPhone('2026-03-02T09:00:00');
    await start('Shelf');
    phone = await phone.restart();
    await setClock('2026-03-02T12:06:00');
    await page().getByRole('link', { name: /Shelf/ }).click();
    await heading('Shelf');
    await says('ended');
    expect(await countdown()).toBe('3 h 1 min ago');
  });

  test('a note typed while a slow phone stores the one before stays', async () => {
    await withPhone('2026-03-02T09:00:00');
    await start('Rail');
    await entry(/^Note/).fill('dry joint');
    const letGo = await holdUpStoring(page(), 'glueup');
    await press('Add to the log');
    await entry(/^Note/).fill('clamp three slipped');
    await letGo();
    await page().getByRole('listitem').filter({ hasText: 'dry joint' }).waitFor();
    await page().waitForTimeout(300);
    expect(await entry(/^Note/).inputValue()).toBe('clamp three slipped');
  });

  test('a clock set back by a day is noticed, before and after a restart', async () => {
    await withPhone('2026-03-02T09:00:00');
    await start('Shelf');
    await press('All clamped');
    await clamped();
    await page().clock.setSystemTime(new Date('2026-03-01T09:00:00'));
    await page().clock.runFor(1500);
    await says(/clock was set back by 24 h/);
    await says('Look at the clock');
    await page().clock.setSystemTime(new Date('2026-03-02T09:30:00'));
    await page().clock.runFor(16_000);
    await says(/^(29|30) min$/);
    phone = await phone.restart();
    await setClock('2026-02-28T09:00:00');
    await open('#/glue');
    await says(/clock was set back by 2 days/);
  });

  test('a phone that slept, and its steady clock with it, is not asked whether its clock was set; one in sight is', async () => {
    await withPhone('2026-03-02T09:00:00');
    await start('Shelf');
    await press('All clamped');
    await clamped();
    const turn = () => page().evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    await turn();
    await page().clock.setSystemTime(new Date('2026-03-02T09:20:00'));
    await turn();
    await page().clock.runFor(2500);
    await says(/^(40|39) min$/);
    expect(await page().getByRole('alert').count()).toBe(0);
    await page().clock.setSystemTime(new Date('2026-03-02T09:40:00'));
    await page().clock.runFor(2500);
    await says(/20 min ahead of what was counted/);
  });

  test('the night in which the clocks go forward is no longer and no shorter', async () => {
    await withPhone('2026-03-08T06:30:00Z');
    const session = await phone.context.newCDPSession(page());
    await session.send('Emulation.setTimezoneOverride', { timezoneId: 'America/New_York' });
    await start('Shelf');
    await press('All clamped');
    await clamped();
    // 1:30 in winter time; an hour later the clock on the wall shows 3:30.
    await page().getByText('3:30 AM').first().waitFor();
    await page().clock.fastForward('30:00');
    await says(/^(30|29) min$/);
    await page().clock.fastForward('30:00');
    await says(/ ago$/);
  });

  test('ten timers at once, all there after a restart', async () => {
    await withPhone('2026-03-02T09:00:00');
    for (let n = 1; n <= 10; n++) {
      await start(`Panel ${n}`);
      await press('All clamped');
      await clamped();
      await page().clock.fastForward('01:00');
    }
    phone = await phone.restart();
    await setClock('2026-03-02T09:30:00');
    await open('#/glue');
    await heading('What is in the glue?');
    const links = page().getByRole('link', { name: /Panel \d+/ });
    expect(await links.count()).toBe(10);
    expect(await links.filter({ hasText: 'left' }).count()).toBe(10);
    await page().clock.fastForward('36:00');
    await says(/Ended/);
    // Clamped a minute apart: some are due, some are not.
    const ended = await links.filter({ hasText: 'Ended' }).count();
    expect(ended).toBeGreaterThan(0);
    expect(ended).toBeLessThan(10);
    await page().clock.fastForward('10:00');
    await page().getByRole('link', { name: /Ended/ }).nth(9).waitFor();
  });
});

describe('before the glue', () => {
  beforeAll(() => withPhone('2026-03-02T09:00:00'));
  afterAll(() => phone.close());

  test('a seam half typed: Start says what is missing, and nothing begins', async () => {
    await open('#/glue/new');
    await entry(/^Seam thickness/).fill('3/4');
    await page().keyboard.press('Escape');
    await press('Start spreading');
    await says('The length of a seam is missing.');
    await entry(/^Seam length/).fill('long');
    await says('“long”');
    expect(await entry(/^Seam length/).inputValue()).toBe('long');
    await heading('Enough glue, time and clamps?');
  });

  test('too cold: don’t, and why', async () => {
    await entry(/^Seam length/).fill('36');
    await entry(/^Seam thickness/).fill('3/4');
    await entry(/^How many alike/).fill('12');
    await entry(/^Temperature/).fill('40');
    await says(/Don’t glue at 40 °F: below 50 °F/);
    expect(await page().getByRole('button', { name: 'Start spreading' }).isDisabled()).toBe(true);
    await entry(/^Temperature/).fill('68');
  });

  test('too slow: split it; what the label says goes first, and is kept for the next time', async () => {
    await says('Too slow for this glue');
    await says(/Glue it in/);
    await page().getByText('What the label says').click();
    await entry(/^Open time/).fill('20-10');
    await says(/wrong way round/);
    // Emptied, it stays where the thumb is.
    await entry(/^Open time/).fill('');
    await entry(/^Open time/).fill('20-30');
    await entry(/^Closed time/).fill('20');
    await says('Enough time');
    // Half-typed, and the tab dies.
    await page().reload();
    await heading('Enough glue, time and clamps?');
    expect(await entry(/^Open time/).inputValue()).toBe('20-30');
    await press('Start spreading');
    await page().getByRole('button', { name: 'All closed' }).waitFor();
    expect(await countdown()).toMatch(/^(20|19) min/);
    await says('from the label');
    await open('#/glue/new');
    await heading('Enough glue, time and clamps?');
    expect(await entry(/^Open time/).inputValue()).toBe('20–30');
  });

  test('a dry run, killed in the middle, teaches the pace', async () => {
    await entry(/^Seam length/).fill('36');
    await entry(/^Seam thickness/).fill('3/4');
    await page().locator('.pad button', { hasText: '▾' }).click();
    await page().getByLabel('Wood').selectOption({ label: 'black cherry' });
    await press('Start a dry run');
    await page().clock.fastForward('01:00');
    await press('All spread');
    await page().getByRole('button', { name: 'Seams closed' }).waitFor();
    // The lap is on its way to the disk.
    await page().waitForTimeout(300);
    await page().reload();
    await page().clock.fastForward('00:30');
    await press('Seams closed');
    await page().clock.fastForward('02:00');
    await press('Clamps set');
    await says('Your pace is learnt from this run.');
    await says('At the pace of your dry runs.');
    // A minute to spread and half a minute to close, and the seconds that the test takes.
    await says(/^1 min (3|4|5)\d s$/);
  });

  test('the timer rings while the app is open, wherever the maker is in it', async () => {
    await open('#/glue');
    await page()
      .getByRole('link', { name: /Glue-up/ })
      .click();
    await press('All clamped');
    await clamped();
    await open('#/shop');
    await page().clock.runFor('01:00:05');
    await says('In the clamps: time is up.');
  });

  test('what comes later goes to the calendar, in a file that a well-known parser reads', async () => {
    await open('#/glue');
    await page()
      .getByRole('link', { name: /Glue-up/ })
      .click();
    await says(/It can’t wake a locked phone/);
    const saving = page().waitForEvent('download');
    await press('Put into the calendar');
    const file = await saving;
    const calendar = new ICAL.Component(ICAL.parse(readFileSync((await file.path()) as string, 'utf8')));
    expect(file.suggestedFilename()).toBe('boardwright.ics');
    expect(calendar.getAllSubcomponents('vevent').map((event) => event.getFirstPropertyValue('summary'))).toEqual([
      'Ready to plane: Glue-up',
      'Full strength: Glue-up',
    ]);
  });

  test('axe finds nothing in three themes', async () => {
    const run = new URL(page().url()).hash;
    for (const address of ['#/glue', '#/glue/new', '#/glue/plan', run]) {
      await open(address);
      await page().getByRole('heading', { level: 1 }).waitFor();
      for (const theme of ['light', 'dark', 'contrast']) {
        await page().evaluate((name) => {
          document.documentElement.dataset.theme = name;
        }, theme);
        expect(await axeFindings(page()), `${address} ${theme}`).toEqual([]);
      }
    }
    expect(phone.errors).toEqual([]);
  });
});
