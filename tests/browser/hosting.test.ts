import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Screen } from './support/screen.ts';
import type { Site } from './support/server.ts';
import { hostUnder } from './support/hosting/static-host.ts';
import { dispose, startTablet, type Tablet } from './support/tablet.ts';

describe('a static host that serves the folder under a path of its own', () => {
  let site: Site;
  let tablet: Tablet;
  beforeAll(async () => {
    site = await hostUnder('/of/the/household/');
    tablet = await startTablet();
  });
  afterAll(async () => {
    await dispose(tablet);
    await site.stop();
  });

  it('gives a page that plans, breaks no rule of its policy, and lives without the host afterwards', async () => {
    const refused: string[] = [];
    const asked: string[] = [];
    const screen = await Screen.open(tablet, undefined, async ({ page }) => {
      page.on('console', (told) => {
        if (told.text().includes('Content Security Policy')) refused.push(told.text());
      });
      page.on('request', (request) => asked.push(request.url()));
    });
    await screen.page.goto(site.url);
    await screen.openDemo('flat-coils');
    await screen.keptOffline();
    await site.stop();
    await screen.page.goto('about:blank');
    await screen.page.goto(`${site.url}#/plan/mountain-gas`);
    await screen.waitForElement('.plan-place');
    expect(refused).toEqual([]);
    expect(
      asked.filter((url) => !/^(?:blob|data|about):/.test(url) && !url.startsWith(site.url)),
    ).toEqual([]);
    expect(asked.length).toBeGreaterThan(20);
  });
});
