import { describe, expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';
import type { Screen } from '../support/screen.ts';

/** On the smallest screens: the way out of every sheet is in sight at once, and a gate leans to neither answer. */
let screen: Screen;
onTablet('file', async (at) => {
  screen = await at.open();
  await screen.beginRun();
});

const SMALL = [
  [960, 600],
  [390, 844],
] as const;

/** What closes a sheet, and whether a finger reaches it where it stands. */
const WAY_OUT = `(() => {
  const ways = [...document.querySelectorAll(
    'dialog[open] :is([data-action="back"], [data-action="keep-going"], [data-action="all-well"])')];
  const way = ways.find((one) => one.getClientRects().length > 0);
  if (!way) return 'none';
  const { left, right, top, bottom } = way.getBoundingClientRect();
  if (top < 0 || left < 0 || right > innerWidth || bottom > innerHeight)
    return 'off the screen at ' + Math.round(top) + ' to ' + Math.round(bottom);
  const seen = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
  return seen && way.contains(seen) ? 'in reach' : 'under ' + seen?.className;
})()`;

describe('a sheet of the run', () => {
  it('has its way out in sight, opened and scrolled', async () => {
    const found: string[] = [];
    await screen.actUntil({ action: 'answer-gate' });
    for (const sheet of ['happened', 'kitchen', 'steps', 'settings', 'until-when', 'stop']) {
      await screen.resize(1280, 800);
      await screen.press(sheet);
      await screen.dialog().waitFor();
      if (sheet === 'happened') await screen.press('other');
      for (const [width, height] of SMALL) {
        await screen.resize(width, height);
        for (const to of ['0', '1e6', '300']) {
          await screen.see(
            `new Promise((r) => { document.querySelector('dialog[open]').scrollTop = ${to};
              requestAnimationFrame(() => requestAnimationFrame(r)); })`,
          );
          const way = await screen.see<string>(WAY_OUT);
          if (way !== 'in reach') found.push(`${sheet} ${width} at ${to}: ${way}`);
        }
        await screen.picture(`glance/sheet-${sheet}-${width}`);
      }
      await screen.closeDialog();
    }
    expect(found).toEqual([]);
  });
});

describe('a gate', () => {
  it.each([[1280, 800], ...SMALL] as const)(
    'has two answers alike and apart, neither chosen before, at %i × %i',
    async (width, height) => {
      await screen.resize(1280, 800);
      await screen.actUntil({ action: 'answer-gate' });
      await screen.resize(width, height);
      const look = await screen.see<{
        sizes: number[][];
        apartPx: number;
        looks: string[];
        focused: boolean;
      }>(
        `(() => {
          const both = ['answer-gate', 'answer-gate-no'].map((name) =>
            document.querySelector('[data-action="' + name + '"]'));
          const [yes, no] = both.map((one) => one.getBoundingClientRect());
          return {
            sizes: [yes, no].map(({ width, height }) => [Math.round(width), Math.round(height)]),
            apartPx: Math.max(no.left - yes.right, no.top - yes.bottom),
            looks: both.map((one) => {
              const { backgroundColor, color, fontSize, borderTopWidth } = getComputedStyle(one);
              return [backgroundColor, color, fontSize, borderTopWidth].join(' ');
            }),
            focused: both.some((one) => one === document.activeElement),
          };
        })()`,
      );
      await screen.picture(`glance/gate-${width}`);
      expect(look.sizes[0]).toEqual(look.sizes[1]);
      expect(look.sizes[0]?.[1]).toBeGreaterThanOrEqual(100);
      expect(look.apartPx).toBeGreaterThanOrEqual(24);
      expect(look.looks[0]).toBe(look.looks[1]);
      expect(look.focused).toBe(false);
    },
  );
});
