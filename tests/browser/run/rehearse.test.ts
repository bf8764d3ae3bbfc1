import { describe, expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';
import type { Screen } from '../support/screen.ts';

/** Counts what a run would ask of the tablet; from before the page's own scripts on. */
function countAsked(): void {
  const asked = { wake: 0, sounds: 0 };
  Object.assign(globalThis, { asked });
  const lock = navigator.wakeLock?.request.bind(navigator.wakeLock);
  if (lock)
    navigator.wakeLock.request = (kind) => {
      asked.wake += 1;
      return lock(kind);
    };
  const start = Object.getOwnPropertyDescriptor(AudioBufferSourceNode.prototype, 'start')
    ?.value as AudioBufferSourceNode['start'];
  AudioBufferSourceNode.prototype.start = function counted(...at) {
    // One frame of nothing unlocks the sound of the page at any first touch.
    if ((this.buffer?.length ?? 0) > 1) asked.sounds += 1;
    start.apply(this, at);
  };
}

/** All that lies on the tablet: every table of the database, and the small store beside it. */
function kept(screen: Screen): Promise<string> {
  return screen.see(
    `new Promise((resolve, reject) => {
      const open = indexedDB.open('glowpour');
      open.onerror = () => reject(open.error);
      open.onsuccess = async () => {
        const db = open.result;
        const names = [...db.objectStoreNames];
        const all = names.length === 0 ? [] : await Promise.all(names.map((name) => new Promise((done) => {
          const rows = db.transaction([name], 'readonly').objectStore(name).getAll();
          rows.onsuccess = () => done([name, rows.result]);
        })));
        db.close();
        resolve(JSON.stringify([all, { ...localStorage }]));
      };
    })`,
  );
}

const on = onTablet('test', async (at) => {
  const screen = await at.open('', async (one) => {
    await one.page.addInitScript(countAsked);
  });
  await screen.openDemo('flat-coils');
});

const begin = async (screen: Screen): Promise<void> => {
  await screen.press('rehearse');
  await screen.waitForElement('.rehearsal .run-place');
};
const ahead = (screen: Screen): Promise<string> =>
  screen.see(`document.querySelector('.rehearsal-ahead')?.textContent ?? ''`);

const SIZES = [
  [1280, 800],
  [800, 1280],
  [390, 844],
] as const;

describe('a rehearsal of the plan', () => {
  it('shows the real screens under its band, at every size, and nothing is cut off', async () => {
    const { screen } = on;
    await begin(screen);
    await screen.press('rehearse-play');
    for (let step = 0; step < 4; step += 1) await screen.press('rehearse-step');
    for (const [width, height] of SIZES) {
      await screen.resize(width, height);
      await screen.waitForElement('.rehearsal-band');
      // The ground moves a frame after the band has grown.
      await screen.waitFor(
        `document.querySelector('.run-place').getBoundingClientRect().top >=
           document.querySelector('.rehearsal-band').getBoundingClientRect().bottom - 1`,
        `the run below its band at ${width}`,
      );
      expect(await screen.widthPx()).toBeLessThanOrEqual(width);
      await screen.picture(`rehearse/step-${width}`);
      await screen.press('steps');
      await screen.waitForElement('dialog[open] .rehearsal-band');
      await screen.picture(`rehearse/sheet-${width}`);
      await screen.closeDialog();
    }
    await screen.setTheme('night');
    await screen.picture('rehearse/night');
  });

  it('keeps all that is pressed beside the step on the screen of a tablet, however much is told there', async () => {
    const { screen } = on;
    await screen.resize(1280, 800);
    await begin(screen);
    await screen.press('rehearse-play');
    for (let step = 0; step < 50; step += 1) await screen.press('rehearse-step');
    expect(
      await screen.see('document.querySelectorAll(".run-side .clock-row").length'),
    ).toBeGreaterThan(2);
    expect(
      await screen.see(
        `(({ scrollHeight, clientHeight }) => scrollHeight - clientHeight)(document.querySelector('.run-side'))`,
      ),
    ).toBe(0);
  });

  it('stands while paused, and goes one thing further at each step', async () => {
    const { screen } = on;
    await begin(screen);
    await screen.press('rehearse-play');
    const opening = await ahead(screen);
    await screen.jump(60_000);
    expect(await ahead(screen)).toBe(opening);
    expect((await screen.look()).status).toBe('drafting');
    await screen.press('rehearse-step');
    await screen.until('the run begins', ({ status }) => status === 'running');
    expect(await ahead(screen)).not.toBe(opening);
  });

  it('announces a gate and answers it on the screen', async () => {
    const { screen } = on;
    await begin(screen);
    await screen.press('rehearse-play');
    const asks = `document.querySelector('.rehearsal[data-presses] [data-action="answer-gate"]') !== null`;
    for (let step = 0; step < 120 && !(await screen.see<boolean>(asks)); step += 1)
      await screen.press('rehearse-step');
    expect(await screen.see(asks)).toBe(true);
    await screen.picture('rehearse/gate');
    const before = await ahead(screen);
    await screen.press('rehearse-step');
    expect(await ahead(screen)).not.toBe(before);
  });

  it('plays itself to the end in silence, and leaves the tablet as it was', async () => {
    const { screen } = on;
    const before = await kept(screen);
    await begin(screen);
    await screen.press('rehearse-faster');
    await screen.press('rehearse-faster');
    await screen.waitFor(
      `document.querySelector('[data-rehearsal="over"]') !== null`,
      'the end of the rehearsal',
      240_000,
    );
    await screen.picture('rehearse/over');
    expect(await screen.see('asked')).toEqual({ wake: 0, sounds: 0 });
    await screen.press('rehearse-leave');
    await screen.waitForElement('.plan-place');
    expect(await kept(screen)).toBe(before);
    // And the record knows of no run.
    await screen.goTo('record');
    await screen.waitForElement('main');
    expect(await screen.page.locator('main article').count()).toBe(0);
  });

  it('keeps theme and choices to itself', async () => {
    const { screen } = on;
    const before = await kept(screen);
    const theme = () => screen.see<string>('document.documentElement.dataset.theme');
    const was = await theme();
    await begin(screen);
    await screen.press('rehearse-play');
    await screen.press('rehearse-step');
    await screen.pressAt('.theme-switch');
    expect(await theme()).not.toBe(was);
    await screen.press('settings');
    await screen.pressAt('dialog input[name="pedalActs"]');
    await screen.closeDialog();
    await screen.press('rehearse-leave');
    await screen.waitForElement('.plan-place');
    expect(await theme()).toBe(was);
    expect(await kept(screen)).toBe(before);
  });

  it('is refused while a run is open, and says so', async () => {
    const { screen } = on;
    await screen.button('plan-page.start-run').click();
    await screen.waitForElement('.start-screen');
    await screen.passHearingCheck();
    await screen.press('start-run');
    await screen.until('the run begins', ({ status }) => status === 'running');
    await screen.goTo('plan');
    await screen.press('rehearse');
    await screen.waitForElement('[data-key="plan-page.rehearse.run-open"]');
    expect(await screen.page.locator('.rehearsal').count()).toBe(0);
  });
});
