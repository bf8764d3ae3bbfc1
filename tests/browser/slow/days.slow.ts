import { expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';
import { pause } from '../support/screen.ts';
import { metricsOf } from './measures.ts';

/** Three days by the test clock, looked at every half hour. */
const HOURS = 72;
const STEP_MIN = 30;
const MS_PER_MINUTE = 60_000;
const STEPS = (HOURS * 60) / STEP_MIN;
/** What is made once is made by then: sheets that were opened, chunks, code that was compiled. */
const WARM_STEPS = STEPS / 4;
/** Every fact of a run stays in memory, with its entry: what one may take, bytes. */
const MOST_BYTES_PER_FACT = 6000;
/** Nodes and listeners that a moment more or less has. */
const MOST_NODES = 60;
const MOST_LISTENERS = 20;

const on = onTablet('file', async (at) => {
  await at.open();
});

type Kept = { readonly heapBytes: number; readonly nodes: number; readonly listeners: number };

async function kept(): Promise<Kept> {
  const { screen } = on;
  await pause(500);
  for (let n = 0; n < 2; n += 1) await screen.cdp.send('HeapProfiler.collectGarbage');
  const { JSHeapUsedSize, Nodes, JSEventListeners } = await metricsOf(screen);
  return {
    heapBytes: JSHeapUsedSize ?? Number.NaN,
    nodes: Nodes ?? Number.NaN,
    listeners: JSEventListeners ?? Number.NaN,
  };
}

/** What a person does in passing: looks until when, at the settings, pauses and goes on. Two facts. */
async function lookIn(): Promise<void> {
  const { screen } = on;
  for (const sheet of ['until-when', 'settings']) {
    await screen.press(sheet);
    await screen.dialog().waitFor();
    await screen.closeDialog();
  }
  await screen.press('pause');
  await screen.press('resume');
  await screen.waitForElement('[data-action="pause"]');
}

it(`keeps no more after ${HOURS} hours of a run than after a quarter of them`, async () => {
  const { screen } = on;
  await screen.beginRun();
  await screen.actUntil({ isQuiet: true });
  const seen: Kept[] = [];
  let facts = 0;
  for (let step = 1; step <= STEPS; step += 1) {
    await screen.jump(STEP_MIN * MS_PER_MINUTE);
    await pause(30);
    // What came due is heard, as a person would; nothing of the work is begun.
    if ((await screen.look()).armScreen) await screen.act();
    if (step % 4 === 0) {
      await lookIn();
      facts += 2;
    }
    if (step % WARM_STEPS !== 0) continue;
    const now = await kept();
    seen.push(now);
    console.log(
      `${(step * STEP_MIN) / 60} h: heap ${(now.heapBytes / 1e6).toFixed(2)} MB, ${now.nodes} nodes, ${now.listeners} listeners`,
    );
  }
  const [first, last] = [seen[0], seen.at(-1)];
  if (!first || !last) throw new Error('nothing was measured');
  const laterFacts = facts * (1 - WARM_STEPS / STEPS);
  expect(last.heapBytes - first.heapBytes).toBeLessThan(laterFacts * MOST_BYTES_PER_FACT);
  expect(last.nodes - first.nodes).toBeLessThan(MOST_NODES);
  expect(last.listeners - first.listeners).toBeLessThan(MOST_LISTENERS);
});
