import type { Page } from 'playwright-core';

/** Loads the demo shop from the first screen. */
export async function loadDemo(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Load the demo shop' }).click();
  await page.getByText('The demo shop is loaded.').waitFor();
}

/** Plans the demo shop's cabinet and mills its first step. */
export async function startMilling(page: Page): Promise<void> {
  await page.goto(`${page.url().split('#')[0]}#/breakdown/demo-piece-cabinet`);
  await page.getByRole('button', { name: 'Plan the cuts' }).click();
  await page.getByRole('link', { name: 'Mill it' }).click();
  await page.getByRole('button', { name: 'Start milling' }).first().click();
  await page.getByRole('button', { name: 'Done, next' }).click();
  await page.getByRole('heading', { name: /^Step 2 of/ }).waitFor();
}
