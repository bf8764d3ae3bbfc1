import { describe, expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';

/** When one can go to bed: one line over the rests, by evening and morning. */
const on = onTablet('file', async (at) => {
  await at.open();
});

const SIZES = [
  [1280, 800],
  [800, 1280],
  [390, 844],
] as const;

describe('the overview of rests', () => {
  it('says in one line from when to when hands are free, as its list of work has it', async () => {
    const { screen } = on;
    await screen.beginRun();
    await screen.press('until-when');
    const free = screen.page.locator('.days-free');
    expect(await free.innerText()).toMatch(
      /^Hands are free from (today|tonight) \d\d:\d\d to tomorrow \d\d:\d\d\.$/,
    );
    for (const [width, height] of SIZES) {
      await screen.resize(width, height);
      await screen.picture(`free/busy-${width}`);
      expect(await screen.widthPx()).toBeLessThanOrEqual(width);
      const [line, stop] = [
        await free.boundingBox(),
        await screen.page.locator('dialog[open] .stop-corner--over').boundingBox(),
      ];
      if (!line || !stop) throw new Error('The line or Stop is not on the screen.');
      const isUnderStop = line.x + line.width > stop.x && line.y < stop.y + stop.height;
      expect({ width, isUnderStop }).toEqual({ width, isUnderStop: false });
    }
    await screen.closeDialog();
    await screen.actUntil({ isQuiet: true });
    const said = await free.innerText();
    expect(said).toMatch(/^Hands are free now, to tomorrow \d\d:\d\d\.$/);
    const tomorrow = screen.page.locator('[data-when="run.days.tomorrow"]');
    expect(await tomorrow.innerText()).toContain(/\d\d:\d\d/.exec(said)?.[0]);
    await screen.picture('free/quiet');
  });
});
