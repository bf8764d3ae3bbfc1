import { describe, expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';
import type { Screen } from '../support/screen.ts';

/** What is read with a wet hand: the hour until which something rests, and two cautions beside a pour. */
let screen: Screen;
const on = onTablet('file', async (at) => {
  screen = await at.open();
  await screen.resize(1280, 800);
  await screen.beginRun();
});

const SIZES = [
  [1280, 800],
  [800, 1280],
  [600, 960],
] as const;

const DETAILS = `document.querySelectorAll('.stage-detail li').length`;
const CAUTIONS = `document.querySelectorAll('.stage-cautions .caution-line').length`;
/** "2 more lines". */
const MORE = `document.querySelector('[data-action="more-cautions"]').innerText`;

describe('the words of a run', () => {
  it('name the hour on the label that is put up when a cleaning ends', async () => {
    await screen.actUntil({ step: 'clean-microwave', action: 'tick' }, 200);
    const lines = await screen.see<string[]>(
      `[...document.querySelectorAll('.tick-row')].map((one) => one.innerText)`,
    );
    await screen.picture('words/label');
    expect(lines.at(-1)).toMatch(/\d\d:\d\d/);
  });

  it('show two cautions beside a pour, the others behind one press, at every size', async () => {
    await screen.actUntil({ kind: 'pour', kettle: 1, action: 'confirm' }, 1500);
    expect(await screen.see(CAUTIONS)).toBe(2);
    for (const [width, height] of SIZES) {
      await screen.resize(width, height);
      await screen.picture(`words/pour-${width}`);
      expect(await screen.widthPx()).toBeLessThanOrEqual(width);
    }
    const more = Number(/\d+/u.exec(await screen.see<string>(MORE))?.[0]);
    expect(more).toBeGreaterThan(0);
    await screen.press('more-cautions');
    const [cautions, details] = [
      await screen.see<number>(CAUTIONS),
      await screen.see<number>(DETAILS),
    ];
    expect(cautions + details).toBe(2 + more);
    expect(cautions).toBeGreaterThan(2);
    await screen.picture('words/pour-all');
    expect(on.screen).toBe(screen);
  });
});
