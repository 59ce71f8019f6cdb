import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openPhone, type Phone } from './phone.ts';

// A cabinet with bare insides gets two coats of a two-part finish, each mixed in two batches. Nothing is seeded.

let phone: Phone;
beforeAll(async () => {
  phone = await openPhone();
});
afterAll(async () => {
  await phone.close();
});

const page = () => phone.page;
const entry = (name: RegExp) => page().getByRole('textbox', { name });
const press = (name: string | RegExp) => page().getByRole('button', { name }).first().click();
const step = (name: string | RegExp) => page().getByRole('heading', { name, level: 2, exact: true }).waitFor();
const done = () =>
  page()
    .getByRole('button', { name: /^(Done|Next step)/ })
    .click();
const waits = () => page().getByRole('region', { name: 'Waits' });
/** Waits for words that can be seen: those in a closed working don't count. */
const see = (text: string | RegExp) => page().getByText(text).filter({ visible: true }).first().waitFor();
const figure = () => page().locator('.readout .figure').first().textContent();

const minute = 60_000;
const hour = 60 * minute;

describe('a cabinet with bare insides', () => {
  test('its sides are listed in millimetres', async () => {
    await page().getByRole('link', { name: 'Shop', exact: true }).click();
    await page().getByRole('radio', { name: 'Millimetres' }).check({ force: true });
    await page().getByRole('link', { name: 'Bench' }).click();
    await page().getByRole('link', { name: 'New piece' }).click();
    await entry(/^Name of the piece/).fill('Tool cabinet');
    await press('List its parts');
    const form = page().getByRole('region', { name: 'Next part' });
    await form.getByLabel('Wood').selectOption({ label: 'black cherry' });
    for (const [label, text] of Object.entries({
      Name: 'Side',
      'How many': '2',
      Length: '1000',
      Width: '200',
      Thickness: '20',
    }))
      await form.getByRole('textbox', { name: new RegExp(`^${label}`) }).fill(text);
    await form.getByRole('button', { name: 'Add part', exact: true }).last().click();
    await see('Side is on the list.');
    await page().keyboard.press('Escape');
    await page().getByRole('link', { name: 'Bench' }).click();
    await page()
      .getByRole('link', { name: /^Finish/ })
      .click();
    await page().getByRole('heading', { name: 'How much finish?' }).waitFor();
  });

  test('bare insides take nothing; the area, the amount and the cans follow', async () => {
    await page().getByLabel('Finish', { exact: true }).selectOption({ label: 'Hardening oil with wax' });
    await page().getByRole('radio', { name: 'Sealed or primed' }).check({ force: true });
    await entry(/^Coats/).fill('2');
    await entry(/^Spreading rate/).fill('8');
    // By hand: 2 x (2 x 0.2 + 2 x 0.02 + 2 x 0.004) m2 = 0.896; over 8, twice, a tenth for the rag: 246 ml.
    await expect.poll(figure).toBe('246 ml');
    await page().getByText('Which surfaces').click();
    const sides = page().getByRole('group', { name: 'Side' });
    await sides.getByLabel('Faces').selectOption({ label: 'one shown, one bare' });
    await sides.getByLabel('Ends').selectOption({ label: 'both bare' });
    // By hand: 2 x (0.2 + 2 x 0.02) m2 = 0.48; 0.48 / 8 x 2 x 1.1 = 0.132 L.
    await expect.poll(figure).toBe('132 ml');
    await see('0.48 m²');

    await entry(/^Container/).fill('0.1');
    await entry(/^Price/).fill('20');
    await press('Another size');
    await entry(/^Container/)
      .nth(1)
      .fill('400 ml');
    await entry(/^Price/)
      .nth(1)
      .fill('45');
    await see('Buy 2 × 100 ml');
    await see('for 40.00');
  });

  test('bad entries are said where they stand, and nothing is begun', async () => {
    const start = page().getByRole('button', { name: 'Start the finish' });
    for (const [name, good, ...bad] of [
      [/^Coats/, '2', '0', '40', '1.5'],
      [/^Spreading rate/, '8', '0', 'far'],
      [/^Price/, '20', '', 'x'],
    ] as const)
      for (const text of bad) {
        await entry(name).first().fill(text);
        await page().getByRole('alert').first().waitFor();
        expect(await start.isDisabled()).toBe(true);
        expect(await page().locator('main').textContent()).not.toContain('NaN');
        await entry(name).first().fill(good);
        await page().getByRole('alert').first().waitFor({ state: 'detached' });
      }
    expect(await start.isEnabled()).toBe(true);
  });

  test('two parts: how much of each, in two batches; and what a rest is good for', async () => {
    await page().getByLabel('Two parts, mixed before use').check();
    await entry(/^Parts of A/).fill('0');
    await page().getByRole('alert').first().waitFor();
    await entry(/^Parts of A/).fill('3');
    await entry(/^Pot life/).fill('40');
    await entry(/^You need for one coat/).fill('60');
    // By hand: 66 ml a coat; 32 min of the pot life are used, so two batches of 33 ml: 24.75 of A and 8.25 of B.
    await see('2 batches, each');
    await see('24.8 ml');
    await see('8.25 ml');
    await entry(/^What is left/).fill('40');
    await see('160 ml');
  });

  test('a killed tab keeps the plan as typed', async () => {
    const address = page().url().split('#')[1];
    phone = await phone.restart();
    await page().goto(`${phone.host.address}#${address}`);
    await see('2 batches, each');
    expect(
      await entry(/^Container/)
        .first()
        .inputValue(),
    ).toBe('0.1');
    // From here on the clock is ours.
    await page().clock.install({ time: new Date('2026-05-04T08:00:00') });
    await page().reload();
    await see('2 batches, each');
    await press('Start the finish');
    await step('Rub the sealed wood dull');
  });

  test('rubbed dull, a sample made, and the first coat mixed in two batches', async () => {
    // Sealed wood is not sanded through; then the sample board.
    for (const at of [1, 2]) {
      await page()
        .getByRole('heading', { name: `Step ${at} of`, level: 1 })
        .waitFor();
      await done();
    }
    await step('Coat 1');
    await see('66 ml');
    await press('Batch 1 is mixed');
    await see('Pot life, coat 1, batch 1');
    // Above ten minutes whole minutes are shown: a slow machine's seconds don't count.
    await page().clock.fastForward(29 * minute);
    await see('11 min left');
    await press('Batch 2 is mixed');
    await see('All mixed.');
    await done();
  });

  test('wiped off in time, rags seen to, and the wait survives a reload and stands on the bench', async () => {
    await step('Rags after coat 1');
    await see('Spread every rag flat');
    await see('Wipe off');
    // The coat is on: its pot life is over.
    await expect.poll(() => waits().getByText('Pot life').count()).toBe(0);
    await page().clock.fastForward(6 * minute);
    await see(/^Ended/);
    await done();
    // The rags are ticked after the wiping: that timer is over, the wait for coat 2 runs on.
    await expect.poll(() => waits().getByText('Wipe off').count()).toBe(0);
    await see('Before coat 2');
    await page().reload();
    await see('Before coat 2');
    await page().getByRole('link', { name: 'Bench' }).click();
    await page()
      .getByRole('link', { name: /Before coat 2/ })
      .click();
    await step('Rub coat 1 dull');
    const download = page().waitForEvent('download');
    await press('Put into the calendar');
    expect((await download).suggestedFilename()).toBe('boardwright.ics');
    await done();
  });

  test('the second coat after its wait, rags again, and to the cure', async () => {
    await step('Coat 2');
    await page().clock.fastForward(12 * hour);
    await see(/^Ended/);
    await press('Batch 1 is mixed');
    await see('Pot life, coat 2, batch 1');
    await press('Batch 2 is mixed');
    await see('All mixed.');
    await done();
    await step('Rags after coat 2');
    await done();
    await step('Rub out, if you like');
    await done();
    await step('Leave it to cure');
    await done();
    await see('All steps are through');
    await page().getByRole('link', { name: 'Bench' }).click();
    await see('Finished');
  });

  test('another finish of the same piece begins with its own first step', async () => {
    await page().goBack();
    await press('Plan another finish');
    await press('Start the finish');
    await step('Rub the sealed wood dull');
    expect(phone.errors).toEqual([]);
  });
});
