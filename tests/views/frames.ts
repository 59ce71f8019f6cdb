import type { Page } from 'playwright-core';

/** How a phone may show the app. */
export interface Frame {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly theme?: 'light' | 'dark' | 'contrast';
  /** Text as large as the phone's own setting makes it; 100 by default. */
  readonly textPercent?: number;
}

export const frames: readonly Frame[] = [
  { name: 'light', width: 360, height: 740, theme: 'light' },
  { name: 'dark', width: 360, height: 740, theme: 'dark' },
  { name: 'contrast', width: 360, height: 740, theme: 'contrast' },
  { name: 'narrow', width: 320, height: 640 },
  { name: 'large-text', width: 360, height: 740, textPercent: 200 },
  { name: 'landscape', width: 740, height: 360 },
];

/** Shows what is open in that frame. */
export async function showIn(page: Page, { width, height, theme, textPercent = 100 }: Frame): Promise<void> {
  await page.setViewportSize({ width, height });
  await page.evaluate(
    ([name, size]) => {
      const { dataset, style } = document.documentElement;
      if (name) dataset.theme = name;
      else delete dataset.theme;
      style.fontSize = size;
    },
    [theme, `${textPercent}%`] as const,
  );
}
