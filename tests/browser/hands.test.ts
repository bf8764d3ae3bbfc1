import { describe, expect, it } from 'vitest';
import { onTablet } from './support/on-tablet.ts';
import { pause } from './support/screen.ts';
import { FINGER, touchAt, type Touch } from './support/touch.ts';

/** Wet hands, a splash, an elbow, a pedal and a keyboard on the Run screen, in a real browser. */
const on = onTablet('file', async (at) => {
  const screen = await at.open();
  await screen.resize(1280, 800);
  await screen.beginRun();
  await screen.waitForElement('.stage-sentence');
});

const touch = (selector: string, how: Touch): Promise<void> => touchAt(on.screen, selector, how);

/** The step and its action in one text, without the times, which run. */
const read = async (): Promise<string> => {
  const { wakeInS: _runs, text: _all, sound: _light, ...still } = await on.screen.look();
  const bar = await on.screen.see<string>("document.querySelector('.main-bar')?.innerText ?? ''");
  return JSON.stringify([still, bar]);
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
  await on.screen.shift({ wallMs: 1100, monoMs: 1100 });
  await on.screen.page.keyboard.press(name);
}

const asks = (): Promise<string[]> => on.screen.page.locator('.gate-ask').allInnerTexts();
/** Lines of the cleaning list that are not ticked. */
const openLines = (): Promise<number> =>
  on.screen.page.locator('.tick-row[aria-pressed="false"]').count();
const blur = (): Promise<void> => on.screen.see('document.activeElement?.blur()');

const pedalChoice = () => on.screen.page.locator('input[name="pedalActs"]');

async function pedalActs(isOn: boolean): Promise<void> {
  await on.screen.press('settings');
  await pedalChoice().setChecked(isOn);
  await on.screen.closeDialog();
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
    const corner = await on.screen.page.locator('.stop-corner').boundingBox();
    await touch('.stop-corner', { ...FINGER, radiusX: 2, radiusY: 2 });
    await pause(300);
    expect(await on.screen.dialog().count()).toBe(0);
    await touch('.stop-corner', FINGER);
    const stop = on.screen.page.locator('[data-action="stop-run"]');
    await stop.waitFor();
    const second = await stop.boundingBox();
    if (!corner || !second) throw new Error('Stop is not on the screen.');
    const apart =
      second.y > corner.y + corner.height ||
      second.x > corner.x + corner.width ||
      second.x + second.width < corner.x;
    expect(apart).toBe(true);
    await touch('[data-action="stop-run"]', { ...FINGER, also: [[30, 8]] });
    expect((await on.screen.look()).status).toBe('running');
    await touch('[data-action="keep-going"]', FINGER);
    await on.screen.dialog().waitFor({ state: 'detached' });
    expect((await on.screen.look()).status).toBe('running');
  });
});

describe('keys and pedals', () => {
  it('never answer a gate from the page: Space, Enter and the pedal only show the question', async () => {
    await pedalActs(true);
    await on.screen.actUntil({ action: 'answer-gate' });
    const asked = await asks();
    for (const name of ['Enter', 'Space', 'PageDown', 'ArrowRight', 'Enter', 'PageDown']) {
      await key(name);
      await pause(60);
      expect(await asks(), name).toEqual(asked);
    }
    const focused = await on.screen.page.evaluate(() => document.activeElement?.className);
    expect(focused).toBe('gate-ask');
  });

  it('answer it on its own button: Tab to it, then Enter; and the next one anew', async () => {
    const button = on.screen.page.locator('[data-action="answer-gate"]');
    const focused = () => button.evaluate((element) => element === document.activeElement);
    for (let answered = 0; answered < 2; answered += 1) {
      await on.screen.actUntil({ action: 'answer-gate' });
      const asked = await asks();
      for (let n = 0; n < 40 && !(await focused()); n += 1)
        await on.screen.page.keyboard.press('Tab');
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
    await on.screen.actUntil({ action: 'start-step' });
    await blur();
    const before = await read();
    await key('Space');
    expect(await after(before)).not.toBe(before);
    await on.screen.actUntil({ action: 'tick' });
    const left = await openLines();
    await on.screen.shift({ wallMs: 1100, monoMs: 1100 });
    await on.screen.page.keyboard.down('Enter');
    for (let n = 0; n < 6; n += 1) {
      await on.screen.shift({ wallMs: 500, monoMs: 500 });
      await on.screen.page.keyboard.down('Enter');
    }
    await on.screen.page.keyboard.up('Enter');
    await expect.poll(openLines).toBe(left - 1);
    await pause(300);
    expect(await openLines()).toBe(left - 1);
  });

  it('tick a cleaning list off; the step ends only when no line is open', async () => {
    await on.screen.actUntil({ action: 'tick' });
    await on.screen.press('tick-rest');
    await expect.poll(async () => (await on.screen.look()).action).toBe('confirm');
    await on.screen.pressAt('.tick-row');
    await expect.poll(async () => (await on.screen.look()).action).toBe('tick');
    expect(await openLines()).toBe(1);
  });

  it('open what makes safe with S or Escape, press nothing in it, and give the focus back', async () => {
    const settings = on.screen.page.locator('[data-action="settings"]');
    await settings.focus();
    await key('s');
    const dialog = on.screen.dialog();
    await dialog.waitFor();
    await key('Enter');
    await key('Space');
    expect((await on.screen.look()).status).toBe('running');
    // Focus stays inside while it is open.
    for (let n = 0; n < 6; n += 1) {
      await on.screen.page.keyboard.press('Tab');
      const inside = await on.screen.page.evaluate(
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
    await on.screen.actUntil({ action: 'tick' });
    await blur();
    const shown = await read();
    await key('PageDown');
    expect(await after(shown)).not.toBe(shown);

    await on.screen.page.reload();
    await on.screen.waitForElement('.run-body');
    await on.screen.actUntil({ status: 'running' }, 20);
    await on.screen.press('settings');
    await expect.poll(() => pedalChoice().isChecked()).toBe(true);
    await on.screen.closeDialog();
    await pedalActs(false);
    const { sentence, status } = await on.screen.look();
    await key('PageDown');
    await key('PageUp');
    expect(await on.screen.look()).toMatchObject({ sentence, status });
  });
});

describe('a rest', () => {
  it('can be dated back to the last hot use, with how one knows', async () => {
    await on.screen.actUntil({ isQuiet: true });
    const { page } = on.screen;
    const row = page.locator('[data-timer][data-role="hold"]').first();
    const timer = await row.getAttribute('data-timer');
    await row.locator('[data-action="timer"]').click();
    await on.screen.press('was-earlier');
    const count = page.locator('[data-action="count-from-then"]');
    expect(await count.isDisabled()).toBe(true);
    const field = page.locator('input[name="since"]');
    const began = await field.inputValue();
    const earlier = await on.screen.page.evaluate((text) => {
      const at = new Date(new Date(text).getTime() - 3 * 3600_000);
      return new Date(at.getTime() - at.getTimezoneOffset() * 60_000).toISOString().slice(0, 16);
    }, began);
    await field.fill(earlier);
    await page.locator('input[name="reason"]').fill('Dinner was at noon.');
    await count.click();
    await expect
      .poll(() => page.locator(`[data-timer="${timer}"] .clock-left`).innerText())
      .toMatch(/^2[01]\D/);
  });

  it('is listed with its end, and with what hands can do after it', async () => {
    const days = on.screen.page.locator('.stage--quiet .days');
    await expect.poll(() => days.innerText()).toMatch(/\d\d:\d\d/);
    expect(await days.locator('.days-list li').count()).toBeGreaterThan(0);
    expect(await days.locator('[data-when="run.days.tomorrow"]').count()).toBe(1);
  });
});
