import { describe, expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';
import { wordTrouble } from '../support/overlaps.ts';

const SIZES = [
  [1280, 800],
  [800, 1280],
  [390, 844],
] as const;

const on = onTablet('test', async (at) => {
  await at.open();
  await at.screen.beginRun('hall');
});

/** What each card says: whose it is, and which step. */
const cards = (): Promise<readonly { person: string; step: string; shown: boolean }[]> =>
  on.screen.see(
    `[...document.querySelectorAll('.crew-person')].map((one) => ({
      person: one.querySelector('strong').textContent,
      step: one.dataset.step ?? '',
      shown: one.getAttribute('aria-current') === 'true',
    }))`,
  );

async function look(name: string): Promise<void> {
  const { screen } = on;
  for (const [width, height] of SIZES) {
    await screen.resize(width, height);
    await screen.picture(`crew/${name}-${width}`);
    expect(await screen.widthPx(), `${name} ${width}`).toBeLessThanOrEqual(width);
    const { over } = await wordTrouble(screen);
    expect(over, `${name} ${width}`).toEqual([]);
  }
  await screen.resize(1280, 800);
}

describe('a hall that three people purge with one tablet', () => {
  it('tells each of them what to do, and is played to its end by their own presses', async () => {
    const { screen } = on;
    await screen.waitForElement('.crew-person');
    expect((await cards()).map(({ person }) => person)).toEqual(['Noa', 'Eli', 'Tamar']);
    await look('begin');
    await screen.actUntil({ kind: 'clean', action: 'tick' });
    await look('clean');
    await screen.actUntil({ kind: 'pour', stage: 'pour' }, 1500);
    await look('pour');
    await screen.actUntil({ kind: 'glow', stage: 'hold' }, 1500);
    await look('glow');
  });
});
