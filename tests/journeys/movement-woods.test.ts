import { afterEach, beforeEach, expect, test } from 'vitest';
import { axeFindings } from './axe.ts';
import { openPhone, type Phone } from './phone.ts';

let phone: Phone;
beforeEach(async () => {
  phone = await openPhone();
});
afterEach(async () => {
  await phone.close();
});

test('a wood that the table lacks is added with its figures, chosen for a part, and judged by them', async () => {
  const { page } = phone;
  await page.getByRole('link', { name: 'New piece' }).click();
  await page.getByLabel(/^Name of the piece/).fill('tray');
  await page.getByRole('button', { name: 'List its parts' }).click();
  const part = page.getByRole('region', { name: 'Next part' });
  await part.waitFor();
  const parts = new URL(page.url()).hash;
  await part.getByRole('textbox', { name: /^Name/ }).fill('base');
  await part.getByLabel('Wood').selectOption({ label: 'Another wood' });
  await part.getByRole('link', { name: 'Add it with its figures' }).click();

  // What can't be is said at its entry; nothing is stored, and what is typed survives a killed tab.
  const form = page.getByRole('region', { name: 'Add a wood' });
  const box = (label: string) => form.getByRole('textbox', { name: new RegExp(`^${label}`) });
  await form.getByRole('button', { name: 'Add it' }).click();
  await form.getByRole('alert').getByText('Give it a name').waitFor();
  await box('Name').fill('black cherry');
  await form.getByRole('alert').getByText('The table has this wood already').waitFor();
  await box('Name').fill('plum');
  await form.getByRole('alert').getByText('Type at least one figure').waitFor();
  await box('Radial').fill('9.9');
  await box('Tangential').fill('4.2');
  await form.getByRole('alert').getByText('Are the two swapped').waitFor();
  await box('Radial').fill('4.2');
  await box('Tangential').fill('9,9');
  expect(await axeFindings(page)).toEqual([]);
  phone = await phone.restart();
  await phone.page.goto(`${phone.host.address}#/wood`);
  const again = phone.page.getByRole('region', { name: 'Add a wood' });
  expect(await again.getByRole('textbox', { name: /^Tangential/ }).inputValue()).toBe('9,9');
  await again.getByRole('button', { name: 'Add it' }).click();
  // Wood handbook (FPL-GTR-190), Eq. 13-3, by hand: 304.8 x 4 / (3000 / 9.9 - 22) = 4.34 mm, to the nearest sixteenth 3/16 in.
  const card = phone.page.getByRole('region', { name: 'plum' });
  await card.getByText(/flat-sawn/).waitFor();
  expect(await card.locator('.figure').textContent()).toContain('3/16');

  // The part that was half typed is still there, and the wood stands in its list.
  await phone.page.goto(`${phone.host.address}${parts}`);
  const next = phone.page.getByRole('region', { name: 'Next part' });
  await next.getByRole('textbox', { name: /^Name/ }).waitFor();
  expect(await next.getByRole('textbox', { name: /^Name/ }).inputValue()).toBe('base');
  const add = async (name: string, kind: string, wood: string, sizes: readonly [string, string, string]) => {
    await next.getByLabel(kind).check();
    await next.getByLabel('Wood').selectOption({ label: wood });
    await next.getByRole('textbox', { name: /^Name/ }).fill(name);
    for (const [at, label] of ['Length', 'Width', 'Thickness'].entries())
      await next.getByRole('textbox', { name: new RegExp(`^${label}`) }).fill(sizes[at] ?? '');
    await next.getByRole('button', { name: 'Add part', exact: true }).last().click();
    await phone.page.getByText(`${name} is on the list.`).waitFor();
  };
  await add('base', 'Panel, glued up', 'plum', ['600 mm', '400 mm', '15 mm']);
  await add('batten', 'Solid', 'black cherry', ['400 mm', '40 mm', '20 mm']);
  await phone.page.getByRole('link', { name: 'How will it move?' }).click();
  const joint = phone.page.getByRole('region', { name: 'Add a joint' });
  await joint.getByRole('combobox').nth(1).selectOption({ label: 'base' });
  await joint.getByRole('combobox').nth(2).selectOption({ label: 'batten' });
  await joint.getByRole('button', { name: 'Add joint' }).click();
  await phone.page.getByText('Let it float').waitFor();
  await phone.page.getByText('By the figures you typed in for the wood.').waitFor();

  const judged = phone.page.url();

  // Deleted it has no figures left, and the joint says which are missing; there is a way back.
  await phone.page.goto(`${phone.host.address}#/wood`);
  await card.getByRole('button', { name: 'Delete' }).click();
  await phone.page.getByText('plum deleted.').waitFor();
  await phone.page.goBack();
  await phone.page.getByText('no tangential figure').first().waitFor();
  await phone.page.getByRole('link', { name: 'Add its figures' }).waitFor();
  await phone.page.goForward();
  await phone.page.getByRole('button', { name: 'Undo' }).click();
  await card.waitFor();

  // Of the volume alone there is only a guess, and it is called one wherever it counts.
  await card.getByRole('button', { name: 'Change' }).click();
  await again.getByRole('textbox', { name: /^Tangential/ }).fill('');
  await again.getByRole('textbox', { name: /^Radial/ }).fill('');
  await again.getByRole('textbox', { name: /^Volumetric/ }).fill('13');
  await again.getByRole('button', { name: 'Change it' }).click();
  await card.getByText(/^A guess/).waitFor();
  await phone.page.goto(judged);
  await phone.page.getByText(/^A guess/).waitFor();
  await phone.page.getByLabel('Parts').check();
  await phone.page.getByText(/^A guess/).waitFor();
  expect(phone.errors).toEqual([]);
});

test('a wood that was added anew since it was deleted is there once, whatever the way back', async () => {
  const { page } = phone;
  await page.goto(`${phone.host.address}#/wood`);
  const form = page.getByRole('region', { name: 'Add a wood' });
  const add = async (tangential: string) => {
    await form.getByRole('textbox', { name: /^Name/ }).fill('plum');
    await form.getByRole('textbox', { name: /^Tangential/ }).fill(tangential);
    await form.getByRole('button', { name: 'Add it' }).click();
    await page.getByRole('region', { name: 'plum' }).waitFor();
  };
  await add('9.9');
  await page.getByRole('region', { name: 'plum' }).getByRole('button', { name: 'Delete' }).click();
  await page.getByText('plum deleted.').waitFor();
  await add('7.7');
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.waitForTimeout(300);
  expect(await page.getByRole('region', { name: 'plum' }).count()).toBe(1);
});
