import type { TestProject } from 'vitest/node';
import { lacksOf } from './abilities.ts';
import { browserVersion, findBrowser } from './find-browser.ts';

/** Once before all files: the browser is found, unpacked if it has to be, and asked what it can do. */
export async function setup({ provide }: TestProject): Promise<void> {
  const browser = await findBrowser();
  provide('browser', browser);
  provide('lacks', await lacksOf(browser));
  console.log(`Browser: ${browserVersion(browser)} (${browser.from})`);
}
