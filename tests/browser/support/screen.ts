import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import type { CDPSession, Locator, Page } from 'playwright-core';
import type { MessageKey, ParamArgs, Translator } from '../../../src/core/messages/index.ts';
import { installHands, type Seen, type TestHands, type Wanted } from './in-page/hands.ts';
import { installTouch } from './in-page/touch.ts';
import type { Tablet } from './tablet.ts';

const ARTIFACTS = 'test-artifacts';
/** Of a tablet of 10.9 inches held sideways, CSS px. */
const USUAL_SIZE = { width: 1180, height: 820 };
const PATIENCE_MS = 15_000;

declare global {
  // oxlint-disable-next-line no-var
  var hands: TestHands;
}

export const pause = (ms: number): Promise<void> =>
  new Promise((resolve) => setTimeout(resolve, ms));

/** The demo kitchens that come with the app, by id. */
export type DemoId = 'flat-coils' | 'mountain-gas' | 'flat-glass-230' | 'hall';

/** Address of a page of the app; without a route as it is opened first. */
export function addressOf(url: string, route = ''): string {
  return route === '' ? url : `${url}/#/${route}`;
}

/** What the device tells the page of its owner's languages (BCP 47). */
function setLanguages(language: string): void {
  Object.defineProperty(navigator, 'languages', { get: () => [language] });
}

/** One page on a tablet, with the hands and eyes of a person before it. */
export class Screen {
  readonly page: Page;
  readonly cdp: CDPSession;
  /** Of the language that the page speaks. */
  readonly translator: Translator;

  private constructor(page: Page, cdp: CDPSession, translator: Translator) {
    this.page = page;
    this.cdp = cdp;
    this.translator = translator;
  }

  /** A new page on a tablet; `before` prepares it, then the address is opened, when one is given. */
  static async open(
    tablet: Tablet,
    address?: string,
    before?: (screen: Screen) => Promise<void>,
  ): Promise<Screen> {
    const page = await tablet.context.newPage();
    page.setDefaultTimeout(PATIENCE_MS);
    await page.setViewportSize(USUAL_SIZE);
    const cdp = await tablet.context.newCDPSession(page);
    const screen = new Screen(page, cdp, tablet.translator);
    await page.addInitScript(installHands, tablet.wallShiftMs);
    await page.addInitScript(installTouch);
    await page.addInitScript(setLanguages, tablet.translator.language);
    await before?.(screen);
    if (address !== undefined) await page.goto(address);
    return screen;
  }

  /**
   * Evaluates in the page without counting as a person's touch, which the
   * driver's own evaluation does: that would unlock the sound.
   */
  async see<T>(expression: string): Promise<T> {
    const { result, exceptionDetails } = await this.cdp.send('Runtime.evaluate', {
      expression,
      awaitPromise: true,
      returnByValue: true,
      userGesture: false,
    });
    if (exceptionDetails)
      throw new Error(exceptionDetails.exception?.description ?? exceptionDetails.text);
    return result.value as T;
  }

  look(): Promise<Seen> {
    return this.see('hands.look()');
  }

  act(): Promise<void> {
    return this.see('hands.act()');
  }

  /** Acts as the person does until it is as wanted. */
  actUntil(wanted: Wanted, most = 400): Promise<Seen> {
    return this.see(`hands.actUntil(${JSON.stringify(wanted)}, ${most})`);
  }

  /** Both clocks forward, ms; the page wakes at once. */
  jump(ms: number): Promise<void> {
    return this.see(`hands.jump(${ms})`);
  }

  /** Only what is named, ms; nothing is told to the page. */
  shift(by: { readonly wallMs?: number; readonly monoMs?: number }): Promise<void> {
    return this.see(`hands.shift(${JSON.stringify(by)})`);
  }

  shifted(): Promise<{ readonly wallMs: number; readonly monoMs: number }> {
    return this.see('hands.shifted()');
  }

  /** Evaluates until it gives something. */
  async waitFor<T>(expression: string, what: string, limitMs = PATIENCE_MS): Promise<T> {
    const endMs = Date.now() + limitMs;
    for (;;) {
      const value = await this.see<T | null>(expression).catch(() => null);
      if (value) return value;
      if (Date.now() > endMs) {
        const text = await this.see<string>('document.body.innerText').catch(() => '');
        throw new Error(`Not within ${limitMs / 1000} s: ${what}. On the screen: ${text}`);
      }
      await pause(50);
    }
  }

  /** Waits until all of the app lies on the tablet: three megabytes in some two hundred files. */
  async keptOffline(): Promise<void> {
    await this.waitFor('navigator.serviceWorker.controller', 'kept offline', 90_000);
  }

  /** Waits until an element is there, or gone. */
  async waitForElement(selector: string, state: 'there' | 'gone' = 'there'): Promise<void> {
    const found = `document.querySelector(${JSON.stringify(selector)})`;
    await this.waitFor(state === 'there' ? `${found} !== null` : `${found} === null`, selector);
  }

  /** Looks until what is seen is as wanted; fails with what was last seen. */
  async until(what: string, is: (seen: Seen) => boolean, limitMs = PATIENCE_MS): Promise<Seen> {
    const endMs = Date.now() + limitMs;
    for (;;) {
      const seen = await this.look().catch(() => undefined);
      if (seen && is(seen)) return seen;
      if (Date.now() > endMs)
        throw new Error(`Not within ${limitMs / 1000} s: ${what}. Seen: ${JSON.stringify(seen)}`);
      await pause(100);
    }
  }

  /**
   * Presses the first that is seen of a selector, by a real touch of the pointer, once it stands
   * still; a touch that met something else, since the page moved under it, is made again.
   */
  async pressAt(selector: string): Promise<void> {
    const named = JSON.stringify(selector);
    const endMs = Date.now() + PATIENCE_MS;
    for (;;) {
      const spot = await this.waitFor<{ x: number; y: number }>(`touch.aim(${named})`, selector);
      // Past the guard against bounces.
      await this.shift({ wallMs: 400, monoMs: 400 });
      await this.see(`touch.expect(${named})`);
      await this.page.mouse.click(spot.x, spot.y);
      // A touch that leads to another page takes its watch along: it has met what it should.
      const met = await this.see<string>("globalThis.touch?.missed() ?? ''").catch(() => '');
      if (met === '') return;
      if (Date.now() > endMs) throw new Error(`A touch of ${selector} always meets ${met}`);
    }
  }

  /** Presses the first control that does this (`data-action`), whatever it is called. */
  press(action: string): Promise<void> {
    return this.pressAt(`[data-action="${action}"]`);
  }

  /** Goes to one of the four pages by their line. */
  goTo(page: 'kitchen' | 'plan' | 'run' | 'record'): Promise<void> {
    return this.pressAt(`[data-page="${page}"]`);
  }

  /** Opens one part of the plan. */
  openPart(part: string): Promise<void> {
    return this.pressAt(`[data-part="${part}"]`);
  }

  /** A button by its key in the catalogue. */
  button<K extends MessageKey>(key: K, ...params: ParamArgs<K>): Locator {
    return this.page.getByRole('button', { name: this.translator.t(key, ...params), exact: true });
  }

  /** A heading by its key in the catalogue. */
  heading<K extends MessageKey>(key: K, ...params: ParamArgs<K>): Locator {
    return this.page.getByRole('heading', { name: this.translator.t(key, ...params), exact: true });
  }

  /** A field or a list to choose from, by the key of its label. */
  field<K extends MessageKey>(key: K, ...params: ParamArgs<K>): Locator {
    const name = this.translator.t(key, ...params);
    // A label that is written round a list holds the words of all its choices too.
    const list = this.page.getByRole('combobox', { name, exact: true });
    return this.page.getByLabel(name, { exact: true }).or(list);
  }

  /** The dialog that lies over the page. */
  dialog(): Locator {
    return this.page.locator('dialog[open]');
  }

  async closeDialog(): Promise<void> {
    await this.page.keyboard.press('Escape');
    await this.dialog().waitFor({ state: 'detached' });
  }

  async resize(width: number, height: number): Promise<void> {
    await this.page.setViewportSize({ width, height });
  }

  async setTheme(theme: 'day' | 'night'): Promise<void> {
    await this.see(`document.documentElement.dataset.theme = ${JSON.stringify(theme)}`);
  }

  /** Width of what the page holds, CSS px: more than the screen is cut off at the side. */
  widthPx(): Promise<number> {
    return this.see('document.documentElement.scrollWidth');
  }

  /** What is on the screen as a file, or the whole page, to be looked at; without a touch of the page. */
  async picture(name: string, isWhole = false): Promise<void> {
    if (process.env['GLOWPOUR_PICTURES'] === 'none') return;
    const file = `${ARTIFACTS}/${name}.png`;
    mkdirSync(dirname(file), { recursive: true });
    const { data } = await this.cdp.send('Page.captureScreenshot', {
      format: 'png',
      ...(isWhole && { captureBeyondViewport: true, clip: await this.#wholePage() }),
    });
    writeFileSync(file, Buffer.from(data, 'base64'));
  }

  async #wholePage() {
    const { cssContentSize } = await this.cdp.send('Page.getLayoutMetrics');
    return { ...cssContentSize, scale: 1 };
  }

  /** Opens a demo kitchen; its plan is shown. */
  async openDemo(demo: DemoId): Promise<void> {
    await this.page
      .locator('.demo', { hasText: this.translator.t(`kitchen.demo.${demo}.name`) })
      .click();
    await this.waitForElement('.plan-place');
  }

  /** From the welcome screen to the start of a run, before the hearing check. */
  async prepareRun(demo: DemoId = 'flat-coils'): Promise<void> {
    await this.openDemo(demo);
    await this.button('plan-page.start-run').click();
    await this.waitForElement('.start-screen');
  }

  /** Plays the alarm and says it was heard; where the machine has no sound, takes the written way round. */
  async passHearingCheck(): Promise<void> {
    await this.press('play-alarm');
    const answer = '[data-action="heard"], .hearing input[name="deaf"]';
    await this.waitForElement(answer);
    const isHeard = await this.see<boolean>(
      `document.querySelector('[data-action="heard"]') !== null`,
    );
    await this.pressAt(isHeard ? '[data-action="heard"]' : '.hearing input[name="deaf"]');
  }

  /** From the welcome screen to a begun run, through the hearing check. */
  async beginRun(demo: DemoId = 'flat-coils'): Promise<void> {
    await this.prepareRun(demo);
    await this.passHearingCheck();
    await this.press('start-run');
    await this.until('the run begins', ({ status }) => status === 'running');
  }
}
