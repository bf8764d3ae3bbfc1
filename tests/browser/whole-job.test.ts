import { describe, expect, it } from 'vitest';
import { itCan } from './support/browser/abilities.ts';
import { t } from './support/language.ts';
import { onTablet } from './support/on-tablet.ts';
import { drawPages, lettersOn, print, unspaced, type Printed } from './support/paper/paper.ts';
import type { DemoId } from './support/screen.ts';
import type { Kitchen } from '../../src/core/kitchen/index.ts';
import { demoKitchen } from '../core/kitchen/demos.ts';

/** From the survey to what is filed: a home, and a hall that three people make ready for Passover. */
const HANDOUTS = ['labels', 'rabbi', 'shopping', 'crew', 'door'] as const;
type HandoutId = (typeof HANDOUTS)[number];
/** Who answered, as the tests write it. */
const SAID_BY = 'our rabbi';

const on = onTablet('file', async (at) => {
  await at.open();
});

/** What was printed, by its name. */
const printed = new Map<string, Printed>();
const printedOf = (name: string): Printed => {
  const one = printed.get(name);
  if (!one) throw new Error(`${name} was not printed.`);
  return one;
};

async function openHandout(id: HandoutId): Promise<void> {
  const { screen } = on;
  await screen.openPart('handouts');
  await screen.pressAt(`[data-handout="${id}"]`);
  await screen.waitFor(
    `document.querySelector('.around') !== null && document.querySelector('.around > [role="status"]:not(.around-about)') === null`,
    `${id} is worked out`,
  );
  const trying = JSON.stringify(t('handouts.rabbi.trying'));
  await screen.waitFor(
    `!document.querySelector('.around').textContent.includes(${trying})`,
    'all answers are tried',
    120_000,
  );
}

async function printHandouts(demo: DemoId): Promise<void> {
  for (const id of HANDOUTS) {
    await openHandout(id);
    printed.set(`${demo} ${id}`, await print(on.screen, `${demo}-${id}`, 'handouts'));
  }
}

/** Answers each question that has answers to choose from by the first of them; how many there were. */
async function answerAll(): Promise<number> {
  const { screen } = on;
  const { page } = screen;
  await screen.openPart('ask');
  for (let n = 0; ; n += 1) {
    const ask = page.locator('.questions > ol.question-list').first().locator('> li');
    const open = ask.filter({
      has: page.locator('.question-changes, [data-action="what-it-changes"]'),
    });
    const left = await open.count();
    if (left === 0) return n;
    await open
      .first()
      .getByRole('button', { name: t('plan-page.questions.enter') })
      .click();
    const sheet = screen.dialog();
    await sheet.locator('.answer-choice').first().click();
    await sheet.getByLabel(t('kitchen.custom.way.said-by')).fill(SAID_BY);
    await sheet.getByRole('button', { name: t('plan-page.answer.keep'), exact: true }).click();
    await sheet.waitFor({ state: 'detached' });
    // One of the plan's own leaves the list, and stands in no other.
    await expect.poll(() => open.count(), { timeout: 30_000 }).toBeLessThan(left);
  }
}

async function playToTheEnd(): Promise<void> {
  const { screen } = on;
  await screen.button('plan-page.start-run').click();
  await screen.waitForElement('.start-screen');
  await screen.passHearingCheck();
  await screen.press('start-run');
  await screen.until('the run begins', ({ status }) => status === 'running');
  const end = await screen.actUntil({ status: 'closed' }, 4000);
  expect(end.told).toEqual([]);
}

const kitchenOf = (demo: DemoId): Kitchen => demoKitchen(`${demo}.kitchen.json`);

describe.each(['mountain-gas', 'hall'] as const)('the whole job in %s', (demo) => {
  it('is done from the questions to the record', async () => {
    const { screen } = on;
    await on.load('kitchen');
    await screen.openDemo(demo);
    await printHandouts(demo);
    expect(await answerAll()).toBeGreaterThan(0);
    await playToTheEnd();
    await screen.press('record');
    await screen.page.locator('main article').waitFor();
    await screen.page.locator('.record-digest').waitFor();
    printed.set(`${demo} record`, await print(screen, `${demo}-record`));
    await screen.picture(`whole-job/${demo}-record`);
    const verdict = await screen.page.locator('.record-verdict').innerText();
    expect(verdict).not.toBe('');
    // All of it is done: nothing was left out, and nothing is not purged.
    const states = await screen.see<readonly string[]>(
      `[...document.querySelectorAll('.record-table [data-state]')].map(({ dataset }) => dataset.state)`,
    );
    expect(states).toHaveLength(kitchenOf(demo).fixtures.length);
    expect(states).not.toContain('not-purged');
  }, 900_000);

  itCan(['paper'], 'prints what is told on the screen, for another program to read', () => {
    const { name, fixtures } = kitchenOf(demo);
    const says = (id: string, text: string): void =>
      expect(lettersOn(printedOf(`${demo} ${id}`)).join(''), id).toContain(unspaced(text));
    for (const id of [...HANDOUTS, 'record']) {
      const one = printedOf(`${demo} ${id}`);
      drawPages(one);
      const letters = lettersOn(one);
      expect(letters, id).toHaveLength(one.pages);
      // No page is empty, and no sentence is told by its key.
      for (const page of letters) {
        expect(page.length, id).toBeGreaterThan(40);
        expect(page, id).not.toMatch(/(?:plan-page|handouts|report|record-page|common)\.[a-z]/);
      }
    }
    says('record', name);
    for (const fixture of fixtures) says('record', fixture.name);
    says('record', SAID_BY);
    expect(lettersOn(printedOf(`${demo} record`)).join('')).toMatch(/[0-9a-f]{16}/);
    says('rabbi', t('plan-page.questions.until-then'));
    says('door', t('handouts.door.title', { kitchen: name }));
    says('shopping', t('handouts.shopping.title', { kitchen: name }));
    const { names = [] } = kitchenOf(demo).household;
    for (const person of names)
      says('crew', t('handouts.crew.title', { name: person, kitchen: name }));
    const marked = fixtures.filter(({ designation }) => designation !== 'undecided');
    expect(marked.length).toBeGreaterThan(0);
    for (const fixture of marked) says('labels', fixture.name);
  });
});
