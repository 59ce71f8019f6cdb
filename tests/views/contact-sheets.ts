import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { findBrowser } from '../setup/find-browser.ts';
import { launchBrowser } from '../setup/launch-browser.ts';
import { serve } from '../setup/serve.ts';
import { frames, showIn } from './frames.ts';
import { walkViews } from './walk-views.ts';

// npm run sheets -- FOLDER: every view of the built app side by side, six a sheet, in every frame; for someone to look at.

const folder = process.argv[2] ?? 'sheets';
const scratch = mkdtempSync(join(tmpdir(), 'boardwright-sheets-'));
const app = await serve('dist', '/app/');
const context = await launchBrowser(findBrowser(), join(scratch, 'profile'));
const page = await context.newPage();
const perSheet = 6;
const names: string[] = [];
const picture = (view: number, frame: string) => join(scratch, `${view}-${frame}.png`);
try {
  await page.goto(app.address);
  await walkViews(page, async (name) => {
    for (const frame of frames) {
      await showIn(page, frame);
      await page.screenshot({ path: picture(names.length, frame.name), fullPage: true });
    }
    await showIn(page, { name: 'as it was', width: 360, height: 740 });
    names.push(name);
  });
  mkdirSync(folder, { recursive: true });
  for (const frame of frames)
    for (let first = 0; first < names.length; first += perSheet) {
      const figures = names
        .slice(first, first + perSheet)
        .map((name, at) => `<figure>${name}<img src="${pathToFileURL(picture(first + at, frame.name))}"></figure>`);
      const sheet = join(scratch, 'sheet.html');
      // What runs on below the second screenful is cut off: a sheet compares beginnings.
      writeFileSync(
        sheet,
        `<meta charset="utf-8"><style>body{display:flex;gap:12px;align-items:start;background:#888;font:16px sans-serif}
figure{margin:0;width:${frame.width}px}img{display:block;max-height:${frame.height * 2}px;object-fit:cover;object-position:top;width:100%}</style>${figures.join('')}`,
      );
      await page.setViewportSize({ width: (frame.width + 12) * perSheet + 20, height: 600 });
      await page.goto(pathToFileURL(sheet).href);
      await page.screenshot({ path: join(folder, `${frame.name}-${first / perSheet + 1}.png`), fullPage: true });
    }
} finally {
  await context.close();
  await app.stop();
  rmSync(scratch, { recursive: true, force: true });
}
