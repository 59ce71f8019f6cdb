import { afterEach, beforeEach, expect, test } from 'vitest';
import { openPhone, type Phone } from './phone.ts';
import { holdUpStoring } from './stored.ts';

let phone: Phone;
beforeEach(async () => {
  phone = await openPhone();
});
afterEach(async () => {
  await phone.close();
});

async function begin(name: string) {
  await phone.page.getByRole('link', { name: 'New piece' }).click();
  await phone.page.getByLabel(/^Name of the piece/).fill(name);
  await phone.page.getByRole('button', { name: 'List its parts' }).click();
  await phone.page.getByRole('heading', { name: 'First part' }).waitFor();
}

const entry = (label: string) => phone.page.getByRole('region', { name: 'Next part' }).getByLabel(label);

const box = (label: string) =>
  phone.page.getByRole('region', { name: 'Next part' }).getByRole('textbox', { name: new RegExp(`^${label}`) });

async function type(values: Record<string, string>) {
  for (const [label, text] of Object.entries(values)) await box(label).fill(text);
}

const add = () =>
  phone.page
    .getByRole('region', { name: 'Next part' })
    .getByRole('button', { name: 'Add part', exact: true })
    .last()
    .click();
const listed = () => phone.page.locator('.part > button b').allTextContents();

test('a chest is listed part by part; slips are said at their entry; a killed tab keeps what is half-typed', async () => {
  // Without a name it is not begun, and it says why.
  await phone.page.getByRole('link', { name: 'New piece' }).click();
  await phone.page.getByRole('button', { name: 'List its parts' }).click();
  await phone.page.getByText('Give it a name').waitFor();
  await phone.page.getByRole('link', { name: 'Bench' }).click();
  await begin('blanket chest');

  // Nothing typed: every empty entry says what it lacks, and nothing is added.
  await add();
  const section = phone.page.getByRole('region', { name: 'Next part' });
  expect(await section.getByRole('alert').count()).toBe(5);
  expect(await listed()).toEqual([]);

  await type({ Name: 'lid', Length: '90 ft', Width: '3 in 20 mm', Thickness: '0' });
  await entry('Wood').selectOption({ label: 'black cherry' });
  expect(await section.getByRole('alert').allTextContents()).toEqual([
    expect.stringContaining('can’t be more than'),
    expect.stringContaining('don’t belong in one length'),
    expect.stringContaining('must be at least'),
  ]);
  expect(await box('Width').inputValue()).toBe('3 in 20 mm');

  await type({ Length: "3' 4", Width: '17,5', Thickness: '3/4' });
  await add();
  await phone.page.getByText('lid is on the list.').waitFor();
  expect(await listed()).toEqual(['lid']);
  // 40 x 17.5 x 0.75 in over 144 cubic inches a board foot is 3.65 (by hand; three digits are shown).
  await phone.page.getByText('3.65 board feet').first().waitFor();

  // Wood, kind and thickness carry over to the next part.
  expect(await entry('Wood').inputValue()).toBe('cherry-black');
  expect(await box('Thickness').inputValue()).toBe('3/4');
  await type({ Name: 'side', 'How many': '2', Length: '17', Width: '1' });

  // The tab is killed while the width is half-typed.
  const address = phone.page.url().split('#')[1];
  phone = await phone.restart();
  await phone.page.goto(`${phone.host.address}#${address}`);
  await box('Name').waitFor();
  expect(await box('Name').inputValue()).toBe('side');
  expect(await box('Width').inputValue()).toBe('1');
  expect(await listed()).toEqual(['lid']);
  await type({ Width: '14 1/2' });
  await add();
  await phone.page.getByText('side is on the list.').waitFor();
  expect(await listed()).toEqual(['lid', 'side × 2']);
  expect(phone.errors).toEqual([]);
});

test('parts are edited as typed, copied, and taken off with a way back; so is the piece', async () => {
  const { page } = phone;
  await begin('bench');
  await entry('Wood').selectOption({ label: 'white oak' });
  await entry('Solid').check();
  await type({ Name: 'leg', 'How many': '4', Length: '17', Width: '2', Thickness: '2' });
  await add();
  await page.getByText('leg is on the list.').waitFor();

  const row = page.locator('.part').first();
  await row.getByRole('button', { name: /leg/ }).click();
  // Typed key by key, faster than it is stored: nothing is lost.
  const width = row.getByRole('textbox', { name: /^Width/ });
  await width.fill('');
  await width.pressSequentially('12 1/4');
  expect(await width.inputValue()).toBe('12 1/4');
  await row.getByRole('button', { name: /leg/ }).getByText('12 1/4').waitFor({ state: 'attached' });
  expect(await width.inputValue()).toBe('12 1/4');
  await width.fill('2 1/4');
  // Once the list says so, it is stored.
  await row.getByRole('button', { name: /leg/ }).getByText('2 1/4').waitFor({ state: 'attached' });
  await page.reload();
  await page.locator('.part').first().getByText('2 1/4', { exact: false }).first().waitFor();

  await row.getByRole('button', { name: /leg/ }).click();
  await row.getByLabel('Faces').selectOption({ label: 'one shown, one bare' });
  await row.getByRole('button', { name: 'Duplicate' }).click();
  await page.getByText('leg 2 × 4').waitFor();
  const copy = page.locator('.part').nth(1);
  expect(await copy.getByLabel('Faces').inputValue()).toBe('shown-bare');
  await copy.getByRole('button', { name: 'Delete' }).click();
  await page.getByText('leg 2 deleted.').waitFor();
  expect(await listed()).toEqual(['leg × 4']);
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByText('leg 2 × 4').waitFor();

  await page.getByRole('button', { name: 'It is finished' }).click();
  await page.getByText(/^Finished on/).waitFor();
  await page.getByRole('button', { name: 'Delete the piece' }).click();
  await page.getByText('bench deleted').waitFor();
  expect(await page.getByRole('button', { name: 'Undo' }).count()).toBe(1);
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.locator('.kicker', { hasText: 'Boardwright' }).waitFor();
  await page.getByRole('navigation', { name: 'Stages of bench' }).waitFor();
  expect(phone.errors).toEqual([]);
});

test('what is typed while a slow phone stores a part is for the next one', async () => {
  await begin('stool');
  await entry('Wood').selectOption({ label: 'white oak' });
  await type({ Name: 'leg', 'How many': '4', Length: '17', Width: '2', Thickness: '2' });
  const letGo = await holdUpStoring(phone.page, 'piece');
  await add();
  await type({ Name: 'rail' });
  await letGo();
  await phone.page.getByText('leg is on the list.').waitFor();
  expect(await listed()).toEqual(['leg × 4']);
  await expect.poll(() => box('Length').inputValue()).toBe('');
  expect(await box('Name').inputValue()).toBe('rail');
  expect(phone.errors).toEqual([]);
});
