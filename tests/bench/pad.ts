import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findBrowser } from '../setup/find-browser.ts';
import { launchBrowser } from '../setup/launch-browser.ts';
import { serve } from '../setup/serve.ts';
import { type BenchRow, median, quantile } from './bench-row.ts';

const slowdown = 4;
const frame = 1000 / 60;

/**
 * Presses keys of the open pad and gives the milliseconds from each until entry and answer say what follows from it, all work
 * up to the finished layout included. An answer that came any later would not be timed: then it throws.
 */
const pressKeys = `(async () => {
  const keys = [...document.querySelectorAll('.pad button')];
  const entry = document.activeElement;
  const answer = document.querySelector('.square-answer');
  const spent = [];
  for (let round = 0; round < 25; round++) {
    for (const label of ['5', '3', '1/2', '+1/16', '−1/16', '⌫', '⌫', '⌫']) {
      const text = entry.value;
      const key = keys.find(({ textContent }) => textContent === label);
      const before = performance.now();
      key.click();
      await undefined;
      document.body.getBoundingClientRect();
      spent.push(performance.now() - before);
      const said = answer.textContent;
      // No hand is faster; what a key leaves for later is done by the next.
      await new Promise((done) => setTimeout(done, 60));
      if (entry.value === text || answer.textContent !== said) throw new Error('answered late: ' + label);
    }
  }
  return spent;
})()`;

/** From a key on the pad to the changed entry and answer, all work that the key causes, the processor slowed. */
export async function bench(): Promise<BenchRow[]> {
  const profile = mkdtempSync(join(tmpdir(), 'boardwright-bench-'));
  const host = await serve('dist', '/app/');
  const context = await launchBrowser(findBrowser(), profile);
  try {
    const page = await context.newPage();
    await page.goto(`${host.address}#/square`);
    const readings = {
      'Front edge': '48',
      'Right end': '24',
      'Back edge': '48',
      'Left end': '24',
      'Diagonal A': '53 3/4',
    };
    for (const [name, text] of Object.entries(readings)) await page.getByRole('textbox', { name }).fill(text);
    const entry = page.getByRole('textbox', { name: 'Diagonal B' });
    await entry.focus();
    const session = await context.newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
    const times = (await page.evaluate(pressKeys)) as number[];
    const late = quantile(times, 0.95);
    return [
      {
        what: `a key on the pad to the changed answer, CPU slowed ${slowdown}x, 95th percentile of ${times.length}`,
        measured: `${late.toFixed(1)} ms (median ${median(times).toFixed(1)} ms)`,
        bar: `one frame, ${frame.toFixed(1)} ms`,
        holds: late <= frame,
      },
    ];
  } finally {
    await context.close();
    await host.stop();
    rmSync(profile, { recursive: true, force: true });
  }
}
