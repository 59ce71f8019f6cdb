import { afterEach, beforeEach, expect, test } from 'vitest';
import { openPhone, type Phone } from './phone.ts';

let phone: Phone;
beforeEach(async () => {
  phone = await openPhone();
  await phone.page.goto(`${phone.host.address}#/shop`);
  await boxes('Opening').waitFor();
});
afterEach(async () => {
  await phone.close();
});

const boxes = (label: string) => phone.page.getByRole('textbox', { name: new RegExp(`^${label}`) });
const press = (name: string) => phone.page.getByRole('button', { name, exact: true }).first().click();

/** Every entry of this name, from the top. */
const typed = (label: string) => boxes(label).evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value));

test('clamps that are deleted come back beside what was changed since', async () => {
  expect(await typed('Opening')).toEqual(['48']);
  await press('Add clamps');
  await expect.poll(() => typed('Opening')).toEqual(['48', '48']);
  await boxes('Opening').last().fill('24');
  await press('Delete');
  await expect.poll(() => typed('Opening')).toEqual(['24']);
  await boxes('How many').last().fill('9');
  await press('Undo');
  await expect.poll(() => typed('Opening')).toEqual(['48', '24']);
  expect((await typed('How many')).at(-1)).toBe('9');
  expect(phone.errors).toEqual([]);
});

test('what was only assumed is round in the maker’s unit, and what was set stays', async () => {
  const { page } = phone;
  await boxes('Narrowest').fill('2 1/2');
  await boxes('Narrowest').blur();
  await page.getByLabel('Millimetres').check();
  await expect.poll(() => typed('Widest board')).toEqual(['200', '330', '150']);
  expect(await typed('Opening')).toEqual(['1200']);
  // 2 1/2 in, as it was typed.
  expect(await typed('Narrowest')).toEqual(['63.5']);
  await page.getByLabel('Inches').check();
  await expect.poll(() => typed('Widest board')).toEqual(['8', '13', '6']);
  expect(await typed('Narrowest')).toEqual(['2 1/2']);
  expect(phone.errors).toEqual([]);
});

test('a kerf that is finer than the maker reads stays as it was typed', async () => {
  await boxes('Kerf').first().fill('3/32');
  await boxes('Kerf').first().blur();
  await phone.page.reload();
  await expect.poll(() => typed('Kerf')).toEqual(['3/32', '1/8']);
  expect(phone.errors).toEqual([]);
});

test('the tape reads in the maker’s own units, and so is what is wrong with it', async () => {
  const tape = boxes('How closely');
  // Half a millimetre: 1/51 in.
  expect(await tape.inputValue()).toBe('1/64');
  await tape.fill('1/32');
  await tape.blur();
  await phone.page.reload();
  await expect.poll(() => tape.inputValue()).toBe('1/32');
  await tape.fill('1');
  await phone.page.getByRole('alert').getByText('can’t be more than').waitFor();
  await phone.page.getByLabel('Millimetres').check();
  await expect.poll(() => tape.inputValue()).toBe('0.8');
  expect(phone.errors).toEqual([]);
});
