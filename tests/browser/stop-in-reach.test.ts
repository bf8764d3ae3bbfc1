import { describe, expect, it } from 'vitest';
import { onTablet } from './support/on-tablet.ts';
import { pause, type Screen } from './support/screen.ts';

/** *Stop – make safe* under a finger, whatever lies over the run. */
const on = onTablet('file', async (at) => {
  const screen = await at.open();
  await screen.resize(1280, 800);
  await screen.beginRun();
  await screen.waitForElement('.stage-sentence');
});

/** What a finger meets in the corner where Stop always stands; pressed there, and answered with "Keep going". */
async function stopIsInReach(screen: Screen, over: string): Promise<void> {
  const corner = await screen.waitFor<{ x: number; y: number; met: string }>(
    `(() => {
      const box = document.querySelector('.run-strip > [data-action="stop"]')?.getBoundingClientRect();
      if (!box) return null;
      const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
      const met = document.elementFromPoint(x, y)?.closest('button');
      return { x, y, met: met && !met.matches(':disabled') ? met.dataset.action : 'nothing to press' };
    })()`,
    'the corner of Stop',
  );
  expect({ over, met: corner.met }).toEqual({ over, met: 'stop' });
  await screen.shift({ wallMs: 400, monoMs: 400 });
  await screen.page.mouse.click(corner.x, corner.y);
  await screen.waitForElement('[data-action="keep-going"]');
  const onTop = await screen.see<string>(
    `(() => {
      const box = document.querySelector('[data-action="keep-going"]').getBoundingClientRect();
      const met = document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2);
      return met?.closest('button')?.dataset.action ?? 'covered';
    })()`,
  );
  expect({ over, onTop }).toEqual({ over, onTop: 'keep-going' });
  await screen.press('keep-going');
  await screen.waitForElement('[data-action="keep-going"]', 'gone');
}

const SIZES = [
  [1280, 800],
  [800, 1280],
  [390, 844],
] as const;

describe('Stop – make safe', () => {
  it.each(['happened', 'steps', 'until-when', 'settings'])(
    'is in reach over the sheet of %s, on every size',
    async (sheet) => {
      const { screen } = on;
      for (const [width, height] of SIZES) {
        await screen.resize(width, height);
        await screen.press(sheet);
        await screen.dialog().waitFor();
        if (width === 1280) await screen.picture(`screens/3-run-stop-over-${sheet}`);
        await stopIsInReach(screen, `${sheet} at ${width}`);
        await screen.closeDialog();
      }
      await screen.resize(1280, 800);
    },
  );

  it('opens by its key over a sheet, and the sheet is there again after it', async () => {
    const { screen } = on;
    await screen.press('happened');
    await screen.dialog().waitFor();
    await screen.shift({ wallMs: 1100, monoMs: 1100 });
    await screen.page.keyboard.press('s');
    await screen.waitForElement('[data-action="keep-going"]');
    await screen.press('keep-going');
    await screen.waitForElement('[data-action="used"]');
    await screen.closeDialog();
  });

  it('is in reach while the run is paused, and while a fault halts it', async () => {
    const { screen } = on;
    await screen.press('pause');
    await screen.until('paused', ({ status }) => status === 'held');
    await stopIsInReach(screen, 'a pause');
    await screen.press('resume');
    await screen.until('goes on', ({ status }) => status === 'running');
    await screen.press('happened');
    await screen.press('other');
    await screen.press('fault-power-cut');
    await screen.until('halted', ({ status }) => status === 'suspended');
    await stopIsInReach(screen, 'a fault');
  });

  it('is in reach after a reload, over what asks for a touch and over the review', async () => {
    const { screen } = on;
    await on.load('run');
    await screen.until('the run is taken up', ({ status }) => status !== '');
    const { armScreen } = await screen.look();
    await pause(300);
    await stopIsInReach(screen, armScreen ? 'the arming screen' : 'the reload');
  });

  it('on a page that only shows, says what to make safe and leads to where it can be stopped', async () => {
    const { screen } = on;
    await on.keepTime();
    const second = await on.open('run');
    await second.waitForElement('.watch-band');
    await stopIsInReach(second, 'a page that only shows');
    await second.press('stop');
    await second.press('stop-lead');
    await second.waitForElement('.watch-band', 'gone');
    await second.press('stop-run');
    await second.until('it is stopped', ({ status }) => ['closing', 'closed'].includes(status));
    await screen.page.bringToFront();
  });
});
