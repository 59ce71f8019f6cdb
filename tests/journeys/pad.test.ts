import type { Locator } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { openPhone, type Phone } from './phone.ts';

// The length pad under a thumb: what it covers, what it gives way to, and the keyboard in its place.

let phone: Phone;

beforeAll(async () => {
  phone = await openPhone();
});
afterAll(() => phone.close());
beforeEach(async () => {
  await phone.page.goto(`${phone.host.address}#/`);
  await phone.page.getByRole('heading', { name: 'What now?' }).waitFor();
});

const entry = (name: string) => phone.page.getByRole('textbox', { name });
const pad = () => phone.page.getByRole('region', { name: 'Length pad' });
const key = (name: string) => pad().getByRole('button', { name, exact: true });
const hasFocus = (input: Locator) => input.evaluate((one) => one === document.activeElement);

/** A finger comes down and goes up where the target is now, wherever the page moves meanwhile. */
async function touch(target: Locator) {
  const box = await target.boundingBox();
  if (!box) throw new Error('not on the screen');
  await phone.page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2);
}

test('the key for the keyboard puts the pad away and keeps the entry', async () => {
  const { page } = phone;
  await page.goto(`${phone.host.address}#/stock`);
  await entry('Width').tap();
  await key('5').tap();
  await key('Type on the keyboard').tap();
  await pad().waitFor({ state: 'detached' });
  expect(await hasFocus(entry('Width'))).toBe(true);
  expect(await entry('Width').getAttribute('inputmode')).toBe('text');
  await page.keyboard.type(' 3/8');
  expect(await entry('Width').inputValue()).toBe('5 3/8');
  // Left and tapped again, the entry has its pad back.
  await entry('Length').tap();
  await entry('Width').tap();
  await pad().waitFor();
  expect(phone.errors).toEqual([]);
});

test('a tap beside the pad meets what it was aimed at, though the page is shorter without the pad', async () => {
  const { page } = phone;
  await page.goto(`${phone.host.address}#/stock`);
  const tapers = page.getByRole('checkbox', { name: 'Tapers' });
  await tapers.waitFor();
  // As far down as the page goes with the pad: without it there is less.
  await entry('Length').tap();
  await pad().waitFor();
  const y = () => page.evaluate(() => scrollY);
  await expect.poll(y).toBeGreaterThan(0);
  await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
  const before = await y();
  await touch(tapers);
  await pad().waitFor({ state: 'detached' });
  await expect.poll(y).toBeLessThan(before);
  expect(await tapers.isChecked()).toBe(true);
  expect(phone.errors).toEqual([]);
});
