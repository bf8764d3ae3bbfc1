import { describe, it } from 'vitest';
import { axeFindsNothing } from './support/axe.ts';
import { onTablet } from './support/on-tablet.ts';
import { STAGES } from './support/stages.ts';

/** Each kind of stage, each sheet and each state of a run, by day and by night. */
const on = onTablet('file', async (at) => {
  await at.open();
});

const clean = (name: string): Promise<void> => axeFindsNothing(on.screen, name);

async function sheet(selector: string, name: string): Promise<void> {
  await on.screen.pressAt(selector);
  await on.screen.dialog().waitFor();
  await clean(name);
  await on.screen.closeDialog();
}

const sheetOf = (action: string): Promise<void> => sheet(`[data-action="${action}"]`, action);

/** Goes on with the run until the button is there, then looks at its sheet. */
async function sheetWhenThere(action: string): Promise<void> {
  const there = on.screen.page.locator(`[data-action="${action}"]`);
  for (let n = 0; n < 200 && !(await there.isVisible()); n += 1) await on.screen.act();
  await sheetOf(action);
}

describe('axe finds nothing on', () => {
  it('the start of a run, and every kind of stage with its sheets', async () => {
    const { screen } = on;
    await screen.prepareRun();
    await clean('the start');
    await screen.passHearingCheck();
    await clean('the hearing check');
    await screen.press('start-run');
    await screen.until('the run begins', ({ status }) => status === 'running');

    for (const [name, wanted] of STAGES) {
      await screen.actUntil(wanted, 1500);
      await clean(name);
      if (name === 'pour') await sheetWhenThere('ran-out');
      if (name === 'rest') {
        for (const action of ['until-when', 'settings', 'steps', 'happened', 'stop'])
          await sheetOf(action);
        await sheet('[data-timer] [data-action="timer"]', 'a rest seen close');
        // A DANGER gate has no way past; one of those before the pours has.
        await sheetWhenThere('go-past');
      }
      if (name === 'glow') await sheet('[data-action^="fault-"]', 'a fault');
    }
  });

  it('a pause, a fault, a stop and the end', async () => {
    const { screen } = on;
    await screen.press('pause');
    await screen.until('a pause', ({ status }) => status === 'held');
    await clean('a pause');
    await screen.pressAt('.side-actions [data-action="resume"]');
    await screen.press('fault-power-cut');
    await screen.press('report-fault');
    await screen.waitForElement('.suspended');
    await clean('a fault');
    await screen.press('stop');
    await screen.press('stop-run');
    await screen.waitForElement('.closing');
    await clean('making safe');
    await screen.actUntil({ status: 'closed' }, 12);
    await screen.waitForElement('[data-action="record"]');
    await clean('the end');
  });
});
