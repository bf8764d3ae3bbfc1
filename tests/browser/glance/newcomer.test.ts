import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, describe, expect, it } from 'vitest';
import { t } from '../support/language.ts';
import { onTablet } from '../support/on-tablet.ts';
import { bringIn, playedFacts, runFile } from '../support/played-run.ts';
import type { Screen } from '../support/screen.ts';

/**
 * Ten things a newcomer wants to know, each answered by the screen that stands or by one press,
 * without moving the page. Each leaves a picture by its name in `test-artifacts/newcomer`.
 */
const on = onTablet('test');
const folder = mkdtempSync(join(tmpdir(), 'glowpour-newcomer-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});
afterEach(async () => {
  await on.end();
});

/** What is written at a place, as far as it is in sight. */
function inSight(screen: Screen, selector: string): Promise<string> {
  return screen.waitFor<string>(
    `[...document.querySelectorAll(${JSON.stringify(selector)})].filter((one) => {
      const { top, bottom, left, right, width } = one.getBoundingClientRect();
      const x = Math.min(right, innerWidth) - Math.max(left, 0);
      const y = Math.min(bottom, innerHeight) - Math.max(top, 0);
      return width > 0 && x > 4 && y > 4;
    }).map((one) => one.textContent.trim()).join(' | ')`,
    `${selector} in sight`,
  );
}

async function atPlan(): Promise<Screen> {
  const screen = await on.open();
  await screen.resize(1280, 800);
  await screen.openDemo('flat-coils');
  await screen.waitForElement('[data-course] .course-bar');
  return screen;
}

async function atRun(): Promise<Screen> {
  const screen = await on.open();
  await screen.resize(1280, 800);
  await screen.beginRun();
  return screen;
}

const picture = (screen: Screen, task: string): Promise<void> => screen.picture(`newcomer/${task}`);

describe('a newcomer finds in the run', () => {
  it('what is hot, which kettle is next, where to stand and how much of the kettle is left', async () => {
    const screen = await atRun();
    const answered = new Set<'hot' | 'pour'>();
    const told = async (): Promise<void> => {
      const { kind, stage, kettle, kettles } = await screen.look();
      if (!answered.has('hot') && kind === 'glow' && stage === 'warm-up') {
        expect(await inSight(screen, '.glance-hot')).toMatch(/^Hot: .*Coil range/);
        expect(await inSight(screen, '.legend')).toContain(t('common.fixture-phase.hot'));
        await picture(screen, '01-what-is-hot');
        answered.add('hot');
      }
      const hasLanes = await screen.see<boolean>(`document.querySelector('.stage-lanes') !== null`);
      if (!answered.has('pour') && hasLanes && kind === 'pour' && stage === 'pour') {
        expect(await inSight(screen, '.stage-sentence')).toContain(
          `kettle ${kettle} of ${kettles}`,
        );
        expect(await inSight(screen, '.lanes-mark--now text')).toBe(String(kettle));
        await picture(screen, '03-which-kettle-next');
        expect(await inSight(screen, '.stand-feet')).toContain(t('run.picture.stand'));
        await picture(screen, '07-where-do-i-stand');
        expect(await inSight(screen, '.pour-level strong')).toMatch(
          /^(?:\d+\s)?\d+(?:[./]\d+)?\s(?:L|qt) left$/,
        );
        await picture(screen, '08-how-much-of-the-kettle-is-left');
        answered.add('pour');
      }
    };
    for (let act = 0; act < 1500 && answered.size < 2; act += 1) {
      await told();
      await screen.act();
    }
    expect(answered.size).toBe(2);
  });

  it('what rests until when, and when one may go to bed', async () => {
    const screen = await atRun();
    await screen.actUntil({ isQuiet: true });
    expect(await inSight(screen, '.glance-lines')).toMatch(/rests? until .*\d\d:\d\d/);
    await picture(screen, '06-what-rests-until-when');
    await screen.press('until-when');
    await screen.dialog().waitFor();
    expect(await inSight(screen, 'dialog[open] .days-free')).toMatch(/free .*\d\d:\d\d/i);
    await picture(screen, '02-when-may-i-go-to-bed');
  });
});

describe('a newcomer finds in the Plan', () => {
  it('whether it ends in time, at once', async () => {
    const screen = await atPlan();
    expect(await inSight(screen, '[data-verdict] h2')).toMatch(/ends? .*\d\d:\d\d/i);
    expect(await inSight(screen, '[data-course] .course-end-word')).toMatch(/^ends .*\d\d:\d\d/);
    await picture(screen, '09-will-it-end-in-time');
  });

  it('what is to be asked, by one press', async () => {
    const screen = await atPlan();
    await screen.openPart('ask');
    await screen.see(`new Promise((r) => requestAnimationFrame(() => r(true)))`);
    const asked = await screen.page.locator('.questions li').first().innerText();
    expect(asked).toContain('?');
    await screen.page.locator('.questions li').first().scrollIntoViewIfNeeded();
    await picture(screen, '04-what-must-i-ask');
  });

  it('what is to be bought, by one press', async () => {
    const screen = await atPlan();
    await screen.openPart('lists');
    const first = screen.page.locator('.shopping-list li').first();
    expect(await first.innerText()).toMatch(/\S+/);
    expect(await screen.page.locator('.shopping-list li').count()).toBeGreaterThan(5);
    await first.scrollIntoViewIfNeeded();
    await picture(screen, '10-what-do-i-buy');
  });

  it('what is not purged but covered or replaced, by one press', async () => {
    const screen = await atPlan();
    await screen.openPart('methods');
    const rows = await screen.page.locator('table.methods tbody tr').allInnerTexts();
    expect(rows.filter((row) => /Cover|Line|Replace|not purged/i.test(row)).length).toBeGreaterThan(
      0,
    );
    await picture(screen, '10-what-is-not-purgeable');
  });
});

describe('a newcomer finds in the Record', () => {
  it('what happened to the sink, in its picture', async () => {
    const screen = await on.open('record');
    await screen.resize(1280, 800);
    await bringIn(screen, runFile(playedFacts('flat-coils')), folder);
    const words = await screen.waitFor<string[]>(
      `[...document.querySelectorAll('.record-picture .kp-word')].map((one) => one.textContent)`,
      'the picture of the record',
    );
    const poured = t('record-page.letter.poured');
    expect(words).toContainEqual(expect.stringMatching(new RegExp(`^3 ${poured}`)));
    const legend = await screen.page.locator('.record-legend').innerText();
    expect(legend).toMatch(new RegExp(`${poured}\\s*${t('record-page.state.poured')}`));
    await screen.page.locator('.record-picture').scrollIntoViewIfNeeded();
    await picture(screen, '05-what-happened-to-the-sink');
  });
});
