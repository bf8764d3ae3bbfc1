import { expect, it } from 'vitest';
import { t } from '../support/language.ts';
import { onTablet } from '../support/on-tablet.ts';
import type { Screen } from '../support/screen.ts';

const on = onTablet('test');

/** The name of a sentence where the sentence should stand. */
const RAW_KEY = /\b(?:shell|kitchen|plan|run|record-page|survey)\.[a-z][a-z-]+/;

/** From now on the browser gives no database: it fails at once, or it never answers. */
function withoutDatabase(how: 'fails' | 'never answers'): void {
  IDBFactory.prototype.open = function open() {
    const asked = new EventTarget();
    if (how === 'fails') {
      Object.defineProperty(asked, 'error', {
        value: new DOMException('Internal error opening backing store.', 'UnknownError'),
      });
      setTimeout(() => asked.dispatchEvent(new Event('error')));
    }
    return asked as IDBOpenDBRequest;
  };
}

const openAt = (route: string, how: 'fails' | 'never answers'): Promise<Screen> =>
  on.open(route, async ({ page }) => {
    await page.addInitScript(withoutDatabase, how);
  });

async function expectTold(screen: Screen): Promise<void> {
  const banner = screen.page.locator('.banner[data-trouble="unreadable"]');
  await banner.waitFor({ timeout: 20_000 });
  expect(await banner.innerText()).toContain(t('shell.trouble.unreadable'));
  await screen.waitFor(
    `!${String(RAW_KEY)}.test(document.body.innerText)`,
    'every sentence is here',
  );
}

it('a database that never answers: the page says that it reads, then what is wrong, and that a run may be there', async () => {
  const screen = await openAt('run', 'never answers');
  const line = screen.page.locator('[role="status"]', { hasText: t('shell.reading') });
  await line.waitFor({ timeout: 30_000 });
  await screen.picture('faults/no-storage-reading');
  await expectTold(screen);
  const told = await screen.page.locator('main').innerText();
  expect(told).toContain(t('shell.unread'));
  expect(told).not.toContain(t('shell.no-page.run'));
  await screen.picture('faults/no-storage-run');
});

it('a database that never answers: the list of records is not said to be empty', async () => {
  const screen = await openAt('record', 'never answers');
  await expectTold(screen);
  const told = await screen.page.locator('main').innerText();
  expect(told).toContain(t('shell.unread.about'));
  expect(told).not.toContain(t('record-page.none'));
});

for (const how of ['fails', 'never answers'] as const)
  it(`a database that ${how}: a demo is planned all the same`, async () => {
    const screen = await openAt('plan/flat-coils', how);
    await screen.waitFor(`document.querySelector('.plan-place')`, 'the plan', 40_000);
    await expectTold(screen);
    await screen.picture(`faults/no-storage-plan-${how === 'fails' ? 'fails' : 'hangs'}`);
  });

it('a database that fails: the first screen stands, and a kitchen can be described', async () => {
  const screen = await openAt('', 'fails');
  await expectTold(screen);
  await screen.page.getByText(t('kitchen.welcome.begin')).click();
  await screen.waitFor(`location.hash === '#/kitchen/where'`, 'the survey');
  await screen.waitForElement('main input, main select');
  await expectTold(screen);
});
