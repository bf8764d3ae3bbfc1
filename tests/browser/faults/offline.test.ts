import { expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';

const on = onTablet('test', async (at) => {
  const screen = await at.open();
  await screen.keptOffline();
  // Not an emulation: there is nothing any more at that address.
  await at.site.stop();
});

it('begins a run, finishes steps and is heard with nothing at the other end, from the second load on', async () => {
  await on.load('kitchen');
  const { screen } = on;
  expect(await screen.see("fetch('/not-kept').then(() => 'answered', () => 'gone')")).toBe('gone');
  await screen.beginRun();
  await screen.actUntil({ step: 'clean-hood' });
  await screen.until('the sounds are decoded', ({ sound }) => sound === 'armed');
  const steps = screen.page.locator('[data-action="steps"]');
  expect(Number(/(\d+)\//u.exec(await steps.innerText())?.[1])).toBeGreaterThan(4);
  await screen.press('steps');
  await screen.dialog().waitFor();
  await screen.closeDialog();
  await screen.goTo('record');
  const report = screen.page.locator('main article');
  await report.waitFor();
  await screen.picture('faults/offline-record');
  const fonts = await screen.see<number>(
    "document.fonts.ready.then(() => [...document.fonts].filter((f) => f.status === 'loaded').length)",
  );
  expect(fonts).toBeGreaterThan(1);
  expect(await report.innerText()).toContain('Flat with coils');
});
