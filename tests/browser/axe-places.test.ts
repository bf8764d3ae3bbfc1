import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, it } from 'vitest';
import { axeFindsNothing } from './support/axe.ts';
import { dropProfile, launch, newProfile, powerCut, type Running } from './support/browser.ts';
import { serve } from './support/server.ts';

let site: Awaited<ReturnType<typeof serve>>;
let profile: string;
let running: Running;
let page: Page;

beforeAll(async () => {
  site = await serve();
  profile = newProfile();
  running = await launch(profile);
  page = await running.context.newPage();
  await page.setViewportSize({ width: 820, height: 1180 });
});
afterAll(async () => {
  await powerCut(running);
  dropProfile(profile);
  await site.stop();
});

const PARTS = [
  'The course',
  'Methods',
  'Every step',
  'Where it is poured',
  'Heat and air',
  'To ask',
  'To buy and to clean',
];
const CHAPTERS = ['where', 'fixtures', 'water', 'air', 'people'];

describe('axe finds nothing on', () => {
  it('the welcome, an empty record and a run that is not there', async () => {
    await page.goto(site.url);
    await page.locator('.demo').first().waitFor();
    await axeFindsNothing(page, 'the welcome');
    for (const place of ['record', 'run', 'plan']) {
      await page.goto(`${site.url}/#/${place}`);
      await page.locator('main').first().waitFor();
      await axeFindsNothing(page, place);
    }
  });

  it('every part of a plan, and the sheets of answers and of an own custom', async () => {
    await page.goto(`${site.url}/#/kitchen`);
    await page.getByRole('button', { name: 'Flat with coils' }).click();
    for (const part of PARTS) {
      await page.getByRole('button', { name: part, exact: true }).click();
      await axeFindsNothing(page, part);
    }
    await page.getByRole('button', { name: 'Methods', exact: true }).click();
    for (const opens of ['Our rabbi said otherwise', 'Make a custom of our own']) {
      await page.getByRole('button', { name: opens }).first().click();
      await page.locator('dialog[open]').waitFor();
      await axeFindsNothing(page, opens);
      await page.keyboard.press('Escape');
      await page.locator('dialog[open]').waitFor({ state: 'detached' });
    }
  });

  it('the kitchen and every page of its survey', async () => {
    await page.goto(`${site.url}/#/kitchen`);
    await page.getByRole('button', { name: 'Change it' }).waitFor();
    await axeFindsNothing(page, 'the kitchen');
    for (const chapter of CHAPTERS) {
      await page.goto(`${site.url}/#/kitchen/${chapter}`);
      await page.locator('.chapter, .editor').first().waitFor();
      await axeFindsNothing(page, `the survey, ${chapter}`);
    }
  });
});
