import { expect, it } from 'vitest';
import { onTablet } from './support/on-tablet.ts';

const on = onTablet('test', async (at) => {
  const screen = await at.open();
  await screen.beginRun();
});

/** What of these has a place on the screen. */
const SEEN = `['.stage-sentence', '.main-action', '.stop-corner', '.clock-row--due'].filter(
  (one) => (document.querySelector(one)?.getClientRects().length ?? 0) > 0)`;

it('while an alarm calls, the step in hand, its one action and Stop stay on the screen', async () => {
  const { screen } = on;
  await screen.actUntil({ kind: 'pour', stage: 'cold' });
  const pour = await screen.until('a timer', (seen) => (seen.wakeInS ?? 99) < 60);
  await screen.jump((pour.wakeInS ?? 0) * 1000 + 100);
  await screen.waitForElement('.flash');
  // On a slow machine another fixture's rest may end before the pour's own clock calls: it is heard, and the pour goes on.
  for (let seen = await screen.look(); seen.step !== pour.step; seen = await screen.look()) {
    await screen.press('confirm');
    await screen.waitForElement('.flash', 'gone');
    const next = await screen.until('the pour again', (one) => (one.wakeInS ?? 99) < 60);
    await screen.jump((next.wakeInS ?? 0) * 1000 + 100);
    await screen.waitForElement('.flash');
  }
  await screen.waitForElement('.clock-row--due');
  await screen.picture('screens/3-run-alarm-calls');
  expect(await screen.see(SEEN)).toEqual([
    '.stage-sentence',
    '.main-action',
    '.stop-corner',
    '.clock-row--due',
  ]);
  // The clock that calls is called by what it is of, also where another clock stood before.
  const words = (one: string) => screen.page.locator(one).first().innerText();
  expect(await words('.clock-row--due .clock-name')).toContain(await words('.stage-fixture'));
  const { step } = await screen.look();
  await screen.press('confirm');
  await screen.until('the next step', (seen) => seen.step !== step);
  await screen.waitForElement('.flash', 'gone');
});
