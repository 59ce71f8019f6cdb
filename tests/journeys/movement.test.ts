import { afterEach, beforeEach, expect, test } from 'vitest';
import { openPhone, type Phone } from './phone.ts';

let phone: Phone;
beforeEach(async () => {
  phone = await openPhone();
});
afterEach(async () => {
  await phone.close();
});

async function addPart(name: string, kind: string, sizes: readonly [string, string, string]) {
  const form = phone.page.getByRole('region', { name: 'Next part' });
  const box = (label: string) => form.getByRole('textbox', { name: new RegExp(`^${label}`) });
  await form.getByLabel(kind).check();
  await form.getByLabel('Wood').selectOption({ label: 'black cherry' });
  await box('Name').fill(name);
  await box('Length').fill(sizes[0]);
  await box('Width').fill(sizes[1]);
  await box('Thickness').fill(sizes[2]);
  await form.getByRole('button', { name: 'Add part', exact: true }).last().click();
  await phone.page.getByText(`${name} is on the list.`).waitFor();
}

async function makeChest() {
  const { page } = phone;
  await page.getByRole('link', { name: 'New piece' }).click();
  await page.getByLabel(/^Name of the piece/).fill('blanket chest');
  await page.getByRole('button', { name: 'List its parts' }).click();
  await page.getByRole('heading', { name: 'First part' }).waitFor();
  await addPart('lid', 'Panel, glued up', ['1060 mm', '480 mm', '22 mm']);
  await addPart('cleat', 'Solid', ['430 mm', '40 mm', '25 mm']);
  await page.getByRole('link', { name: 'How will it move?' }).click();
  await page.getByRole('heading', { level: 1, name: 'What may be glued, what must float?' }).waitFor();
}

async function addJoint(kind: string, first: string, second: string) {
  const form = phone.page.getByRole('region', { name: 'Add a joint' });
  await form.getByLabel('Kind').selectOption({ label: kind });
  const picks = form.getByRole('combobox');
  await picks.nth(1).selectOption({ label: first });
  await picks.nth(2).selectOption({ label: second });
  await form.getByRole('button', { name: 'Add joint' }).click();
}

test('a chest with cleats across its lid gets its slots', async () => {
  await makeChest();
  const { page } = phone;
  const seasons = page.getByRole('region', { name: 'Seasons' });

  // Nothing chosen: each entry says so.
  const form = page.getByRole('region', { name: 'Add a joint' });
  await form.getByRole('button', { name: 'Add joint' }).click();
  expect(await form.getByRole('alert').count()).toBe(2);

  await addJoint('Cleat across a panel', 'lid', 'cleat');
  await page.getByText('Let it float').waitFor();
  await page.getByText('1 of 1 must move').waitFor();

  // 70 °F at 30 % and 60 %: 6.2 % and 11.0 % in the handbook's Table 4-2 (FPL-GTR-190; recalled, not read).
  await seasons.getByText('The air there').click();
  for (const [label, value] of [
    ['Dry season °F', '70'],
    ['Dry season humidity', '30'],
    ['Damp season °F', '70'],
    ['Damp season humidity', '60'],
  ] as const)
    await seasons.getByRole('textbox', { name: label }).fill(value);
  await expect.poll(() => seasons.locator('dd').allTextContents()).toEqual(['8%', '6.2%', '11%']);

  // Three screws, the first 50 mm from the end: 165 mm from the fixed one. By hand, with the handbook's coefficient 0.00248:
  // 5 + 165 x 0.00248 x 4.8 + 2 = 8.96 mm, to the nearest sixteenth 3/8 in.
  const slots = page.getByRole('region', { name: 'Slots in cleat' });
  expect(await slots.getByRole('listitem').count()).toBe(3);
  expect(await slots.getByRole('listitem').nth(1).textContent()).toContain('fixed');
  expect(await slots.getByRole('listitem').nth(0).getByText('×').first().textContent()).toContain('3/8 in');

  await slots.getByText('Change the screws').click();
  // Impossible screws are refused at their entry, and the table stays as it was.
  await slots.getByRole('textbox', { name: /^How many/ }).fill('40');
  await slots.getByRole('alert').getByText('run into the one before').waitFor();
  expect(await slots.getByRole('listitem').count()).toBe(3);
  await slots.getByRole('textbox', { name: /^How many/ }).fill('5');
  await expect.poll(() => slots.getByRole('listitem').count()).toBe(5);

  // Slots, seasons and the joint are there after the tab is killed.
  const address = page.url().split('#')[1];
  phone = await phone.restart();
  await phone.page.goto(`${phone.host.address}#${address}`);
  await phone.page.getByText('Let it float').waitFor();
  expect(await phone.page.getByRole('region', { name: 'Slots in cleat' }).getByRole('listitem').count()).toBe(5);

  await phone.page.getByRole('button', { name: 'Delete this joint' }).click();
  await phone.page.getByText('Joint deleted.').waitFor();
  await phone.page.getByRole('button', { name: 'Undo' }).click();
  await phone.page.getByText('Let it float').waitFor();
  expect(phone.errors).toEqual([]);
});

test('impossible air and moisture, a screw that would come through, gaps and the year', async () => {
  await makeChest();
  const { page } = phone;
  const seasons = page.getByRole('region', { name: 'Seasons' });
  const reading = seasons.getByRole('textbox', { name: /^The wood reads/ });
  await reading.fill('34');
  await seasons.getByRole('alert').getByText('above fibre saturation').waitFor();
  await reading.fill('9');
  await expect.poll(() => seasons.locator('dd').first().textContent()).toBe('9%');
  await seasons.getByText('The air there').click();
  await seasons.getByRole('textbox', { name: 'Damp season humidity' }).fill('120');
  await seasons.getByRole('alert').waitFor();
  expect(await seasons.locator('dd').first().textContent()).toBe('9%');

  await page.getByLabel('Screws').check();
  const screw = page.getByRole('region', { name: 'Screw or insert' });
  await screw.getByRole('textbox', { name: /^Length/ }).fill('50 mm');
  await screw.getByRole('alert').getByText('would come through').waitFor();
  expect(await screw.getByText('Set the depth stop to').count()).toBe(0);
  await screw.getByRole('textbox', { name: /^Length/ }).fill('30 mm');
  await screw.getByText('Set the depth stop to').waitFor();

  await page.getByLabel('Parts').check();
  const groove = page.getByRole('region', { name: 'Panel in grooves' });
  await groove.getByText('Cut it today to').waitFor();
  await groove.getByRole('textbox', { name: /^Depth/ }).fill('2 mm');
  await groove.getByRole('alert').getByText('Make the groove deeper').waitFor();

  await page.getByRole('img', { name: /^Width of lid, January to December/ }).waitFor();
  // Every part moves both ways; a tap shows its year.
  expect(await page.getByRole('button', { name: /shrinks .* swells/ }).count()).toBe(2);
  await page.getByRole('button', { name: /^cleat/ }).click();
  await page.getByRole('img', { name: /^Width of cleat/ }).waitFor();
  expect(phone.errors).toEqual([]);
});
