import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';
import { wordTroubleDown } from '../support/overlaps.ts';
import { bringIn, playedFacts, runFile } from '../support/played-run.ts';
import type { DemoId, Screen } from '../support/screen.ts';

/**
 * Every page but the run itself (that is in `tests/browser/run/glance`), from
 * top to foot: no word over another, none cut off; in the usual size of letters
 * at three sizes of the screen, and twice as large.
 */
const SIZES = [
  [1280, 800],
  [800, 1280],
  [390, 844],
] as const;
const LARGE_PX = 32;
const USUAL_PX = 16;

const folder = mkdtempSync(join(tmpdir(), 'glowpour-apart-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const on = onTablet('test');

/** A root em, CSS px; 18 in the usual size. */
const LETTERS_PX = `parseFloat(getComputedStyle(document.documentElement).fontSize)`;

/** What lies over what, at each size. */
class Look {
  readonly #screen: Screen;
  readonly found: string[] = [];

  constructor(screen: Screen) {
    this.#screen = screen;
  }

  async at(name: string, letters: 'usual' | 'both' = 'usual'): Promise<void> {
    for (const px of letters === 'both' ? [USUAL_PX, LARGE_PX] : [USUAL_PX]) {
      await this.#screen.cdp.send('Page.setFontSizes', { fontSizes: { standard: px } });
      for (const [width, height] of SIZES) {
        await this.#screen.resize(width, height);
        const where = `${name} ${width}${px === LARGE_PX ? ' large' : ''}`;
        expect(await this.#screen.see<number>(LETTERS_PX), where).toBeGreaterThan(px - 1);
        const { over, cut, looked } = await wordTroubleDown(this.#screen);
        this.found.push(...over.map((one) => `${where}: ${one}`));
        this.found.push(...cut.map((one) => `${where}: cut: ${one}`));
        expect(looked, where).toBeGreaterThan(3);
        // A picture of the whole page gives its letters their usual size again.
        await this.#screen.picture(`apart/${where.replaceAll(' ', '-')}`, px === USUAL_PX);
      }
    }
    await this.#screen.cdp.send('Page.setFontSizes', { fontSizes: { standard: USUAL_PX } });
    await this.#screen.resize(1280, 800);
  }
}

describe('no word lies over another, none is cut off', () => {
  it.each(['flat-coils', 'hall', 'mountain-gas'] as const)(
    'in the Plan of %s, all its parts',
    async (demo: DemoId) => {
      const screen = await on.open();
      await screen.resize(1280, 800);
      await screen.openDemo(demo);
      await screen.waitForElement('[data-course] .course-bar');
      await screen.waitForElement('.course-sure');
      const look = new Look(screen);
      const letters = demo === 'hall' ? 'usual' : 'both';
      await look.at(`plan-${demo}`, letters);
      for (const part of ['methods', 'pours', 'heat', 'ask', 'lists']) {
        await screen.openPart(part);
        await look.at(`plan-${demo}-${part}`, demo === 'flat-coils' ? 'both' : 'usual');
      }
      expect(look.found).toEqual([]);
    },
  );

  it('in the Record, closed and opened', async () => {
    const screen = await on.open('record');
    await screen.resize(1280, 800);
    await screen.waitForElement('main');
    const look = new Look(screen);
    await look.at('record-empty', 'both');
    await bringIn(screen, runFile(playedFacts('flat-coils', { disturbed: true })), folder);
    await look.at('record', 'both');
    await screen.page.locator('.record-moments summary').click();
    await look.at('record-moments');
    expect(look.found).toEqual([]);
  });

  it('in a rehearsal, its opening, a step and a sheet', async () => {
    const screen = await on.open();
    await screen.resize(1280, 800);
    await screen.openDemo('flat-coils');
    const look = new Look(screen);
    await screen.press('rehearse');
    await screen.waitForElement('.rehearsal .run-place');
    await screen.press('rehearse-play');
    await look.at('rehearse-opening', 'both');
    for (let step = 0; step < 4; step += 1) await screen.press('rehearse-step');
    await look.at('rehearse-step', 'both');
    await screen.press('steps');
    await screen.waitForElement('dialog[open] .rehearsal-band');
    await look.at('rehearse-sheet');
    expect(look.found).toEqual([]);
  });

  it('in the sheets of the Plan: a step, what a method rests on, an answer', async () => {
    const screen = await on.open();
    await screen.resize(1280, 800);
    await screen.openDemo('flat-coils');
    await screen.waitForElement('[data-course] .course-bar');
    const look = new Look(screen);
    await screen.page.locator('.course-bar[tabindex="0"]').focus();
    await screen.page.keyboard.press('Enter');
    await screen.dialog().waitFor();
    await look.at('plan-sheet-step', 'both');
    await screen.closeDialog();
    await screen.openPart('ask');
    await screen.button('plan-page.questions.enter').first().click();
    await screen.dialog().waitFor();
    await look.at('plan-sheet-answer', 'both');
    await screen.closeDialog();
    await screen.openPart('methods');
    await screen.press('own-custom');
    await screen.dialog().waitFor();
    await look.at('custom', 'both');
    await screen.closeDialog();
    expect(look.found).toEqual([]);
  });
});
