import { expect, it } from 'vitest';
import type { OnTablet } from '../on-tablet.ts';
import type { DemoId } from '../screen.ts';
import { fieldsOfKitchenFiles } from './english-left.ts';
import type { Reading } from './reading.ts';
import { wholeRun } from './whole-run.ts';

const PARTS = ['steps', 'methods', 'pours', 'heat', 'ask', 'lists'];
const HANDOUTS = ['labels', 'rabbi', 'covers', 'utensils', 'shopping', 'door'];
const CHAPTERS = ['where', 'fixtures', 'water', 'air', 'people'];

/** What the tests themselves write, as a person. */
export const TYPED = 'zzz';
/** The demo that is walked through. */
export const DEMO: DemoId = 'flat-coils';

/**
 * Walks through the whole app in the language of the tablet, one test a place:
 * pages, survey, plan, every stage of a run, the record, and what is printed,
 * saved or sent of them.
 */
export function walkThrough(on: OnTablet, reading: Reading): void {
  const read = (name: string, also?: readonly string[]): Promise<void> => reading.read(name, also);
  const readDialog = (name: string, show: () => Promise<void>): Promise<void> =>
    reading.readDialog(name, show);
  const nothingFound = (): void => reading.nothingFound();

  /** The first change to a demo makes a kitchen of it that the tablet keeps. */
  async function makeItOwn(): Promise<void> {
    const { screen } = on;
    await screen.goTo('kitchen');
    await screen.field('kitchen.choices.people').selectOption('2');
    await screen.waitForElement('.kitchen-row[aria-current]');
  }

  it('the welcome, pages that have nothing yet, and a file that is not a kitchen', async () => {
    const { screen } = on;
    await read('welcome');
    for (const page of ['plan', 'run', 'record'] as const) {
      await screen.goTo(page);
      await screen.waitForElement('main');
      await read(`no ${page}`);
    }
    await screen.goTo('kitchen');
    const chooser = screen.page.waitForEvent('filechooser');
    await screen.button('kitchen.open-file').click();
    await (
      await chooser
    ).setFiles({ name: TYPED, mimeType: 'application/json', buffer: Buffer.from('{"x": 1}') });
    await screen.waitForElement('.problems');
    await read('a file that is refused', ['x', ...fieldsOfKitchenFiles()]);
    nothingFound();
  });

  it('the plan with every part, its dialogs and its print', async () => {
    const { screen } = on;
    await on.load('kitchen');
    await screen.openDemo(DEMO);
    for (const part of PARTS) {
      await screen.openPart(part);
      await read(`plan, ${part}`);
    }
    await reading.readPrint('plan');
    await reading.readSaved('plan, calendar', () =>
      screen.button('plan-page.save-calendar').click(),
    );
    await screen.openPart('handouts');
    for (const id of HANDOUTS) await readHandout(on, reading, id);
    // Opened alone, a page has only the sentences it asked for itself.
    await makeItOwn();
    await on.load('plan');
    await screen.waitForElement('.plan-place');
    await read('plan, opened alone');
    await screen.openPart('ask');
    await readDialog('an answer', () => screen.button('plan-page.questions.enter').first().click());
    await screen.openPart('methods');
    await readDialog('said otherwise', () =>
      screen.button('plan-page.methods.said-otherwise').first().click(),
    );
    await screen.button('plan-page.methods.make-own-custom').click();
    await screen.dialog().waitFor();
    await read('own custom, to be made');
    await screen.dialog().locator('.button--ember').click();
    await screen.waitForElement('[data-row]');
    await read('own custom');
    await screen.pressAt('[data-row] .button');
    await read('row of an own custom');
    nothingFound();
  });

  it('the kitchen, the list of kitchens, and the survey with each kind of fixture', async () => {
    const { screen } = on;
    await on.load('kitchen');
    await screen.openDemo(DEMO);
    await screen.goTo('kitchen');
    await screen.button('kitchen.change').waitFor();
    await read('kitchen, a demo');
    await makeItOwn();
    await screen.pressAt('.kitchen-row .button');
    await read('kitchen, kept');
    await screen.button('kitchen.kept.delete').click();
    await read('kitchen, to be deleted');
    for (const chapter of CHAPTERS) {
      await on.load(`kitchen/${chapter}`);
      await screen.waitForElement('.survey');
      await read(`survey, ${chapter}`);
    }
    await on.load('kitchen/fixtures');
    const rows = screen.page.locator('.fixture-row');
    await rows.first().waitFor();
    const names = await rows.locator('span:first-child').allInnerTexts();
    for (const [at, name] of names.entries()) {
      await rows.nth(at).click();
      await screen.page.getByRole('heading', { name, exact: true }).waitFor();
      await read(`survey, ${name}`);
      await screen.button('survey.sheet.next').click();
      await rows.first().waitFor();
    }
    await screen.button('survey.fixtures.run').click();
    await read('survey, counter round corners');
    await screen.field('survey.run.piece', { number: 1 }).fill(TYPED);
    await screen.field('survey.run.piece', { number: 1 }).press('Enter');
    await read('survey, not understood');
    const tell = screen.page.locator('.survey-head').getByRole('button').last();
    if (await tell.isEnabled()) await readDialog('survey, still to tell', () => tell.click());
    nothingFound();
  });

  it('a run of the whole demo: every stage, every dialog, a fault, a power cut, the end, the record and its print', async () => {
    await on.load('kitchen');
    await on.screen.prepareRun(DEMO);
    await read('start of a run');
    await on.screen.passHearingCheck();
    await read('hearing check');
    await on.screen.press('start-run');
    await on.screen.until('the run begins', ({ status }) => status === 'running');
    const seen = await wholeRun(on, reading);
    expect([...seen]).toEqual(
      expect.arrayContaining(['clean', 'glow', 'pour', 'boil', 'self-clean', 'steam', 'mark']),
    );
    await read('run, closed');
    await on.screen.press('record');
    await on.screen.waitForElement('main article');
    await read('record');
    await on.load('record');
    await on.screen.waitForElement('main article');
    await read('record, opened alone');
    await reading.readPrint('record');
    const { screen } = on;
    await reading.readSaved('record, text', () => screen.button('record-page.save-text').click());
    nothingFound();
  });
}

/** One sheet to print, on the screen, as text and on paper. */
async function readHandout(on: OnTablet, reading: Reading, id: string): Promise<void> {
  const { screen } = on;
  await screen.pressAt(`[data-handout="${id}"]`);
  await screen.waitFor(
    `document.querySelector('.around') !== null && document.querySelector('.around > [role="status"]:not(.around-about)') === null`,
    `${id} is worked out`,
  );
  await reading.read(`handout, ${id}`);
  const send = screen.button('handouts.send');
  if (await send.isVisible()) await reading.readSaved(`handout, ${id}, text`, () => send.click());
  await screen.see(`void (document.documentElement.dataset.printOnly = 'handouts')`);
  await reading.readPrint(`handout, ${id}`);
  await screen.see(`void delete document.documentElement.dataset.printOnly`);
}
