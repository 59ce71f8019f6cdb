import { afterEach, beforeEach, expect, test } from 'vitest';
import { openPhone, type Phone } from './phone.ts';

let phone: Phone;
beforeEach(async () => {
  phone = await openPhone();
  await openStock();
});
afterEach(async () => {
  await phone.close();
});

async function openStock(id = '') {
  await phone.page.goto(`${phone.host.address}#/stock${id === '' ? '' : `/${id}`}`);
  await phone.page.getByRole('heading', { level: 1, name: 'What is in the rack?' }).waitFor();
}

const next = () => phone.page.getByRole('region', { name: 'Next board' });
const box = (label: string) => next().getByRole('textbox', { name: new RegExp(`^${label}`) });
const foot = (name: string) => phone.page.getByRole('navigation', { name: 'Actions' }).getByRole('button', { name });
const pad = (name: string) =>
  phone.page.getByRole('region', { name: 'Length pad' }).getByRole('button', { name, exact: true });
const marks = () => phone.page.locator('.board-row b').allTextContents();

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
    expect.stringContaining("can't be more than"),
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
  await page
    .getByRole('region', { name: 'Put right' })
    .getByRole('textbox', { name: /^Width/ })
    .fill('8');
  await pad('Next').click();
  await pad('Put right').click();
  await page.getByText('5 is put right.').waitFor();
  await page.locator('.board-row').first().getByText('8 ×', { exact: false }).waitFor();

  await page.getByRole('button', { name: 'Delete 5' }).click();
  await page.getByText('5 is gone.').waitFor();
  expect(await marks()).toEqual(['4', '3', '2', '1']);
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.locator('.board-row b', { hasText: '5' }).waitFor();
  expect(phone.errors).toEqual([]);
});
