import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { axeFindings } from './axe.ts';
import { makeOfflineReady, openPhone, type Phone } from './phone.ts';

// What a piece comes to on paper: with nothing planned, and once its cuts, milling, glue-ups and finish are there.

let phone: Phone;
beforeAll(async () => {
  phone = await openPhone();
  await makeOfflineReady(phone);
  await page().getByRole('button', { name: 'Load the demo shop' }).click();
  await page().getByText('The demo shop is loaded.').waitFor();
  // In the workshop there is no signal.
  phone.host.breaksOff = () => true;
});
afterAll(async () => {
  await phone.close();
});

const page = (): Page => phone.page;
const at = (hash: string) => page().goto(`${phone.host.address}#/${hash}`);
const part = (title: string) => page().getByRole('region', { name: title, exact: true });

/** Pixels between margins of 12 mm. ISO 216: A4 is 210 mm wide; ANSI: letter is 8.5 in wide (both from memory). */
const pageWidths = { A4: ((210 - 24) / 25.4) * 96, Letter: (8.5 - 24 / 25.4) * 96 };

test('the sheet of a piece that is only listed says in a line what is missing', async () => {
  await at('');
  await page().getByRole('button', { name: 'Blanket chest' }).click();
  await page().getByRole('link', { name: 'Print the sheet' }).click();
  await page().getByRole('heading', { level: 1, name: 'Blanket chest' }).waitFor();
  await part('Parts').getByText('Lid cleat × 2').waitFor();
  await part('Boards').getByText('Not planned yet.').waitFor();
  await part('Milling').getByText('Not planned yet.').waitFor();
  await part('Finish').getByText('Not begun yet.').waitFor();
  await part('Joints').getByText('Let it float').first().waitFor();
  // Strips are not planned yet: the glue-ups are those of the widest strips that the shop rips.
  await part('Glue-ups').getByText('Glue to pour out').first().waitFor();
});

describe('once it is planned and begun', () => {
  beforeAll(async () => {
    await at('breakdown/demo-piece-chest');
    await page().getByRole('button', { name: 'Plan the cuts' }).click();
    await page().getByRole('link', { name: 'Mill it' }).click();
    await page().getByRole('button', { name: 'Start milling' }).first().click();
    await page().getByRole('button', { name: 'Done, next' }).click();
    await at('finish/demo-piece-chest');
    await page().getByRole('button', { name: 'Start the finish' }).click();
    await page()
      .getByRole('heading', { name: /^Step 1 of/ })
      .waitFor();
    await at('piece/demo-piece-chest');
    await page().getByRole('link', { name: 'Print the sheet' }).click();
    await part('Boards').waitFor();
  });

  beforeEach(async () => {
    await page().emulateMedia({ media: null });
    await page().setViewportSize({ width: 360, height: 740 });
    await part('Finish').getByText('Coat 1').first().waitFor();
  });

  test('each part of the work is on it, without a signal', async () => {
    for (const [title, said] of [
      ['Boards', /Crosscut at [\d\s/]+in from the end/],
      ['Boards', 'Rip one strip with the fence at'],
      ['Panels', /Glue up in 2 groups: strips 1 and 2/],
      ['Milling', 'Mark out the blanks'],
      ['Milling', 'Guard on; riving knife or spreader in line with the blade.'],
      ['Joints', 'Let it float'],
      ['Joints', /Screw 1, .* from the end/],
      ['Glue-ups', 'Rest before planing'],
      ['Glue-ups', 'Glue to pour out'],
      ['Finish', 'Coat 1'],
      ['Finish', /Never in a heap|Spread every rag flat/],
      ['Finish', /Before coat 2: 12 h/],
    ] as const)
      await part(title).getByText(said).first().waitFor();
    // Ticked at the bench, ticked on paper.
    const steps = part('Milling').locator('.sheet-steps > li');
    expect(await steps.nth(0).getByRole('img', { name: 'to do:' }).count()).toBe(0);
    expect(await steps.nth(0).getByRole('img', { name: 'ticked:' }).count()).toBeGreaterThan(0);
    expect(await steps.nth(1).getByRole('img', { name: 'ticked:' }).count()).toBe(0);
    // Every board that the plan cuts has its drawing, and every panel.
    expect(
      await part('Boards')
        .getByRole('img', { name: /^Board .* from the chalked end/ })
        .count(),
    ).toBe(
      await part('Boards')
        .getByRole('heading', { name: /^Board / })
        .count(),
    );
    expect(
      await part('Panels')
        .getByRole('img', { name: /A triangle is struck across/ })
        .count(),
    ).toBe(6);
    expect(await axeFindings(page())).toEqual([]);
    expect(await page().evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  });

  test.each(['A4', 'Letter'] as const)('on %s nothing is cut off, and no drawing is torn in two', async (format) => {
    await page().emulateMedia({ media: 'print' });
    await page().setViewportSize({ width: Math.floor(pageWidths[format]), height: 900 });
    expect(await page().getByRole('button').or(page().getByRole('navigation')).filter({ visible: true }).count()).toBe(
      0,
    );
    const beyond = await page().evaluate(() =>
      [...document.querySelectorAll('.screen *')]
        .filter((one) => one.getBoundingClientRect().right > innerWidth + 1 && one.getClientRects().length > 0)
        .map((one) => one.outerHTML.slice(0, 100)),
    );
    expect(beyond).toEqual([]);
    for (const [title, said] of [
      ['Parts', 'Lid cleat × 2'],
      ['Boards', /^Board \w+$/],
      ['Panels', /Glue up in 2 groups/],
      ['Milling', 'Mark out the blanks'],
      ['Joints', 'Let it float'],
      ['Glue-ups', 'Glue to pour out'],
      ['Finish', 'Coat 1'],
    ] as const)
      expect(await part(title).getByText(said).first().isVisible(), title).toBe(true);

    const pdf = (await page().pdf({ format, tagged: true })).toString('latin1');
    const pages = pdf.match(/\/Type \/Page\b/g)?.length ?? 0;
    expect(pages).toBeGreaterThan(5);
    expect(await drawingsTorn(pdf)).toEqual([]);
    // The check would see one: a drawing longer than the page has to be torn.
    await page().evaluate(() => {
      const drawing = document.querySelector<SVGElement>('.board-card .drawing');
      drawing?.style.setProperty('height', '2000px');
      drawing?.setAttribute('preserveAspectRatio', 'none');
    });
    const torn = (await page().pdf({ format, tagged: true })).toString('latin1');
    expect(await drawingsTorn(torn)).toHaveLength(1);
    await page().reload();
  });

  test('it is black, white and grey, in whatever theme the phone is', async () => {
    const paper = await phone.context.newPage();
    try {
      for (const theme of ['light', 'dark', 'contrast']) {
        await page().evaluate((name) => document.documentElement.setAttribute('data-theme', name), theme);
        expect(await colours(paper, await page().screenshot()), `${theme}, on the screen`).toBeGreaterThan(0);
        await page().emulateMedia({ media: 'print' });
        const picture = await page().screenshot({ fullPage: true });
        expect(await colours(paper, picture), `${theme}, on paper`).toBe(0);
        expect(await page().evaluate(() => getComputedStyle(document.body).color)).toBe('rgb(0, 0, 0)');
        await page().emulateMedia({ media: null });
      }
    } finally {
      await paper.close();
      await page().evaluate(() => document.documentElement.removeAttribute('data-theme'));
    }
    expect(phone.errors.filter((error) => !error.includes('ERR_'))).toEqual([]);
  });
});

/** The drawings of the sheet, by their words, that are missing in a PDF or stand on more than one of its pages. */
async function drawingsTorn(pdf: string): Promise<string[]> {
  const drawn = await page()
    .locator('svg.drawing[role=img]')
    .evaluateAll((drawings) => drawings.map((one) => one.getAttribute('aria-label') ?? ''));
  expect(drawn.length).toBeGreaterThan(20);
  const figures = figuresOf(pdf);
  return drawn.filter((words) => {
    const places = figures.filter(({ alt }) => alt === words);
    return places.length === 0 || places.some(({ on }) => on.length !== 1);
  });
}

/** The drawings in a tagged PDF: their words, and the pages (by object) that they stand on. */
function figuresOf(pdf: string): { alt: string; on: string[] }[] {
  return [...pdf.matchAll(/\/S \/Figure\n\/Alt \(((?:[^\\)]|\\.)*)\)[\s\S]*?endobj/g)].map(([figure, alt = '']) => ({
    alt: alt.replace(/\\(.)/g, '$1'),
    on: [...new Set([...figure.matchAll(/\/Pg (\d+) /g)].map(([, object]) => object ?? ''))],
  }));
}

/** How many of a picture's pixels have a colour. */
const colours = (elsewhere: Page, picture: Buffer) =>
  elsewhere.evaluate(async (base64) => {
    const image = new Image();
    image.src = `data:image/png;base64,${base64}`;
    await image.decode();
    const canvas = new OffscreenCanvas(image.width, image.height);
    const context = canvas.getContext('2d');
    if (!context) throw new Error('No canvas.');
    context.drawImage(image, 0, 0);
    const { data } = context.getImageData(0, 0, image.width, image.height);
    let found = 0;
    for (let pixel = 0; pixel < data.length; pixel += 4) {
      const [red = 0, green = 0, blue = 0] = data.subarray(pixel, pixel + 3);
      if (Math.max(red, green, blue) - Math.min(red, green, blue) > 2) found++;
    }
    return found;
  }, picture.toString('base64'));
