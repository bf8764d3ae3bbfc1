import type { Page } from 'playwright-core';

/** What is on the Run screen, as a person reads it. */
export type Seen = {
  readonly status: string;
  readonly sentence: string;
  readonly action: string;
  readonly waiting: string;
  readonly wakeInS: number | null;
  readonly armScreen: boolean;
};

export function look(page: Page): Promise<Seen> {
  return page.evaluate(() => {
    const place = document.querySelector<HTMLElement>('.run-place');
    const wake = place?.dataset['wakeInS'] ?? '';
    const [sentence = '', action = '', waiting = ''] = [
      '.stage-sentence',
      '.main-action',
      '.main-wait',
    ].map((one) => document.querySelector<HTMLElement>(one)?.innerText.trim() ?? '');
    return {
      status: place?.dataset['status'] ?? '',
      sentence,
      action,
      waiting,
      wakeInS: wake === '' ? null : Number(wake),
      armScreen: document.querySelector('.arm-screen') !== null,
    };
  });
}

/**
 * Presses something and waits until the screen has answered. The stage may
 * change under the finger (a clock came due): then nothing was pressed, and
 * the person looks again.
 */
export async function press(page: Page, selector: string): Promise<void> {
  // A person takes longer than the guard against bounces (350 ms).
  await page.clock.fastForward(400);
  const before = JSON.stringify(await look(page));
  const target = page.locator(selector).first();
  try {
    await target.click({ timeout: 2000 });
  } catch (error) {
    if ((await target.isVisible()) && JSON.stringify(await look(page)) === before) throw error;
    return;
  }
  await changed(page, before);
}

/** Waits until the screen shows something else: facts go to disk before their effect is seen. */
async function changed(page: Page, before: string): Promise<void> {
  for (let tries = 0; tries < 50; tries += 1) {
    if (JSON.stringify(await look(page)) !== before) return;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}

/** Time passes, and the person looks again only when the screen has followed: else a limit is overshot unseen. */
async function wait(page: Page, seen: Seen): Promise<void> {
  await page.clock.fastForward(Math.ceil((seen.wakeInS ?? 60) * 1000) + 1000);
  await changed(page, JSON.stringify(seen));
}

/** From the welcome screen to a run in two taps, then the hearing check and the start. */
export async function beginDemo(page: Page, url: string, demo: string): Promise<void> {
  await page.goto(url);
  await page.getByRole('button', { name: demo }).click();
  await page.getByRole('button', { name: 'Start the run' }).click();
  await page.getByRole('heading', { name: 'Ready to begin' }).waitFor();
  await passHearingCheck(page);
  await press(page, '.start-screen .main-action');
}

/** Plays the alarm and says it was heard; where the machine has no sound, takes the written way round. */
export async function passHearingCheck(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Play the alarm' }).click();
  const heard = page.getByRole('button', { name: 'I heard it' });
  const deaf = page.getByLabel(/I cannot hear it/);
  for (let tries = 0; tries < 100; tries += 1) {
    if (await heard.isVisible()) return heard.click();
    if (await deaf.isVisible()) return deaf.check();
    await page.clock.fastForward(200);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error('The hearing check gave no answer.');
}

/** One thing a person would do now: arm, answer, press the main action, or wait until something is due. */
export async function act(page: Page): Promise<Seen> {
  const seen = await look(page);
  if (seen.armScreen) await press(page, '.arm-screen');
  else if (seen.status === 'reviewing') await press(page, '.review .button--ember');
  else if (await page.locator('.clock-question .button--ember').isVisible())
    await press(page, '.clock-question .button--ember');
  else if (seen.action !== '') await press(page, '.main-action');
  else await wait(page, seen);
  return seen;
}

/** Acts until the condition holds; fails with the last screens when it takes too long. */
export async function actUntil(
  page: Page,
  done: (seen: Seen) => boolean,
  most = 1500,
): Promise<Seen> {
  const last: string[] = [];
  for (let n = 0; n < most; n += 1) {
    const seen = await look(page);
    if (done(seen)) return seen;
    last.push(JSON.stringify(seen));
    await act(page);
  }
  throw new Error(`Not there after ${most} acts. Last screens:\n${last.slice(-6).join('\n')}`);
}
