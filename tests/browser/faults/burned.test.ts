import { describe, expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';
import type { Screen } from '../support/screen.ts';
import { storedEntries } from '../support/stored-run.ts';

/** Somebody is burned while a burner glows: the clock of the cooling, under whatever else asks for a look. */
let screen: Screen;
const on = onTablet('file', async (at) => {
  screen = await at.open();
  await screen.resize(1280, 800);
  await screen.beginRun();
  await screen.actUntil({ kind: 'glow', stage: 'hold' }, 1500);
});

const SIZES = [
  [1280, 800],
  [800, 1280],
  [600, 960],
] as const;

const SECONDS = 1000;
const MINUTES = 60 * SECONDS;

/** What an eye meets where the clock stands: at its digits, at its words and at its edges. */
async function clockIsSeen(screen: Screen, over: string): Promise<number> {
  const seen = await screen.waitFor<{ met: string[]; inside: boolean; leftS: number }>(
    `(() => {
      const bar = document.querySelector('.cooling-bar');
      if (!bar) return null;
      const box = bar.getBoundingClientRect();
      const digits = bar.querySelector('.cooling-digits').getBoundingClientRect();
      const words = bar.querySelector('.cooling-say').getBoundingClientRect();
      const centre = (of) => [of.x + of.width / 2, of.y + of.height / 2];
      const points = [centre(digits), centre(words), [box.x + 4, box.y + 4], [box.x + 4, box.bottom - 4]];
      const met = points.map(([x, y]) =>
        document.elementFromPoint(x, y)?.closest('.cooling-bar') ? 'clock' : 'something else');
      const inside = [digits, words].every((of) =>
        of.top >= 0 && of.left >= 0 && of.right <= innerWidth && of.bottom <= box.bottom + 1);
      return { met, inside, leftS: Number(bar.dataset.leftS) };
    })()`,
    `the clock over ${over}`,
  );
  expect({ over, met: seen.met, inside: seen.inside }).toEqual({
    over,
    met: ['clock', 'clock', 'clock', 'clock'],
    inside: true,
  });
  return seen.leftS;
}

/** Hot things that wait for a word. */
const HOT_LEFT = `document.querySelectorAll('.suspended [data-action="confirm-safe"]').length`;

function hotLeft(): Promise<number> {
  return screen.see(HOT_LEFT);
}

async function everySize(screen: Screen, over: string): Promise<void> {
  for (const [width, height] of SIZES) {
    await screen.resize(width, height);
    await clockIsSeen(screen, `${over} at ${width}`);
    expect(await screen.widthPx(), `${over} at ${width}`).toBeLessThanOrEqual(width);
    await screen.picture(`burned/${over.replaceAll(' ', '-')}-${width}`);
  }
  await screen.resize(1280, 800);
}

describe('somebody is burned', () => {
  it('stands first on its sheet, above fire, gas and carbon monoxide, larger than what is wrong with the work', async () => {
    await screen.press('happened');
    await screen.dialog().waitFor();
    await screen.press('other');
    for (const [width, height] of SIZES) {
      await screen.resize(width, height);
      await screen.picture(`burned/sheet-${width}`);
      const buttons = await screen.see<{ name: string; top: number; height: number }[]>(
        `[...document.querySelectorAll('dialog [data-action^="fault-"]')].map((one) => {
          const box = one.getBoundingClientRect();
          return { name: one.dataset.action, top: box.top, height: box.height };
        })`,
      );
      const dangers = [
        'fault-burned',
        'fault-fire',
        'fault-gas-smell',
        'fault-co-alarm',
        'fault-unwell',
      ];
      expect(buttons.slice(0, 5).map(({ name }) => name)).toEqual(dangers);
      const rest = buttons.slice(5);
      expect(rest.length).toBeGreaterThan(5);
      for (const one of buttons.slice(0, 5)) {
        expect(one.height, `${one.name} at ${width}`).toBeGreaterThanOrEqual(64);
        for (const other of rest) expect(one.top).toBeLessThan(other.top);
      }
    }
    await screen.resize(1280, 800);
  });

  it('starts its 20 minutes with one press, asks nothing, and has the burner turned off', async () => {
    await screen.press('fault-burned');
    const leftS = await clockIsSeen(screen, 'the press');
    expect(leftS).toBeGreaterThan(1190);
    expect(leftS).toBeLessThanOrEqual(1200);
    expect((await screen.look()).status).toBe('suspended');
    await screen.waitForElement('.cooling .do-this li');
    await screen.waitForElement('.suspended [data-action="confirm-safe"]');
    expect((await storedEntries(screen)).map(({ kind }) => kind)).toContain('fault-raised');
    await everySize(screen, 'the run');
    await screen.setTheme('night');
    await screen.picture('burned/the-run-night');
    await screen.setTheme('day');
  });

  it.each(['happened', 'steps', 'until-when', 'settings'])(
    'is not covered by the sheet of %s',
    async (sheet) => {
      await screen.press(sheet);
      await screen.dialog().waitFor();
      await everySize(screen, sheet);
      await screen.closeDialog();
    },
  );

  it('is not covered by Stop, nor by its sheet', async () => {
    await screen.press('stop');
    await screen.waitForElement('[data-action="keep-going"]');
    await everySize(screen, 'stop');
    await screen.press('keep-going');
  });

  it('stands on every page of the app, and over what opens there', async () => {
    for (const page of ['kitchen', 'plan', 'record'] as const) {
      await screen.goTo(page);
      await screen.waitForElement(`[data-page="${page}"][aria-current]`);
      await screen.waitForElement('[data-action="cooling-steps"]');
      await everySize(screen, page);
    }
    await screen.press('cooling-steps');
    await screen.waitForElement('.cooling .do-this li');
  });

  it('survives a reload: over the arming screen and the review, with no less left than before', async () => {
    await screen.jump(5 * MINUTES);
    const before = await clockIsSeen(screen, 'five minutes');
    expect(before).toBeLessThan(16 * 60);
    await on.load('run');
    const after = await clockIsSeen(screen, 'the reload');
    expect(after).toBeGreaterThanOrEqual(before - 10);
    const { armScreen, status } = await screen.look();
    expect(status).toBe('reviewing');
    if (armScreen) {
      await everySize(screen, 'the arming screen');
      await screen.press('arm');
    }
    await screen.waitForElement('.cooling .do-this li');
    await screen.waitForElement('.review');
    await everySize(screen, 'the review');
    await screen.actUntil({ status: 'suspended' }, 20);
  });

  it('stands on a page that only shows the run, which can do nothing about it', async () => {
    await on.keepTime();
    const second = await on.open('run');
    await second.waitForElement('.watch-band');
    await everySize(second, 'a second page');
    await second.waitForElement('.cooling .do-this li');
    const usable = await second.see<number>(
      "document.querySelectorAll('.cooling button:not(:disabled), .cooling-bar button:not(:disabled)').length",
    );
    expect(usable).toBe(0);
    await second.page.close();
    await screen.page.bringToFront();
  });

  it('asks for a word before it ends early, and goes on when that is taken back', async () => {
    await screen.press('end-early');
    await screen.waitForElement('[data-action="cooling-mistake"]');
    await screen.picture('burned/early');
    await screen.press('keep-cooling');
    await screen.waitForElement('[data-action="cooling-mistake"]', 'gone');
    await clockIsSeen(screen, 'a word not given');
  });

  it('calls when the 20 minutes are over, says what comes next, and falls silent by a word', async () => {
    const leftS = await clockIsSeen(screen, 'the last minutes');
    const begins = await screen.see<number>('hands.begins.length');
    await screen.jump((leftS + 2) * SECONDS);
    await screen.waitForElement('.cooling-bar--over');
    await screen.waitForElement('.flash');
    await everySize(screen, 'the end');
    if ((await screen.look()).sound === 'armed')
      await screen.waitFor(`hands.begins.length > ${begins}`, 'the sound');
    await screen.press('cooling-heard');
    await screen.waitForElement('.flash', 'gone');
    await clockIsSeen(screen, 'the silence');
  });

  it('ends by a word, after which only a person goes on, and the record tells it', async () => {
    await screen.press('cooling-done');
    await screen.waitForElement('.cooling-bar', 'gone');
    const kinds = (await storedEntries(screen)).map(({ kind }) => kind);
    expect(kinds).toContain('cooling-ended');
    expect((await screen.look()).status).toBe('suspended');
    // What was hot depends on how far the run had come: all of it is said to be safe.
    for (let left = await hotLeft(); left > 0; left = await hotLeft()) {
      await screen.press('confirm-safe');
      await screen.waitFor(`${HOT_LEFT} < ${left} || null`, 'one less that is hot');
    }
    await screen.press('resume');
    await screen.until('it goes on', ({ status }) => status === 'running');
    await screen.goTo('record');
    await screen.waitFor(
      `document.body.innerText.includes(${JSON.stringify(screen.translator.t('cautions.fault.burned.name'))})`,
      'the record of it',
    );
    await screen.picture('burned/record');
  });
});
