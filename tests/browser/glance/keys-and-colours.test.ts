import { describe, expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';
import type { Screen } from '../support/screen.ts';

/** The main screens by the Tab key alone, and in the colours that a reader forces. */
let screen: Screen;
const on = onTablet('file', async (at) => {
  screen = await at.open();
  await screen.resize(1280, 800);
});

/** So many stops are looked at on each screen; all of them where there are fewer. */
const STOPS = 14;

type Stop = { readonly said: string; readonly ring: boolean; readonly inSight: boolean };

/** What has the focus: what it is, whether it shows that, and whether it is on the screen. */
const STOP = `(() => {
  const one = document.activeElement;
  if (!one || one === document.body) return null;
  const drawn = one instanceof SVGElement ? getComputedStyle(one.querySelector('rect') ?? one) : getComputedStyle(one);
  const { top, bottom, left, right } = one.getBoundingClientRect();
  return {
    said: ((one.getAttribute('aria-label') ?? one.textContent ?? '').trim() || one.tagName + ' ' + (one.type ?? '')).slice(0, 50),
    ring: one instanceof SVGElement
      ? parseFloat(drawn.strokeWidth) >= 2 && drawn.stroke !== 'none'
      : drawn.outlineStyle !== 'none' && parseFloat(drawn.outlineWidth) >= 2,
    inSight: bottom > 0 && top < innerHeight && right > 0 && left < innerWidth,
  };
})()`;

async function stopsByTab(): Promise<readonly Stop[]> {
  await screen.see('document.activeElement?.blur(); scrollTo(0, 0)');
  const stops: Stop[] = [];
  for (let n = 0; n < STOPS; n += 1) {
    await screen.page.keyboard.press('Tab');
    const stop = await screen.see<Stop | null>(STOP);
    if (stop) stops.push(stop);
  }
  return stops;
}

/** Words that are written in the colour of their own ground, or press nothing that can be seen. */
const LOST = `(() => {
  const groundOf = (one) => {
    for (let up = one; up; up = up.parentElement) {
      const { backgroundColor } = getComputedStyle(up);
      if (backgroundColor !== 'rgba(0, 0, 0, 0)') return backgroundColor;
    }
    return 'none';
  };
  return [...document.querySelectorAll('button, a, summary, h1, h2, label')]
    .filter((one) => one.checkVisibility() && one.textContent.trim() !== '')
    .filter((one) => getComputedStyle(one).color === groundOf(one))
    .map((one) => one.textContent.trim().slice(0, 50));
})()`;

async function look(name: string): Promise<void> {
  const stops = await stopsByTab();
  expect.soft(stops.length, name).toBeGreaterThan(3);
  expect
    .soft(
      stops.filter(({ ring }) => !ring).map(({ said }) => said),
      `${name}: ring`,
    )
    .toEqual([]);
  expect
    .soft(
      stops.filter(({ inSight }) => !inSight).map(({ said }) => said),
      `${name}: in sight`,
    )
    .toEqual([]);
  await screen.page.emulateMedia({ forcedColors: 'active' });
  expect.soft(await screen.see<string[]>(LOST), `${name}: forced colours`).toEqual([]);
  await screen.picture(`glance/forced-${name}`);
  await screen.page.emulateMedia({ forcedColors: 'none' });
}

describe('by keys alone, and in forced colours', () => {
  it('each main screen shows where the focus is, and loses no word', async () => {
    await screen.openDemo('flat-coils');
    await screen.waitForElement('[data-course] .course-bar');
    await look('plan');
    await screen.goTo('record');
    await screen.waitForElement('main');
    await look('record');
    await on.load('kitchen');
    await screen.beginRun();
    await look('run');
    await screen.press('happened');
    await screen.dialog().waitFor();
    await look('happened');
  });
});
