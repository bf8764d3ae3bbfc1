import { mkdirSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { axeFindsNothing } from './support/axe.ts';
import {
  dropProfile,
  launch,
  newProfile,
  powerCut,
  tabletPage,
  type Running,
} from './support/browser.ts';
import { actUntil, beginDemo, look } from './support/person.ts';
import { serve } from './support/server.ts';

/** Ten in the morning where the flat of the demo is (New York, winter time: UTC−5). */
const THURSDAY_MORNING = Date.parse('2027-03-04T15:00:00Z');
/** Candles there are lit at 17:33, and on Saturday it is night at 18:33 (npm run reckon -- rest-days). */
const FRIDAY_NIGHT = Date.parse('2027-03-06T00:00:00Z');
const SATURDAY_NIGHT = Date.parse('2027-03-07T00:15:00Z');
const ARTIFACTS = 'test-artifacts/screens';

let site: Awaited<ReturnType<typeof serve>>;
let profile: string;
let running: Running;

beforeAll(async () => {
  mkdirSync(ARTIFACTS, { recursive: true });
  site = await serve();
  profile = newProfile();
  running = await launch(profile);
});
afterAll(async () => {
  await powerCut(running);
  dropProfile(profile);
  await site.stop();
});

describe('a Sabbath in the middle of a run', () => {
  // Verifies: I-19
  it('shows a still page that asks nothing, and tells afterwards what came due', async () => {
    const page = await tabletPage(running, { wallMs: THURSDAY_MORNING });
    const cdp = await page.context().newCDPSession(page);
    await cdp.send('Emulation.setTimezoneOverride', { timezoneId: 'America/New_York' });
    await beginDemo(page, site.url, 'Flat with coils');
    await actUntil(page, (seen) => seen.action === '' && seen.waiting === '');
    await page.clock.fastForward(FRIDAY_NIGHT - (await page.evaluate(() => Date.now())));
    await page.locator('.rest-day').waitFor();
    expect(await page.locator('.rest-day').innerText()).toMatch(/Sabbath[\s\S]*until [^.]*18:33/);
    expect(await look(page)).toMatchObject({ action: '', armScreen: false });
    expect(await page.locator('.flash').count()).toBe(0);
    await axeFindsNothing(page, 'the rest day');
    await page.screenshot({ path: `${ARTIFACTS}/3-run-rest-day.png` });

    await page.clock.fastForward(SATURDAY_NIGHT - (await page.evaluate(() => Date.now())));
    await page.locator('.rest-day').waitFor({ state: 'detached' });
    await page.screenshot({ path: `${ARTIFACTS}/3-run-after-rest-day.png` });
    const end = await actUntil(page, (seen) => seen.status === 'closed');
    expect(end.status).toBe('closed');
  });
});
