import { expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';
import { wordTrouble } from '../support/overlaps.ts';
import { lookAtStages } from '../support/stages.ts';
import type { Screen } from '../support/screen.ts';

/** What is read at a glance, at every kind of stage: cautions whole, and no word over another. */
let screen: Screen;
const on = onTablet('file', async (at) => {
  screen = await at.open();
  await screen.resize(1280, 800);
});

/** From 10 inches on all of a stage stands on the screen; below that and on a phone it moves as a whole. */
const SIZES = [
  { width: 1280, height: 800, isWhole: true },
  { width: 800, height: 1280, isWhole: true },
  { width: 1366, height: 1024, isWhole: true },
  { width: 960, height: 600, isWhole: false },
  { width: 600, height: 960, isWhole: false },
  { width: 390, height: 844, isWhole: false },
] as const;

/** Cautions of the step that a box or the main action hides a part of, and what the stage hides of itself. */
const SEEN = `(() => {
  const stage = document.querySelector('dialog[open]') ? null : document.querySelector('.run-stage');
  const bar = document.querySelector('.main-bar');
  const least = bar ? bar.getBoundingClientRect().top : innerHeight;
  const hidden = [...document.querySelectorAll('.stage-cautions .caution-line')].filter((one) => {
    const { top, bottom, left, right } = one.getBoundingClientRect();
    const beside = bar && left >= bar.getBoundingClientRect().right;
    const scrolls = (box) => box.scrollHeight > box.clientHeight + 1 && getComputedStyle(box).overflowY !== 'visible';
    for (let up = one.parentElement; up && !up.matches('.run-stage, .run-body'); up = up.parentElement)
      if (scrolls(up)) return true;
    return top < 0 || right > innerWidth + 1 || bottom > (beside ? innerHeight : least) + 1;
  });
  return {
    hidden: hidden.map((one) => one.innerText),
    // What was refused a moment ago is told in a row of its own, and goes again.
    overPx: stage && !document.querySelector('.refusal, .trouble') ? stage.scrollHeight - stage.clientHeight : 0,
  };
})()`;

/** All that is wrong, told at the end. */
const wrong: string[] = [];
/** Lists of a whole kitchen or of days to come may be longer than a screen. */
const LONG = new Set(['rest', 'clean', 'gather']);

async function look(name: string): Promise<void> {
  for (const { width, height, isWhole } of SIZES) {
    await screen.resize(width, height);
    // The layout has settled when the next frame is drawn.
    await screen.see('new Promise((r) => requestAnimationFrame(() => requestAnimationFrame(r)))');
    const where = `${name} ${width}×${height}`;
    const { hidden, overPx } = await screen.see<{ hidden: string[]; overPx: number }>(SEEN);
    if (width >= 600) wrong.push(...hidden.map((one) => `${where}: hidden: ${one}`));
    if (isWhole && overPx > 1 && !LONG.has(name)) wrong.push(`${where}: scrolls by ${overPx} px`);
    const { over, cut, looked } = await wordTrouble(screen);
    wrong.push(...over.map((one) => `${where}: ${one}`));
    wrong.push(...cut.map((one) => `${where}: cut: ${one}`));
    expect(looked, where).toBeGreaterThan(3);
  }
  await screen.resize(1280, 800);
}

it('is whole at every kind of stage, and no word lies over another', async () => {
  await screen.prepareRun();
  await look('start');
  const action = await screen.page.locator('[data-action="start-run"]').boundingBox();
  expect(action && action.y + action.height).toBeLessThanOrEqual(800);
  await screen.passHearingCheck();
  await look('heard');
  await screen.press('start-run');
  await screen.until('the run begins', ({ status }) => status === 'running');
  await screen.waitForElement('.prepare-list li');
  await look('questions');
  await screen.actUntil({ step: 'prepare-gather' });
  await screen.waitForElement('.prepare-list li');
  await look('gather');
  for (const sheet of ['happened', 'kitchen', 'steps', 'settings', 'until-when']) {
    await screen.press(sheet);
    await screen.dialog().waitFor();
    if (sheet === 'happened') await screen.press('other');
    await look(`sheet ${sheet}`);
    await screen.closeDialog();
  }
  await lookAtStages(screen, { stage: look });
  await screen.press('stop');
  await screen.dialog().waitFor();
  await look('sheet stop');
  await screen.closeDialog();
  await on.keepTime();
  await on.load('run');
  await screen.until('it is asked', ({ status }) => status === 'reviewing');
  await screen.waitForElement('.review .kitchen-plan');
  if ((await screen.look()).armScreen) await screen.act();
  await look('review');
  await screen.actUntil({ status: 'running' });
  expect(wrong).toEqual([]);
});
