import { afterEach, beforeEach, expect, test } from 'vitest';
import { type Frame, frames, showIn } from '../views/frames.ts';
import { walkViews } from '../views/walk-views.ts';
import { openPhone, type Phone } from './phone.ts';

// Every view on every phone: narrow, wide, with text twice as large. Nothing runs off the sheet, nothing is too small to hit.

let phone: Phone;
// Each on a phone of its own: a second try starts from nothing too.
beforeEach(async () => {
  phone = await openPhone();
});
afterEach(() => phone.close());

/** What a maker would curse, one line each: what runs off the side, and what a thumb would miss (below 44 px high). */
const faults = ({ insets }: Pick<Frame, 'insets'> = {}): Promise<string[]> =>
  phone.page.evaluate(({ left: notch = 0, right: far = 0, bottom: bar = 0 }) => {
    const found: string[] = [];
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth > clientWidth) found.push(`${scrollWidth} px wide on ${clientWidth}`);
    for (const one of document.querySelectorAll<HTMLElement>('button, .button, summary, select, input')) {
      const { left, right, bottom, height, width } = one.getBoundingClientRect();
      if (width === 0 || !one.checkVisibility()) continue;
      const name = `<${one.localName}> ${one.textContent?.trim() || one.getAttribute('aria-label') || one.id}`;
      if (left < notch || right > clientWidth - far + 0.5) found.push(`${name} runs off the side`);
      if (one.closest('.foot') && bottom > innerHeight - bar) found.push(`${name} lies under the bar for gestures`);
      // So that a word too long for its button stands out of it rather than being broken.
      one.style.overflowWrap = 'normal';
      if (one.scrollWidth > one.clientWidth + 1 && one.matches('button, .button')) found.push(`${name} is cut off`);
      const target = (one.closest('label') ?? one).getBoundingClientRect().height;
      if (Math.max(height, target) < 44 - 0.5) found.push(`${name} is ${Math.round(height)} px high`);
    }
    return found;
  }, insets ?? {});

/** What is still wrong once the view has come to rest: on a busy machine the browser is late with the size of its glass. */
async function faultsAtRest(frame: Frame): Promise<string[]> {
  let found = await faults(frame);
  for (let more = 0; found.length > 0 && more < 10; more++) {
    await phone.page.waitForTimeout(100);
    found = await faults(frame);
  }
  return found;
}

test('the check finds what is too wide, too small or broken', async () => {
  await phone.page.evaluate(() => {
    const one = document.createElement('button');
    one.textContent = 'Straightening';
    one.style.cssText = 'width: 20px; height: 20px; margin-left: 350px';
    document.querySelector('main')?.append(one);
  });
  expect(await faults()).toEqual([
    expect.stringMatching(/^\d+ px wide on 360$/),
    '<button> Straightening runs off the side',
    '<button> Straightening is cut off',
    '<button> Straightening is 20 px high',
  ]);
});

test('every view fits every phone', async () => {
  const found: string[] = [];
  await walkViews(phone.page, async (view) => {
    for (const frame of frames) {
      await showIn(phone.page, frame);
      for (const fault of await faultsAtRest(frame)) found.push(`${view}, ${frame.name}: ${fault}`);
    }
    await showIn(phone.page, { name: 'as it was', width: 360, height: 740 });
  });
  expect(found).toEqual([]);
  expect(phone.errors).toEqual([]);
});
