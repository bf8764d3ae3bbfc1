import { describe, expect, it } from 'vitest';
import { itCan } from '../support/browser/abilities.ts';
import { t } from '../support/language.ts';
import { onTablet } from '../support/on-tablet.ts';
import { pause, type Screen } from '../support/screen.ts';
import { storedEntries } from '../support/stored-run.ts';

let first: Screen;
let second: Screen;

onTablet('test', async (at) => {
  first = await at.open();
  await first.beginRun();
  await first.actUntil({ step: 'prepare-gather' });
  await at.keepTime();
  second = await at.open('run');
  await second.waitForElement('.watch-band');
});

const lead = (screen: Screen) =>
  screen.see<string | null>("document.querySelector('.watch-band')?.dataset.lead ?? null");
const sessionsOf = async (screen: Screen) =>
  (await storedEntries(screen)).map(({ session }) => session);

describe('two pages of one tablet', () => {
  it('the second shows the run as it goes on, with everything in it switched off', async () => {
    expect((await second.look()).step).toBe('prepare-gather');
    const usable = await second.see<number>(
      "document.querySelectorAll('.run-place button:not(:disabled, [data-action=stop])').length",
    );
    expect(usable).toBe(0);
    await second.picture('faults/second-page-only-shows');
    await second.resize(820, 1180);
    await second.setTheme('night');
    await second.picture('faults/second-page-only-shows-portrait-night');
    expect(await second.widthPx()).toBeLessThanOrEqual(820);
    const before = await storedEntries(second);
    await second.see("document.querySelector('.main-action').click()");
    await pause(300);
    expect(await storedEntries(second)).toEqual(before);

    await first.page.bringToFront();
    await first.actUntil({ step: 'prepare-alarms' });
    // One tablet has one clock: what the first page's hands took is gone for the second too.
    const aheadMs = (await first.shifted()).wallMs - (await second.shifted()).wallMs;
    await second.page.bringToFront();
    await second.jump(aheadMs);
    await second.until('it follows', ({ step }) => step === 'prepare-alarms');
    const seen = await second.until('the light', ({ sound }) => sound === 'elsewhere');
    expect(seen.text).toContain(t('run.light.sound.elsewhere'));
  });

  it('a page that lives hands the run over when it is asked, and only shows it from then on', async () => {
    await second.press('lead-here');
    await second.waitForElement('.watch-band', 'gone');
    await first.waitForElement('.watch-band');
    await second.until('it leads', (seen) => seen.status !== '');
    const old = (await sessionsOf(second))[0];
    await second.act();
    await second.act();
    const sessions = await sessionsOf(second);
    const handed = sessions.findIndex((session) => session !== old);
    expect(handed).toBeGreaterThan(0);
    expect(sessions.slice(handed)).not.toContain(old);
  });

  itCan(
    // Hidden first, as devices do it: a browser that freezes a page as it hides it cuts off what
    // the page writes just then, and that bars the store to every other page.
    ['hide', 'freeze'],
    'a frozen page is replaced by a person’s word; what it writes when it thaws is refused',
    async () => {
      // A write under way when the page froze would be the late one: it is asked for as the first thing after the thaw.
      await first.see(
        `document.addEventListener('resume', () => document.querySelector('.main-action')?.click())`,
      );
      const firstSession = (await sessionsOf(first)).at(-1);
      await first.cdp.send('Page.setWebLifecycleState', { state: 'frozen' });
      await second.page.bringToFront();
      await second.jump(40_000);
      await second.waitForElement('.watch-band[data-lead="unsure"]');
      await second.jump(60_000);
      await second.waitForElement('.watch-band[data-lead="silent"]');
      await second.picture('faults/second-page-may-take-over');
      await second.press('lead-here');
      await second.waitForElement('.watch-band', 'gone');
      await second.until('it leads', (seen) => ['reviewing', 'running'].includes(seen.status));
      await second.act();
      const before = await storedEntries(second);

      await first.page.bringToFront();
      await first.cdp.send('Page.setWebLifecycleState', { state: 'active' });
      const band = first.page.locator('.watch-band', { hasText: t('shell.other-lead.took-over') });
      await band.waitFor();
      await first.picture('faults/thawed-page-was-replaced');
      const after = await storedEntries(first);
      expect(after.slice(0, before.length)).toEqual(before);
      expect(after.slice(before.length).filter(({ session }) => session === firstSession)).toEqual(
        [],
      );
      expect(await lead(second)).toBeNull();
      await second.page.bringToFront();
      await second.act();
      expect((await storedEntries(second)).at(-1)?.session).not.toBe(firstSession);
    },
  );
});
