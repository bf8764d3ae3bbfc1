import type { Page } from 'playwright-core';
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
import { act, actUntil, look, passHearingCheck, press, type Seen } from './support/person.ts';
import { serve } from './support/server.ts';

/** Each kind of stage, each sheet and each state of a run, by day and by night. */
let site: Awaited<ReturnType<typeof serve>>;
let profile: string;
let running: Running;
let page: Page;

beforeAll(async () => {
  site = await serve();
  profile = newProfile();
  running = await launch(profile);
  page = await tabletPage(running, {
    wallMs: Date.parse('2027-03-01T17:30:00Z'),
    widthPx: 1180,
    heightPx: 820,
  });
});
afterAll(async () => {
  await powerCut(running);
  dropProfile(profile);
  await site.stop();
});

const clean = (name: string): Promise<void> => axeFindsNothing(page, name);

async function sheet(button: RegExp | string, name: string): Promise<void> {
  await page.getByRole('button', { name: button }).first().click();
  await page.locator('dialog[open]').waitFor();
  await clean(name);
  await page.keyboard.press('Escape');
  await page.locator('dialog[open]').waitFor({ state: 'detached' });
}

/** Goes on with the run until the button is there, then looks at its sheet. */
async function sheetWhenThere(button: string, name: string): Promise<void> {
  const there = page.getByRole('button', { name: button });
  for (let n = 0; n < 200 && !(await there.isVisible()); n += 1) await act(page);
  await sheet(button, name);
}

const GO_PAST = 'It is not so, and I go on';

const STAGES: readonly (readonly [string, (seen: Seen) => boolean])[] = [
  ['a gate', (s) => s.action === 'Yes, it is so'],
  ['a cleaning list', (s) => s.action.startsWith('Done:')],
  ['a rest', (s) => s.action === '' && s.waiting === ''],
  ['an oven', (s) => /cycle run to its end|highest without/i.test(s.sentence)],
  ['a boil', (s) => /it boils/i.test(s.action)],
  ['a pour', (s) => s.action === 'Poured'],
  ['cold water', (s) => s.action === 'Cold water poured'],
  ['a warm-up', (s) => /until it glows/i.test(s.sentence)],
  ['a glow', (s) => /let it glow/i.test(s.sentence)],
];

describe('axe finds nothing on', () => {
  it('the start of a run, and every kind of stage with its sheets', async () => {
    await page.goto(`${site.url}/#/kitchen`);
    await page.getByRole('button', { name: 'Flat with coils' }).click();
    await page.getByRole('button', { name: 'Start the run' }).click();
    await page.getByRole('heading', { name: 'Ready to begin' }).waitFor();
    await clean('the start');
    await passHearingCheck(page);
    await clean('the hearing check');
    await press(page, '.start-screen .main-action');

    for (const [name, is] of STAGES) {
      const seen = await actUntil(page, (s) => s.status === 'closed' || is(s));
      expect(seen.status, `${name} never came`).not.toBe('closed');
      await clean(name);
      // A DANGER gate has no way past; one of those before the pours has.
      if (name === 'an oven') await sheetWhenThere(GO_PAST, 'going past a gate');
      if (name === 'a pour') await sheetWhenThere('I ran out here', 'a kettle that ran out');
      if (name === 'a rest') {
        await sheet('Until when', 'the days');
        await sheet('Settings', 'the settings');
        await sheet(/^Steps/, 'the steps');
        await sheet('Something happened', 'what happened');
        await sheet('Stop – make safe', 'Stop');
        await sheet(/^Rest|Rest/, 'a rest seen close');
      }
      if (name === 'a glow') await sheet(/\?$/, 'a fault');
    }
  });

  it('a pause, a fault, a stop and the end', async () => {
    await page.getByRole('button', { name: 'Pause' }).click();
    await expect.poll(() => page.locator('.run-place').getAttribute('data-status')).toBe('held');
    await clean('a pause');
    await page.locator('.side-actions').getByRole('button', { name: 'Go on' }).click();
    await page.getByRole('button', { name: 'The power failed?' }).click();
    await page.getByRole('button', { name: /^Tell it/ }).click();
    await page.locator('.suspended').waitFor();
    await clean('a fault');
    await page.getByRole('button', { name: 'Stop – make safe' }).click();
    await page.getByRole('button', { name: 'Stop the run now' }).click();
    await page.locator('.closing').waitFor();
    await clean('making safe');
    for (let n = 0; n < 12 && (await look(page)).status === 'closing'; n += 1)
      await press(page, '.closing .button--ember');
    await page.getByRole('link', { name: 'See the record' }).waitFor();
    await clean('the end');
  });
});
