import { afterAll, expect, it } from 'vitest';
import { serve } from '../support/server.ts';
import {
  act,
  actUntil,
  beginRun,
  dispose,
  look,
  openSheet,
  picture,
  powerCut,
  see,
  startTablet,
  storedRecords,
  until,
  type StoredRecord,
  type Tablet,
} from '../support/tablet.ts';

/** Moments of the cuts come from this; another seed is tried with GLOWPOUR_SEED. */
const SEED = Number(process.env['GLOWPOUR_SEED'] ?? 7);
const CUTS = 10;

/** Numbers from 0 to below 1 (a linear congruential generator, Numerical Recipes' constants). */
function randomOf(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

let tablet: Tablet | undefined;
let site: Awaited<ReturnType<typeof serve>>;
afterAll(async () => {
  await dispose(tablet);
  await site.stop();
});

it('loses nothing that was acknowledged when the browser is killed at ten moments, and the run is finished', async () => {
  console.log(`Seed of the cuts: ${SEED}`);
  const random = randomOf(SEED);
  site = await serve();
  tablet = await startTablet();
  let sheet = await openSheet(tablet, site.url);
  await beginRun(sheet);
  let before: readonly StoredRecord[] = [];
  let asked = 0;
  for (let cut = 0; cut < CUTS; cut += 1) {
    const acts = 4 + Math.floor(random() * 22);
    for (let n = 0; n < acts; n += 1) await act(sheet);
    // What the screen shows is acknowledged; what is under way at the cut may be there or not.
    before = await storedRecords(sheet);
    const { wallMs } = await see<{ wallMs: number }>(sheet, 'hands.shifted()');
    void act(sheet).catch(() => undefined);
    await new Promise((resolve) => setTimeout(resolve, Math.floor(random() * 40)));
    await powerCut(tablet);

    const awayMs = Math.floor(random() * 20 * 60_000);
    tablet = await startTablet({ profile: tablet.profile, wallMs: Date.now() + wallMs + awayMs });
    sheet = await openSheet(tablet, site.url);
    const seen = await until(sheet, 'the run is back', ({ status }) => status !== '');
    const after = await storedRecords(sheet);
    const kept = after.slice(0, before.length);
    expect(
      kept.map(({ sum }) => sum),
      `cut ${cut + 1}`,
    ).toEqual(before.map(({ sum }) => sum));
    expect(after.map(({ seq }) => seq)).toEqual(after.map((_, i) => i + 1));
    expect(after.some(({ kind }, i) => i >= before.length && kind === 'session-opened')).toBe(true);
    if (seen.status === 'reviewing') {
      expect(seen.sentence).toBe('Here is where you were');
      if (asked === 0) {
        // The first touch arms the sound; then the questions are seen.
        if (seen.armScreen) await act(sheet);
        await picture(sheet, 'review-after-kill');
      }
      asked += 1;
    }
  }
  expect(asked, 'cuts after which the person was asked').toBeGreaterThan(0);
  await actUntil(sheet, '^closed$', 1500);
  expect((await look(sheet)).status).toBe('closed');
  await picture(sheet, 'finished-after-ten-kills');
});
