import type { Page } from 'playwright-core';

/** How a phone may show the app. */
export interface Frame {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly theme?: 'light' | 'dark' | 'contrast';
  /** Text as large as the phone's own setting makes it; 100 by default. */
  readonly textPercent?: number;
  readonly hand?: 'left' | 'right';
  /** What a notch and the bar for gestures take of the glass, in px. */
  readonly insets?: Partial<Record<'top' | 'right' | 'bottom' | 'left', number>>;
}

export const frames: readonly Frame[] = [
  { name: 'light', width: 360, height: 740, theme: 'light' },
  { name: 'dark', width: 360, height: 740, theme: 'dark' },
  { name: 'contrast', width: 360, height: 740, theme: 'contrast' },
  { name: 'narrow', width: 320, height: 640 },
  { name: 'large-text', width: 360, height: 740, textPercent: 200 },
  { name: 'landscape', width: 740, height: 360, insets: { left: 47, right: 47, bottom: 21 } },
  { name: 'left-hand', width: 360, height: 740, hand: 'left', insets: { top: 47, bottom: 34 } },
];

/** Shows what is open in that frame. */
export async function showIn(page: Page, frame: Frame): Promise<void> {
  const { width, height, theme, textPercent = 100, hand = 'right', insets = {} } = frame;
  await page.setViewportSize({ width, height });
  const glass = await page.context().newCDPSession(page);
  await glass.send('Emulation.setSafeAreaInsetsOverride', {
    insets: { top: 0, right: 0, bottom: 0, left: 0, ...insets },
  });
  await page.evaluate(
    ([name, size, side]) => {
      const { dataset, style } = document.documentElement;
      if (name) dataset.theme = name;
      else delete dataset.theme;
      dataset.hand = side;
      style.fontSize = size;
    },
    [theme, `${textPercent}%`, hand] as const,
  );
}
