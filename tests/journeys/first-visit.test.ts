import type { Locator, Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { axeFindings } from './axe.ts';
import { openPhone, type Phone } from './phone.ts';

// A first-time visitor with nothing: what is useful within a minute, from the empty home, without a piece or a shop.
// Every touch is counted; keys of the pad are counted apart, since a size has as many digits as it has.

let phone: Phone;
let taps = 0;
let keys = 0;
beforeEach(async () => {
  phone = await openPhone();
  taps = 0;
  keys = 0;
});
afterEach(async () => {
  expect(phone.errors).toEqual([]);
  await phone.close();
});

const page = (): Page => phone.page;
const link = (name: RegExp) => page().getByRole('link', { name }).first();
const button = (name: string) => page().getByRole('button', { name, exact: true });
const entry = (name: RegExp) => page().getByRole('textbox', { name });
const heading = (name: string) => page().getByRole('heading', { name, level: 1 }).waitFor();

async function tap(what: Locator): Promise<void> {
  await what.click();
  taps++;
}

/** Keys of the pad that is open; `Next` goes to the entry after. */
async function press(...labels: string[]): Promise<void> {
  for (const label of labels) {
    await page().locator('.pad button').getByText(label, { exact: true }).click();
    keys++;
  }
}

describe('useful within a minute', () => {
  test('is it square: two taps, and what was measured', async () => {
    await tap(link(/^Is it square/));
    await heading('Is it square?');
    await tap(entry(/^Front edge/));
    // 36 by 17 with diagonals of 39 7/8 and 39 3/4.
    await press('3', '6', 'Next', '1', '7', 'Next', '3', '6', 'Next', '1', '7', 'Next');
    await press('3', '9', '7/8', 'Next', '3', '9', '3/4');
    await page()
      .getByText(/towards [ABCD]/)
      .first()
      .waitFor();
    expect(taps).toBeLessThanOrEqual(2);
    expect(keys).toBeLessThanOrEqual(19);
  });

  test('an entry that is tapped at once keeps the focus: what is typed goes into it', async () => {
    await page().evaluate(() => {
      const seen = new MutationObserver(() => {
        const first = document.querySelector<HTMLInputElement>('main input');
        if (!first) return;
        seen.disconnect();
        first.focus();
      });
      seen.observe(document.body, { childList: true, subtree: true });
    });
    await tap(link(/^Is it square/));
    await heading('Is it square?');
    // Where the app itself moves the focus to a new screen, it has done so by then.
    await page().waitForTimeout(500);
    await page().keyboard.type('36');
    expect(await entry(/^Front edge/).inputValue()).toBe('36');
  });

  test('a glue clock: two taps to a running open time, one more to the clamp time', async () => {
    await tap(link(/^Start a glue clock/));
    await tap(button('Start spreading'));
    await page().getByRole('timer').waitFor();
    expect(taps).toBeLessThanOrEqual(2);
    await tap(button('All clamped'));
    await page().getByText('In the clamps').first().waitFor();
    expect(taps).toBeLessThanOrEqual(3);
    // It stands on the bench, and one tap leads back to it.
    await page().getByRole('link', { name: 'Bench' }).click();
    await heading('What now?');
    taps = 0;
    await tap(link(/^In the clamps/));
    await page().getByRole('timer').waitFor();
    expect(taps).toBe(1);
  });

  test('what is typed as soon as its entry stands is not wiped by what the phone kept of it', async () => {
    await tap(link(/^Start a glue clock/));
    await heading('Enough glue, time and clamps?');
    await page().evaluate(() => {
      const seen = new MutationObserver(() => {
        const label = [...document.querySelectorAll('label')].find((one) => one.textContent?.startsWith('Note'));
        const note = document.getElementById(label?.htmlFor ?? '');
        if (!(note instanceof HTMLInputElement)) return;
        seen.disconnect();
        note.value = 'starved at one end';
        note.dispatchEvent(new Event('input', { bubbles: true }));
      });
      seen.observe(document.body, { childList: true, subtree: true });
    });
    await tap(button('Start spreading'));
    await page().getByRole('timer').waitFor();
    // What the phone kept has been read by then.
    await page().waitForTimeout(500);
    expect(await entry(/^Note/).inputValue()).toBe('starved at one end');
  });

  test('a tally: the wood, then two sizes a board', async () => {
    await tap(link(/^Boards have come/));
    // Two touches: the list, and the wood in it.
    await page().getByLabel('Wood').selectOption({ label: 'black cherry' });
    taps += 2;
    await tap(entry(/^Width/));
    await press('7', '1/2', 'Next', '9', '6', 'Log board');
    const tally = page().getByRole('region', { name: 'Tally' });
    await tally.getByText('1 board').waitFor();
    // 7 1/2 in wide, 8 ft long, 1 in thick: 7.5 × 8 / 12 = 5 board feet (NHLA Rules, surface measure).
    await tally.getByText(/^5 /).first().waitFor();
    await press('6', 'Next', '9', '6', 'Log board');
    await tally.getByText('2 boards').waitFor();
    expect(taps).toBeLessThanOrEqual(4);
    expect(keys).toBeLessThanOrEqual(11);
  });

  test('a piece begins with its name; the shop is asked for at the plan, with a way to go on without', async () => {
    await tap(link(/^Make a piece/));
    await entry(/^Name of the piece/).fill('Bench');
    await tap(button('List its parts'));
    await heading('What are its parts?');
    await page().goto(page().url().replace('#/piece/', '#/breakdown/'));
    const shop = page().getByRole('region', { name: 'Your shop' });
    await shop.getByText('jointer of 8 in').waitFor();
    await shop.getByRole('button', { name: 'Mine is like that' }).click();
    await shop.waitFor({ state: 'detached' });
    await page().reload();
    await heading('Which board gives which panel?');
    expect(await shop.count()).toBe(0);
  });
});

describe('the app is put on the home screen', () => {
  /** The browser is ready to install, as it says after the page has loaded. */
  const offered = () =>
    page().evaluate(() => {
      const offer = new Event('beforeinstallprompt') as Event & { prompt?(): Promise<object> };
      offer.prompt = async () => {
        document.body.dataset.asked = 'yes';
        return { outcome: 'accepted' };
      };
      dispatchEvent(offer);
    });
  /** Something worth keeping, and home again. */
  async function startClock(): Promise<void> {
    await link(/^Start a glue clock/).click();
    await button('Start spreading').click();
    await page().getByRole('timer').waitFor();
    await page().getByRole('link', { name: 'Bench' }).click();
  }
  const install = () => button('Put it on the home screen');

  test('offered with the reason once there is something to keep, and not before', async () => {
    await offered();
    await page().getByRole('button', { name: 'Load the demo shop' }).waitFor();
    expect(await install().count()).toBe(0);
    await startClock();
    await page().getByText('the phone does not clear its records').waitFor();
    await install().click();
    await page().locator('body[data-asked=yes]').waitFor({ state: 'attached' });
    await install().waitFor({ state: 'detached' });
  });

  test('where the maker must do it: said before anything is entered, and how to bring it along after', async () => {
    // As a browser says it that adds to the home screen from its share menu, and keeps the two apart.
    await page().addInitScript(() => Object.defineProperty(navigator, 'standalone', { value: false }));
    await page().reload();
    await page().getByText('Before you enter anything').waitFor();
    expect(await axeFindings(page())).toEqual([]);
    await startClock();
    await page().getByText('bring the backup in there').waitFor();
    await button('Take a backup').waitFor();
    expect(await page().getByText('Before you enter anything').count()).toBe(0);
    expect(await axeFindings(page())).toEqual([]);
  });
});
