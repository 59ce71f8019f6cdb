import { afterEach, beforeEach } from 'vitest';
import { openPhone, type Phone } from './phone.ts';

/** The phone of the test that runs. */
export let phone: Phone;

/** Before each test of a file a new phone stands at the rack. */
export function startAtTheRack(): void {
  beforeEach(async () => {
    phone = await openPhone();
    await openStock();
  });
  afterEach(async () => {
    await phone.close();
  });
}

/** The tab is killed and the app opened again. */
export async function restart(): Promise<void> {
  phone = await phone.restart();
}

export async function openStock(): Promise<void> {
  await phone.page.goto(`${phone.host.address}#/stock`);
  await phone.page.getByRole('heading', { level: 1, name: 'What is in the rack?' }).waitFor();
}

export const next = () => phone.page.getByRole('region', { name: 'Next board' });
export const box = (label: string) => next().getByRole('textbox', { name: new RegExp(`^${label}`) });
export const foot = (name: string) =>
  phone.page.getByRole('navigation', { name: 'Actions' }).getByRole('button', { name });
export const pad = (name: string) =>
  phone.page.getByRole('region', { name: 'Length pad' }).getByRole('button', { name, exact: true });
export const marks = () => phone.page.locator('.board-row b').allTextContents();

/** Logs one board of black cherry, 4/4, and opens it. */
export async function logOne(mark: string, width: string, length: string) {
  await box('Chalk mark').fill(mark);
  await next().getByLabel('Wood').selectOption({ label: 'black cherry' });
  await box('Width').fill(width);
  await box('Length').fill(length);
  await pad('Log board').click();
  await phone.page.getByText(`${mark} is logged.`).waitFor();
}

export async function openBoard(mark: string) {
  // The pad goes first: the page is shorter without it, and a mouse would miss the row that moves.
  await pad('Next').waitFor();
  await phone.page.keyboard.press('Escape');
  await pad('Next').waitFor({ state: 'detached' });
  await phone.page.locator('.board-row', { hasText: mark }).first().click();
  await phone.page.getByRole('heading', { level: 1, name: `What is in board ${mark}?` }).waitFor();
}

export const section = (name: string) => phone.page.getByRole('region', { name, exact: true });
export const sectionBox = (name: string, label: string) =>
  section(name).getByRole('textbox', { name: new RegExp(`^${label}`) });
