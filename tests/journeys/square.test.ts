import type { Locator } from 'playwright-core';
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

async function open(address = 'square') {
  await phone.page.goto(`${phone.host.address}#/${address}`);
  await phone.page.locator('main').waitFor();
}

/** This shop measures in millimetres. */
async function inMillimetres() {
  await open('shop');
  await phone.page.getByLabel('Millimetres').check();
}

const box = (label: string) => phone.page.getByRole('textbox', { name: new RegExp(`^${label}`) });
const answer = () => phone.page.locator('.square-answer').first();
const figures = async () => (await answer().locator('.figure').allTextContents()).map((text) => text.trim());
const pad = (name: string) =>
  phone.page.getByRole('region', { name: 'Length pad' }).getByRole('button', { name, exact: true });
const away = () => pad('Put the pad away').click();
const press = (name: string) => phone.page.getByRole('button', { name, exact: true }).click();
const pick = (label: string, option: string) => phone.page.getByLabel(label).selectOption({ label: option });

async function fill(texts: Readonly<Record<string, string>>) {
  for (const [label, text] of Object.entries(texts)) await box(label).fill(text);
  if (await pad('Next').isVisible()) await away();
}

const racked = {
  'Front edge': '48',
  'Right end': '24',
  'Back edge': '48',
  'Left end': '24',
  'Diagonal A': '53 3/4',
  'Diagonal B': '53 1/2',
};

test('six readings of a racked panel: which way, how far, near enough; kept before and after', async () => {
  await open();
  const { page } = phone;
  await fill(racked);
  // AC² - BD² = 4 x length x lean (parallelogram law): (53.75² - 53.5²) / (4 x 48) = 0.14 in, to the sixteenth 1/8.
  await answer().getByText('towards D').waitFor();
  expect(await figures()).toEqual([expect.stringContaining('1/8 in'), expect.stringContaining('1/8 in')]);
  await answer().getByText('Right-hand cut, back end at C').waitFor();
  await answer().getByText('away from C').waitFor();
  const says = page.getByRole('region', { name: 'What the readings say' });
  await says.getByRole('heading', { name: /^Racked/ }).waitFor();
  // The angle at B is 90° and asin(0.14 / 24), 0.33°.
  await says.getByText('90.33°').first().waitFor();
  await says.getByText('Readings disagree by').waitFor();
  await says.getByText('Least lean shown').waitFor();
  await page.getByRole('img', { name: /towards D/ }).waitFor();

  // 0.14 in over 24 in is 5.8 thousandths an inch: too far for drawers, near enough as read for whoever allows 6, and for whoever
  // allows 10 with all that the tape may hide.
  const enough = page.getByRole('region', { name: 'Near enough' });
  await enough.getByText('Too far out for this use.').waitFor();
  await box('An end may be out').fill('6');
  await enough.getByText('Near enough as read').waitFor();
  await box('An end may be out').fill('10');
  await enough.getByText('Near enough for this use.').waitFor();
  await box('An end may be out').fill('0');
  await enough.getByRole('alert').waitFor();
  await enough.getByText('Near enough for this use.').waitFor();

  // The same readings of a case in clamps: the long diagonal, to sqrt((53.75² + 53.5²) / 2) = 53.625 = 53 5/8 in.
  await pick('The work', 'Case in clamps');
  await answer().getByText('off A to C').waitFor();
  expect(await answer().textContent()).toContain('53 5/8 in');
  await page.getByText('How far to squeeze').click();
  await page.getByText('20%').waitFor();
  await box('Springs back').fill('40');
  await page.getByText('40%').waitFor();

  await press('Keep this check');
  await page.getByText('Check kept.').waitFor();
  await fill({ 'Diagonal A': '53 5/8', 'Diagonal B': '53 5/8' });
  await answer().getByText('As square as you can measure').waitFor();
  await press('Keep this check');
  const kept = page.getByRole('region', { name: 'Checks kept' });
  await kept.getByText('After').waitFor();

  phone = await phone.restart();
  await open();
  const after = phone.page.getByRole('region', { name: 'Checks kept' }).getByRole('listitem');
  await expect.poll(() => after.count()).toBe(2);
  const [latest, first] = await after.allTextContents();
  expect(latest).toMatch(/After.*As square as you can measure/);
  expect(first).toMatch(/Before.*towards D/);
  // The half-done check, what is allowed and the spring-back are still as they were.
  expect(await box('Diagonal A').inputValue()).toBe('53 5/8');
  expect(await box('Springs back').inputValue()).toBe('40');
  expect(await box('An end may be out').inputValue()).toBe('10');

  await phone.page.getByRole('button', { name: 'Delete check 1' }).click();
  await expect.poll(() => after.count()).toBe(1);
  await press('Undo');
  await expect.poll(() => after.count()).toBe(2);
  expect(phone.errors).toEqual([]);
});

test('the stick: half the difference times diagonal over length, and twice that with the far end square', async () => {
  await inMillimetres();
  await open();
  const { page } = phone;
  await pick('Measured with', 'A stick');
  await page.getByLabel('The left end is square').uncheck();
  await page.getByLabel('A to C').check();
  await fill({ Front: '1800', Left: '800', Difference: '2' });
  // By hand: 2 / 2 x sqrt(1800² + 800²) / 1800 = 1.094 mm; twice that is 2.189.
  await answer().getByText('towards D').waitFor();
  expect(await figures()).toEqual(['1.1 mm', '1.1 mm']);
  await page.getByLabel('The left end is square').check();
  await expect.poll(figures).toEqual(['2.2 mm']);
  await page.getByText('How this is worked out').first().click();
  await page.getByText('the right end has the whole error').waitFor();

  // The other diagonal longer: the same the other way.
  await page.getByLabel('B to D').check();
  await answer().getByText('away from D').waitFor();

  // A square that is itself out by more than what is allowed can't call the end square.
  await open('square/tools');
  await fill({ 'Length of the lines': '200', 'Gap at the far ends': '0.8', 'Name of the tool': 'old square' });
  await answer().getByText('90.11° inside').waitFor();
  await press('Keep its error');
  await page.getByRole('region', { name: 'Tools tested' }).getByText('old square').waitFor();
  await open();
  await fill({ Difference: '0' });
  const enough = page.getByRole('region', { name: 'Near enough' });
  await enough.getByText('Near enough for this use.').waitFor();
  await pick('Found square with', 'old square');
  await enough.getByText('too coarse').waitFor();
  expect(phone.errors).toEqual([]);
});

test('a tapered panel has equal diagonals and is not square', async () => {
  await inMillimetres();
  await open();
  // Ptolemy: in a trapezoid with equal legs the diagonal squared is front x back + leg squared; 1800, 1790, 800: 1965.2.
  await fill({
    'Front edge': '1800',
    'Right end': '800',
    'Back edge': '1790',
    'Left end': '800',
    'Diagonal A': '1965.2',
    'Diagonal B': '1965.2',
  });
  await answer().getByText('away from D').waitFor();
  await answer().getByText('away from C').waitFor();
  // Half of what the back edge lacks at each end.
  expect(await figures()).toEqual(['5 mm', '5 mm']);
  await phone.page.getByRole('heading', { name: /^Tapered/ }).waitFor();
  await pick('The work', 'Case in clamps');
  await answer().getByText('No clamp cures unequal sides').waitFor();
  await pick('The work', 'Panel, sawn');
  await answer().getByText('Right-hand cut, front end at B').waitFor();
  expect(phone.errors).toEqual([]);
});

test('a slipped digit, a broken triangle and a reading that doesn’t fit are named, and nothing typed is lost', async () => {
  await open();
  const { page } = phone;
  await fill({ ...racked, 'Right end': '2.4' });
  const field = (label: string) => page.locator('.field.bad').filter({ hasText: label });
  await field('Right end').getByText('looks ten times too short').waitFor();
  expect(await page.getByRole('button', { name: 'Keep this check' }).isDisabled()).toBe(true);
  expect(await box('Right end').inputValue()).toBe('2.4');

  // While it is typed anew, the half of it is no alarm.
  await box('Right end').fill('2');
  expect(await page.getByRole('alert').count()).toBe(0);
  await box('Right end').fill('24');
  await answer().getByText('towards D').waitFor();

  // Euclid I.20: 48 and 24 reach 72 at most.
  await fill({ 'Diagonal A': '80' });
  await field('Diagonal A').getByText('longer than both together').waitFor();

  await fill({ 'Diagonal A': '53 11/16', 'Diagonal B': '53 11/16', 'Right end': '24 3/4' });
  await answer().getByText('The right end doesn’t fit the others.').waitFor();
  await field('Right end').waitFor();
  expect(await page.getByRole('button', { name: 'Keep this check' }).isDisabled()).toBe(true);
  await press('Measure it again');
  expect(await box('Right end').evaluate((input) => input === document.activeElement)).toBe(true);
  expect(await box('Right end').inputValue()).toBe('');
  for (const key of ['2', '4']) await pad(key).click();
  await answer().getByText('As square as you can measure').waitFor();

  await fill({ 'Back edge': '4 8 ft in' });
  await field('Back edge').getByRole('alert').waitFor();
  expect(await box('Back edge').inputValue()).toBe('4 8 ft in');
  expect(phone.errors).toEqual([]);
});

/** Taps with the thumb that holds the phone: the target lies in the lower two thirds and is large enough. */
async function thumb(target: Locator) {
  await target.waitFor();
  const found = await target.boundingBox();
  if (!found) throw new Error('not on the screen');
  const { y, width, height } = found;
  expect(y + height / 2).toBeGreaterThan(740 / 3);
  expect(y + height).toBeLessThanOrEqual(740);
  expect(Math.min(width, height)).toBeGreaterThanOrEqual(44);
  await target.tap();
}

test('one-handed: from the drawing round the panel on the pad alone', async () => {
  await open();
  const { page } = phone;
  // The front edge on the drawing, tapped where a thumb would.
  const line = await page.locator('[data-line="front"]').boundingBox();
  if (!line) throw new Error('no front edge');
  expect(line.y).toBeGreaterThan(740 / 3);
  await page.touchscreen.tap(line.x + line.width / 3, line.y + line.height / 2);
  expect(await box('Front edge').evaluate((input) => input === document.activeElement)).toBe(true);
  const keys = [
    ['4', '8'],
    ['2', '4'],
    ['4', '8'],
    ['2', '4'],
    ['5', '3', '3/4'],
    ['5', '3', '1/2'],
  ];
  for (const [n, reading] of keys.entries()) {
    for (const key of reading) await thumb(pad(key));
    // The entry that is typed in stands clear of the pad and of the answer above it.
    const field = await page.locator('input:focus').boundingBox();
    const padTop = (await page.getByRole('region', { name: 'Length pad' }).boundingBox())?.y ?? 0;
    expect(field && field.y + field.height).toBeLessThanOrEqual(padTop);
    const over = await answer().boundingBox();
    expect(field?.y).toBeGreaterThanOrEqual((over?.y ?? 0) + (over?.height ?? 0));
    if (n < keys.length - 1) await thumb(pad('Next'));
  }
  // The answer is in sight while the last length is typed.
  expect((await answer().getByText('towards D').boundingBox())?.y).toBeGreaterThanOrEqual(0);
  await thumb(pad('Put the pad away'));
  await thumb(page.getByRole('button', { name: 'Keep this check' }));
  await page.getByText('Check kept.').waitFor();
  expect(phone.errors).toEqual([]);
});

test('readings that were typed in inches don’t turn into millimetres', async () => {
  await open();
  await fill(racked);
  await answer().getByText('towards D').waitFor();
  await inMillimetres();
  await open();
  await answer().getByText('Measure what you can reach').waitFor();
  expect(await box('Front edge').inputValue()).toBe('');
  await open('shop');
  await phone.page.getByLabel('Inches').check();
  await open();
  await answer().getByText('towards D').waitFor();
  expect(phone.errors).toEqual([]);
});

test('readings that were cleared come back on a later visit, too', async () => {
  await open();
  await fill(racked);
  await press('Clear the readings');
  await answer().getByText('Measure what you can reach').waitFor();
  await phone.page.getByRole('link', { name: 'Bench' }).click();
  await phone.page.getByRole('link', { name: 'Square', exact: true }).last().click();
  await answer().getByText('Measure what you can reach').waitFor();
  await press('Undo');
  await answer().getByText('towards D').waitFor();
  expect(await box('Front edge').inputValue()).toBe('48');
  expect(phone.errors).toEqual([]);
});

test('readings typed since others were cleared are not lost to the way back', async () => {
  await open();
  await fill(racked);
  await press('Clear the readings');
  await fill({ 'Front edge': '24', 'Left end': '12' });
  await press('Undo');
  await answer().getByText('towards D').waitFor();
  expect(await box('Front edge').inputValue()).toBe('48');
  await press('Undo');
  await expect.poll(() => box('Front edge').inputValue()).toBe('24');
  expect(await box('Left end').inputValue()).toBe('12');
  // None of the other piece's comes between them.
  expect(await box('Right end').inputValue()).toBe('');
  expect(phone.errors).toEqual([]);
});

test('laying out from nothing: the diagonal and triangles in whole numbers', async () => {
  await inMillimetres();
  await open();
  await pick('The work', 'Laying out');
  await fill({ Front: '1800', Left: '800' });
  // Euclid I.47: sqrt(1800² + 800²) = 1969.8.
  await answer().getByText('1969.8 mm').first().waitFor();
  // The largest first: 12, 5, 13 a hundred and fifty times; every one in whole centimetres and right-angled (Euclid I.48).
  const facts = phone.page.getByRole('region', { name: 'Triangles' }).locator('.facts');
  await facts.locator('dd').first().waitFor();
  const apart = await facts.locator('dd').allTextContents();
  const triangles = (await facts.locator('dt').allTextContents()).map((marks, at) =>
    [...`${marks} ${apart[at]}`.matchAll(/\d+/g)].map(Number),
  );
  expect(triangles[0]).toEqual([1800, 750, 1950]);
  for (const [along = 0, across = 0, diagonal = 0] of triangles) {
    expect([along % 10, across % 10, diagonal % 10]).toEqual([0, 0, 0]);
    expect(along ** 2 + across ** 2).toBe(diagonal ** 2);
  }
  expect(phone.errors).toEqual([]);
});

test('mitred corners: parts that fold into a box, opposite parts first, and what the angles leave open', async () => {
  await inMillimetres();
  await open('square/mitres');
  const { page } = phone;
  await fill({ Length: '300', Width: '200', Thickness: '12', Lost: '4' });
  // By hand: inside and two thicknesses, 324 and 224; 2 x (324 + 224) + 3 x 4 = 1108; 12 at 45° is 12 on the face, 17 across.
  expect(await figures()).toEqual(['324 mm']);
  expect(await answer().locator('dd').allTextContents()).toEqual(['224 mm', '300 mm', '200 mm', '1108 mm']);
  await page.getByRole('region', { name: 'Bevel' }).getByText('17 mm').first().waitFor();

  await page.getByLabel('Angles and gaps').check();
  await fill({ Front: '401.5', Back: '400', 'Right end': '300', 'Left end': '300' });
  await page.getByText('Trim the front part by').waitFor();
  await box('Thickness').fill('60');
  await away();
  await box('All eight cuts').fill('44.9');
  // Eight cuts 0.1° sharp: 0.8° at the last mitre, 60 x sqrt(2) x tan 0.8° = 1.18 mm, open inside.
  const angles = page.getByRole('region', { name: 'Angles' });
  await angles.getByText('pulled tight: open inside').waitFor();
  expect(await angles.locator('.figure').textContent()).toBe('1.2 mm');
  await angles.getByText('Cut every point 0.1° blunter').waitFor();
  expect(await angles.locator('dd').allTextContents()).toEqual(['0.4°']);
  await box('All eight cuts').fill('60');
  await angles.getByRole('alert').waitFor();
  await page.getByLabel('Each measured').check();
  await box('B front').fill('45.2');
  // Two points that meet at B: 60 x sqrt(2) x tan 0.2° = 0.3 mm, open outside.
  await angles.getByText('Corner B held square: open outside').waitFor();
  expect((await angles.locator('dd').allTextContents())[2]).toBe('0.3 mm');
  expect(phone.errors).toEqual([]);
});

test('tools: a straightedge and winding sticks keep their own error, and forgetting has a way back', async () => {
  await inMillimetres();
  await open('square/tools');
  const { page } = phone;
  await page.getByLabel('Straightedge').check();
  await fill({ 'Between the points': '900', 'Widest gap': '0.6', 'Name of the tool': 'long edge' });
  await answer().getByText('0.3 mm crowned').waitFor();
  await page.getByLabel('Nearer to you').check();
  await answer().getByText('0.3 mm hollow').waitFor();
  await press('Keep its error');
  const tools = page.getByRole('region', { name: 'Tools tested' });
  await tools.getByText('0.3 mm hollow over 900 mm').waitFor();

  await page.getByLabel('Winding sticks').check();
  await fill({ 'Length of the sticks': '600', 'Width of the board': '200', 'Gap seen': '3', 'Gap, swapped': '2' });
  // By hand: (3 + 2) / 2 x 200 / 600 = 0.83 of wind; the sticks differ by half of 3 - 2.
  await answer().getByText('0.8 mm of wind').waitFor();
  await fill({ 'Name of the tool': 'oak sticks' });
  await press('Keep its error');
  await tools.getByText('0.5 mm apart over 600 mm').waitFor();
  // From now on one sight is enough: the same wind without swapping.
  await fill({ 'Gap, swapped': '' });
  await answer().getByText('0.8 mm of wind').waitFor();
  await fill({ 'Name of the tool': 'other sticks' });
  await answer().getByText('1 mm of wind').waitFor();
  // A gap that no sticks show is refused at its entry.
  await fill({ 'Gap seen': '90' });
  await page.getByRole('alert').waitFor();

  phone = await phone.restart();
  await open('square/tools');
  const listed = phone.page.getByRole('region', { name: 'Tools tested' });
  await listed.getByText('oak sticks').waitFor();
  await phone.page.getByRole('button', { name: 'Delete long edge' }).click();
  await expect.poll(() => listed.getByRole('listitem').count()).toBe(1);
  await press('Undo');
  await listed.getByText('long edge').waitFor();
  expect(phone.errors).toEqual([]);
});

test('axe finds nothing in any theme, and no screen is wider than 320 px or than text twice as large', async () => {
  const { page } = phone;
  await page.setViewportSize({ width: 320, height: 640 });
  const fills: Readonly<Record<string, Readonly<Record<string, string>>>> = {
    square: { ...racked, 'Right end': '24 1/2' },
    'square/tools': { 'Length of the lines': '12', 'Gap at the far ends': '1/16' },
    'square/mitres': { Length: '12', Width: '8', Thickness: '1/2' },
  };
  for (const [address, texts] of Object.entries(fills)) {
    await open(address);
    await fill(texts);
    for (const theme of ['light', 'dark', 'contrast']) {
      await page.evaluate((name) => {
        document.documentElement.dataset.theme = name;
      }, theme);
      expect(await axeFindings(page), `${address} in ${theme}`).toEqual([]);
    }
    for (const size of ['', '200%']) {
      await page.evaluate((text) => {
        document.documentElement.style.fontSize = text;
      }, size);
      const { scroll, width } = await page.evaluate(() => ({
        scroll: document.documentElement.scrollWidth,
        width: innerWidth,
      }));
      expect(scroll, `${address} at ${size || '100%'}`).toBeLessThanOrEqual(width);
    }
    await page.evaluate(() => document.documentElement.style.removeProperty('font-size'));
  }
  expect(phone.errors).toEqual([]);
});
