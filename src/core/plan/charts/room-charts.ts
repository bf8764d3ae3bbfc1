import { burnersOf, isGas, type Burner } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';
import {
  AIR_LIMITS,
  airChanges,
  airCurve,
  batchesOf,
  heatOf,
  roomHeat,
  type Batch,
} from '../../physics/index.ts';
import { OutOfRangeError, SECONDS_PER_HOUR, SECONDS_PER_MINUTE } from '../../units/index.ts';
import { besideHeat, roomOf, type BesideHeat } from '../estimates/index.ts';
import type { Plan } from '../model/index.ts';
import type { CurveLine, HeatChart } from './types.ts';

/** Heat index at which "extreme caution" and "danger" begin: 90 and 103 °F, National Weather Service. */
const EXTREME_CAUTION_C = 32.2;
const DANGER_C = 39.4;
/** Warm-up and hold of one burner together. */
const LIT_MIN = 40;
/** Drawn after the last burner is off, s. */
const AFTER_S = SECONDS_PER_HOUR / 3;

type Gas = 'NO2' | 'CO';
/** The limit each gas is drawn beside. */
const LIMIT: Readonly<Record<Gas, string>> = { NO2: 'epa-no2-1h', CO: 'who-co-1h' };

type RoomOf = ReturnType<typeof roomOf>;

/** What is drawn: burners batch after batch, until every one was lit. */
type Lit = readonly Batch[];

type Drawn = {
  readonly room: RoomOf;
  readonly beside: BesideHeat;
  readonly planned: Lit;
  readonly oneMore: Lit;
  readonly atOnce: number;
  readonly gas: boolean;
  readonly untilS: number;
};

/** The same room with the hood off and the window shut. */
function shut(room: RoomOf): RoomOf {
  const none = { low: 0, typical: 0, high: 0 };
  return {
    ...room,
    hood: { capture: none, flowM3S: 0 },
    window: { ...room.window, open: false },
  };
}

/** Place of the line with all shut. */
const ALL_SHUT = 2;

type Course = (room: RoomOf, lit: Lit) => readonly (readonly CurveLine['points'][number][])[];

/** Planned, the same at the bad end, one burner more, and all shut. */
function linesOf({ room, planned, oneMore, atOnce }: Drawn, course: Course): readonly CurveLine[] {
  const line = (name: Message, points: CurveLine['points'] = [], main = false): CurveLine => ({
    name,
    weight: main ? 'main' : 'beside',
    points,
  });
  const [expected, bad] = course(room, planned);
  return [
    line(message('plan.chart.room.planned', { burners: atOnce }), expected, true),
    line(message('plan.chart.room.one-more'), course(room, oneMore)[0]),
    line(message('plan.chart.room.shut'), course(shut(room), planned)[0]),
    line(message('plan.chart.room.bad-end'), bad),
  ];
}

/** Place above the highest thing that matters, as a share of it. */
const ABOVE_SHARE = 1.15;

/** As high as what is planned, its bad end, one burner more and the limits; all shut may leave the picture. */
function topOf(lines: readonly CurveLine[], limits: HeatChart['limits']): number {
  const drawn = lines.filter((_, at) => at !== ALL_SHUT).flatMap(({ points }) => points);
  return ABOVE_SHARE * Math.max(...drawn.map(({ y }) => y), ...limits.map(({ y }) => y));
}

function heatChart(drawn: Drawn): HeatChart {
  const { beside, planned, atOnce, untilS } = drawn;
  const { litAtS, pieces } = beside;
  const lines = linesOf(drawn, (room, lit) => {
    const { curve, hotCurve } = roomHeat({
      ...room,
      heat: [...pieces, ...heatOf(lit, drawn.gas, litAtS)],
      untilS: litAtS + untilS,
    });
    return [curve, hotCurve].map((points) =>
      points.map(({ timeS, heatIndexC }) => ({ timeS, y: heatIndexC })),
    );
  });
  const limits = [
    { name: message('plan.chart.room.extreme-caution'), y: EXTREME_CAUTION_C },
    { name: message('plan.chart.room.danger'), y: DANGER_C },
  ];
  const off = { name: message('plan.chart.moment.off'), timeS: litAtS + endS(planned) };
  const on = { name: message('plan.chart.moment.lit'), timeS: litAtS };
  return {
    id: 'room-heat',
    title: message('plan.chart.room.title'),
    says: message('plan.chart.room.outside', {
      burners: atOnce,
      outdoorC: drawn.room.outdoorC.typical,
      oven: litAtS > 0,
    }),
    unit: message('plan.chart.unit.temperature'),
    counts: '°C',
    lines,
    limits,
    top: topOf(lines, limits),
    moments: litAtS > 0 ? [on, off] : [off],
  };
}

function airChart(drawn: Drawn, gas: Gas): HeatChart {
  const { planned, atOnce, untilS } = drawn;
  const lines = linesOf(drawn, (room, lit) => {
    const { curve, badCurve } = airCurve({
      volumeM3: room.volumeM3,
      gas: lit.map(({ fromS, toS, watts }) => ({ fromS, toS, gasW: watts })),
      hood: room.hood,
      airChangesPerH: airChanges(room),
      pollutant: gas,
      untilS,
    });
    return [curve, badCurve].map((points) => points.map(({ timeS, mgM3 }) => ({ timeS, y: mgM3 })));
  });
  const limit = AIR_LIMITS.find(({ id }) => id === LIMIT[gas]);
  const limits = limit ? [{ name: message('plan.chart.air.limit'), y: limit.mgM3 }] : [];
  return {
    id: gas === 'NO2' ? 'room-air' : 'room-co',
    title: message(gas === 'NO2' ? 'plan.chart.air.title' : 'plan.chart.co.title'),
    says: message('plan.chart.air.by-bad-end', { burners: atOnce }),
    unit: message('plan.chart.unit.concentration'),
    lines,
    limits,
    top: topOf(lines, limits),
    moments: [{ name: message('plan.chart.moment.off'), timeS: endS(planned) }],
  };
}

function endS(lit: Lit): number {
  return lit.at(-1)?.toS ?? 0;
}

function drawnOf(plan: Plan, burners: readonly Burner[], atOnce: number): Drawn {
  const { kitchen } = plan;
  const allW = burners.map(({ ratedW }) => ratedW);
  const methods = new Map(plan.methods.map((one) => [one.fixture, one]));
  const planned = batchesOf(allW, atOnce, LIT_MIN);
  const lengthS = endS(planned);
  return {
    room: roomOf(kitchen, plan.days?.startWallMs),
    beside: besideHeat(kitchen, (id) => methods.get(id), lengthS / SECONDS_PER_MINUTE),
    planned,
    oneMore: batchesOf(allW, atOnce + 1, LIT_MIN),
    atOnce,
    gas: burners.some(({ type }) => isGas(type)),
    untilS: lengthS + AFTER_S,
  };
}

/**
 * How the kitchen feels, and for gas its air, while the planned number of the
 * burners is lit, after and beside ovens and kettles; with it the bad
 * end, one burner more, and the same with hood off and window shut. None for a
 * room that is not reckoned. It advises; it never says the air is safe.
 */
export function roomCharts(plan: Plan, atOnce: number): readonly HeatChart[] {
  const burners = burnersOf(plan.kitchen);
  if (burners.length === 0) return [];
  try {
    const drawn = drawnOf(plan, burners, atOnce);
    const gases: readonly Gas[] = drawn.gas ? ['NO2', 'CO'] : [];
    return [heatChart(drawn), ...gases.map((gas) => airChart(drawn, gas))];
  } catch (refusal) {
    if (refusal instanceof OutOfRangeError) return [];
    throw refusal;
  }
}
