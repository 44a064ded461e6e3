import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium, type LaunchOptions } from '@playwright/test';
import { packagedBrowser } from './packaged-browser.ts';

const ARGUMENTS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

const INSTALLED_NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

const INSTALLED_PATHS = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

function installedBrowser(): string | undefined {
  const folders = (process.env.PATH ?? '').split(delimiter);
  const onPath = folders.flatMap((folder) => INSTALLED_NAMES.map((name) => join(folder, name)));
  return [...onPath, ...INSTALLED_PATHS].find((path) => existsSync(path));
}

function ownDownload(): string | undefined {
  const path = chromium.executablePath();
  return path && existsSync(path) ? path : undefined;
}

/**
 * How to launch a browser on this machine. First found wins: CHROMIUM_PATH, the test runner's own download,
 * an installed Chrome or Chromium, then the one that comes as a package (Linux only).
 * HALFNUT_PACKAGED_BROWSER=1 goes straight to the package.
 */
export async function findBrowser(): Promise<LaunchOptions> {
  if (process.env.HALFNUT_PACKAGED_BROWSER !== '1') {
    const executablePath = process.env.CHROMIUM_PATH || ownDownload() || installedBrowser();
    if (executablePath) return { executablePath, args: ARGUMENTS };
  }
  return { ...(await packagedBrowser()), args: ARGUMENTS };
}
