import { mkdirSync, writeFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';
import { wordTroubleDown } from '../support/overlaps.ts';
import type { Screen } from '../support/screen.ts';
import { lookAtStages } from '../support/stages.ts';

/**
 * The app from right to left: nothing is wider than the screen, no word lies over another, and what
 * is a picture of time runs the way one reads. Pictures and prints of all of it are left in
 * `test-artifacts/hebrew`, to be looked at by somebody who reads it.
 */
const SIZES = [
  [1280, 800],
  [800, 1280],
  [390, 844],
] as const;
const CHAPTERS = ['where', 'fixtures', 'water', 'air', 'people'] as const;
const PARTS = ['methods', 'pours', 'heat', 'ask', 'lists', 'handouts'] as const;
const HANDOUTS = ['labels', 'rabbi', 'covers', 'utensils', 'shopping', 'door'] as const;
const SHEETS = ['happened', 'kitchen', 'steps', 'settings', 'until-when'] as const;
const PAPER = 'test-artifacts/hebrew/paper';

let screen: Screen;
let found: string[] = [];
const on = onTablet('test', async (at) => {
  await at.start({ language: 'he' });
  screen = await at.open();
  await screen.resize(1280, 800);
  found = [];
});

/** `at`: what the picture is of; the top of the page unless told. */
async function look(name: string, at?: string): Promise<void> {
  // What is told while a plan is worked out lies over the page, and goes again.
  await screen.waitForElement('.working-line', 'gone');
  for (const [width, height] of SIZES) {
    await screen.resize(width, height);
    const where = `${name} ${width}`;
    const { over, cut, looked } = await wordTroubleDown(screen);
    found.push(
      ...over.map((one) => `${where}: ${one}`),
      ...cut.map((one) => `${where}: cut: ${one}`),
    );
    expect(looked, where).toBeGreaterThan(3);
    const widthPx = await screen.widthPx();
    if (widthPx > width) found.push(`${where}: ${widthPx} px wide`);
    if (at !== undefined)
      await screen.see(
        `void document.querySelector(${JSON.stringify(at)}).scrollIntoView({ block: 'start' })`,
      );
    await screen.picture(`hebrew/${name}-${width}`);
  }
  await screen.resize(1280, 800);
}

async function print(name: string, only?: string): Promise<void> {
  if (only !== undefined)
    await screen.see(`void (document.documentElement.dataset.printOnly = ${JSON.stringify(only)})`);
  mkdirSync(PAPER, { recursive: true });
  writeFileSync(
    `${PAPER}/${name}.pdf`,
    await screen.page.pdf({ format: 'A4', preferCSSPageSize: true }),
  );
  if (only !== undefined)
    await screen.see('void delete document.documentElement.dataset.printOnly');
}

it('in the Kitchen, its pages and its editor', async () => {
  await screen.waitForElement('.demo .room-picture');
  expect(await screen.see('document.documentElement.dir')).toBe('rtl');
  await look('first');
  await screen.openDemo('flat-coils');
  await screen.goTo('kitchen');
  await screen.waitForElement('.kitchen-picture .room-picture');
  await look('kitchen');
  // The first change makes a kitchen of its own of a demo.
  await screen.field('kitchen.choices.people').selectOption('2');
  await screen.waitForElement('.kitchen-row[aria-current]');
  for (const chapter of CHAPTERS) {
    await on.load(`kitchen/${chapter}`);
    await screen.waitForElement('.survey-chapter, .editor, main h2');
    await look(`survey-${chapter}`);
  }
  expect(found).toEqual([]);
});

it('in the Plan, its course, its parts and what is printed', async () => {
  await screen.openDemo('flat-coils');
  await screen.waitForElement('[data-course] .course-bar');
  await screen.waitForElement('.course-sure');
  const days = await screen.see<number[]>(
    `[...document.querySelectorAll('.course-day')].map((one) => one.getBoundingClientRect().x)`,
  );
  expect(days.length).toBeGreaterThan(1);
  expect(days).toEqual(days.toSorted((a, b) => b - a));
  await look('plan');
  const first = screen.page.locator('.course-bar').first();
  await first.click();
  await screen.dialog().waitFor();
  expect(await screen.dialog().innerText()).toContain(
    (await first.getAttribute('aria-label'))?.split(',')[0]?.split(': ').at(-1),
  );
  await look('plan-step');
  await screen.closeDialog();
  await print('plan');
  await print('wall', 'wall');
  for (const part of PARTS) {
    await screen.openPart(part);
    await look(`plan-${part}`, '.plan-parts > :not(.part--off)');
  }
  for (const handout of HANDOUTS) {
    await screen.pressAt(`[data-handout="${handout}"]`);
    await screen.waitFor(
      `document.querySelector('.around > [role="status"]:not(.around-about)') === null`,
      handout,
    );
    await look(`handout-${handout}`, '.around');
    await print(`handout-${handout}`, 'handouts');
  }
  expect(found).toEqual([]);
});

it('in a run, at each kind of stage, in its sheets, and in its record', async () => {
  await screen.prepareRun();
  await look('run-start');
  await screen.passHearingCheck();
  await screen.press('start-run');
  await screen.until('the run begins', ({ status }) => status === 'running');
  await screen.waitForElement('.prepare-list li');
  await look('run-questions');
  await screen.actUntil({ step: 'prepare-gather' });
  for (const sheet of SHEETS) {
    await screen.press(sheet);
    await screen.dialog().waitFor();
    await look(`run-sheet-${sheet}`);
    await screen.closeDialog();
  }
  await lookAtStages(screen, { stage: (name) => look(`run-${name}`) });
  await screen.press('stop');
  await screen.dialog().waitFor();
  await look('run-sheet-stop');
  await screen.closeDialog();
  await screen.goTo('record');
  await screen.waitForElement('main h1, main h2');
  await look('record');
  await print('record');
  expect(found).toEqual([]);
});
