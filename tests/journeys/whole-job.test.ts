import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { makeOfflineReady, openPhone, type Phone } from './phone.ts';

// One maker, one phone, one chest: all of it typed in through the screens, nothing seeded. The steps build on each other.

let phone: Phone;

beforeAll(async () => {
  phone = await openPhone();
});
afterAll(async () => {
  await phone.close();
});

const page = (): Page => phone.page;
const entry = (name: RegExp) => page().getByRole('textbox', { name });
const press = (name: string | RegExp) => page().getByRole('button', { name }).first().click();
const heading = (name: string | RegExp) => page().getByRole('heading', { name, level: 1 }).waitFor();

async function home(): Promise<void> {
  await page().getByRole('link', { name: 'Bench' }).click();
  await heading('What now?');
}

/** Presses keys of the pad that is open, by what stands on them. */
async function pad(...keys: string[]): Promise<void> {
  for (const key of keys)
    await page()
      .locator('.pad button', { hasText: new RegExp(`^${key}$`) })
      .click();
}

/** Width and length in inches; 9 1/4 and 10 are wider than the 8 in jointer. */
const boards = [
  ['9 1/4', '98'],
  ['7 1/2', '96'],
  ['6 3/8', '100'],
  ['10', '97 1/2'],
  ['5 3/4', '102'],
  ['7 1/8', "8' 2"],
  ['6 1/2', '96'],
  ['8', '99'],
  ['5 1/4', '2.5 m'],
] as const;

const parts = [
  { name: 'Lid', kind: 'Panel, glued up', length: '36', width: '17', thickness: '3/4', quantity: '1' },
  { name: 'Front', kind: 'Panel, glued up', length: '34', width: '15', thickness: '3/4', quantity: '1' },
  { name: 'Leg', kind: 'Solid', length: '18', width: '2 1/2', thickness: '3/4', quantity: '4' },
  { name: 'Rail', kind: 'Solid', length: '30', width: '3', thickness: '3/4', quantity: '2' },
  { name: 'Cleat', kind: 'Solid', length: '14', width: '2 1/2', thickness: '3/4', quantity: '2' },
  { name: 'Till side', kind: 'Solid', length: '14', width: '4', thickness: '5/8', quantity: '1' },
] as const;

describe('a chest, from rough boards to the last coat', () => {
  test('the phone has the app, and the signal goes', async () => {
    await makeOfflineReady(phone);
    await phone.context.setOffline(true);
  });

  test('shop: an 8 in jointer', async () => {
    await page().getByRole('link', { name: 'Shop', exact: true }).click();
    await heading('What does your shop allow?');
    await entry(/^Widest board it flattens/).fill('8');
    await pad('▾');
    await home();
  });

  test('stock: nine boards of random width, the first on the pad', async () => {
    await page().getByRole('link', { name: 'Stock' }).last().click();
    await page().getByLabel('Wood').selectOption({ label: 'black cherry' });
    for (const [n, [width, length]] of boards.entries()) {
      if (n === 0) {
        await entry(/^Width/).focus();
        await pad('9', '1/4');
        await entry(/^Length/).focus();
        await pad('9', '8');
      } else {
        await entry(/^Width/).fill(width);
        await entry(/^Length/).fill(length);
      }
      await press('Log board');
      await page()
        .getByText(`${n + 1} board${n === 0 ? '' : 's'}`, { exact: false })
        .first()
        .waitFor();
    }
    await pad('▾');
    await home();
    await page().getByText('9 boards logged').waitFor();
  });

  test('piece: two panels and four kinds of solid parts', async () => {
    await page().getByRole('link', { name: 'New piece' }).click();
    await entry(/^Name of the piece/).fill('Blanket chest');
    await press('List its parts');
    const form = page().getByRole('region', { name: 'Next part' });
    const box = (name: RegExp) => form.getByRole('textbox', { name });
    for (const part of parts) {
      await form.getByRole('radio', { name: part.kind }).check({ force: true });
      await box(/^Name/).fill(part.name);
      await box(/^How many/).fill(part.quantity);
      await box(/^Length/).fill(part.length);
      await box(/^Width/).fill(part.width);
      await box(/^Thickness/).fill(part.thickness);
      await form.getByRole('button', { name: 'Add part', exact: true }).last().click();
      await page().getByText(`${part.name} is on the list.`).waitFor();
    }
    await page().getByRole('link', { name: 'Plan the cuts' }).click();
  });

  test('breakdown: enough, drawn board by board', async () => {
    await heading('Which board gives which panel?');
    await press('Plan the cuts');
    await page()
      .getByText(/^Enough/)
      .waitFor();
    expect(
      await page()
        .getByRole('img', { name: /^Board / })
        .count(),
    ).toBeGreaterThan(1);
  });

  test('mill: every step to the last tick', async () => {
    await page().getByRole('link', { name: 'Mill it' }).click();
    await press('Start milling');
    const title = page().getByRole('heading', { level: 1 });
    await heading(/^Step 1 of \d+$/);
    const steps = Number(/of (\d+)/.exec((await title.textContent()) ?? '')?.[1]);
    expect(steps).toBeGreaterThan(15);
    // Two boards are wider than the jointer: something is ripped before it is flattened, and nothing is given up.
    for (let step = 1; step < steps; step++) {
      await press('Done, next');
      await heading(`Step ${step + 1} of ${steps}`);
    }
    await page().getByRole('button', { name: 'Done', exact: true }).click();
    await page().getByText('All milled').waitFor();
    await home();
    await page()
      .getByRole('link', { name: /^Mill\b/ })
      .getByText('Milled')
      .waitFor();
  });

  test('square: a racked case, and how far to move', async () => {
    await page().getByRole('link', { name: 'Square' }).first().click();
    await heading('Is it square?');
    const readings = {
      'Front edge': '36',
      'Right end': '17',
      'Back edge': '36',
      'Left end': '17',
      'Diagonal A': '39 15/16',
      'Diagonal B': '39 11/16',
    };
    for (const [name, text] of Object.entries(readings)) await entry(new RegExp(`^${name}`)).fill(text);
    await page()
      .getByText(/towards D/)
      .first()
      .waitFor();
    await pad('▾');
    await press('Keep this check');
    await home();
  });

  test('glue-up: from the first glue to unclamping, timed', async () => {
    await page().clock.install();
    await page()
      .getByRole('link', { name: /^Glue-up.*Glue up/ })
      .click();
    await page().getByLabel('Adhesive').selectOption({ index: 1 });
    await press('Start spreading');
    await page().getByRole('button', { name: 'All closed' }).waitFor();
    await page().clock.fastForward('03:00');
    await press('All closed');
    await page().clock.fastForward('02:00');
    await press('All clamped');
    await home();
    // The home screen shows the timer that runs.
    await page()
      .getByRole('link', { name: /In the clamps/ })
      .click();
    await page().clock.fastForward('06:00:00');
    await page().getByText(/ago/).first().waitFor();
    await press('Unclamped');
    await page().getByRole('button', { name: 'Rest is over' }).waitFor();
    await home();
  });

  test('finish: how much, in which cans, and the first coat on its way', async () => {
    await page()
      .getByRole('link', { name: /^Finish/ })
      .click();
    await heading('How much finish?');
    await page().getByLabel('Finish').first().selectOption({ label: 'Wiping varnish' });
    await entry(/^Coats/).fill('2');
    await entry(/^Container/)
      .first()
      .fill('16 fl oz');
    await entry(/^Price/)
      .first()
      .fill('18,50');
    await page()
      .getByText(/fl oz|qt/)
      .first()
      .waitFor();
    await press('Start the finish');
    await heading(/^Step 1 of \d+$/);
    await press('Done, next');
    await home();
    await page()
      .getByRole('link', { name: /^Finish/ })
      .getByText(/^Step 2 of/)
      .waitFor();
  });

  test('the server is dead, the browser is killed, and everything is there', async () => {
    expect(phone.errors).toEqual([]);
    await phone.host.stop();
    phone = await phone.restart();
    await page().getByText('9 boards logged').waitFor();
    const thread = page().getByRole('navigation', { name: 'Stages of Blanket chest' });
    expect(await thread.getByRole('link').allTextContents()).toEqual([
      'Stock9 boards logged',
      'Piece11 parts',
      'BreakdownPlanned',
      'MillMilled',
      'Glue-up1 unclamped',
      'SquareChecked',
      expect.stringMatching(/^FinishStep 2 of /),
    ]);
    expect(phone.errors).toEqual([]);
  });
});
