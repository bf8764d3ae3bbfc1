/**
 * How many plans end as early as is proven to be possible, by how much the
 * others may be late, and how long planning takes: `npm run bench:proven`.
 * The demo kitchens and random ones, in both customs, begun all over two years
 * at several hours of the day.
 */
import * as fc from 'fast-check';
import type { Kitchen, Place } from '../../src/core/kitchen/index.ts';
import { buildPlan } from '../../src/core/plan/index.ts';
import { kitchens } from '../core/kitchen/arbitrary/kitchen-arbitrary.ts';
import { DEMOS, kitchenOf } from '../core/plan/support/plans.ts';

const DAY_MS = 86_400_000;
const HOUR_MS = 3_600_000;
/** The first start, and how far apart the others lie. */
const FROM_MS = Date.UTC(2026, 0, 5);
const EVERY_DAYS = 11;
const YEARS_DAYS = 731;
/** Hours of the day, by Greenwich: morning to night at the demo kitchens' places. */
const HOURS = [6, 11, 16, 20] as const;
const CUSTOMS = ['sephardic', 'ashkenazic'] as const;
const RANDOM_KITCHENS = 120;
const STARTS_OF_RANDOM = 4;

const PLACES: readonly Place[] = [
  { latDeg: 31.8, lonDeg: 35, zone: 'Asia/Jerusalem', land: 'israel' },
  { latDeg: 41, lonDeg: -74, zone: 'America/New_York', land: 'diaspora' },
  { latDeg: 48.5, lonDeg: 2.5, zone: 'Europe/Paris', land: 'diaspora' },
];

type Measured = { readonly gap: number; readonly cpuMs: number; readonly steps: number };

function measured(kitchen: Kitchen, startWallMs: number): Measured {
  const before = process.cpuUsage();
  const { timetable, steps } = buildPlan(kitchen, { startWallMs });
  const { user, system } = process.cpuUsage(before);
  const gap = timetable.proven === true ? 0 : timetable.finishS / timetable.lowerBoundS - 1;
  return { gap, cpuMs: (user + system) / 1000, steps: steps.length };
}

function inCustoms(kitchen: Kitchen): readonly Kitchen[] {
  return CUSTOMS.map((custom) => ({ ...kitchen, household: { ...kitchen.household, custom } }));
}

function ofDemo(kitchen: Kitchen): readonly Measured[] {
  const starts = Array.from({ length: Math.floor(YEARS_DAYS / EVERY_DAYS) }, (_, at) => at);
  return inCustoms(kitchen).flatMap((one) =>
    starts.map((at) =>
      measured(one, FROM_MS + at * EVERY_DAYS * DAY_MS + HOURS[at % HOURS.length]! * HOUR_MS),
    ),
  );
}

function ofRandom(): readonly Measured[] {
  const some = fc.sample(kitchens(), { seed: 42, numRuns: RANDOM_KITCHENS });
  return some.flatMap((kitchen, at) =>
    inCustoms({ ...kitchen, place: PLACES[at % PLACES.length]! }).flatMap((one, custom) =>
      Array.from({ length: STARTS_OF_RANDOM }, (_, turn) => {
        const day = (at * 7 + turn * 181 + custom * 90) % YEARS_DAYS;
        const hour = HOURS[(at + turn) % HOURS.length]!;
        return measured(one, FROM_MS + day * DAY_MS + hour * HOUR_MS);
      }),
    ),
  );
}

function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`;
}

function show(label: string, rows: readonly Measured[]): void {
  const open = rows.filter(({ gap }) => gap > 0);
  const mean = (values: readonly number[]) =>
    values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);
  const times = rows.map(({ cpuMs }) => cpuMs);
  console.log(
    [
      label.padEnd(16),
      `${rows.length} plans of up to ${Math.max(...rows.map(({ steps }) => steps))} steps`,
      `proven ${percent(1 - open.length / rows.length)}`,
      `gap of the rest ${percent(mean(open.map(({ gap }) => gap)))}`,
      `worst ${percent(Math.max(0, ...open.map(({ gap }) => gap)))}`,
      `${mean(times).toFixed(0)} ms in the mean, ${Math.max(...times).toFixed(0)} ms at most`,
    ].join(', '),
  );
}

for (const demo of DEMOS) show(demo, ofDemo(kitchenOf(demo)));
show('random kitchens', ofRandom());
