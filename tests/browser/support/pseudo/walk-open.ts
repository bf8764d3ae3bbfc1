import type { OnTablet } from '../on-tablet.ts';
import type { Screen } from '../screen.ts';
import { installReader } from './reader.ts';

/** Opens the app with what reads it inside. */
export async function openRead(at: OnTablet, route?: string): Promise<Screen> {
  return at.open(route, async ({ page }) => {
    await page.addInitScript(installReader);
  });
}
