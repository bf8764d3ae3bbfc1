import { afterAll, describe, expect, it } from 'vitest';
import { onTablet, type OnTablet } from './support/on-tablet.ts';
import { EnglishLeft, fieldsOfKitchenFiles, wordsOfDemo } from './support/pseudo/english-left.ts';
import { installReader } from './support/pseudo/reader.ts';
import { Reading } from './support/pseudo/reading.ts';
import type { DemoId, Screen } from './support/screen.ts';

/**
 * The whole app in a made-up language: English with an accent on every letter
 * and every vowel twice, so that it grows by about two fifths. A word without
 * accents did not come from the catalogue; a word that is cut off has no room
 * for a longer language. What people wrote themselves stays as they wrote it.
 */
const LANGUAGE = 'en-XA';
const PARTS = ['steps', 'methods', 'pours', 'heat', 'ask', 'lists'];
const CHAPTERS = ['where', 'fixtures', 'water', 'air', 'people'];
/** What the tests themselves write, as a person. */
const TYPED = 'zzz';

const DEMO: DemoId = 'flat-coils';

async function open(at: OnTablet, route?: string): Promise<Screen> {
  return at.open(route, async ({ page }) => {
    await page.addInitScript(installReader);
  });
}

const on = onTablet('file', async (at) => {
  await at.start({ language: LANGUAGE });
  await open(at);
});
const reading = new Reading(on, [...wordsOfDemo(DEMO), TYPED]);
const read = (name: string, also?: readonly string[]): Promise<void> => reading.read(name, also);
const readDialog = (name: string, show: () => Promise<void>): Promise<void> =>
  reading.readDialog(name, show);
const nothingFound = (): void => reading.nothingFound();

afterAll(() => {
  console.log(`Read in ${LANGUAGE}: ${reading.screens} screens and prints.`);
});

/** The first change to a demo makes a kitchen of it that the tablet keeps. */
async function makeItOwn(): Promise<void> {
  const { screen } = on;
  await screen.goTo('kitchen');
  await screen.field('kitchen.choices.people').selectOption('2');
  await screen.waitForElement('.kitchen-row[aria-current]');
}

describe('in a language made of accents', () => {
  it('the reader finds a word that is not of the catalogue, and one that is cut off', async () => {
    const control = new EnglishLeft(wordsOfDemo(DEMO));
    await on.screen.waitForElement('.demo');
    await on.screen.see("document.querySelector('.demo').title = 'Plain words'");
    control.look('control', await reading.texts());
    expect(Object.values(control.take()).flat().join()).toContain('Plain words');
    await on.screen.see(
      "document.querySelector('.demo').style.cssText = 'width: 60px; overflow: hidden'",
    );
    expect((await on.screen.see<string[]>('reader.cutOff()')).join()).toContain('button.demo');
    expect((await reading.texts()).length).toBeGreaterThan(20);
    await on.load('kitchen');
    await on.screen.waitForElement('.demo');
  });

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
    await read('a file that is refused', fieldsOfKitchenFiles());
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
    const seen = await wholeRun();
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
    nothingFound();
  });
});

/** Dialogs that are read once, when the run comes to a stage that has them. */
const DIALOGS: Readonly<Record<string, readonly string[]>> = {
  quiet: ['until-when', 'settings', 'steps', 'happened', 'stop', 'timer'],
  pour: ['ran-out'],
};

/** Reads every stage on the way to the end; a fault and a power cut come in between. Which kinds of steps were seen. */
async function wholeRun(): Promise<Set<string>> {
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
      await read(name);
    }
    await readDialogs(seen.isQuiet ? 'quiet' : seen.kind, dialogs);
    if (seen.kind === 'glow' && seen.stage === 'hold' && !isCut) {
      isCut = true;
      await interrupted();
    }
    await on.screen.act();
  }
  throw new Error('The run has no end within 1500 acts.');
}

async function readDialogs(stage: string, done: Set<string>): Promise<void> {
  const { screen } = on;
  for (const action of DIALOGS[stage] ?? []) {
    const there = screen.page.locator(`[data-action="${action}"]`).first();
    if (done.has(action) || !(await there.isVisible())) continue;
    done.add(action);
    await readDialog(`run, ${action}`, () => screen.press(action));
    if (action !== 'happened') continue;
    for (const part of ['used', 'note'])
      await readDialog(`run, happened, ${part}`, async () => {
        await screen.press('happened');
        await screen.press(part);
      });
  }
  const goPast = screen.page.locator('[data-action="go-past"]');
  if (!done.has('go-past') && (await goPast.isVisible())) {
    done.add('go-past');
    await readDialog('run, go past', () => screen.press('go-past'));
  }
}

/** A pause, a fault told and cleared, a clock set forward, and a power cut, in the middle of a glow. */
async function interrupted(): Promise<void> {
  await on.screen.press('pause');
  await on.screen.until('a pause', ({ status }) => status === 'held');
  await read('run, a pause');
  await on.screen.pressAt('.side-actions [data-action="resume"]');
  await on.screen.until('it goes on', ({ status }) => status === 'running');
  await on.screen.shift({ wallMs: 3 * 3_600_000 });
  await on.screen.until('the clock is asked', ({ asksClock }) => asksClock);
  await read('run, the clock is asked');
  await on.screen.press('clock-wrong');
  await read('run, the right time');
  await on.screen.press('back');
  await on.cutPower(10 * 60_000);
  const screen = await open(on, 'run');
  await screen.waitForElement('.run-place');
  await read('run, after a power cut');
  for (let n = 0; n < 20 && (await screen.look()).status === 'reviewing'; n += 1) {
    await read(`run, review ${n}`);
    await screen.act();
  }
  await screen.press('happened');
  await screen.press('fault-burned');
  await screen.waitForElement('.cooling .do-this li');
  await read('run, a burn');
  await screen.press('end-early');
  await read('run, a burn, ended early');
  await screen.press('cooling-mistake');
  await screen.waitForElement('.cooling-bar', 'gone');
  await putRight('a burn');
  await screen.press('happened');
  await screen.press('other');
  await screen.press('fault-kettle-failed');
  await screen.dialog().waitFor({ state: 'detached' });
  await read('run, a fault');
  await putRight('a fault');
}

/** What is hot is made safe, what was told is cleared, and the run goes on. */
async function putRight(what: string): Promise<void> {
  const { screen } = on;
  for (let n = 0; n < 6 && (await screen.look()).status === 'suspended'; n += 1) {
    const next = '.suspended [data-action="confirm-safe"], .suspended [data-action="clear-fault"]';
    if (await screen.page.locator(next).first().isVisible()) await screen.pressAt(next);
    else await screen.act();
    await read(`run, ${what}, ${n}`);
  }
}
