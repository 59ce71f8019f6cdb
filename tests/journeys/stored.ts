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
