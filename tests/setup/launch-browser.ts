import { type BrowserContext, chromium } from 'playwright-core';

export const browserArguments = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

interface Options {
  readonly width?: number;
  readonly height?: number;
  readonly colorScheme?: 'light' | 'dark';
}

/** A phone-sized browser on a profile folder: what is stored there outlives it. */
export function launchBrowser(executablePath: string, profile: string, options: Options = {}): Promise<BrowserContext> {
  const { width = 360, height = 740, colorScheme = 'light' } = options;
  return chromium.launchPersistentContext(profile, {
    executablePath,
    args: browserArguments,
    viewport: { width, height },
    colorScheme,
    hasTouch: true,
    locale: 'en-US',
    acceptDownloads: true,
  });
}
