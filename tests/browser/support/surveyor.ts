import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect } from 'vitest';
import { parseKitchen, type Kitchen } from '../../../src/core/kitchen/index.ts';
import type { MessageKey, ParamArgs } from '../../../src/core/messages/index.ts';
import { axeFindsNothing } from './axe.ts';
import { t } from './language.ts';
import { OnTablet } from './on-tablet.ts';
import type { Screen } from './screen.ts';

const SIZES = [
  { name: 'landscape', widthPx: 1180, heightPx: 820 },
  { name: 'portrait', widthPx: 820, heightPx: 1180 },
] as const;

export type Spot = { readonly x: number; readonly y: number };

/** A text as it stands at the beginning of a name, in which every space is a plain one. */
function beginning(text: string): RegExp {
  const plain = text.replaceAll(/\s+/gu, ' ');
  return new RegExp(`^${plain.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`)}`);
}

/** Ids of shared/survey.json that the tests add. */
type OfferId =
  | 'counter'
  | 'sink-1'
  | 'coil-4'
  | 'oven-pyrolytic'
  | 'hood'
  | 'microwave'
  | 'cupboard'
  | 'drawer'
  | 'table'
  | 'fridge';

/** A person with a new tablet who describes a kitchen; counts what the hands do. */
export class Surveyor {
  readonly on = new OnTablet();
  /** Taps, typed or chosen fields, drags. */
  interactions = 0;
  readonly faults: string[] = [];

  get screen(): Screen {
    return this.on.screen;
  }

  get page(): Page {
    return this.screen.page;
  }

  async begin(): Promise<void> {
    await this.on.serve();
    await this.on.open('', async ({ page }) => {
      page.on('pageerror', (error) => this.faults.push(error.message));
      // The file that the device is handed, kept for the test.
      await page.addInitScript(() => {
        const make = URL.createObjectURL.bind(URL);
        URL.createObjectURL = (what) => {
          if (what instanceof Blob)
            void what.text().then((text) => Object.assign(window, { lastFile: text }));
          return make(what);
        };
      });
    });
  }

  button<K extends MessageKey>(key: K, ...params: ParamArgs<K>): Locator {
    return this.screen.button(key, ...params);
  }

  /** A button whose name begins with what a person called something. */
  named(name: string): Locator {
    return this.page.getByRole('button', { name: beginning(name) });
  }

  /** One fixture of the plan, by what it is called. */
  piece(name: string): Locator {
    return this.page
      .locator('svg.editor-plan')
      .getByRole('button', { name: beginning(`${name},`) });
  }

  /** The sheet of a fixture, by what it is called. */
  sheetOf(name: string): Locator {
    return this.page.getByRole('heading', { name, exact: true });
  }

  field<K extends MessageKey>(key: K, ...params: ParamArgs<K>): Locator {
    return this.screen.field(key, ...params);
  }

  async tap(target: Locator): Promise<void> {
    this.interactions += 1;
    await target.click();
  }

  /** Types into a field and leaves it. */
  async type(field: Locator, text: string): Promise<void> {
    this.interactions += 1;
    await field.fill(text);
    await field.blur();
  }

  async choose(field: Locator, label: string): Promise<void> {
    this.interactions += 1;
    await field.selectOption({ label });
  }

  add(offer: OfferId): Promise<void> {
    const offers = this.page.locator('.offer');
    return this.tap(
      offers
        .filter({ hasText: t(`survey.offer.${offer}.name`) })
        .filter({ hasText: t(`survey.offer.${offer}.tells`) }),
    );
  }

  /** One of a few choices that stand beside each other. */
  pick<K extends MessageKey>(key: K, ...params: ParamArgs<K>): Promise<void> {
    return this.tap(this.named(t(key, ...params)));
  }

  /** To a page of the app as by a link: nothing is loaded anew. */
  goTo(route: string): Promise<void> {
    return this.screen.see(`location.hash = ${JSON.stringify(`#/${route}`)}; undefined`);
  }

  /** The text of the kitchen's file as the app hands it out. */
  async fileText(): Promise<string> {
    await this.goTo('kitchen');
    await this.page.evaluate(() => Object.assign(window, { lastFile: undefined }));
    await this.button('kitchen.save-file').click();
    return this.screen.waitFor<string>('window.lastFile', 'the file of the kitchen');
  }

  /** The kitchen that is open, as its file says. */
  async kitchen(): Promise<Kitchen> {
    const outcome = parseKitchen(await this.fileText());
    if ('problems' in outcome) throw new Error(JSON.stringify(outcome.problems, null, 2));
    return outcome.kitchen;
  }

  /** One state in both orientations and themes: nothing reaches past the right edge, nothing bars anyone. */
  async picture(name: string): Promise<void> {
    for (const { name: way, widthPx, heightPx } of SIZES) {
      await this.screen.resize(widthPx, heightPx);
      for (const theme of ['day', 'night'] as const) {
        await this.screen.setTheme(theme);
        await this.screen.picture(`screens/${name}-${way}-${theme}`);
      }
      expect(await this.screen.widthPx(), `${name} ${way}: width of the page`).toBeLessThanOrEqual(
        widthPx,
      );
    }
    await axeFindsNothing(this.screen, name);
    await this.screen.setTheme('day');
    await this.screen.resize(1180, 820);
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
    const { cdp } = this.screen;
    const radius = o.radiusPx ?? 12;
    const at = (all: readonly Spot[]) =>
      all.map((p, id) => ({ ...p, id, radiusX: radius, radiusY: radius }));
    await cdp.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(points) });
    for (const spot of o.to ?? [])
      await cdp.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at([spot]) });
    await new Promise((resolve) => setTimeout(resolve, o.heldMs));
    await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  }
}

/** A surveyor for a whole file; `prepare` begins the work. */
export function surveyor(prepare?: (me: Surveyor) => Promise<void>): Surveyor {
  const me = new Surveyor();
  beforeAll(async () => {
    await me.begin();
    await prepare?.(me);
  });
  afterAll(() => me.on.end());
  return me;
}

/** The middle of what is on the screen. */
export async function middleOf(target: Locator): Promise<Spot> {
  const box = await target.boundingBox();
  if (!box) throw new Error('Not on the screen.');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}
