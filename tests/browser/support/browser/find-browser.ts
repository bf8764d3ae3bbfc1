import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { carriedBrowser } from './carried-browser.ts';

/** A Chromium that can be started, and what must be in its environment. */
export type FoundBrowser = {
  readonly path: string;
  readonly from: 'CHROME_PATH' | 'installed' | 'carried';
  readonly env: Readonly<Record<string, string>>;
};

const INSTALLED_NAMES = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'chrome',
];
const INSTALLED_PLACES = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

function installedBrowser(): string | undefined {
  const folders = (process.env['PATH'] ?? '').split(delimiter);
  for (const name of INSTALLED_NAMES)
    for (const folder of folders)
      if (folder && existsSync(join(folder, name))) return join(folder, name);
  return INSTALLED_PLACES.find((place) => existsSync(place));
}

/**
 * CHROME_PATH, then an installed Chrome or Chromium, then the one a package
 * carries. GLOWPOUR_BROWSER=carried skips the first two.
 * @throws Error that says how to get a browser
 */
export async function findBrowser(): Promise<FoundBrowser> {
  const wanted = process.env['GLOWPOUR_BROWSER'];
  const named = process.env['CHROME_PATH'];
  if (wanted !== 'carried') {
    if (named) {
      if (!existsSync(named))
        throw new Error(
          `CHROME_PATH is ${named}, where there is no file. Point it at a Chrome or Chromium, or unset it.`,
        );
      return { path: named, from: 'CHROME_PATH', env: {} };
    }
    const installed = installedBrowser();
    if (installed) return { path: installed, from: 'installed', env: {} };
  }
  const carried = await carriedBrowser();
  if (carried) return { ...carried, from: 'carried' };
  throw new Error(
    'The browser tests need Chrome or Chromium. Install one (Debian, Ubuntu: "apt-get install chromium"; macOS: "brew install --cask google-chrome"), or set CHROME_PATH to one you have.',
  );
}

/** "Chromium 147.0…", as it tells itself. */
export function browserVersion(browser: FoundBrowser): string {
  return execFileSync(browser.path, ['--version', '--no-sandbox'], {
    env: { ...process.env, ...browser.env },
    encoding: 'utf8',
  }).trim();
}
