import { expect, it } from 'vitest';
import { axeFindsNothing } from '../support/axe.ts';
import { t } from '../support/language.ts';
import { onTablet } from '../support/on-tablet.ts';

const on = onTablet('test', async (at) => {
  await at.open();
});

const SIZES = [
  [1280, 800],
  [800, 1280],
  [390, 844],
] as const;

/** Changes a word of one entry, as a bad block or another program would. */
const damage = (seq: number) =>
  on.screen.see<string>(
    `new Promise((resolve, reject) => {
      const open = indexedDB.open('glowpour');
      open.onerror = () => reject(open.error);
      open.onsuccess = () => {
        const write = open.result.transaction('records', 'readwrite');
        const cursor = write.objectStore('records').openCursor();
        let n = 0;
        cursor.onsuccess = () => {
          const at = cursor.result;
          if (!at) return;
          n += 1;
          if (n === ${seq}) at.update({ ...at.value, sum: '00000000' });
          at.continue();
        };
        write.oncomplete = () => { open.result.close(); resolve('changed'); };
        write.onerror = () => reject(write.error);
      };
    })`,
  );

/** The rows of the list of runs, as they are on the disk. */
const rows = () =>
  on.screen.see<readonly unknown[]>(
    `new Promise((resolve, reject) => {
      const open = indexedDB.open('glowpour');
      open.onerror = () => reject(open.error);
      open.onsuccess = () => {
        const all = open.result.transaction('runs').objectStore('runs').getAll();
        all.onsuccess = () => { open.result.close(); resolve(all.result); };
        all.onerror = () => reject(all.error);
      };
    })`,
  );

it('is only shown, says why, is saved, and is put aside by a second press; then another begins', async () => {
  const { screen } = on;
  await screen.beginRun();
  await screen.actUntil({ step: 'clean-hood' });
  await on.load('kitchen');
  await screen.waitForElement('.demo');
  await damage(4);
  await on.load('run');
  await screen.waitForElement('[data-trouble="read-only"]');
  for (const [width, height] of SIZES) {
    await screen.resize(width, height);
    await screen.picture(`faults/damaged-run-${width}`);
    expect(await screen.widthPx()).toBeLessThanOrEqual(width);
  }
  await screen.resize(1280, 800);
  await axeFindsNothing(screen, 'a damaged run');
  expect(await screen.page.locator('[data-trouble]').innerText()).toContain(
    t('shell.put-aside.hot'),
  );
  await screen.press('put-aside');
  await screen.picture('faults/damaged-run-sure');
  await screen.press('leave-open');
  await screen.press('put-aside');
  await screen.press('put-it-aside');
  await screen.waitForElement('[data-trouble]', 'gone');
  expect(await rows()).toMatchObject([{ closed: true, closedAs: 'failed' }]);
  await on.load('record');
  await screen.waitForElement('main article');
  await screen.picture('faults/damaged-run-record');
  await on.load('kitchen');
  await screen.beginRun();
  await screen.until('another run', ({ status }) => status === 'running');
});
