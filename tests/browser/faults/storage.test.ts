import { describe, expect, it } from 'vitest';
import { t } from '../support/language.ts';
import { onTablet } from '../support/on-tablet.ts';
import { pause } from '../support/screen.ts';
import { savedRun, storedEntries } from '../support/stored-run.ts';

const on = onTablet('test', async (at) => {
  await at.open();
});

/** The app's database deleted as the browser's settings or another program would. */
const deleteDatabase = () =>
  on.screen.see<string>(
    `new Promise((resolve) => {
      const asked = indexedDB.deleteDatabase('glowpour');
      asked.onsuccess = () => resolve('deleted');
      asked.onerror = () => resolve('failed');
      asked.onblocked = () => resolve('blocked');
    })`,
  );

/** What stands beside a run that is not saved. */
const TROUBLE = '.trouble[data-trouble="storage"]';

describe('storage that fails', () => {
  it('full: the run stops in plain words, the alarm still calls, and all is written when there is room again', async () => {
    const { screen } = on;
    await screen.beginRun();
    await screen.actUntil({ kind: 'steam', stage: 'open' });
    const { wakeInS } = await screen.until('a timer', (seen) => (seen.wakeInS ?? 99) < 60);
    const begun = Date.now();
    const { origin } = new URL(on.site.url);
    await screen.cdp.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
    // This browser remembers for 30 s how much room there was (measured).
    await pause(31_000);
    const before = await storedEntries(screen);
    await screen.jump((wakeInS ?? 0) * 1000 - (Date.now() - begun) + 1500);
    const dueMs = Date.now();
    await screen.until('it stops', (seen) => seen.status === 'suspended');
    const trouble = screen.page.locator(TROUBLE);
    await trouble.waitFor();
    expect(await trouble.innerText()).toContain(t('shell.storage.full'));
    const called = screen.page.locator('[data-timer] .clock-row--due');
    await called.first().waitFor();
    expect((await screen.look()).sound).not.toBe('blocked');
    await screen.waitForElement('.flash');
    await screen.waitFor(
      `hands.begins.some((ms) => ms > ${dueMs - 2000} && ms < ${dueMs + 2500})`,
      'the sound of the alarm is begun',
    );
    await screen.picture('faults/storage-full');
    const { entries } = await savedRun(screen, () => screen.press('save-run'));
    expect(entries.map(({ seq }) => seq)).toEqual(entries.map((_, i) => i + 1));
    expect(entries.length).toBeGreaterThan(before.length);
    expect(entries.map(({ fact }) => fact.body.kind)).toContain('storage-failed');
    expect((await storedEntries(screen)).length).toBe(before.length);

    await screen.cdp.send('Storage.overrideQuotaForOrigin', { origin });
    await screen.waitForElement(TROUBLE, 'gone');
    const after = await storedEntries(screen);
    expect(after.map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(['storage-failed', 'storage-mended', 'timer-due']),
    );
    expect(after.map(({ seq }) => seq)).toEqual(after.map((_, i) => i + 1));
    await screen.see("document.querySelector('.clock-row--due')?.click()");
    await screen.press('resume');
    await screen.until('it goes on', (seen) => seen.status === 'running');
  });

  it('deleted from outside: said in plain words, offered as a file, and written down again whole', async () => {
    const { screen } = on;
    await screen.beginRun();
    await screen.actUntil({ step: 'prepare-gather' });
    const before = await storedEntries(screen);
    expect(await deleteDatabase()).toBe('deleted');
    // The very next write finds it out.
    await screen.see(
      "window.told = []; new MutationObserver(() => window.told.push(document.querySelector('.trouble')?.innerText ?? '')).observe(document.body, { subtree: true, childList: true, characterData: true }); undefined",
    );
    await screen.act();
    await screen.waitFor(
      `window.told.some((text) => text.includes(${JSON.stringify(t('shell.storage.gone'))}))`,
      'the plain message',
    );
    await screen.waitForElement('.trouble', 'gone');
    await screen.picture('faults/storage-deleted');
    const after = await storedEntries(screen);
    expect(after.slice(0, before.length)).toEqual(before);
    expect(after.map(({ kind }) => kind)).toContain('noted');
    expect((await screen.look()).status).toBe('suspended');
    await screen.press('resume');
    await screen.until('it goes on', (seen) => seen.status === 'running');
  });

  it('a version change from outside closes the connection; the next write opens another', async () => {
    const { screen } = on;
    await screen.beginRun();
    const before = (await storedEntries(screen)).length;
    const outcome = await screen.see<string>(
      `new Promise((resolve) => {
        const asked = indexedDB.open('glowpour', 99);
        asked.onupgradeneeded = () => asked.transaction.abort();
        asked.onblocked = () => resolve('blocked');
        asked.onsuccess = () => resolve('opened');
        asked.onerror = () => resolve('undone');
      })`,
    );
    expect(outcome).toBe('undone');
    await screen.act();
    await screen.act();
    expect((await storedEntries(screen)).length).toBeGreaterThan(before);
    expect((await screen.look()).status).toBe('running');
  });

  it('held by a page that stands still in the midst of writing: said in plain words soon, and saved when it is gone', async () => {
    // Verifies: I-27
    const { screen } = on;
    await screen.beginRun();
    const before = await storedEntries(screen);
    // As a frozen page leaves it: a transaction of another connection that never ends.
    await screen.see(
      `new Promise((resolve) => {
        const asked = indexedDB.open('glowpour');
        asked.onsuccess = () => {
          window.frozen = asked.result;
          const transaction = asked.result.transaction(['epochs', 'records', 'heartbeats', 'runs'], 'readwrite');
          const held = transaction.objectStore('epochs');
          const holdOn = () => {
            if (window.frozen) held.get('none').onsuccess = holdOn;
            else transaction.abort();
          };
          holdOn();
          resolve(undefined);
        };
      })`,
    );
    const begun = Date.now();
    void screen.act().catch(() => undefined);
    const trouble = screen.page.locator(TROUBLE);
    await trouble.waitFor({ timeout: 20_000 });
    expect(await trouble.innerText()).toContain(t('shell.storage.held'));
    expect(Date.now() - begun).toBeLessThan(15_000);
    await screen.see('window.frozen.close(); window.frozen = null; undefined');
    await screen.waitForElement(TROUBLE, 'gone');
    const after = await storedEntries(screen);
    expect(after.length).toBeGreaterThan(before.length);
    expect(after.map(({ seq }) => seq)).toEqual(after.map((_, i) => i + 1));
  });

  it('emptied while the app was away: the run that was open is said to be gone', async () => {
    const { screen } = on;
    await screen.beginRun();
    await screen.act();
    await screen.page.goto(`${on.site.url}/icon.svg`);
    expect(await deleteDatabase()).toBe('deleted');
    await on.load('kitchen');
    const lost = screen.page.locator('[data-banner="lost-run"]');
    await lost.waitFor();
    expect(await lost.innerText()).toContain('Flat with coils');
    await screen.picture('faults/storage-emptied');
    await screen.press('dismiss-lost-run');
    await lost.waitFor({ state: 'detached' });
    await on.load('kitchen');
    await screen.waitForElement('.demo');
    expect(await lost.count()).toBe(0);
  });

  it('unreadable at the start: said in every place, nothing taken for gone, and taken up when it can be read', async () => {
    await on.screen.beginRun();
    await on.screen.act();
    await on.cutPower(0);
    const screen = await on.open('', async ({ page }) => {
      await page.addInitScript(() => {
        const open = indexedDB.open.bind(indexedDB);
        Object.assign(globalThis, { refuse: true });
        indexedDB.open = (name: string, version?: number) => {
          if ((globalThis as { refuse?: boolean }).refuse && version === 1)
            throw new DOMException('Internal error opening backing store.', 'UnknownError');
          return open(name, version);
        };
      });
    });
    const banner = screen.page.locator('.banner[data-trouble="unreadable"]');
    await banner.waitFor();
    expect(await banner.innerText()).toContain(t('shell.trouble.unreadable'));
    await screen.picture('faults/storage-unreadable');
    await screen.see('globalThis.refuse = false');
    await screen.waitFor(
      `document.querySelector('.run-place, [data-banner="open-run"]')`,
      'the run is there again',
      20_000,
    );
    expect((await storedEntries(screen)).map(({ kind }) => kind)).toContain('session-opened');
  });
});
