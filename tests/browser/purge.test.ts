import { mkdirSync } from 'node:fs';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import {
  dropProfile,
  launch,
  newProfile,
  powerCut,
  tabletPage,
  type Running,
} from './support/browser.ts';
import { browserVersion, findBrowser } from './support/find-browser.ts';
import { actUntil, beginDemo, look } from './support/person.ts';
import { serve } from './support/server.ts';

const MONDAY_EVENING = Date.parse('2027-03-01T17:30:00Z');
const ARTIFACTS = 'test-artifacts';

let site: Awaited<ReturnType<typeof serve>>;
let profile: string;
let running: Running | undefined;

beforeAll(async () => {
  mkdirSync(ARTIFACTS, { recursive: true });
  const found = await findBrowser();
  console.log(`Browser: ${browserVersion(found)} (${found.from})`);
  site = await serve();
});
afterAll(() => site.stop());
afterEach(async () => {
  if (running) await powerCut(running);
  running = undefined;
  dropProfile(profile);
});

describe('a whole purge of a demo kitchen', () => {
  it('survives the browser being killed in the middle of a glow, and ends with a record', async () => {
    profile = newProfile();
    running = await launch(profile);
    let page = await tabletPage(running, { wallMs: MONDAY_EVENING });
    await beginDemo(page, site.url, 'Flat with coils');
    await actUntil(page, (seen) => /let it glow/i.test(seen.sentence));
    await page.clock.fastForward(10 * 60_000);
    const before = await look(page);
    const stepsBefore = await page.getByRole('button', { name: /^Steps/ }).innerText();
    const cutAtMs = await page.evaluate(() => Date.now());
    await powerCut(running);

    running = await launch(profile);
    page = await tabletPage(running, { wallMs: cutAtMs + 14 * 60_000 });
    await page.goto(site.url);
    await page.locator('.review').waitFor();
    await page.screenshot({ path: `${ARTIFACTS}/review-after-power-cut.png` });
    expect(before.status).toBe('running');
    expect(await page.locator('.review').innerText()).toMatch(/glow/i);
    expect(await page.getByRole('button', { name: /^Steps/ }).innerText()).toBe(stepsBefore);

    const end = await actUntil(page, (seen) => seen.status === 'closed');
    expect(end.status).toBe('closed');
    await page.screenshot({ path: `${ARTIFACTS}/closed.png` });
    await page.getByRole('link', { name: 'See the record' }).click();
    const record = page.getByRole('article', { name: 'Record of the run' });
    await record.waitFor();
    const text = await record.innerText();
    expect(text).toContain('Flat with coils');
    expect(text).toMatch(/kettle/i);
    await page.screenshot({ path: `${ARTIFACTS}/record.png` });
  });

  it('works offline from the second load on', async () => {
    profile = newProfile();
    running = await launch(profile);
    const page = await running.context.newPage();
    await page.goto(site.url);
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    // The worker answers once it controls the page.
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await running.context.setOffline(true);
    await page.reload();
    await page.getByRole('button', { name: 'Hall kitchen' }).click();
    await page.getByRole('heading', { name: 'Hall kitchen' }).waitFor();
    await page.getByRole('button', { name: 'Start the run' }).click();
    await page.getByRole('heading', { name: 'Ready to begin' }).waitFor();
    const sounds = await page.evaluate(
      async () =>
        (await (await caches.open((await caches.keys())[0] ?? '')).keys()).filter((request) =>
          request.url.endsWith('.wav'),
        ).length,
    );
    expect(sounds).toBe(4);
  });
});

describe('a kettle that runs out early', () => {
  it('has the rest of the counter shared out anew, and the pour goes on', async () => {
    profile = newProfile();
    running = await launch(profile);
    const page = await tabletPage(running, { wallMs: MONDAY_EVENING });
    await beginDemo(page, site.url, 'Flat with coils');
    await actUntil(
      page,
      (seen) => seen.sentence.startsWith('Pour kettle 1 of') && seen.action === 'Poured',
    );
    const planned = Number(/of (\d+)/.exec((await look(page)).sentence)?.[1]);
    await page.getByRole('button', { name: 'I ran out here' }).click();
    for (let n = 0; n < 5; n += 1) await page.getByRole('button', { name: 'Further on' }).click();
    await page.screenshot({ path: `${ARTIFACTS}/ran-out.png` });
    await page.getByRole('button', { name: 'It ran out here' }).click();
    await page.getByRole('heading', { name: /cold water/i }).waitFor();
    await actUntil(page, (seen) => seen.sentence.startsWith('Pour kettle 2 of'), 20);
    const now = Number(/of (\d+)/.exec((await look(page)).sentence)?.[1]);
    expect(now).toBeGreaterThan(planned);
    await page.screenshot({ path: `${ARTIFACTS}/ran-out-after.png` });
  });
});
