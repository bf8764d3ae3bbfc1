import puppeteer from 'puppeteer-core';
import { installHands } from '../../browser/support/in-page/hands.ts';
import { onPath, versionOf } from './on-path.ts';
import type { Engine, EnginePage, MissingEngine } from './engine-page.ts';

/** Of a tablet held sideways, CSS px. */
const SIZE = { width: 1180, height: 820 };
/** A whole run is played in one call of the page. */
const PATIENCE_MS = 600_000;

/** Firefox by WebDriver BiDi, which it speaks itself; Chromium by its own protocol. */
async function start(
  browser: 'chrome' | 'firefox',
  executablePath: string,
  userDataDir: string,
): Promise<EnginePage> {
  const started = await puppeteer.launch({
    browser,
    executablePath,
    userDataDir,
    headless: true,
    protocolTimeout: PATIENCE_MS,
    defaultViewport: SIZE,
    args: browser === 'chrome' ? ['--no-sandbox'] : [],
  });
  const page = await started.newPage();
  await page.evaluateOnNewDocument(installHands, 0);
  return {
    async open(url) {
      await page.goto(url, { waitUntil: 'load' });
    },
    see: <T>(expression: string) => page.evaluate(expression) as Promise<T>,
    click: (selector) => page.click(selector),
    picture: () => page.screenshot({ type: 'png' }),
    async kill() {
      const child = started.process();
      const gone = new Promise((resolve) => child?.once('exit', resolve));
      child?.kill('SIGKILL');
      await gone;
    },
  };
}

export function chromium(): Engine | MissingEngine {
  const path =
    process.env['CHROME_PATH'] ?? onPath('chromium', 'chromium-browser', 'google-chrome', 'chrome');
  if (!path) return { name: 'Chromium', howToGet: 'apt-get install chromium' };
  return {
    name: 'Chromium',
    version: versionOf(path, '--no-sandbox'),
    keepsProfile: true,
    start: (profile) => start('chrome', path, profile),
  };
}

export function firefox(): Engine | MissingEngine {
  const path = process.env['FIREFOX_PATH'] ?? onPath('firefox-esr', 'firefox');
  if (!path) return { name: 'Firefox', howToGet: 'apt-get install firefox-esr' };
  return {
    name: 'Firefox',
    version: versionOf(path),
    keepsProfile: true,
    start: (profile) => start('firefox', path, profile),
  };
}
