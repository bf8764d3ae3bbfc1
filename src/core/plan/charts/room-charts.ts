import type { Kitchen } from '../../kitchen/index.ts';
import { AIR_LIMITS, airCurve, roomHeat, windowFlow } from '../../physics/index.ts';
import { isGas, roomOf } from '../estimates/index.ts';
import type { CurveLine, HeatChart } from './types.ts';

/** Heat index at which "extreme caution" and "danger" begin: 90 and 103 °F, National Weather Service. */
const EXTREME_CAUTION_C = 32.2;
const DANGER_C = 39.4;
/** Warm-up and hold together, and the time drawn after. */
const LIT_S = 40 * 60;
const SHOWN_S = 60 * 60;
/** Inside less outside for which the window is reckoned, K; wind, m/s; cracks alone, per hour. Common practice, no published source. */
const WARMER_K = 8;
const WIND_M_S = 2;
const LEAK_PER_H = 0.5;
const S_H = 3600;

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
  name: string,
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
  return LEAK_PER_H + (flowM3S.typical * S_H) / room.volumeM3;
}

function no2Line(room: RoomOf, name: string, gasW: number, weight: CurveLine['weight']): CurveLine {
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
  const burners = kitchen.fixtures.flatMap((one) => (one.kind === 'cooktop' ? one.burners : []));
  const burner = burners.toSorted((a, b) => b.ratedW - a.ratedW)[0];
  if (!burner) return [];
  const room = roomOf(kitchen);
  const plannedW = burner.ratedW * atOnce;
  const moreW = burner.ratedW * (atOnce + 1);
  const lit = atOnce === 1 ? 'one burner lit' : `${atOnce} burners lit`;
  const moments = [{ name: 'off', timeS: LIT_S }];
  const heat: HeatChart = {
    id: 'room-heat',
    title: 'The kitchen, as it feels',
    says: `With ${lit}, hood and window as told. Temperature and damp together (heat index).`,
    unit: '°C',
    lines: [
      heatLine(room, `Planned: ${lit}`, plannedW, 'main'),
      heatLine(room, 'One burner more', moreW, 'beside'),
      heatLine(shut(room), 'Hood off, window shut', plannedW, 'beside'),
    ],
    limits: [
      { name: 'Extreme caution', y: EXTREME_CAUTION_C },
      { name: 'Danger', y: DANGER_C },
    ],
    moments,
  };
  if (!isGas(burner.type)) return [heat];
  const hour = AIR_LIMITS.find(({ id }) => id === 'epa-no2-1h');
  const air: HeatChart = {
    id: 'room-air',
    title: 'Nitrogen dioxide from the gas',
    says: `With ${lit}. A line over the limit for a whole hour is too much; the app never says the air is safe.`,
    unit: 'mg/m³',
    lines: [
      no2Line(room, `Planned: ${lit}`, plannedW, 'main'),
      no2Line(room, 'One burner more', moreW, 'beside'),
      no2Line(shut(room), 'Hood off, window shut', plannedW, 'beside'),
    ],
    limits: hour ? [{ name: 'Limit for an hour’s mean', y: hour.mgM3 }] : [],
    moments,
  };
  return [heat, air];
}
