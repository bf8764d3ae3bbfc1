import { it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';
const on = onTablet('test');
it('late', async () => {
  await on.start({ wallMs: Date.parse('2027-04-21T22:50:00Z') });
  const screen = await on.open();
  await screen.openDemo('mountain-gas');
  await screen.waitForElement('[data-course] .course-bar');
  await screen.resize(1280, 800);
  await new Promise((r) => setTimeout(r, 3000));
  await screen.picture('zz/cut-1280', true);
  await screen.resize(390, 844);
  await new Promise((r) => setTimeout(r, 500));
  await screen.picture('zz/cut-390', true);
});
it('hall', async () => {
  const screen = await on.open();
  await screen.resize(1280, 800);
  await screen.openDemo('hall');
  await screen.waitForElement('[data-course] .course-bar');
  await screen.openPart('pours');
  await new Promise((r) => setTimeout(r, 3000));
  await screen.picture('zz/hall', true);
});
it('gate', async () => {
  const screen = await on.open();
  await screen.resize(1280, 800);
  await screen.beginRun('hall');
  await screen.actUntil({ action: 'answer-gate' });
  await new Promise((r) => setTimeout(r, 500));
  await screen.picture('zz/gate-1280');
  await screen.resize(390, 844);
  await screen.picture('zz/gate-390');
  await screen.resize(960, 600);
  await screen.picture('zz/gate-960');
  for (const sheet of ['happened', 'kitchen', 'steps', 'settings', 'until-when']) {
    await screen.press(sheet);
    await screen.dialog().waitFor();
    await new Promise((r) => setTimeout(r, 300));
    for (const [w, h] of [
      [960, 600],
      [390, 844],
    ] as const) {
      await screen.resize(w, h);
      await screen.picture(`zz/sheet-${sheet}-${w}`);
    }
    await screen.closeDialog();
  }
});
