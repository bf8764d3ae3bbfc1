import { mkdirSync, readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { parseKitchen, type Kitchen } from '../../../src/core/kitchen/index.ts';
import { dropProfile, launch, newProfile, powerCut, type Running } from './browser.ts';
import { serve } from './server.ts';

/** Pictures of each page, to be looked at. */
const FOLDER = 'test-artifacts/screens';
const SIZES = [
  { name: 'landscape', widthPx: 1180, heightPx: 820 },
  { name: 'portrait', widthPx: 820, heightPx: 1180 },
] as const;
const PATIENCE_MS = 5000;
const AXE = readFileSync('node_modules/axe-core/axe.min.js', 'utf8');

export type Spot = { readonly x: number; readonly y: number };

/** A person with a new tablet who describes a kitchen; counts what the hands do. */
export class Surveyor {
  /** Taps, typed or chosen fields, drags. */
  interactions = 0;
  readonly faults: string[] = [];
  readonly page: Page;
  readonly url: string;
  readonly #running: Running;
  readonly #leave: () => Promise<void>;

  private constructor(
    page: Page,
    o: { url: string; running: Running; leave: () => Promise<void> },
  ) {
    this.page = page;
    this.url = o.url;
    this.#running = o.running;
    this.#leave = o.leave;
    page.on('pageerror', (error) => this.faults.push(error.message));
  }

  static async begin(): Promise<Surveyor> {
    mkdirSync(FOLDER, { recursive: true });
    const site = await serve();
    const profile = newProfile();
    const running = await launch(profile);
    const page = await running.context.newPage();
    await page.setViewportSize({ width: 1180, height: 820 });
    // The file that the device is handed, kept for the test.
    await page.addInitScript(() => {
      const make = URL.createObjectURL.bind(URL);
      URL.createObjectURL = (what) => {
        if (what instanceof Blob)
          void what.text().then((text) => Object.assign(window, { lastFile: text }));
        return make(what);
      };
    });
    const leave = async (): Promise<void> => {
      await powerCut(running);
      dropProfile(profile);
      await site.stop();
    };
    return new Surveyor(page, { url: site.url, running, leave });
  }

  end(): Promise<void> {
    return this.#leave();
  }

  button(name: string | RegExp): Locator {
    return this.page.getByRole('button', {
      name,
      ...(typeof name === 'string' ? { exact: true } : {}),
    });
  }

  /** One fixture of the plan. */
  piece(name: string): Locator {
    return this.page
      .locator('svg.editor-plan')
      .getByRole('button', { name: new RegExp(`^${name},`) });
  }

  field(label: string): Locator {
    return this.page.getByLabel(label, { exact: true });
  }

  async tap(target: Locator | string): Promise<void> {
    this.interactions += 1;
    const at = typeof target === 'string' ? this.button(target) : target;
    await at.click({ timeout: PATIENCE_MS });
  }

  async type(label: string, text: string): Promise<void> {
    this.interactions += 1;
    await this.field(label).fill(text, { timeout: PATIENCE_MS });
    await this.field(label).blur();
  }

  async choose(label: string, option: string): Promise<void> {
    this.interactions += 1;
    await this.field(label).selectOption({ label: option }, { timeout: PATIENCE_MS });
  }

  add(name: string): Promise<void> {
    return this.tap(this.button(new RegExp(`^Add: ${name}`)));
  }

  pick(name: string): Promise<void> {
    return this.tap(this.button(new RegExp(`^${name}`)));
  }

  /** The text of the kitchen's file as the app hands it out. */
  async fileText(): Promise<string> {
    await this.page.goto(`${this.url}/#/kitchen`);
    await this.page.evaluate(() => Object.assign(window, { lastFile: undefined }));
    await this.button('Save as file').click();
    const text = await this.page.waitForFunction(() => (window as { lastFile?: string }).lastFile);
    return String(await text.jsonValue());
  }

  /** The kitchen on the desk, as its file says. */
  async kitchen(): Promise<Kitchen> {
    const outcome = parseKitchen(await this.fileText());
    if ('problems' in outcome) throw new Error(JSON.stringify(outcome.problems, null, 2));
    return outcome.kitchen;
  }

  /** One state in both orientations and themes: nothing reaches past the right edge, nothing bars anyone. */
  async picture(name: string): Promise<void> {
    const { page } = this;
    for (const theme of ['day', 'night'] as const) {
      await page.evaluate((t) => (document.documentElement.dataset['theme'] = t), theme);
      for (const { name: way, widthPx, heightPx } of SIZES) {
        await page.setViewportSize({ width: widthPx, height: heightPx });
        await page.screenshot({ path: `${FOLDER}/${name}-${way}-${theme}.png` });
        const pageWidthPx = await page.evaluate(() => document.documentElement.scrollWidth);
        expect(pageWidthPx, `${name} ${way}: width of the page`).toBeLessThanOrEqual(widthPx);
      }
      expect(await this.#barriers(), `${name} by ${theme}`).toEqual([]);
    }
    await page.evaluate(() => (document.documentElement.dataset['theme'] = 'day'));
    await page.setViewportSize({ width: 1180, height: 820 });
  }

  /** Labels, roles and contrast, as WCAG 2.2 A and AA have them (axe-core). */
  async #barriers(): Promise<readonly string[]> {
    await this.page.evaluate(AXE);
    return this.page.evaluate(async () => {
      const { axe } = window as unknown as { axe: typeof import('axe-core') };
      const { violations } = await axe.run(document, {
        runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
      });
      return violations.flatMap((v) =>
        v.nodes.map((n) => `${v.id}: ${n.html.slice(0, 160)} ${n.failureSummary ?? ''}`),
      );
    });
  }

  /** By mouse, in a few moves; `before` sees the drawing while it is held. */
  async drag(from: Spot, by: Spot, before?: () => Promise<void>): Promise<void> {
    this.interactions += 1;
    const { mouse } = this.page;
    await mouse.move(from.x, from.y);
    await mouse.down();
    await mouse.move(from.x + by.x / 2, from.y + by.y / 2, { steps: 4 });
    await mouse.move(from.x + by.x, from.y + by.y, { steps: 4 });
    await before?.();
    await mouse.up();
  }

  /** Touches as the digitizer reports them: so wide, so long, so many. */
  async touch(
    points: readonly Spot[],
    o: { heldMs: number; radiusPx?: number; to?: readonly Spot[] },
  ): Promise<void> {
    const cdp = await this.#running.context.newCDPSession(this.page);
    const radius = o.radiusPx ?? 12;
    const at = (all: readonly Spot[]) =>
      all.map((p, id) => ({ ...p, id, radiusX: radius, radiusY: radius }));
    await cdp.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(points) });
    for (const spot of o.to ?? [])
      await cdp.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at([spot]) });
    await new Promise((resolve) => setTimeout(resolve, o.heldMs));
    await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    await cdp.detach();
  }
}

/** The middle of what is on the screen. */
export async function middleOf(target: Locator): Promise<Spot> {
  const box = await target.boundingBox();
  if (!box) throw new Error('Not on the screen.');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}
