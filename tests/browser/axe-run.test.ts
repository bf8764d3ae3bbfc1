import { describe, it } from 'vitest';
import { axeFindsNothing } from './support/axe.ts';
import { onTablet } from './support/on-tablet.ts';
import { lookAtStages } from './support/stages.ts';

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

const SHEETS_OF_A_REST = ['until-when', 'settings', 'steps', 'happened', 'stop'];

/** What stands at a stage of this name, looked at when the run is there. */
async function sheetsAt(name: string): Promise<void> {
  if (name === 'glow') await sheet('[data-action^="fault-"]', 'a fault');
  if (name !== 'rest') return;
  for (const action of SHEETS_OF_A_REST) await sheetOf(action);
  await sheet('[data-timer] [data-action="timer"]', 'a rest seen close');
}

/** Looks at each stage and each of these buttons' sheets once. */
async function lookAtAll(actions: readonly string[]): Promise<void> {
  const sheets = new Set(actions);
  await lookAtStages(on.screen, {
    stage: async (name) => {
      await clean(name);
      await sheetsAt(name);
    },
    rest: async () => {
      for (const action of sheets) {
        if (!(await on.screen.page.locator(`[data-action="${action}"]`).isVisible())) continue;
        sheets.delete(action);
        await sheetOf(action);
      }
      return sheets.size === 0;
    },
  });
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

    // A DANGER gate has no way past; one of those before the pours has.
    await lookAtAll(['ran-out', 'go-past']);
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
