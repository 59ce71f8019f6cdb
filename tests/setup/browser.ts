import { existsSync } from 'node:fs';
import type { TestProject } from 'vitest/node';
import { findBrowser } from './find-browser.ts';

declare module 'vitest' {
  interface ProvidedContext {
    browserPath: string;
  }
}

export default function setUp(project: TestProject): void {
  if (!existsSync(`${process.env.BOARDWRIGHT_DIST ?? 'dist'}/index.html`))
    throw new Error('Build first: npm run build');
  project.provide('browserPath', findBrowser());
}
