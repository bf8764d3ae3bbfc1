import { mkdirSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  dropProfile,
  launch,
  newProfile,
  powerCut,
  tabletPage,
  type Running,
} from './support/browser.ts';
import { actUntil, beginDemo, look, press } from './support/person.ts';
import { serve } from './support/server.ts';

/** Pictures of the four places, to be looked at; and what no picture may show: anything cut off at the side. */
const FOLDER = 'test-artifacts/screens';
const SIZES = [
  { name: 'landscape', widthPx: 1280, heightPx: 800 },
  { name: 'portrait', widthPx: 800, heightPx: 1280 },
  { name: 'phone', widthPx: 390, heightPx: 844 },
] as const;

/** Tablets from 8 to 13 inches: CSS pixels of the long and the short side, diagonal of the glass in inches. */
const TABLETS = [
  { diagonalIn: 8, longPx: 960, shortPx: 600 },
  { diagonalIn: 10.1, longPx: 1280, shortPx: 800 },
  { diagonalIn: 10.9, longPx: 1180, shortPx: 820 },
  { diagonalIn: 12.9, longPx: 1366, shortPx: 1024 },
] as const;

const MM_PER_IN = 25.4;
/**
 * Height that fills 20 minutes of arc at 2 m, mm: 11.6. The angle is the
 * preferred character height of ISO 9241-3 and NUREG-0700 (from memory).
 */
const READABLE_MM = 2 * 2000 * Math.tan(((10 / 60) * Math.PI) / 180);

let site: Awaited<ReturnType<typeof serve>>;
let profile: string;
let running: Running;
let page: Page;

beforeAll(async () => {
  mkdirSync(FOLDER, { recursive: true });
  site = await serve();
  profile = newProfile();
  running = await launch(profile);
  page = await tabletPage(running, { wallMs: Date.parse('2027-03-01T17:30:00Z') });
});
afterAll(async () => {
  await powerCut(running);
  dropProfile(profile);
  await site.stop();
});

/** One state in both orientations and both themes; nothing may reach past the right edge. */
async function picture(name: string): Promise<void> {
  for (const theme of ['day', 'night'] as const) {
    await page.evaluate((t) => (document.documentElement.dataset['theme'] = t), theme);
    for (const size of SIZES) {
      // A phone is for the run; a kitchen is described and planned on something larger.
      if (size.name === 'phone' && !name.startsWith('3-run')) continue;
      await page.setViewportSize({ width: size.widthPx, height: size.heightPx });
      await page.screenshot({ path: `${FOLDER}/${name}-${size.name}-${theme}.png` });
      const widthPx = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(widthPx, `${name} ${size.name}: width of the page`).toBeLessThanOrEqual(size.widthPx);
    }
  }
}

/** Height of the huge digits as drawn, CSS px: the ink of their glyphs, measured on a canvas in their own face. */
function digitHeightPx(): Promise<number> {
  return page
    .locator('.countdown-part')
    .first()
    .evaluate(async (element) => {
      const { fontWeight, fontSize, fontFamily } = getComputedStyle(element);
      const font = `${fontWeight} ${fontSize} ${fontFamily}`;
      await document.fonts.load(font, '0123456789');
      const pen = document.createElement('canvas').getContext('2d');
      if (!pen) throw new Error('No canvas to measure on.');
      pen.font = font;
      const inks = [...'0123456789'].map((digit) => {
        const { actualBoundingBoxAscent, actualBoundingBoxDescent } = pen.measureText(digit);
        return actualBoundingBoxAscent + actualBoundingBoxDescent;
      });
      return Math.min(...inks);
    });
}

/** On every tablet, held either way: the digits reach 20 arcmin at 2 m and nothing of them is cut off. */
async function readable(name: string): Promise<void> {
  const found: string[] = [];
  for (const { diagonalIn, longPx, shortPx } of TABLETS) {
    const pxPerIn = Math.hypot(longPx, shortPx) / diagonalIn;
    for (const [widthPx, heightPx] of [
      [longPx, shortPx],
      [shortPx, longPx],
    ] as const) {
      await page.setViewportSize({ width: widthPx, height: heightPx });
      const heightMm = ((await digitHeightPx()) / pxPerIn) * MM_PER_IN;
      const where = `${name}, ${diagonalIn} in, ${widthPx} × ${heightPx}`;
      found.push(`${widthPx}×${heightPx} ${heightMm.toFixed(1)}`);
      expect.soft(heightMm, where).toBeGreaterThan(READABLE_MM);
      const box = await page.locator('.countdown-digits').first().boundingBox();
      const frame = await page.locator('.stage').boundingBox();
      if (!box || !frame) throw new Error(`${where}: no digits on the stage.`);
      expect.soft(box.y + box.height, `${where}: foot`).toBeLessThanOrEqual(frame.y + frame.height);
      const endPx = await page
        .locator('.countdown-digits')
        .first()
        .evaluate((element) => element.scrollWidth - element.clientWidth);
      expect.soft(endPx, `${where}: width`).toBeLessThanOrEqual(1);
    }
  }
  console.log(`digits of ${name}, mm: ${found.join(', ')}`);
}

describe('the four places', () => {
  it('look right in both orientations, by day and by night', async () => {
    await page.goto(site.url);
    await page.getByRole('button', { name: 'Flat with coils' }).waitFor();
    await picture('1-kitchen-welcome');
    await page.getByRole('button', { name: 'Hall kitchen' }).click();
    await page.getByRole('heading', { name: 'Hall kitchen' }).waitFor();
    await picture('2-plan-hall');
    for (const part of [
      'Methods',
      'Every step',
      'Where it is poured',
      'Heat and air',
      'To ask',
      'To buy and to clean',
    ]) {
      await page.getByRole('button', { name: part }).click();
      await picture(`2-plan-hall-${part.toLowerCase().replaceAll(' ', '-')}`);
    }
    await page.getByRole('link', { name: 'Kitchen', exact: true }).click();
    await page
      .getByRole('heading', { name: 'Your kitchen' })
      .or(page.getByText('Your kitchen'))
      .first()
      .waitFor();
    await picture('1-kitchen-hall');
  });

  it('keep the run readable from two metres at every kind of stage', async () => {
    await page.setViewportSize({ width: 1280, height: 800 });
    await beginDemo(page, `${site.url}/#/kitchen`, 'Flat with coils');
    const kinds: readonly (readonly [string, (s: Awaited<ReturnType<typeof look>>) => boolean])[] =
      [
        ['3-run-gate', (s) => s.action === 'Yes, it is so'],
        ['3-run-clean', (s) => s.action.startsWith('Done:')],
        ['3-run-rest', (s) => s.action === '' && s.waiting === ''],
        ['3-run-oven', (s) => /cycle run to its end/i.test(s.sentence)],
        ['3-run-boil', (s) => s.action === 'It boils'],
        ['3-run-pour', (s) => s.action === 'Poured'],
        ['3-run-cold', (s) => s.action === 'Cold water poured'],
        ['3-run-warm-up', (s) => /until it glows/i.test(s.sentence)],
        ['3-run-glow', (s) => /let it glow/i.test(s.sentence)],
      ];
    for (const [name, is] of kinds) {
      await actUntil(page, (s) => s.status === 'closed' || is(s));
      if ((await look(page)).status === 'closed') throw new Error(`${name} never came`);
      await picture(name);
      await page.setViewportSize({ width: 1280, height: 800 });
      if (await page.locator('.countdown-digits').isVisible()) await readable(name);
      await page.setViewportSize({ width: 1280, height: 800 });
    }
    await page.getByRole('button', { name: 'Something happened' }).click();
    await picture('3-run-something-happened');
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    await page.getByRole('button', { name: 'Stop – make safe' }).click();
    await picture('3-run-stop');
    await page.getByRole('button', { name: 'Stop the run now' }).click();
    await picture('3-run-closing');
    for (let n = 0; n < 12 && (await look(page)).status === 'closing'; n += 1)
      await press(page, '.closing .button--ember');
    await page.getByRole('link', { name: 'See the record' }).click();
    await page.getByRole('article', { name: 'Record of the run' }).waitFor();
    await picture('4-record');
  });
});
