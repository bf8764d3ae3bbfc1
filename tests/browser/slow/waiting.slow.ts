import { expect, it } from 'vitest';
import { notMeasured } from '../support/browser/calm.ts';
import { onTablet } from '../support/on-tablet.ts';
import { pause } from '../support/screen.ts';
import { metricsOf } from './measures.ts';

const WATCHED_S = 30;
/** Share of one core that a run may take while nothing is pressed, at this machine's own speed. */
const MOST_BUSY = 0.03;

const on = onTablet('file', async (at) => {
  await at.open();
});

/** Share of a core that the page's thread takes while nobody touches it. */
async function busy(): Promise<{ readonly cpu: number; readonly tasks: number }> {
  await pause(2000);
  const before = await metricsOf(on.screen);
  await pause(WATCHED_S * 1000);
  const after = await metricsOf(on.screen);
  const grown = (name: string): number =>
    (after[name] ?? Number.NaN) - (before[name] ?? Number.NaN);
  return {
    cpu: grown('ThreadTime') / grown('Timestamp'),
    tasks: grown('TaskDuration') / grown('Timestamp'),
  };
}

it('takes little of a core at a step, at a rest, and while a clock runs', async ({ skip }) => {
  const { screen } = on;
  await screen.beginRun();
  const places: Record<string, { readonly cpu: number; readonly tasks: number }> = {};
  places['step'] = await busy();
  await screen.actUntil({ isQuiet: true });
  places['rest'] = await busy();
  await screen.actUntil({ kind: 'glow', stage: 'hold' });
  places['countdown'] = await busy();
  for (const [place, { cpu, tasks }] of Object.entries(places))
    console.log(
      `idle at a ${place}: ${(cpu * 100).toFixed(2)} % of a core (tasks ${(tasks * 100).toFixed(2)} %)`,
    );
  const why = notMeasured();
  if (why) skip(why);
  for (const [place, { cpu }] of Object.entries(places)) expect(cpu, place).toBeLessThan(MOST_BUSY);
});
