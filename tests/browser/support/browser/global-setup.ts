import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { BUILT } from '../server.ts';
import { lacksOf } from './abilities.ts';
import { browserVersion, findBrowser } from './find-browser.ts';

/** Once before all files: the browser is found, unpacked if it has to be, and asked what it can do. */
export async function setup({ provide }: TestProject): Promise<void> {
  if (!existsSync(join(BUILT, 'index.html')))
    throw new Error(
      `${BUILT}/index.html is not there; these tests look at the app as it was built. Build it first: npm run build`,
    );
  const browser = await findBrowser();
  provide('browser', browser);
  provide('lacks', await lacksOf(browser));
  console.log(`Browser: ${browserVersion(browser)} (${browser.from})`);
}
