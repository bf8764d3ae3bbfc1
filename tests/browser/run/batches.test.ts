import { expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';
import { wordTrouble } from '../support/overlaps.ts';
import type { Screen } from '../support/screen.ts';

/** One batch of the mountain house from the water to cold water, and the board that tells of all. */
let screen: Screen;
onTablet('file', async (at) => {
  screen = await at.open();
  await screen.resize(1280, 800);
});

const SIZES = [
  [1280, 800],
  [800, 1280],
  [390, 844],
] as const;

/** What hangs on the height of what is above it moves a few frames after a new size. */
const settled = () => screen.see('new Promise((done) => setTimeout(done, 400))');

async function pictures(name: string): Promise<void> {
  // What a press was told stands for some seconds.
  await screen.waitForElement('.refusal', 'gone');
  for (const [width, height] of SIZES) {
    await screen.resize(width, height);
    await settled();
    await screen.picture(`batches/${name}-${width}`);
    const trouble = async () => {
      const { over, cut } = await wordTrouble(screen);
      return [...over, ...cut];
    };
    await expect.poll(trouble, { message: `${name} at ${width}×${height}` }).toEqual([]);
  }
  await screen.resize(1280, 800);
  await settled();
}

const text = (selector: string) =>
  screen.see<string>(`document.querySelector(${JSON.stringify(selector)})?.innerText ?? ''`);

const board = () =>
  screen.see<string[]>(
    `[...document.querySelectorAll('.batch-board li')].map((one) => one.dataset.batch)`,
  );

it('shows what goes in, waits until it boils again, asks for cold water, and tells the crew', async () => {
  await screen.beginRun('mountain-gas');
  await screen.actUntil({ kind: 'boil-over', stage: 'immerse', action: 'confirm' }, 3000);
  await screen.waitForElement('.batch-picture');
  expect(await text('.stage-detail')).toMatch(/\d+ × /);
  expect(
    await screen.see<string>(`document.querySelector('.batch-picture').getAttribute('aria-label')`),
  ).toMatch(/\d+ × /);
  const batch = await text('.stage-sentence');
  await pictures('lower-in');

  // The next press is about what the water does with the things in it.
  await screen.act();
  await screen.waitForElement('[data-stage="boil"] .countdown, [data-stage="boil"] [data-clock]');
  expect(await text('.stage-sentence')).not.toBe(batch);
  await pictures('boils-again');

  await screen.press('kitchen');
  await screen.waitForElement('.batch-board');
  expect(await board()).toEqual(['now', 'next', 'to-come', 'to-come', 'to-come', 'to-come']);
  await pictures('board');
  await screen.closeDialog();

  await screen.actUntil({ kind: 'boil-over', stage: 'cold', action: 'confirm' }, 40);
  await pictures('cold');
  await screen.act();
  await screen.press('kitchen');
  await screen.waitForElement('.batch-board');
  await expect.poll(async () => (await board())[0]).toBe('done');
});
