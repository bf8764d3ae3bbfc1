import type { OnTablet } from '../on-tablet.ts';
import type { Reading } from './reading.ts';
import { openRead } from './walk-open.ts';

type Walk = { readonly on: OnTablet; readonly reading: Reading };

/** Dialogs that are read once, when the run comes to a stage that has them. */
const DIALOGS: Readonly<Record<string, readonly string[]>> = {
  quiet: ['until-when', 'settings', 'steps', 'happened', 'stop', 'timer'],
  pour: ['ran-out'],
};

/** Reads every stage on the way to the end; a fault and a power cut come in between. Which kinds of steps were seen. */
export async function wholeRun(on: OnTablet, reading: Reading): Promise<Set<string>> {
  const kinds = new Set<string>();
  const stages = new Set<string>();
  const dialogs = new Set<string>();
  let isCut = false;
  for (let acts = 0; acts < 1500; acts += 1) {
    const { screen } = on;
    const seen = await screen.look();
    if (seen.status === 'closed') return kinds;
    const stage = seen.isQuiet ? 'quiet' : `${seen.kind}, ${seen.stage}, ${seen.action}`;
    if (seen.kind !== '') kinds.add(seen.kind);
    const name = `run, ${seen.status}, ${stage}`;
    if (stages.has(name)) await reading.readAgain(name);
    else {
      stages.add(name);
      await reading.read(name);
    }
    await readDialogs({ on, reading }, seen.isQuiet ? 'quiet' : seen.kind, dialogs);
    if (seen.kind === 'glow' && seen.stage === 'hold' && !isCut) {
      isCut = true;
      await interrupted({ on, reading });
    }
    await on.screen.act();
  }
  throw new Error('The run has no end within 1500 acts.');
}

async function readDialogs({ on, reading }: Walk, stage: string, done: Set<string>): Promise<void> {
  const { screen } = on;
  for (const action of DIALOGS[stage] ?? []) {
    const there = screen.page.locator(`[data-action="${action}"]`).first();
    if (done.has(action) || !(await there.isVisible())) continue;
    done.add(action);
    await reading.readDialog(`run, ${action}`, () => screen.press(action));
    if (action !== 'happened') continue;
    for (const part of ['used', 'note'])
      await reading.readDialog(`run, happened, ${part}`, async () => {
        await screen.press('happened');
        await screen.press(part);
      });
  }
  const goPast = screen.page.locator('[data-action="go-past"]');
  if (!done.has('go-past') && (await goPast.isVisible())) {
    done.add('go-past');
    await reading.readDialog('run, go past', () => screen.press('go-past'));
  }
}

/** A pause, a fault told and cleared, a clock set forward, and a power cut, in the middle of a glow. */
async function interrupted({ on, reading }: Walk): Promise<void> {
  await on.screen.press('pause');
  await on.screen.until('a pause', ({ status }) => status === 'held');
  await reading.read('run, a pause');
  await on.screen.pressAt('.side-actions [data-action="resume"]');
  await on.screen.until('it goes on', ({ status }) => status === 'running');
  await on.screen.shift({ wallMs: 3 * 3_600_000 });
  await on.screen.until('the clock is asked', ({ asksClock }) => asksClock);
  await reading.read('run, the clock is asked');
  await on.screen.press('clock-wrong');
  await reading.read('run, the right time');
  await on.screen.press('back');
  await on.cutPower(10 * 60_000);
  const screen = await openRead(on, 'run');
  await screen.waitForElement('.run-place');
  await reading.read('run, after a power cut');
  for (let n = 0; n < 20 && (await screen.look()).status === 'reviewing'; n += 1) {
    await reading.read(`run, review ${n}`);
    await screen.act();
  }
  await screen.press('happened');
  await screen.press('fault-burned');
  await screen.waitForElement('.cooling .do-this li');
  await reading.read('run, a burn');
  await screen.press('end-early');
  await reading.read('run, a burn, ended early');
  await screen.press('cooling-mistake');
  await screen.waitForElement('.cooling-bar', 'gone');
  await putRight({ on, reading }, 'a burn');
  await screen.press('happened');
  await screen.press('other');
  await screen.press('fault-kettle-failed');
  await screen.dialog().waitFor({ state: 'detached' });
  await reading.read('run, a fault');
  await putRight({ on, reading }, 'a fault');
}

const PRESS_NEXT = `(() => {
  const next = document.querySelector('.suspended [data-action="confirm-safe"], .suspended [data-action="clear-fault"]');
  next?.click();
  return next !== null;
})()`;

/** A slow page may take one press several times over. */
const MOST_PRESSES = 40;

/** What is hot is made safe, what was told is cleared, and the run goes on. */
async function putRight({ on, reading }: Walk, what: string): Promise<void> {
  const { screen } = on;
  for (let n = 0; n < MOST_PRESSES && (await screen.look()).status === 'suspended'; n += 1) {
    // Found and pressed in one go: what was pressed before may just be leaving the screen.
    const isPressed = await screen.see<boolean>(PRESS_NEXT);
    if (!isPressed) await screen.act();
    if (n < 6) await reading.read(`run, ${what}, ${n}`);
  }
  await screen.until(`${what} is put right`, ({ status }) => status !== 'suspended');
}
