import { describe, expect, it } from 'vitest';
import { onTablet } from './support/on-tablet.ts';
import { lookAtStages } from './support/stages.ts';

/** Pictures of the four pages, to be looked at; and what no picture may show: anything cut off at the side. */
const FOLDER = 'screens';
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
 * The time is the picture: ink of its digits, mm. 20 minutes of arc at 2 m, the
 * preferred character height of ISO 9241-3 and NUREG-0700 (from memory), would
 * be 11.6 mm.
 */
const LEAST_MM = { small: 18, large: 25 } as const;
const LARGE_FROM_IN = 10;

const on = onTablet('file', async (at) => {
  await at.open();
});

/** One state in both orientations and both themes; nothing may reach past the right edge. */
async function picture(name: string): Promise<void> {
  for (const theme of ['day', 'night'] as const) {
    await on.screen.setTheme(theme);
    for (const size of SIZES) {
      // A phone is for the run; a kitchen is described and planned on something larger.
      if (size.name === 'phone' && !name.startsWith('3-run')) continue;
      await on.screen.resize(size.widthPx, size.heightPx);
      await on.screen.picture(`${FOLDER}/${name}-${size.name}-${theme}`);
      expect(
        await on.screen.widthPx(),
        `${name} ${size.name}: width of the page`,
      ).toBeLessThanOrEqual(size.widthPx);
    }
  }
}

/** Height of the huge digits as drawn, CSS px: the ink of their glyphs, measured on a canvas in their own face. */
function digitHeightPx(): Promise<number> {
  return on.screen.page
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

/** On every tablet, held either way: the digits are as tall as they must be and nothing of them is cut off. */
async function readable(name: string): Promise<void> {
  const found: string[] = [];
  for (const { diagonalIn, longPx, shortPx } of TABLETS) {
    const pxPerIn = Math.hypot(longPx, shortPx) / diagonalIn;
    for (const [widthPx, heightPx] of [
      [longPx, shortPx],
      [shortPx, longPx],
    ] as const) {
      await on.screen.resize(widthPx, heightPx);
      const heightMm = ((await digitHeightPx()) / pxPerIn) * MM_PER_IN;
      const where = `${name}, ${diagonalIn} in, ${widthPx} × ${heightPx}`;
      found.push(`${widthPx}×${heightPx} ${heightMm.toFixed(1)}`);
      expect
        .soft(heightMm, where)
        .toBeGreaterThanOrEqual(diagonalIn < LARGE_FROM_IN ? LEAST_MM.small : LEAST_MM.large);
      const box = await on.screen.page.locator('.countdown-digits').first().boundingBox();
      const frame = await on.screen.page.locator('.stage').boundingBox();
      if (!box || !frame) throw new Error(`${where}: no digits on the stage.`);
      expect.soft(box.y + box.height, `${where}: foot`).toBeLessThanOrEqual(frame.y + frame.height);
      const endPx = await on.screen.page
        .locator('.countdown-digits')
        .first()
        .evaluate((element) => element.scrollWidth - element.clientWidth);
      expect.soft(endPx, `${where}: width`).toBeLessThanOrEqual(1);
    }
  }
  console.log(`digits of ${name}, mm: ${found.join(', ')}`);
}

describe('the four pages', () => {
  it('look right in both orientations, by day and by night', async () => {
    const { screen } = on;
    await screen.waitForElement('.demo');
    await picture('1-kitchen-welcome');
    await screen.openDemo('hall');
    await picture('2-plan-hall');
    for (const part of ['methods', 'steps', 'pours', 'heat', 'ask', 'lists']) {
      await screen.openPart(part);
      await picture(`2-plan-hall-${part}`);
    }
    await screen.goTo('kitchen');
    await screen.button('kitchen.change').waitFor();
    await picture('1-kitchen-hall');
  });

  it('keep the run readable from two metres at every kind of stage', async () => {
    const { screen } = on;
    await screen.resize(1280, 800);
    await on.load('kitchen');
    await screen.beginRun();
    await lookAtStages(screen, {
      stage: async (name) => {
        await picture(`3-run-${name}`);
        await screen.resize(1280, 800);
        if (await screen.page.locator('.countdown-digits').first().isVisible())
          await readable(`3-run-${name}`);
        await screen.resize(1280, 800);
      },
    });
    await screen.press('happened');
    await screen.dialog().waitFor();
    await picture('3-run-something-happened');
    await screen.closeDialog();
    await screen.press('stop');
    await screen.dialog().waitFor();
    await picture('3-run-stop');
    await screen.press('stop-run');
    await screen.waitForElement('.closing');
    await picture('3-run-closing');
    await screen.actUntil({ status: 'closed' }, 12);
    await screen.press('record');
    await screen.page.locator('main article').waitFor();
    await picture('4-record');
  });
});
