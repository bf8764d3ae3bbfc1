import { describe, expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';
import type { Screen } from '../support/screen.ts';

/** What may not stand in the way: a notice over what is read and pressed, a question under its answers, cards over a step. */
let screen: Screen;
const on = onTablet('test', async (at) => {
  screen = await at.open();
});

const SIZES = [
  [1280, 800],
  [800, 1280],
  [390, 844],
] as const;

const settled = () =>
  screen.see('new Promise((r) => requestAnimationFrame(() => requestAnimationFrame(r)))');

type Box = { readonly name: string; readonly top: number; readonly bottom: number };

/** Where everything stands that is read or pressed with a wet hand. */
const STANDING = `[...document.querySelectorAll(
  '.stage-sentence, .stage-cautions .caution-line, .countdown, .clock-row, .stop-corner, .main-action, .stage-picture',
)].map((one) => {
  const { left, top, right, bottom } = one.getBoundingClientRect();
  return { name: one.className, left, top, right, bottom };
})`;

describe('a notice of what was refused', () => {
  it('moves nothing, and lies over no caution, clock, Stop or press', async () => {
    await screen.resize(800, 1280);
    await screen.beginRun();
    await screen.actUntil({ kind: 'pour', action: 'start-step' }, 1500);
    // Two presses before the first is on the disk: the second one comes too late.
    await screen.see(`(() => {
      const press = () => document.querySelector('.main-action[data-action="start-step"]').click();
      hands.shift({ wallMs: 400, monoMs: 400 });
      press();
      hands.shift({ wallMs: 400, monoMs: 400 });
      press();
    })()`);
    await screen.waitForElement('.refusal');
    const told: Record<string, { before: unknown; over: readonly string[]; isWhole: boolean }> = {};
    for (const [width, height] of SIZES) {
      await screen.resize(width, height);
      await settled();
      await screen.picture(`in-the-way/refusal-${width}`);
      told[width] = await screen.see(`(() => {
        const notice = document.querySelector('.refusal');
        const { left, top, right, bottom } = notice.getBoundingClientRect();
        const before = ${STANDING};
        const over = before.filter((one) =>
          one.left < right && one.right > left && one.top < bottom && one.bottom > top);
        const seen = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
        return {
          before: before.map(({ name, top, bottom }) => ({ name, top, bottom })),
          over: over.map(({ name }) => name),
          isWhole: seen === notice && top >= 0 && bottom <= innerHeight && notice.scrollHeight <= notice.clientHeight + 1,
        };
      })()`);
      expect(told[width], `${width}`).toMatchObject({ over: [], isWhole: true });
    }
    await screen.waitForElement('.refusal', 'gone');
    for (const [width, height] of SIZES) {
      await screen.resize(width, height);
      await settled();
      const after = await screen.see<readonly Box[]>(STANDING);
      expect(
        after.map(({ name, top, bottom }) => ({ name, top, bottom })),
        `${width}`,
      ).toEqual(told[width]?.before);
    }
  });
});

/** How far the question of a gate reaches below where its answers begin, px; and which gate it is. */
const GATE = `(() => {
  const panel = document.querySelector('.gate-panel');
  const answers = document.querySelector('.gate-answers')?.getBoundingClientRect();
  if (!panel || !answers) return null;
  const bottom = Math.max(...[...panel.children].map((one) => one.getBoundingClientRect().bottom));
  const head = document.querySelector('.stage-sentence').getBoundingClientRect();
  const strip = document.querySelector('.run-strip').getBoundingClientRect();
  return {
    gate: panel.dataset.gate,
    underPx: Math.round(bottom - answers.top),
    aboveIt: Math.round(strip.bottom - head.top),
    belowScreenPx: Math.round(answers.bottom - innerHeight),
  };
})()`;

type GateSeen = { gate: string; underPx: number; aboveIt: number; belowScreenPx: number };

describe('the question of a gate', () => {
  it.each(['flat-coils', 'hall'] as const)(
    'stands whole over its answers, at every gate of %s',
    async (demo) => {
      await screen.resize(1280, 800);
      await screen.beginRun(demo);
      const looked = new Set<string>();
      const wrong: string[] = [];
      for (let n = 0; n < 900; n += 1) {
        await screen.act();
        const seen = await screen.see<GateSeen | null>(GATE);
        if (seen && !looked.has(seen.gate)) {
          looked.add(seen.gate);
          for (const [width, height] of SIZES) {
            await screen.resize(width, height);
            await settled();
            const at = await screen.see<GateSeen | null>(GATE);
            if (at && (at.underPx > 0 || at.aboveIt > 0 || at.belowScreenPx > 0)) {
              wrong.push(`${width}: ${JSON.stringify(at)}`);
              await screen.picture(`in-the-way/gate-${demo}-${seen.gate}-${width}`);
            }
          }
          await screen.resize(1280, 800);
        }
        if ((await screen.look()).status === 'closed') break;
      }
      expect(wrong).toEqual([]);
      expect(looked.size).toBeGreaterThan(3);
    },
    300_000,
  );
});

describe('the cards of a crew on a phone', () => {
  it('are a line a person, so that the step stands on the first screen, and open by a press', async () => {
    await screen.resize(390, 844);
    await screen.beginRun('hall');
    await screen.waitForElement('.crew-person');
    for (const wanted of [
      { kind: 'clean', action: 'tick' },
      { kind: 'pour', stage: 'pour' },
    ] as const) {
      await screen.actUntil(wanted, 1500);
      await screen.see(`document.querySelector('.run-frame').scrollTo(0, 0)`);
      await settled();
      await screen.picture(`in-the-way/crew-${wanted.kind}`);
      const seen = await screen.see<{
        lines: number;
        tallPx: number;
        last: number;
        wordsPx: number;
      }>(`(() => {
        const box = (selector) => document.querySelector(selector)?.getBoundingClientRect();
        const lines = [...document.querySelectorAll('.crew-line')].filter((one) => one.getClientRects().length > 0);
        const bar = box('.main-action');
        return {
          lines: lines.length,
          tallPx: box('.crew').height,
          wordsPx: Math.max(box('.stage-sentence').bottom, box('.countdown')?.bottom ?? 0) - bar.top,
          last: bar.bottom - innerHeight,
        };
      })()`);
      expect(seen.lines).toBe(3);
      expect(seen.tallPx).toBeLessThan(170);
      expect(seen.wordsPx).toBeLessThanOrEqual(0);
      expect(seen.last).toBeLessThanOrEqual(0);
    }
    const own =
      '[data-person="1"] :is([data-action="crew-show"], [data-action="crew-press"], [data-action="hand-on"])';
    const isSeen = () =>
      screen.see<boolean>(
        `[...document.querySelectorAll('${own.replaceAll("'", "\\'")}')].some((one) => one.getClientRects().length > 0)`,
      );
    expect(await isSeen()).toBe(false);
    await screen.page.locator('[data-person="1"] [data-action="crew-open"]').click();
    await expect.poll(isSeen).toBe(true);
    await screen.picture('in-the-way/crew-open');
    expect(on.screen).toBe(screen);
  });
});
