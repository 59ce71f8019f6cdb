import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeFindings } from './axe.ts';
import { crosscut, eight, mondaysBackup, seams } from './monday.ts';
import { openPhone, type Phone } from './phone.ts';

// Monday at eight, in the middle of three pieces: what the bench says is right, and one tap leads to each step.

let phone: Phone;
const folder = mkdtempSync(join(tmpdir(), 'boardwright-monday-'));

const page = (): Page => phone.page;
const heading = (name: string | RegExp, level = 1) => page().getByRole('heading', { name, level }).waitFor();
const answers = (name: string) => page().getByRole('region', { name }).getByRole('link').allTextContents();
/** What stands large: the first of all. */
const first = () => page().locator('main > a.answer');

async function home(): Promise<void> {
  await page().getByRole('link', { name: 'Bench' }).click();
  await heading('What now?');
}

let taps = 0;
/** One tap, from home. */
async function tap(what: Locator, leadsTo: string | RegExp, level = 1): Promise<void> {
  await what.click();
  taps++;
  await heading(leadsTo, level);
}
const link = (name: RegExp) => page().getByRole('link', { name });

beforeAll(async () => {
  phone = await openPhone();
  await page().clock.install({ time: new Date(eight) });
  const file = join(folder, 'boardwright.json');
  writeFileSync(file, await mondaysBackup());
  await page().goto(`${phone.host.address}#/data`);
  await page().getByLabel('File', { exact: true }).setInputFiles(file);
  await page().getByRole('button', { name: 'Merge it in' }).click();
  await page().getByText('The records are in.').waitFor();
  await home();
});
afterAll(async () => {
  await phone.close();
  rmSync(folder, { recursive: true });
});

describe('what the bench says at eight', () => {
  test('first the coat that has waited long enough, then the work; what waits and until when; what is missing', async () => {
    await page().getByText('Still drying').waitFor();
    expect(await first().textContent()).toMatch(
      /^Rub coat 1 dullLetter box · time up 1 h ago, at the latest by Tue 7:00 PM$/,
    );
    expect(await answers('Also now')).toEqual([
      expect.stringMatching(/^Crosscut square to .*Blanket chest · at the table saw, 4 ready$/),
    ]);
    expect(await answers('Waiting')).toEqual([
      expect.stringMatching(/^In the clampsTool cabinet: Door panel · until 8:\d\d AM, \d+ min left$/),
      expect.stringMatching(/^Let the seams dryBlanket chest · until 10:30 AM, 2 h \d+ min left$/),
      // 6.3 days from seven in the morning: the eighth of March.
      expect.stringMatching(/^Still dryingA3 · until about Mar 8$/),
    ]);
    expect(await answers('Missing')).toEqual([
      expect.stringMatching(/^Short of wood for LidTool cabinet$/),
      expect.stringMatching(/^No moisture reading: Tool cabinetA1 and 1 more$/),
    ]);
    expect(await axeFindings(page())).toEqual([]);
  });

  test('one tap leads to each step, not only to its screen', async () => {
    await tap(first(), 'Rub coat 1 dull', 2);
    await home();
    await tap(link(/^Crosscut square/), new RegExp(`^Step ${crosscut + 1} of`));
    await home();
    await tap(link(/^Let the seams dry/), new RegExp(`^Step ${seams + 1} of`));
    await page().getByText('min left').first().waitFor();
    await home();
    await tap(link(/^In the clamps/), 'Tool cabinet: Door panel');
    await page().getByRole('timer').waitFor();
    await home();
    await tap(link(/^Short of wood/), 'Which board gives which panel?');
    await page().getByText('Tool cabinet').first().waitFor();
    await home();
    await tap(link(/^Still drying/), /A3/);
    await home();
    await tap(link(/^No moisture reading/), /A1/);
    await home();
    expect(taps).toBe(7);
  });
});

describe('the morning goes on', () => {
  test('when the clamps are due that is said, without a touch, before the work', async () => {
    await page().clock.fastForward('01:00:00');
    await link(/^Clamps off/).waitFor();
    expect(await page().getByRole('region', { name: 'Waiting' }).getByText('In the clamps').count()).toBe(0);
    await link(/^Clamps off/).click();
    await page().getByRole('button', { name: 'Unclamped' }).click();
    await home();
    await page().getByRole('region', { name: 'Waiting' }).getByText('Rest before planing').waitFor();
  });

  test('a new piece is the one in hand', async () => {
    await link(/^New piece/).click();
    await page()
      .getByRole('textbox', { name: /^Name of the piece/ })
      .fill('Bench');
    await page().getByRole('button', { name: 'List its parts' }).click();
    await heading('What are its parts?');
    await home();
    await page().getByRole('navigation', { name: 'Stages of Bench' }).waitFor();
    await link(/^List its parts/).waitFor();
  });

  test('glued before anything was planned or milled: what was left out is not asked for', async () => {
    await page()
      .getByRole('navigation', { name: 'Stages of Bench' })
      .getByRole('link', { name: /Glue-up/ })
      .click();
    for (const name of ['Start spreading', 'All clamped', 'Unclamped', 'Rest is over'])
      await page().getByRole('button', { name, exact: true }).click();
    await page().getByText('Full strength').first().waitFor();
    await home();
    await link(/^Check it for square\s+Bench/).waitFor();
    for (const name of [/^Plan the cuts/, /^Mill the blanks\s+Bench/, /^List its parts/])
      expect(await link(name).count()).toBe(0);
    // The stages that were left out stand open in its thread, and no more is said.
    expect(
      await page().getByRole('navigation', { name: 'Stages of Bench' }).getByRole('link').allTextContents(),
    ).toEqual(expect.arrayContaining([expect.stringMatching(/^Breakdown/), expect.stringMatching(/^Mill/)]));
    expect(phone.errors).toEqual([]);
  });
});
