import { describe, expect, it } from 'vitest';
import { onTablet } from './support/on-tablet.ts';

declare global {
  // oxlint-disable-next-line no-var
  var askedToPersist: number;
}

/** Runs in the page before the app: a browser that keeps nothing for sure, and counts how often it is asked. */
function refusing(): void {
  globalThis.askedToPersist = 0;
  navigator.storage.persist = () => {
    globalThis.askedToPersist += 1;
    return Promise.resolve(false);
  };
}

describe('an app on the home screen', () => {
  const on = onTablet('test');

  it('can be installed: the browser finds nothing wrong with its manifest', async () => {
    await on.open('kitchen');
    const { cdp } = on.screen;
    await on.screen.keptOffline();
    const { url, errors } = await cdp.send('Page.getAppManifest');
    expect(url).toMatch(/app\.webmanifest$/);
    expect(errors).toEqual([]);
    const { installabilityErrors } = await cdp.send('Page.getInstallabilityErrors');
    expect(installabilityErrors.map(({ errorId }) => errorId)).toEqual([]);
  });

  it('opens until when by its shortcut, over a run, once its sound is armed', async () => {
    await on.open();
    await on.screen.beginRun();
    await on.load('run/until-when');
    await on.screen.until('the run is there', ({ status }) => status !== '');
    await on.screen.actUntil({ status: 'running' });
    await on.screen.waitForElement('dialog[open] .days');
    await on.screen.closeDialog();
    // Closed is closed, whatever the run does next.
    await on.screen.press('pause');
    await on.screen.press('resume');
    expect(await on.screen.see('document.querySelector("dialog[open]")')).toBeNull();
  });
});

describe('what the browser keeps', () => {
  const on = onTablet('test');

  it('is asked when a run is drafted, and told at its begin and in its settings', async () => {
    await on.open('', async ({ page }) => {
      await page.addInitScript(refusing);
    });
    const { screen } = on;
    await screen.openDemo('flat-coils');
    expect(await screen.see('askedToPersist')).toBe(0);
    await screen.button('plan-page.start-run').click();
    await screen.waitForElement('.start-screen');
    const { t } = screen.translator;
    const answer = screen.page.getByText(t('run.start.kept.may-be-deleted'));
    await answer.waitFor();
    expect(await screen.see('askedToPersist')).toBe(1);
    await screen.passHearingCheck();
    await screen.press('start-run');
    await screen.until('the run begins', ({ status }) => status === 'running');
    await screen.press('settings');
    await screen.waitForElement('[data-kept="may-be-deleted"]');
    for (const told of ['room', 'safari', 'private', 'cleared', 'do'] as const)
      await screen.page.getByText(t(`run.kept.${told}`)).waitFor();
    expect(await screen.widthPx()).toBeLessThanOrEqual(1180);
  });
});
