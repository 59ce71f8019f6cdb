import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openPhone, type Phone } from './phone.ts';

// Drawings are saved as files of their own; what another program shows of them is what the app shows.

let phone: Phone;
/** A page that is not the app: it has neither its styles nor its policy. */
let elsewhere: Page;
beforeAll(async () => {
  phone = await openPhone();
  await page().getByRole('button', { name: 'Load the demo shop' }).click();
  await page().getByText('The demo shop is loaded.').waitFor();
  await at('breakdown/demo-piece-chest');
  await page().getByRole('button', { name: 'Plan the cuts' }).click();
  await page()
    .getByText(/^Enough/)
    .waitFor();
  elsewhere = await phone.context.newPage();
  await page().bringToFront();
});
afterAll(async () => {
  await phone.close();
});

const page = (): Page => phone.page;
const at = (hash: string) => page().goto(`${phone.host.address}#/${hash}`);

interface Place {
  /** What the drawing is of, or how that begins. */
  readonly of: string;
  readonly hash: string;
  open?(): Promise<void>;
}

/** A racked panel: its outline has arrows, a dashed square beside it, and figures along its lines. */
const measureRacked = async () => {
  for (const [label, text] of [
    ['Front edge', '48'],
    ['Right end', '24'],
    ['Back edge', '48'],
    ['Left end', '24'],
    ['Diagonal A', '53 3/4'],
    ['Diagonal B', '53 1/2'],
  ] as const)
    await page()
      .getByRole('textbox', { name: new RegExp(`^${label}`) })
      .fill(text);
  await page().getByRole('button', { name: 'Put the pad away' }).click();
  await page()
    .getByRole('img', { name: /towards D/ })
    .waitFor();
};

const openJoint = () =>
  page()
    .getByRole('button', { name: /^Lid to Lid cleat/ })
    .click();

const places: readonly Place[] = [
  { of: 'Board ', hash: 'breakdown/demo-piece-chest' },
  {
    of: 'Front and back 1',
    hash: 'breakdown/demo-piece-chest',
    open: () => page().getByLabel('Panels').check(),
  },
  { of: 'Lid to Lid cleat', hash: 'movement/demo-piece-chest', open: openJoint },
  { of: 'Slots in Lid cleat', hash: 'movement/demo-piece-chest', open: openJoint },
  { of: 'Clamps', hash: 'glue/demo-piece-chest' },
  { of: 'Squareness', hash: 'square', open: measureRacked },
];

interface Compared {
  readonly shown: string;
  readonly file: string;
  readonly width: number;
  readonly height: number;
}

/** Sets the picture of the screen and that of the file beside each other, point by point. */
async function compare({ shown, file, width, height }: Compared) {
  const points = async (address: string) => {
    const image = new Image();
    image.src = address;
    await image.decode();
    const context = new OffscreenCanvas(width, height).getContext('2d');
    if (!context) throw new Error('No canvas.');
    context.drawImage(image, 0, 0, width, height);
    const { data } = context.getImageData(0, 0, width, height);
    return Array.from({ length: width * height }, (_, at) => {
      const [red = 0, green = 0, blue = 0, there = 0] = data.subarray(at * 4, at * 4 + 4);
      return there < 255 ? 0 : (red + green + blue) / 3;
    });
  };
  const onScreen = await points(`data:image/png;base64,${shown}`);
  const plain = await points(`data:image/svg+xml;charset=utf-8,${encodeURIComponent(file)}`);
  // Fine lines fall on other points where the page stands between two of them: fields of 8 by 8 points are compared.
  const field = 8;
  const fields = (picture: readonly number[]) => {
    const sums = new Map<number, number>();
    for (const [at, point] of picture.entries()) {
      const key = Math.floor(Math.floor(at / width) / field) * 1000 + Math.floor((at % width) / field);
      sums.set(key, (sums.get(key) ?? 0) + point / field ** 2);
    }
    return [...sums.values()];
  };
  const [shownFields, fileFields] = [fields(onScreen), fields(plain)];
  return {
    ink: plain.filter((point) => point < 100).length / plain.length,
    differs: fileFields.filter((mean, at) => Math.abs(mean - (shownFields[at] ?? 0)) > 40).length / fileFields.length,
  };
}

test.each(places)('$of', async ({ of, hash, open }) => {
  await at('');
  await page().getByRole('navigation', { name: 'Places' }).waitFor();
  await at(hash);
  await open?.();
  const button = page()
    .getByRole('button', { name: new RegExp(`^Save the drawing of ${of}`) })
    .first();
  const name = (await button.textContent())?.replace('Save the drawing of ', '') ?? '';

  const files: string[] = [];
  for (const theme of ['dark', 'contrast', 'light']) {
    await page().evaluate((wanted) => document.documentElement.setAttribute('data-theme', wanted), theme);
    const saving = page().waitForEvent('download');
    await button.click();
    const download = await saving;
    expect(download.suggestedFilename()).toBe(`${name}.svg`);
    files.push(await readFile(await download.path(), 'utf8'));
  }
  const [file = ''] = files;
  expect(new Set(files).size, 'the same in every theme').toBe(1);

  const read = await elsewhere.evaluate((text) => {
    const tree = new DOMParser().parseFromString(text, 'image/svg+xml');
    const all = [...tree.querySelectorAll('*')];
    return {
      error: tree.querySelector('parsererror')?.textContent ?? '',
      root: `${tree.documentElement.namespaceURI} ${tree.documentElement.localName}`,
      title: tree.querySelector('svg > title')?.textContent,
      desc: tree.querySelector('svg > desc')?.textContent,
      names: [...new Set(all.map(({ localName }) => localName))],
      attributes: [...new Set(all.flatMap((one) => one.getAttributeNames()))],
      // Every hatch and arrow that is used is in the file.
      lost: [...text.matchAll(/url\(#([^)]+)\)/g)].map(([, id]) => id ?? '').filter((id) => !tree.getElementById(id)),
    };
  }, file);
  expect(read.error).toBe('');
  expect(read.root).toBe('http://www.w3.org/2000/svg svg');
  expect(read.title).toBe(name);
  expect(read.desc).toBe(await button.evaluate((one) => one.previousElementSibling?.getAttribute('aria-label')));
  expect(read.lost).toEqual([]);
  expect(read.names).not.toContain('script');
  expect(read.names).not.toContain('style');
  expect(read.attributes.filter((one) => /^(on|class|style)/.test(one))).toEqual([]);
  expect(file).not.toContain('var(');

  // On the screen and in the file: the same picture.
  const drawing = button.locator('xpath=preceding-sibling::*[1]');
  const box = await drawing.boundingBox();
  const shown = (await drawing.screenshot()).toString('base64');
  const pictures = await elsewhere.evaluate(compare, {
    shown,
    file,
    width: Math.round(box?.width ?? 0),
    height: Math.round(box?.height ?? 0),
  });
  expect(pictures.differs).toBeLessThan(0.02);
  expect(pictures.ink).toBeGreaterThan(0.005);
});
