/**
 * Draws the icons that a device puts on its home screen from public/icon.svg, in a real browser:
 * `npm run icons`. Those of Android may be cut to any shape, so that what is drawn stays within
 * the inner 80 %; that of iOS has no see-through corner, since the device rounds it itself.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { findBrowser } from '../tests/browser/support/browser/find-browser.ts';

type Icon = {
  readonly file: string;
  readonly sidePx: number;
  /** Its ground reaches into the corners. */
  readonly isFull: boolean;
  /** Share of the side that the drawing takes. */
  readonly share: number;
};

const ICONS: readonly Icon[] = [
  { file: 'icon-192.png', sidePx: 192, isFull: false, share: 1 },
  { file: 'icon-512.png', sidePx: 512, isFull: false, share: 1 },
  { file: 'icon-maskable-512.png', sidePx: 512, isFull: true, share: 0.76 },
  { file: 'apple-touch-icon.png', sidePx: 180, isFull: true, share: 0.9 },
];
const FOLDER = join(import.meta.dirname, '..', 'public');
const GROUND = /<rect [^>]*fill="(#[0-9a-f]{6})"\/>/;

function page({ sidePx, isFull, share }: Icon, svg: string): string {
  const ground = GROUND.exec(svg)?.[1];
  if (ground === undefined)
    throw new Error(
      'public/icon.svg has no ground; allowed: a rect with a fill of six hex digits, first in it.',
    );
  const drawn = isFull ? svg.replace(GROUND, '') : svg;
  const side = Math.round(sidePx * share);
  return `<style>body{margin:0;width:${sidePx}px;height:${sidePx}px;display:grid;place-items:center;background:${isFull ? ground : 'transparent'}}svg{width:${side}px;height:${side}px}</style>${drawn}`;
}

const { path, env } = await findBrowser();
const browser = await chromium.launch({
  executablePath: path,
  env: { ...process.env, ...env } as Record<string, string>,
  args: ['--no-sandbox', '--disable-gpu'],
});
try {
  const svg = readFileSync(join(FOLDER, 'icon.svg'), 'utf8');
  for (const icon of ICONS) {
    const { sidePx } = icon;
    const tab = await browser.newPage({ viewport: { width: sidePx, height: sidePx } });
    await tab.setContent(page(icon, svg));
    writeFileSync(join(FOLDER, icon.file), await tab.screenshot({ omitBackground: true }));
    await tab.close();
  }
} finally {
  await browser.close();
}
