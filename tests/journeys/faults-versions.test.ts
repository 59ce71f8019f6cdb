import { readFile, rm } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, describe, expect, test } from 'vitest';
import { buildVariant } from '../setup/build-variant.ts';
import { loadDemo, startMilling } from './demo-shop.ts';
import { makeOfflineReady, openPhone, type Phone } from './phone.ts';
import { stored } from './stored.ts';

// Versions that come, fail or break down; and a signal that goes while the app starts.

let phone: Phone;
const folders: string[] = [];
const variant = (replaced: Record<string, string>) => {
  const folder = buildVariant(replaced);
  folders.push(folder);
  return folder;
};
afterEach(async () => {
  await phone.close();
});
afterAll(async () => {
  await Promise.all(folders.map((folder) => rm(folder, { recursive: true, force: true })));
});

const page = (): Page => phone.page;
const at = (hash: string) => page().goto(`${phone.host.address}#/${hash}`);
const offer = () => page().getByText('A newer version is ready.');
const lookForUpdate = () => page().evaluate(async () => void (await (await navigator.serviceWorker.ready).update()));
const waitingWorker = () =>
  page().waitForFunction(async () => (await navigator.serviceWorker.getRegistration())?.waiting != null);

/** What the backup holds that a button hands out. */
async function takenOut(button: string): Promise<{ kinds: Record<string, { name: string }[]> }> {
  const saving = page().waitForEvent('download');
  await page().getByRole('button', { name: button }).click();
  return JSON.parse(await readFile(await (await saving).path(), 'utf8'));
}

let newerFolder: string | undefined;
/** A version that is told by its shop. */
const newerVersion = () => {
  newerFolder ??= variant({ 'src/screens/shop/shop.tsx': 'export default () => <h1>The newer version</h1>;' });
  return newerFolder;
};

describe('a newer version', () => {
  test('waits through a step flow, is offered after it, and is used on a tap, with everything in place', async () => {
    const newer = newerVersion();
    phone = await openPhone();
    await makeOfflineReady(phone);
    await loadDemo(page());
    await startMilling(page());

    phone.host.folder = newer;
    await lookForUpdate();
    await waitingWorker();
    await page().getByRole('button', { name: 'Done, next' }).click();
    await page()
      .getByRole('heading', { name: /^Step 3 of/ })
      .waitFor();
    expect(await offer().count()).toBe(0);

    await page().getByRole('link', { name: 'Bench' }).click();
    await offer().waitFor();
    // A reload, as after a killed tab, still shows the old one: nothing is swapped in by itself.
    await page().reload();
    await offer().waitFor();
    await at('shop');
    await page().getByRole('heading', { name: 'What does your shop allow?' }).waitFor();

    await page().getByRole('button', { name: 'Use it now' }).click();
    await page().getByRole('heading', { name: 'The newer version' }).waitFor();
    await at('mill/demo-piece-cabinet');
    await page()
      .getByRole('heading', { name: /^Step 3 of/ })
      .waitFor();
    expect(phone.errors).toEqual([]);
  });

  test('waits through a glue-up until the clamps are on, and the glue-up goes on in it', async () => {
    const newer = newerVersion();
    phone = await openPhone();
    await makeOfflineReady(phone);
    await loadDemo(page());
    await at('glue/demo-piece-chest');
    await page().getByRole('button', { name: 'Start spreading' }).click();
    await page().getByRole('button', { name: 'All closed' }).waitFor();

    phone.host.folder = newer;
    await lookForUpdate();
    await waitingWorker();
    await page().reload();
    for (const tap of ['All closed', 'All clamped']) {
      await page().getByRole('button', { name: tap }).first().waitFor();
      expect(await offer().count(), `before ${tap}`).toBe(0);
      await page().getByRole('button', { name: tap }).first().click();
    }
    await offer().waitFor();
    const startedAgain = page().waitForEvent('load');
    await page().getByRole('button', { name: 'Use it now' }).click();
    await startedAgain;
    await page().getByRole('button', { name: 'Unclamped' }).waitFor();
    await expect.poll(() => offer().count()).toBe(0);
    await at('shop');
    await page().getByRole('heading', { name: 'The newer version' }).waitFor();
    expect(await stored(page(), 'glueup')).toBe(1);
    expect(phone.errors).toEqual([]);
  });

  test('held up by another tab with an older one open: it says so, and goes on once that tab is closed', async () => {
    const newer = variant({
      'src/store/migrations/list.ts': `
        import { firstSchema } from './001-first-schema.ts';
        export const migrations = [firstSchema, { to: 2, why: 'It is next.', shape() {}, convert: (before) => before }];
        export const schemaVersion = migrations.length;`,
    });
    phone = await openPhone();
    await makeOfflineReady(phone);
    await loadDemo(page());
    // An app that keeps its connection whatever it is asked, as a tab that the phone has put to sleep.
    const other = await phone.context.newPage();
    await other.goto(`${phone.host.address}robots.txt`);
    await other.evaluate(
      () =>
        new Promise<void>((done) => {
          const opening = indexedDB.open('boardwright');
          opening.onsuccess = () => {
            Object.assign(window, { held: opening.result });
            done();
          };
        }),
    );
    phone.host.folder = newer;
    await page().evaluate(async () => (await navigator.serviceWorker.ready).unregister());
    await page().reload();
    await page().getByText('Another tab holds an older version open.').waitFor();
    await other.close();
    await page().getByText('Plan the cuts').first().waitFor();
    await expect.poll(() => page().getByText('Another tab holds').count()).toBe(0);
    expect(await stored(page(), 'piece')).toBe(2);
  });

  test('whose migration fails leaves the records as they are: said, taken out, and opened by the old version', async () => {
    const failing = variant({
      'src/store/migrations/list.ts': `
        import { firstSchema } from './001-first-schema.ts';
        export const migrations = [firstSchema, {
          to: 2, why: 'It cannot.', shape() {}, convert() { throw new Error('This record cannot be converted.'); },
        }];
        export const schemaVersion = migrations.length;`,
    });
    phone = await openPhone();
    await makeOfflineReady(phone);
    await loadDemo(page());
    const old = phone.host.folder;

    phone.host.folder = failing;
    await page().evaluate(async () => (await navigator.serviceWorker.ready).unregister());
    await page().reload();
    await page().getByText('could not be brought to the new version. They are untouched').waitFor();
    const backup = await takenOut('Take the data out');
    expect(backup.kinds.piece?.map(({ name }) => name).sort()).toEqual(['Blanket chest', 'Hanging tool cabinet']);

    phone.host.folder = old;
    await page().evaluate(async () => (await navigator.serviceWorker.getRegistration())?.unregister());
    await page().reload();
    await page().getByText('Plan the cuts').first().waitFor();
    expect(await stored(page(), 'piece')).toBe(2);
    // What was there before the attempt was kept, and is offered.
    await at('data');
    await page().getByText('before a new version').waitFor();
  });
});

describe('a screen breaks down', () => {
  test('the data can be taken out there, and the rest goes on', async () => {
    const broken = variant({
      'src/screens/shop/shop.tsx': `export default () => { throw new Error('Something is loose in the shop.'); };`,
    });
    phone = await openPhone();
    await makeOfflineReady(phone);
    await loadDemo(page());
    phone.host.folder = broken;
    await page().evaluate(async () => (await navigator.serviceWorker.ready).unregister());
    await at('shop');
    await page().reload();
    await page().getByRole('heading', { name: 'This screen broke down' }).waitFor();
    await page().getByText('Something is loose in the shop.').waitFor();
    const backup = await takenOut('Take the data out');
    expect(backup.kinds.board?.length).toBe(await stored(page(), 'board'));

    await page().getByRole('link', { name: 'Bench' }).click();
    await page().getByRole('heading', { name: 'What now?' }).waitFor();
    await page().getByRole('link', { name: 'Stock' }).first().click();
    await page().getByRole('heading', { level: 1 }).filter({ hasNotText: 'What now?' }).waitFor();
    await page().getByRole('link', { name: 'Bench' }).click();
    await page().getByRole('heading', { name: 'What now?' }).waitFor();
  });
});

describe('any screen breaks down', () => {
  test('the home screen or another: each says so, and hands the data out', async () => {
    const listed = await readFile('src/screens/others.ts', 'utf8');
    const others = [...listed.matchAll(/default as (\w+) \} from '\.\/([^']+)'/g)].map(([, name = '', file = '']) => [
      name,
      file,
    ]);
    expect(others.length).toBeGreaterThan(9);
    const all = [['', 'bench/bench.tsx'], ...others] as const;
    const broken = variant(
      Object.fromEntries(
        all.map(([, file]) => [
          `src/screens/${file}`,
          `export default () => { throw new Error('Something is loose in ${file}.'); };`,
        ]),
      ),
    );
    phone = await openPhone();
    await makeOfflineReady(phone);
    await loadDemo(page());
    phone.host.folder = broken;
    await page().evaluate(async () => (await navigator.serviceWorker.ready).unregister());
    await page().reload();
    for (const [name, file] of all) {
      await at(name ?? '');
      // A browser lets a page hand out ten files, and no more until it is loaded again.
      await page().reload();
      await page().getByText(`Something is loose in ${file}.`).waitFor();
      const backup = await takenOut('Take the data out');
      expect(backup.kinds.piece?.length, file).toBe(2);
    }
  });
});

describe('the signal goes while the app starts', () => {
  test('at every request of a first visit: the next visit works, and then works offline', {
    timeout: 400_000,
  }, async () => {
    phone = await openPhone();
    const { host } = phone;
    const browser = phone.context.browser();
    if (!browser) throw new Error('The phone has no browser.');
    const signal = (requests: number) => {
      let answered = 0;
      host.breaksOff = () => answered++ >= requests;
      return () => answered;
    };
    const visit = async (requests: number) => {
      const context = await browser.newContext();
      const visitor = await context.newPage();
      const answered = signal(requests);
      await visitor.goto(host.address).catch(() => {});
      // Until nothing more is asked for.
      for (let before = -1; before !== answered(); ) {
        before = answered();
        await visitor.waitForTimeout(200);
      }
      return { context, visitor, answered: answered() };
    };

    const whole = await visit(Number.POSITIVE_INFINITY);
    await whole.context.close();
    expect(whole.answered).toBeGreaterThan(10);
    for (let requests = 0; requests < whole.answered; requests++) {
      const { context, visitor } = await visit(requests);
      signal(Number.POSITIVE_INFINITY);
      await visitor.goto(host.address);
      await visitor.getByRole('heading', { name: 'What now?' }).waitFor();
      await visitor.evaluate(async () => void (await navigator.serviceWorker.ready));
      signal(0);
      await visitor.reload();
      await visitor.getByRole('heading', { name: 'What now?' }).waitFor();
      await visitor.goto(`${host.address}#/shop`);
      await visitor.getByRole('heading', { name: 'What does your shop allow?' }).waitFor();
      await context.close();
    }
    signal(Number.POSITIVE_INFINITY);
  });

  test('at every request of an update: the old version goes on offline, and the update comes later', {
    timeout: 400_000,
  }, async () => {
    const newer = variant({
      'src/screens/shop/shop.tsx': 'export default () => <h1>The newer version</h1>;',
      'src/screens/data/demo-button.tsx': 'export const DemoButton = () => <p>Newer</p>;',
    });
    phone = await openPhone();
    const { host } = phone;
    await makeOfflineReady(phone);
    const old = host.folder;
    for (let requests = 0; ; requests++) {
      host.folder = newer;
      let asked = 0;
      host.breaksOff = () => asked++ >= requests;
      await lookForUpdate().catch(() => {});
      await page().waitForTimeout(400);
      const whole = asked <= requests;
      if (whole) break;
      host.breaksOff = () => true;
      await page().reload();
      await page().getByRole('heading', { name: 'What now?' }).waitFor();
      await at('shop');
      await page().getByRole('heading', { name: 'What does your shop allow?' }).waitFor();
      await at('');
      host.folder = old;
    }
    host.breaksOff = () => false;
    await waitingWorker();
    await page().getByRole('button', { name: 'Use it now' }).click();
    await page().getByText('Newer', { exact: true }).waitFor();
  });
});
