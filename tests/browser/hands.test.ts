import type { CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  dropProfile,
  launch,
  newProfile,
  powerCut,
  tabletPage,
  type Running,
} from './support/browser.ts';
import { act, actUntil, beginDemo, look, type Seen } from './support/person.ts';
import { serve } from './support/server.ts';
import { FINGER, pause, touchAt, type Touch } from './support/touch.ts';

/** Wet hands, a splash, an elbow, a pedal and a keyboard on the Run screen, in a real browser. */

let site: Awaited<ReturnType<typeof serve>>;
let profile: string;
let running: Running;
let page: Page;
let cdp: CDPSession;

beforeAll(async () => {
  site = await serve();
  profile = newProfile();
  running = await launch(profile);
  page = await tabletPage(running, { wallMs: Date.parse('2027-03-01T17:30:00Z') });
  cdp = await page.context().newCDPSession(page);
  await beginDemo(page, `${site.url}/#/kitchen`, 'Flat with coils');
  await page.locator('.stage-sentence').waitFor();
});
afterAll(async () => {
  await powerCut(running);
  dropProfile(profile);
  await site.stop();
});

const touch = (selector: string, how: Touch): Promise<void> => touchAt(page, cdp, selector, how);

/** The screen in one text, without the time to the next alarm, which runs. */
const read = async (): Promise<string> => {
  const { wakeInS: _runs, ...still } = await look(page);
  return JSON.stringify(still);
};

/** What the screen says once it has had time to answer. */
async function after(before: string): Promise<string> {
  for (let tries = 0; tries < 25; tries += 1) {
    const now = await read();
    if (now !== before) return now;
    await pause(20);
  }
  return before;
}

async function key(name: string): Promise<void> {
  await page.clock.fastForward(1100);
  await page.keyboard.press(name);
}

const isGate = (seen: Seen): boolean => seen.action === 'Yes, it is so';
const isBegin = (seen: Seen): boolean => seen.action === 'Begin';

const asks = (): Promise<string[]> => page.locator('.gate-ask').allInnerTexts();

async function pedalActs(on: boolean): Promise<void> {
  await page.getByRole('button', { name: 'Settings' }).click();
  await page.getByLabel(/The pedal presses the main action/).setChecked(on);
  await page.keyboard.press('Escape');
  await page.locator('dialog[open]').waitFor({ state: 'detached' });
}

describe('water on the glass', () => {
  it.each<[string, Touch]>([
    ['a drop: too small', { ...FINGER, radiusX: 1, radiusY: 1 }],
    ['a large drop', { ...FINGER, radiusX: 2.5, radiusY: 2 }],
    ['a drop that jumps off: too short', { ...FINGER, heldMs: 0 }],
    ['a wet cloth: too wide', { ...FINGER, radiusX: 130, radiusY: 90 }],
    ['a splash: two at once', { ...FINGER, also: [[60, 5]] }],
    [
      'a splash: three at once',
      {
        ...FINGER,
        also: [
          [60, 5],
          [-70, 12],
        ],
      },
    ],
    ['a wipe', { ...FINGER, slidesPx: 120 }],
  ])('presses nothing by %s', async (_name, how) => {
    const before = await read();
    await touch('.main-action', how);
    expect(await after(before)).toBe(before);
  });

  it.each<[string, Touch]>([
    ['a finger', FINGER],
    ['a knuckle', { radiusX: 24, radiusY: 20, heldMs: 140 }],
    ['an elbow', { radiusX: 80, radiusY: 70, heldMs: 260 }],
  ])('gives way to %s', async (_name, how) => {
    const before = await read();
    await touch('.main-action', how);
    expect(await after(before)).not.toBe(before);
  });

  it('cannot stop the run: the corner only opens, and the second press lies elsewhere', async () => {
    const corner = await page.locator('.stop-corner').boundingBox();
    await touch('.stop-corner', { ...FINGER, radiusX: 2, radiusY: 2 });
    await pause(300);
    expect(await page.locator('dialog[open]').count()).toBe(0);
    await touch('.stop-corner', FINGER);
    const stop = page.getByRole('button', { name: 'Stop the run now' });
    await stop.waitFor();
    const second = await stop.boundingBox();
    if (!corner || !second) throw new Error('Stop is not on the screen.');
    const apart =
      second.y > corner.y + corner.height ||
      second.x > corner.x + corner.width ||
      second.x + second.width < corner.x;
    expect(apart).toBe(true);
    await touch('dialog .button--danger', { ...FINGER, also: [[30, 8]] });
    expect((await look(page)).status).toBe('running');
    await touch('dialog .button--plain', FINGER);
    await page.locator('dialog[open]').waitFor({ state: 'detached' });
    expect((await look(page)).status).toBe('running');
  });
});

describe('keys and pedals', () => {
  it('never answer a gate from the page: Space, Enter and the pedal only show the question', async () => {
    await pedalActs(true);
    await actUntil(page, isGate);
    const asked = await asks();
    for (const name of ['Enter', 'Space', 'PageDown', 'ArrowRight', 'Enter', 'PageDown']) {
      await key(name);
      await pause(60);
      expect(await asks(), name).toEqual(asked);
    }
    const focused = await page.evaluate(() => document.activeElement?.className);
    expect(focused).toBe('gate-ask');
  });

  it('answer it on its own button: Tab to it, then Enter; and the next one anew', async () => {
    const button = page.locator('.main-action--gate');
    const focused = () => button.evaluate((element) => element === document.activeElement);
    for (let answered = 0; answered < 2; answered += 1) {
      await actUntil(page, isGate);
      const asked = await asks();
      for (let n = 0; n < 40 && !(await focused()); n += 1) await page.keyboard.press('Tab');
      expect(await button.evaluate((one) => getComputedStyle(one).outlineStyle)).toBe('solid');
      await key('Enter');
      await expect.poll(asks).not.toEqual(asked);
      // The focus stands on the next question, if there is one: the same key presses nothing.
      const next = await asks();
      if (next.length === 0) continue;
      await key('Enter');
      await key('Enter');
      expect(await asks()).toEqual(next);
    }
  });

  it('press the main action with Space and Enter, once for a held key', async () => {
    await actUntil(page, isBegin);
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    const before = await read();
    await key('Space');
    expect(await after(before)).not.toBe(before);
    await actUntil(page, (seen) => seen.action.startsWith('Done:'));
    const list = await look(page);
    await page.clock.fastForward(1100);
    await page.keyboard.down('Enter');
    for (let n = 0; n < 6; n += 1) {
      await page.clock.fastForward(500);
      await page.keyboard.down('Enter');
    }
    await page.keyboard.up('Enter');
    await expect.poll(async () => (await look(page)).action).not.toBe(list.action);
    const left = (text: string): number => Number(/Done: (\d+) left/.exec(text)?.[1] ?? 0);
    expect(left((await look(page)).action)).toBe(left(list.action) - 1);
  });

  it('tick a cleaning list off; the step ends only when no line is open', async () => {
    await actUntil(page, (seen) => seen.action.startsWith('Done:'));
    await page.locator('.checklist-rest').click();
    await expect.poll(async () => (await look(page)).action).toBe('It is clean');
    await page.locator('.tick-row').first().click();
    await expect.poll(async () => (await look(page)).action).toMatch(/^Done: 1 left/);
  });

  it('open what makes safe with S or Escape, press nothing in it, and give the focus back', async () => {
    const settings = page.getByRole('button', { name: 'Settings' });
    await settings.focus();
    await key('s');
    const dialog = page.locator('dialog[open]');
    await dialog.waitFor();
    await key('Enter');
    await key('Space');
    expect((await look(page)).status).toBe('running');
    // Focus stays inside while it is open.
    for (let n = 0; n < 6; n += 1) {
      await page.keyboard.press('Tab');
      const inside = await page.evaluate(
        () =>
          document.activeElement === document.body ||
          document.activeElement?.closest('dialog') !== null,
      );
      expect(inside).toBe(true);
    }
    await key('Escape');
    await dialog.waitFor({ state: 'detached' });
    expect(await settings.evaluate((element) => element === document.activeElement)).toBe(true);
    await key('Escape');
    await dialog.waitFor();
    await key('Escape');
    await dialog.waitFor({ state: 'detached' });
  });

  it('let the forward pedal act when so set, and else move the stage; the choice is kept', async () => {
    await actUntil(page, (seen) => seen.action.startsWith('Done:') || isBegin(seen));
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    const shown = await read();
    await key('PageDown');
    expect(await after(shown)).not.toBe(shown);

    await page.reload();
    await page.locator('.run-body').waitFor();
    for (let n = 0; n < 10 && (await look(page)).armScreen; n += 1) await act(page);
    await page.locator('.review .main-action').click();
    await expect.poll(async () => (await look(page)).status).toBe('running');
    await page.getByRole('button', { name: 'Settings' }).click();
    const choice = page.getByLabel(/The pedal presses the main action/);
    await expect.poll(() => choice.isChecked()).toBe(true);
    await page.keyboard.press('Escape');
    await pedalActs(false);
    const { sentence, status } = await look(page);
    await key('PageDown');
    await key('PageUp');
    expect(await look(page)).toMatchObject({ sentence, status });
  });
});

describe('a rest', () => {
  it('can be dated back to the last hot use, with how one knows', async () => {
    await actUntil(page, (seen) => seen.action === '' && seen.waiting === '');
    const row = page.locator('.clock-row').first();
    const name = await row.locator('.clock-name').innerText();
    await row.click();
    await page.getByRole('button', { name: 'It was last hot earlier' }).click();
    const count = page.getByRole('button', { name: 'Count from then' });
    expect(await count.isDisabled()).toBe(true);
    const field = page.getByLabel('It was last hot at');
    const began = await field.inputValue();
    const earlier = await page.evaluate((text) => {
      const at = new Date(new Date(text).getTime() - 3 * 3600_000);
      return new Date(at.getTime() - at.getTimezoneOffset() * 60_000).toISOString().slice(0, 16);
    }, began);
    await field.fill(earlier);
    await page.getByLabel(/How do you know/).fill('Dinner was at noon.');
    await count.click();
    await expect
      .poll(() =>
        page
          .locator('.clock-row', { hasText: name.split('\n')[0] ?? '' })
          .first()
          .innerText(),
      )
      .toMatch(/2[01] h/);
  });

  it('is listed with its end, and with what hands can do after it', async () => {
    const days = page.locator('.stage--quiet .days');
    await expect.poll(() => days.innerText()).toMatch(/Until when/);
    expect(await days.innerText()).toMatch(/\d\d:\d\d/);
    expect(await days.innerText()).toMatch(/Tomorrow/);
  });
});
