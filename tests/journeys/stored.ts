import type { Page } from 'playwright-core';

/** How many records of a kind lie in the phone's database, read past the app. */
export function stored(page: Page, kind: string): Promise<number> {
  return page.evaluate(
    (name) =>
      new Promise<number>((done, failed) => {
        const opening = indexedDB.open('boardwright');
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const counting = opening.result.transaction(name).objectStore(name).count();
          counting.onsuccess = () => {
            opening.result.close();
            done(counting.result);
          };
        };
      }),
    kind,
  );
}

/** Keeps the phone from storing any record of a kind until what this gives is called. */
export async function holdUpStoring(page: Page, kind: string): Promise<() => Promise<void>> {
  await page.evaluate(
    (name) =>
      new Promise<void>((held) => {
        const opening = indexedDB.open('boardwright');
        opening.onsuccess = () => {
          const store = opening.result.transaction(name, 'readwrite').objectStore(name);
          let over = false;
          addEventListener('let-go', () => {
            over = true;
          });
          const hold = () => {
            if (over) opening.result.close();
            else store.count().onsuccess = hold;
          };
          hold();
          held();
        };
      }),
    kind,
  );
  return () => page.evaluate(() => void dispatchEvent(new Event('let-go')));
}
