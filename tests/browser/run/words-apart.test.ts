import { describe, expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';
import { wordTrouble } from '../support/overlaps.ts';
import type { Screen } from '../support/screen.ts';

/** Words that are twice as large, colours that the system forces, and pages beside the run: no word over another, nothing cut. */
let screen: Screen;
const on = onTablet('file', async (at) => {
  screen = await at.open();
  await screen.resize(1280, 800);
});

const SIZES = [
  [1280, 800],
  [800, 1280],
  [390, 844],
] as const;

async function wrong(name: string): Promise<readonly string[]> {
  const found: string[] = [];
  for (const [width, height] of SIZES) {
    await screen.resize(width, height);
    await screen.see('new Promise((r) => requestAnimationFrame(() => requestAnimationFrame(r)))');
    const { over, cut } = await wordTrouble(screen);
    found.push(...over.map((one) => `${name} ${width}: ${one}`));
    found.push(...cut.map((one) => `${name} ${width}: cut: ${one}`));
    await screen.picture(`apart/${name}-${width}`);
  }
  await screen.resize(1280, 800);
  return found;
}

/** A reader's own size of letters, set in the browser, twice the usual. */
async function twiceAsLarge(isOn: boolean): Promise<void> {
  await screen.cdp.send('Page.setFontSizes', { fontSizes: { standard: isOn ? 32 : 16 } });
}

describe('words', () => {
  it('stand apart on the pages beside the run', async () => {
    await screen.openDemo('flat-coils');
    await screen.goTo('kitchen');
    await screen.waitForElement('.kitchen-picture .room-picture');
    expect(await wrong('kitchen')).toEqual([]);
  });

  it('stand apart at twice their size, in a step, a pour, a sheet and a rest', async () => {
    await on.load('kitchen');
    await screen.beginRun();
    const found: string[] = [];
    const largeAt = async (name: string): Promise<void> => {
      await twiceAsLarge(true);
      found.push(...(await wrong(`large-${name}`)));
      await twiceAsLarge(false);
    };
    await largeAt('first');
    await screen.press('happened');
    await screen.dialog().waitFor();
    await largeAt('happened');
    await screen.closeDialog();
    await screen.actUntil({ action: 'answer-gate' });
    await largeAt('gate');
    await screen.actUntil({ isQuiet: true });
    await largeAt('rest');
    await screen.actUntil({ stage: 'pour', action: 'confirm' }, 1500);
    await largeAt('pour');
    expect(found).toEqual([]);

    // On a phone what a pour warns of stands over the button without scrolling.
    await screen.resize(390, 844);
    const room = await screen.see<number>(
      `document.querySelector('.main-bar').getBoundingClientRect().top - document.querySelector('.stage-cautions').getBoundingClientRect().bottom`,
    );
    expect(room).toBeGreaterThan(0);
    await screen.resize(1280, 800);
  });

  it('and the current page keep their marks where the system forces its colours', async () => {
    await screen.cdp.send('Emulation.setEmulatedMedia', {
      features: [{ name: 'forced-colors', value: 'active' }],
    });
    const mark = await screen.see<{ here: string; other: string; line: string }>(
      `(() => {
        const ring = (one) => getComputedStyle(one, '::after').backgroundColor;
        const here = document.querySelector('.places [aria-current="page"]');
        const other = document.querySelector('.places a:not([aria-current])');
        return { here: ring(here), other: ring(other), line: getComputedStyle(here).textDecorationLine };
      })()`,
    );
    await screen.picture('apart/forced-colours');
    expect(mark.here).not.toBe(mark.other);
    expect(mark.line).toBe('underline');
    const press = await screen.see<{ word: string; ground: string; adjust: string }>(
      `(() => {
        const { color, backgroundColor, forcedColorAdjust } = getComputedStyle(document.querySelector('.main-action'));
        return { word: color, ground: backgroundColor, adjust: forcedColorAdjust };
      })()`,
    );
    expect(press.word).not.toBe(press.ground);
    expect(press.adjust).toBe('none');
    await screen.cdp.send('Emulation.setEmulatedMedia', { features: [] });
  });
});
