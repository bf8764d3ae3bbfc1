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
  // What a press was told stands for some seconds.
  await screen.waitForElement('.refusal', 'gone');
  for (const [width, height] of SIZES) {
    await screen.resize(width, height);
    await screen.picture(`crew/${name}-${width}`);
    expect(await screen.widthPx(), `${name} ${width}`).toBeLessThanOrEqual(width);
    const { over } = await wordTrouble(screen);
    expect(over, `${name} ${width}`).toEqual([]);
  }
  await screen.resize(1280, 800);
}

/**
 * Goes on with the run as three people do: whoever has a press of their own presses it, whose hands
 * are empty takes up what is offered, and else what is shown goes on. Gives how many presses were
 * made on the cards.
 */
const playByCards = `(async (most) => {
  const find = (selector) => [...document.querySelectorAll(selector)].find(
    (one) => one.getClientRects().length > 0 && !one.disabled,
  );
  const pause = () => new Promise((resolve) => setTimeout(resolve, 60));
  let own = 0;
  let shown = 0;
  let before = '';
  for (let acts = 0; acts < most; acts += 1) {
    if (hands.look().status === 'closed') return { own, shown, acts };
    const press = find('.arm-screen') ? undefined : find('[data-action="crew-press"]');
    const offer = find(':is([data-state="begin"], [data-state="help"]) [data-action="crew-show"]');
    const offered = offer?.closest('.crew-person').dataset.step ?? '';
    hands.shift({ wallMs: 400, monoMs: 400 });
    if (press) {
      own += 1;
      press.click();
      await pause();
    } else if (offer && offered !== before) {
      shown += 1;
      before = offered;
      offer.click();
      await pause();
      await hands.act();
    } else await hands.act();
  }
  return { own, shown, acts: most };
})`;

describe('a hall that three people purge with one tablet', () => {
  it('tells each of them what to do, and is played to its end by their own presses', async () => {
    const { screen } = on;
    await screen.waitForElement('.crew-person');
    expect((await cards()).map(({ person }) => person)).toEqual(['Noa', 'Eli', 'Tamar']);
    // Three people have three things, and the one that is shown is one of them.
    const atFirst = await cards();
    expect(new Set(atFirst.map(({ step }) => step)).size).toBe(3);
    await screen.actUntil({ kind: 'clean', action: 'tick' });
    expect((await cards()).filter(({ shown }) => shown)).toHaveLength(1);
    await look('clean');
    await screen.actUntil({ kind: 'pour', stage: 'pour' }, 1500);
    await look('pour');
    const sum = { own: 0, shown: 0 };
    for (let n = 0; n < 40 && (await screen.look()).status !== 'closed'; n += 1) {
      const played = await screen.see<typeof sum>(`${playByCards}(100)`);
      sum.own += played.own;
      sum.shown += played.shown;
    }
    expect((await screen.look()).status).toBe('closed');
    expect(sum.own).toBeGreaterThan(5);
    expect(sum.shown).toBeGreaterThan(20);
  }, 600_000);

  it('hands a step on, and still knows of it, and of what was ticked, after a reload', async () => {
    const { screen } = on;
    await screen.actUntil({ kind: 'clean', action: 'tick' });
    await screen.press('tick');
    const ticked = () => screen.page.locator('.tick-row[aria-pressed="true"]').count();
    expect(await ticked()).toBe(1);
    const [first, second] = await cards();
    const eli = screen.page.locator('[data-person="1"]');
    await eli.locator('[data-action="crew-show"]').click();
    await screen.until('the step of Eli is shown', ({ step }) => step === second?.step);
    await screen.page.locator('[data-person="0"] [data-action="hand-on"]').click();
    await screen.waitForElement('.crew-give');
    await screen.picture('crew/hand-on');
    await screen.page
      .locator('[data-person="0"] [data-action="give"]', { hasText: 'Tamar' })
      .click();
    const ofTamar = async () => (await cards())[2]?.step;
    await expect.poll(ofTamar).toBe(first?.step);
    await screen.page.reload();
    // Where loading took so long that the clock is asked about, the run is held until somebody goes on.
    const { status } = await screen.actUntil({ kind: 'clean' }, 10);
    if (status === 'held') await screen.press('resume');
    await screen.until('the run goes on', (seen) => seen.status === 'running');
    await screen.waitForElement('.crew-person');
    await expect.poll(ofTamar).toBe(first?.step);
    const tamar = screen.page.locator('[data-person="2"] [data-action="crew-show"]');
    if ((await tamar.count()) > 0) await tamar.click();
    await expect.poll(ticked).toBe(1);
  });
});
