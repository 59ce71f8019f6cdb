import { expect, test } from 'vitest';
import { box, foot, marks, next, pad, phone, restart, section, sectionBox, startAtTheRack } from './at-the-rack.ts';

startAtTheRack();

test('boards are logged, put right, deleted with a way back; bad input is said at its entry', async () => {
  const { page } = phone;
  // Nothing typed: wood, width and length say what they lack.
  await foot('Log board').click();
  expect(await next().getByRole('alert').count()).toBe(3);
  await next().getByLabel('Wood').selectOption({ label: 'black cherry' });
  await box('Width').fill('5,5 cm 3');
  await box('Length').fill('90 ft');
  expect(await next().getByRole('alert').allTextContents()).toEqual([
    expect.stringContaining('two numbers'),
    expect.stringContaining('can’t be more than'),
  ]);
  expect(await marks()).toEqual([]);

  // 8/4, 6 1/4 in by 8 ft: surface measure 4, 8 board feet; exactly 8.33 (NHLA's rule, worked by hand).
  await next().getByLabel('Thickness').selectOption('8/4');
  await box('Width').fill('6 1/4');
  await box('Length').fill('96');
  await pad('Log board').click();
  const tally = page.getByRole('region', { name: 'Tally' });
  await tally.locator('.figure', { hasText: /^8 board feet$/ }).waitFor();
  await tally.getByText('8.33 board feet').first().waitFor();
  await tally.getByText('0.0197 m³').first().waitFor();
  expect(await marks()).toEqual(['1']);

  // The next one: length left empty is the last one's; three alike.
  expect(await box('Chalk mark').inputValue()).toBe('2');
  await box('Width').fill('7');
  await box('How many alike').fill('3');
  expect(await pad('Log board').count()).toBe(0);
  await foot('Log board').click();
  await page.getByText('2 to 4 are logged.').waitFor();
  expect(await marks()).toEqual(['4', '3', '2', '1']);

  // A mark that is taken is refused.
  await box('Chalk mark').fill('3');
  await box('Width').fill('7');
  await pad('Next').click();
  await pad('Log board').click();
  await page.getByText('Another board has this mark.').waitFor();
  await box('Chalk mark').fill('5');
  await foot('Log board').click();
  await page.getByText('5 is logged.').waitFor();

  await page.getByRole('button', { name: 'Fix 5' }).click();
  // The last one is put right where it is kept, while the next stays half-typed.
  await box('Width').fill('6 3/');
  const fix = page.getByRole('region', { name: 'Fix' });
  await fix.getByRole('textbox', { name: /^Width/ }).fill('8');
  await page.locator('.board-row').first().getByText('8 ×', { exact: false }).waitFor();
  await fix.getByRole('textbox', { name: /^Chalk mark/ }).fill('3');
  await fix.getByText('Another board has this mark.').waitFor();
  await fix.getByRole('textbox', { name: /^Chalk mark/ }).fill('5B');
  await page.locator('.board-row b', { hasText: '5B' }).waitFor();
  await fix.getByRole('button', { name: 'Done' }).click();
  expect(await box('Width').inputValue()).toBe('6 3/');
  await box('Width').fill('');

  await page.getByRole('button', { name: 'Fix 5B' }).click();
  await page.getByRole('button', { name: 'Delete 5B' }).click();
  await page.getByText('5B deleted.').waitFor();
  expect(await marks()).toEqual(['4', '3', '2', '1']);
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.locator('.board-row b', { hasText: '5B' }).waitFor();

  // Who works in millimetres buys by the cubic metre: that stands first, the rule beneath.
  await page.goto(`${phone.host.address}#/shop`);
  await page.getByRole('radio', { name: 'Millimetres' }).check();
  await page.goto(`${phone.host.address}#/stock`);
  await tally.locator('.figure', { hasText: /^0\.\d+ m³$/ }).waitFor();
  await tally.getByText(/^\d+ board feet by the hardwood rule; exactly/).waitFor();
  expect(phone.errors).toEqual([]);
});

/** Board feet of 4/4 by NHLA's rule in whole numbers: eighths of an inch × feet; an exact half alternately up and down. */
function boardFeetOf(rows: readonly { eighths: number; feet: number }[]): number {
  let up = true;
  let sum = 0;
  for (const { eighths, feet } of rows) {
    const product = eighths * feet;
    const half = product % 96 === 48;
    sum += Math.floor(product / 96) + Number(half ? up : product % 96 > 48);
    if (half) up = !up;
  }
  return sum;
}

test('thirty boards off a truck: at most four taps a board besides the digits, a killed tab, a wrong invoice', async () => {
  let { page } = phone;
  await page.getByRole('button', { name: 'Add a delivery' }).click();
  await page.getByRole('heading', { level: 1, name: /Does the invoice agree/ }).waitFor();
  await next().getByLabel('Wood').selectOption({ label: 'black cherry' });
  const rows = Array.from({ length: 30 }, (_, at) => ({ eighths: 40 + ((at * 7) % 41), feet: at % 5 === 4 ? 10 : 8 }));
  let taps = 0;
  const tap = async (key: string) => {
    taps++;
    await pad(key).click();
  };
  /** Digits and fractions are what is measured; they are not counted. */
  const digits = async (text: string) => {
    for (const key of text.match(/\d\/\d|\d/g) ?? []) await pad(key).click();
  };
  const inEighths = (eighths: number) => {
    const names = ['', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'];
    return `${Math.floor(eighths / 8)} ${names[eighths % 8]}`;
  };

  const most: number[] = [];
  for (const [at, { eighths, feet }] of rows.entries()) {
    const before = taps;
    if (at === 0) await box('Width').click();
    await digits(inEighths(eighths));
    if (at === 12) {
      // The tab is killed while the length is still to come, a fifth of a second after the last key.
      await page.waitForTimeout(200);
      const address = page.url().split('#')[1];
      await restart();
      ({ page } = phone);
      await page.goto(`${phone.host.address}#${address}`);
      await box('Width').waitFor();
      expect(await box('Width').inputValue()).toBe(inEighths(eighths).trim());
      await box('Width').click();
    }
    await tap('Next');
    if (feet !== (rows[at - 1]?.feet ?? 0)) await digits(String(feet * 12));
    await tap('Log board');
    await page.getByText(`${at + 1} is logged.`).waitFor();
    // The thumb goes on with the next width: the pad stands open for it.
    await pad('Next').waitFor();
    most.push(taps - before);
  }
  console.log(`taps a board besides digits: ${Math.max(...most)} at most, ${taps} for ${rows.length} boards`);
  expect(Math.max(...most)).toBeLessThanOrEqual(4);
  await page.getByText('30 so far').waitFor();
  expect((await marks())[0]).toBe('30');
  const feet = boardFeetOf(rows);
  await page.locator('section[aria-label=Tally] .figure', { hasText: new RegExp(`^${feet} board feet$`) }).waitFor();

  // The yard charges 40 board feet more than came: more than 30 boards rounded by half a foot each.
  await page.keyboard.press('Escape');
  const record = page.getByRole('region', { name: 'The delivery' });
  const entry = (label: string) => record.getByRole('textbox', { name: new RegExp(`^${label}`) });
  await entry('Supplier').fill('Yard by the river');
  await entry('Price').fill('9.50');
  await entry('Freight').fill('40');
  await entry('Invoice says').fill(String(feet + 40));
  const invoice = page.getByRole('region', { name: 'Invoice', exact: true });
  await invoice.getByText('more on the invoice').waitFor();
  expect(await invoice.locator('.figure').textContent()).toBe('40 board feet more on the invoice');
  await invoice.getByText('380.00').first().waitFor();
  await invoice.getByText('does not explain it').waitFor();
  // Ten more than came: rounding can make fifteen.
  await entry('Invoice says').fill(String(feet + 10));
  await invoice.getByText('can explain it').waitFor();
  await entry('Invoice says').fill(String(feet));
  await invoice.getByText('The invoice agrees').waitFor();
  await entry('Invoice total').fill((feet * 9.5 + 40 + 12).toFixed(2));
  await page.getByRole('region', { name: 'Invoice total' }).getByText('12.00').waitFor();

  // Not a price, and nothing is lost.
  await entry('Price').fill('9 or 10');
  await record.getByRole('alert').waitFor();
  await entry('Price').fill('9.50');
  await page.reload();
  await page.getByRole('heading', { level: 1, name: /Does the invoice agree/ }).waitFor();
  expect(await entry('Supplier').inputValue()).toBe('Yard by the river');
  expect(phone.errors).toEqual([]);
});

test('a tapered board, the tally of a bundle, one meter reading for a whole delivery; the delivery goes and comes back', async () => {
  const { page } = phone;
  await page.getByRole('button', { name: 'Add a delivery' }).click();
  await page.getByRole('heading', { level: 1, name: /Does the invoice agree/ }).waitFor();
  await box('Chalk mark').fill('T1');
  await next().getByLabel('Wood').selectOption({ label: 'black cherry' });
  await box('Width').fill('8');
  await box('Length').fill('96');
  await next().getByLabel('Tapers').check();
  await foot('Log board').click();
  expect(await next().getByRole('alert').count()).toBe(1);
  await box('At the far end').fill('6');
  await pad('Next').click();
  await pad('Log board').click();
  await page.getByText('T1 is logged.').waitFor();
  await box('Width').fill('7');
  await pad('Next').click();
  await pad('Log board').click();
  await page.getByText('T2 is logged.').waitFor();
  // NHLA: a taper is measured a third of the length from its narrow end, 6 2/3 x 8 / 12 = 4.4, so 4; and 7 x 8 / 12 = 4.7, so 5.
  await page.locator('section[aria-label=Tally] .figure', { hasText: /^9 board feet$/ }).waitFor();
  await page.keyboard.press('Escape');
  // AHEC, as a bundle: 7 + 7 whole inches x 8 ft / 12 = 9.3, so 9.
  await page.getByText('As an export bundle').click();
  await page.getByText('9 board feet, widths to the whole inch.').waitFor();

  await page.getByText('One reading for all its boards').click();
  const more = section('More about the delivery');
  await more.getByRole('button', { name: 'Keep the reading' }).click();
  await more.getByRole('alert').waitFor();
  await sectionBox('More about the delivery', 'Meter reads').fill('9');
  await more.getByRole('button', { name: 'Keep the reading' }).click();
  await page.getByText('Kept on 2 boards.').waitFor();
  for (const mark of ['T1', 'T2']) {
    await page.locator('.board-row', { hasText: mark }).click();
    await section('Is it dry enough?').getByText('1 reading', { exact: true }).waitFor();
    // The plan gets what the narrow end leaves.
    if (mark === 'T1') await section('What is clear?').getByText('Clear: 96 in by 6 in').waitFor();
    await page.getByRole('link', { name: 'Its delivery' }).click();
    await page.getByRole('heading', { level: 1, name: /Does the invoice agree/ }).waitFor();
    // The way back is kept, but out of the way.
    if (mark === 'T1') expect(await page.locator('.notices.past .notice').count()).toBe(1);
  }
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.locator('.board-row', { hasText: 'T2' }).click();
  await section('Is it dry enough?').getByText('No reading yet').waitFor();

  // The delivery goes and comes back; its boards stay, with what has happened to them since.
  await page.getByRole('link', { name: 'Its delivery' }).click();
  await page.getByRole('button', { name: 'Delete the delivery' }).click();
  await page.locator('.board-row', { hasText: 'T2' }).click();
  await section('Cost').getByRole('textbox', { name: 'What it cost' }).waitFor();
  expect(await page.getByRole('link', { name: 'Its delivery' }).count()).toBe(0);
  await section('Mark and sizes').getByRole('textbox', { name: 'Note' }).fill('pitch pocket');
  await page.getByRole('button', { name: 'Undo' }).click();
  await section('Cost').getByText('With its share of the freight').waitFor();
  expect(await section('Mark and sizes').getByRole('textbox', { name: 'Note' }).inputValue()).toBe('pitch pocket');
  await page.getByRole('link', { name: 'Its delivery' }).click();
  await page.locator('.board-row', { hasText: 'T1' }).waitFor();
  expect(phone.errors).toEqual([]);
});
