import type { Page } from 'playwright-core';

/** A state of the app that a maker comes to see, and what brings it about from the one before. */
interface View {
  readonly name: string;
  readonly open: (page: Page) => Promise<unknown>;
}

const piece = 'demo-piece-cabinet';

/** Until the screen is there and has read its records: nothing in it changes for two looks on end. */
async function settled(page: Page): Promise<void> {
  let before = '';
  for (let look = 0; look < 50; look++) {
    await page.waitForTimeout(100);
    const now = await page.locator('main').innerHTML();
    if (now && now === before) return;
    before = now;
  }
}

const at =
  (address: string) =>
  async (page: Page): Promise<void> => {
    await page.evaluate((hash) => {
      location.hash = hash;
    }, `#/${address}`);
    await settled(page);
    await page.evaluate(() => scrollTo(0, 0));
  };

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first().click();

async function fill(page: Page, entries: Readonly<Record<string, string>>): Promise<void> {
  for (const [name, text] of Object.entries(entries))
    await page
      .getByRole('textbox', { name: new RegExp(`^${name}`) })
      .first()
      .fill(text);
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  await page.getByRole('heading', { level: 1 }).click();
}

/** In the order in which one leads to the next, from an empty phone. */
const views: readonly View[] = [
  { name: 'home, first visit', open: at('') },
  { name: 'records', open: at('data') },
  {
    name: 'demo loaded',
    open: async (page) => {
      await press(page, 'Load the demo shop');
      await page.getByText('The demo shop is loaded.').waitFor();
    },
  },
  { name: 'home', open: at('') },
  { name: 'shop', open: at('shop') },
  { name: 'rack', open: at('stock') },
  {
    name: 'board',
    open: async (page) => {
      await page.locator('.board-row').first().click();
      await settled(page);
    },
  },
  {
    name: 'length pad',
    open: async (page) => {
      await at('stock')(page);
      await page
        .getByRole('textbox', { name: /^Width/ })
        .first()
        .click();
      await page.locator('.pad').waitFor();
    },
  },
  { name: 'rack list on paper', open: at('stock/list') },
  { name: 'delivery', open: at('stock/demo-delivery-cherry') },
  {
    name: 'air in the shop',
    open: async (page) => {
      await at('stock/air')(page);
      await fill(page, { Temperature: '70', Humidity: '45' });
      await press(page, 'Keep the reading');
      await page.getByText('1 reading', { exact: true }).waitFor();
    },
  },
  { name: 'piece', open: at(`piece/${piece}`) },
  { name: 'new piece', open: at('piece/new') },
  { name: 'movement', open: at(`movement/${piece}`) },
  { name: 'a joint', open: (page) => press(page, /Panel in grooves/) },
  {
    name: 'a wood of their own',
    open: async (page) => {
      await at('wood')(page);
      await fill(page, { Name: 'plum', Tangential: '9.9' });
      await press(page, 'Add it');
      await settled(page);
    },
  },
  { name: 'breakdown', open: at(`breakdown/${piece}`) },
  {
    name: 'plan',
    open: async (page) => {
      await press(page, 'Plan the cuts');
      await page.getByText(/^Enough/).waitFor();
    },
  },
  { name: 'milling', open: at(`mill/${piece}`) },
  {
    name: 'milling step',
    open: async (page) => {
      await press(page, 'Start milling');
      await press(page, 'Done, next');
      await press(page, 'Done, next');
    },
  },
  { name: 'square', open: at(`square/${piece}`) },
  {
    name: 'square, answered',
    open: (page) =>
      fill(page, {
        'Front edge': '30',
        'Right end': '24',
        'Back edge': '30',
        'Left end': '24',
        'Diagonal A': '38 1/2',
        'Diagonal B': '38 1/4',
      }),
  },
  { name: 'tools', open: at('square/tools') },
  { name: 'mitres', open: at('square/mitres') },
  { name: 'glue-ups', open: at('glue') },
  { name: 'glue-up of a piece', open: at(`glue/${piece}`) },
  { name: 'glue day', open: at('glue/plan') },
  { name: 'glue-up without a piece', open: at('glue/new') },
  {
    name: 'glue-up running',
    open: async (page) => {
      await fill(page, { 'Name of the glue-up': 'Lid', 'Seam length': '36', 'Seam thickness': '3/4' });
      await press(page, 'Start spreading');
      await page.getByRole('timer').waitFor();
    },
  },
  { name: 'finish', open: at(`finish/${piece}`) },
  {
    name: 'coats',
    open: async (page) => {
      await press(page, 'Start the finish');
      await settled(page);
    },
  },
  { name: 'sheet', open: at(`sheet/${piece}`) },
  { name: 'home, at work', open: at('') },
];

/** Brings about each view in turn on a fresh phone and shows it. Shape: one call a view, in the order of the list. */
export async function walkViews(page: Page, show: (name: string) => Promise<void>): Promise<void> {
  for (const { name, open } of views) {
    await open(page).catch((error: unknown) => {
      throw new Error(`The way to "${name}" is gone`, { cause: error });
    });
    await show(name);
  }
}
