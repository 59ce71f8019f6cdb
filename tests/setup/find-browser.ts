import { execFileSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from 'playwright-core';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome', 'microsoft-edge'];
const fixedPlaces = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

function runnable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function installed(): string | undefined {
  const onPath = (process.env.PATH ?? '').split(delimiter).flatMap((folder) => names.map((name) => join(folder, name)));
  return [...onPath, ...fixedPlaces, chromium.executablePath()].find(runnable);
}

function tryToInstall(command: string, ...args: string[]): void {
  try {
    execFileSync(command, args, { stdio: 'inherit', timeout: 300_000 });
  } catch {
    // The next way is tried; when none works, the error below says what to do.
  }
}

/** A Chromium for the journeys: named in CHROMIUM_PATH, installed, or installed now. */
export function findBrowser(): string {
  const named = process.env.CHROMIUM_PATH;
  if (named) {
    if (runnable(named)) return named;
    throw new Error(`CHROMIUM_PATH names ${named}, which can't be run.`);
  }
  const found = installed();
  if (found) return found;
  if (existsSync('/etc/debian_version') && process.getuid?.() === 0) {
    tryToInstall('apt-get', 'update', '-qq');
    tryToInstall('apt-get', 'install', '-y', '-qq', 'chromium');
  }
  if (!installed()) tryToInstall(process.execPath, 'node_modules/playwright-core/cli.js', 'install', 'chromium');
  const now = installed();
  if (now) return now;
  throw new Error('The journeys need a Chromium. Install one, or set CHROMIUM_PATH to the one you have.');
}
