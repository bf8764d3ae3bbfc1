import { burnersOf, isGas, type Kitchen } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';
import { AIR_LIMITS, airCurve, roomHeat, windowFlow } from '../../physics/index.ts';
import { SECONDS_PER_HOUR, SECONDS_PER_MINUTE } from '../../units/index.ts';
import { roomOf } from '../estimates/index.ts';
import type { CurveLine, HeatChart } from './types.ts';

/** Heat index at which "extreme caution" and "danger" begin: 90 and 103 °F, National Weather Service. */
const EXTREME_CAUTION_C = 32.2;
const DANGER_C = 39.4;
/** Warm-up and hold together, and the time drawn after. */
const LIT_S = 40 * SECONDS_PER_MINUTE;
const SHOWN_S = SECONDS_PER_HOUR;
/** Inside less outside for which the window is estimated, K; wind, m/s; cracks alone, per hour. Common practice, no published source. */
const WARMER_K = 8;
const WIND_M_S = 2;
const LEAK_PER_H = 0.5;

type RoomOf = ReturnType<typeof roomOf>;

/** The same room with the hood off and the window shut. */
function shut(room: RoomOf): RoomOf {
  const none = { low: 0, typical: 0, high: 0 };
  return {
    ...room,
    hood: { capture: none, flowM3S: 0 },
    window: { ...room.window, open: false },
  };
}

function heatLine(
  room: RoomOf,
  name: Message,
  heatW: number,
  weight: CurveLine['weight'],
): CurveLine {
  const { curve } = roomHeat({ ...room, heat: [{ fromS: 0, toS: LIT_S, heatW }], untilS: SHOWN_S });
  return { name, weight, points: curve.map(({ timeS, heatIndexC }) => ({ timeS, y: heatIndexC })) };
}

function changesPerH(room: RoomOf): number {
  if (!room.window.open) return LEAK_PER_H;
  const { flowM3S } = windowFlow({
    areaM2: room.window.areaM2,
    heightM: room.window.heightM,
    differenceK: WARMER_K,
    windMS: WIND_M_S,
  });
  return LEAK_PER_H + (flowM3S.typical * SECONDS_PER_HOUR) / room.volumeM3;
}

function no2Line(
  room: RoomOf,
  name: Message,
  gasW: number,
  weight: CurveLine['weight'],
): CurveLine {
  const { curve } = airCurve({
    volumeM3: room.volumeM3,
    gas: [{ fromS: 0, toS: LIT_S, gasW }],
    hood: room.hood,
    airChangesPerH: changesPerH(room),
    pollutant: 'NO2',
    untilS: SHOWN_S,
  });
  return { name, weight, points: curve.map(({ timeS, mgM3 }) => ({ timeS, y: mgM3 })) };
}

/**
 * How the kitchen feels, and for gas its air, while the planned number of the
 * largest burners is lit; beside it one more burner, and the same with hood off
 * and window shut. It advises; it never says the air is safe.
 */
export function roomCharts(kitchen: Kitchen, atOnce: number): readonly HeatChart[] {
  const burner = burnersOf(kitchen).toSorted((a, b) => b.ratedW - a.ratedW)[0];
  if (!burner) return [];
  const room = roomOf(kitchen);
  const plannedW = burner.ratedW * atOnce;
  const moreW = burner.ratedW * (atOnce + 1);
  const lit = { burners: atOnce };
  const planned = message('plan.chart.room.planned', lit);
  const oneMore = message('plan.chart.room.one-more');
  const closed = message('plan.chart.room.shut');
  const moments = [{ name: message('plan.chart.moment.off'), timeS: LIT_S }];
  const heat: HeatChart = {
    id: 'room-heat',
    title: message('plan.chart.room.title'),
    says: message('plan.chart.room.says', lit),
    unit: message('plan.chart.unit.temperature'),
    lines: [
      heatLine(room, planned, plannedW, 'main'),
      heatLine(room, oneMore, moreW, 'beside'),
      heatLine(shut(room), closed, plannedW, 'beside'),
    ],
    limits: [
      { name: message('plan.chart.room.extreme-caution'), y: EXTREME_CAUTION_C },
      { name: message('plan.chart.room.danger'), y: DANGER_C },
    ],
    moments,
  };
  if (!isGas(burner.type)) return [heat];
  const hour = AIR_LIMITS.find(({ id }) => id === 'epa-no2-1h');
  const air: HeatChart = {
    id: 'room-air',
    title: message('plan.chart.air.title'),
    says: message('plan.chart.air.says', lit),
    unit: message('plan.chart.unit.concentration'),
    lines: [
      no2Line(room, planned, plannedW, 'main'),
      no2Line(room, oneMore, moreW, 'beside'),
      no2Line(shut(room), closed, plannedW, 'beside'),
    ],
    limits: hour ? [{ name: message('plan.chart.air.limit'), y: hour.mgM3 }] : [],
    moments,
  };
  return [heat, air];
}
