import { describe, it } from 'vitest';
import { axeFindsNothing } from './support/axe.ts';
import { onTablet } from './support/on-tablet.ts';

const on = onTablet('file', async (at) => {
  const screen = await at.open();
  await screen.resize(820, 1180);
});

const PARTS = ['steps', 'methods', 'pours', 'heat', 'ask', 'lists'];
const CHAPTERS = ['where', 'fixtures', 'water', 'air', 'people'];

describe('axe finds nothing on', () => {
  it('the welcome, an empty record and a run that is not there', async () => {
    await on.screen.waitForElement('.demo');
    await axeFindsNothing(on.screen, 'the welcome');
    for (const page of ['record', 'run', 'plan']) {
      await on.load(page);
      await on.screen.waitForElement('main');
      await axeFindsNothing(on.screen, page);
    }
  });

  it('every part of a plan, and the sheets of answers and of an own custom', async () => {
    const { screen } = on;
    await on.load('kitchen');
    await screen.openDemo('flat-coils');
    for (const part of PARTS) {
      await screen.openPart(part);
      await axeFindsNothing(screen, part);
    }
    await screen.openPart('methods');
    for (const key of [
      'plan-page.methods.said-otherwise',
      'plan-page.methods.make-own-custom',
    ] as const) {
      await screen.button(key).first().click();
      await screen.dialog().waitFor();
      await axeFindsNothing(screen, key);
      await screen.closeDialog();
    }
  });

  it('the kitchen and every page of its survey', async () => {
    const { screen } = on;
    await on.load('kitchen');
    await screen.button('kitchen.change').waitFor();
    await axeFindsNothing(screen, 'the kitchen');
    for (const chapter of CHAPTERS) {
      await on.load(`kitchen/${chapter}`);
      await screen.waitForElement('.chapter, .editor');
      await axeFindsNothing(screen, `the survey, ${chapter}`);
    }
  });
});
