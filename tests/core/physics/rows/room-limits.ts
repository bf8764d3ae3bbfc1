import {
  airChanges,
  airCurve,
  emissionFactor,
  hoodCapture,
  outdoorTemp,
  roomHeat,
} from '../../../../src/core/physics/index.ts';
import { rows, type Row } from './row.ts';

/** Day of the year in the middle of a month. */
const MIDDLE = { jan: 15, jul: 196 } as const;
const mean = (latDeg: number, altitudeM: number, dayOfYear: number) => () =>
  outdoorTemp({ latDeg, altitudeM, dayOfYear }).meanC;

/** Air above where it began, K: 10 W/m² from the air into thick walls of admittance 6, nothing else. */
const intoWalls = (hours: number) => () => {
  const { curve } = roomHeat({
    volumeM3: 25,
    wallAreaM2: 52,
    outdoorC: 20,
    startC: 20,
    leakPerH: 0,
    radiantShare: 0,
    hood: { capture: hoodCapture('none'), flowM3S: 0 },
    window: { areaM2: 0, heightM: 1, open: false },
    heat: [{ fromS: 0, toS: hours * 3600, heatW: 520 }],
    untilS: hours * 3600,
  });
  return (curve.at(-1)?.airC ?? Number.NaN) - 20;
};

/** Worst hour of NO2 of two burners of 2.9 kW for 40 min in 25 m³, hood of 100 cfm, window of 0.5 m² open. */
const twoBurners = (share: number) => () =>
  airCurve({
    volumeM3: 25,
    gas: [{ fromS: 0, toS: 2400, gasW: 5800 }],
    hood: { capture: { low: share, typical: share, high: share }, flowM3S: 0.0472 },
    airChangesPerH: airChanges({ volumeM3: 25, window: { areaM2: 0.5, heightM: 1, open: true } }),
    pollutant: 'NO2',
  }).limits.find(({ id }) => id === 'epa-no2-1h')?.meanMgM3.typical ?? Number.NaN;

/** What a deep hood of 108 L/s over a front and a back burner takes from the worst hour of a shut home of 117 m² and 2.4 m, %. */
function takenByHood(): number {
  const home = (kind: 'none' | 'vented', flowM3S: number) => {
    const capture = hoodCapture(kind);
    const both = (capture.typical + capture.high) / 2;
    const found = airCurve({
      volumeM3: 281,
      gas: [{ fromS: 0, toS: 3600, gasW: 4000 }],
      hood: { capture: { low: both, typical: both, high: both }, flowM3S },
      airChangesPerH: 0.5,
      pollutant: 'NO2',
    }).limits[0];
    return (found?.meanMgM3.typical ?? Number.NaN) - emissionFactor('NO2').outdoorMgM3;
  };
  return 100 * (1 - home('vented', 0.108) / home('none', 0));
}

/** What decides how many burners a room bears: the air outside, the walls, hoods and flames. */
export const ROOM_LIMIT_ROWS: readonly Row[] = [
  ...rows(
    {
      group: 'outdoors',
      source: 'means of airports over the day, a public teaching table',
      confidence: 'read in a copy',
    },
    [
      ['New York, January, °C', -0.4, 6.1, mean(40.6, 4, MIDDLE.jan)],
      ['New York, July, °C', 24.1, 6, mean(40.6, 4, MIDDLE.jul)],
      ['London, July, °C', 18.4, 6, mean(51.5, 25, MIDDLE.jul)],
      ['Los Angeles, July, °C', 20.6, 6, mean(33.9, 38, MIDDLE.jul)],
      ['Rome, January, °C', 7.2, 6, mean(41.8, 5, MIDDLE.jan)],
      ['Rome, July, °C', 24.4, 6, mean(41.8, 5, MIDDLE.jul)],
      ['Sydney, January, °C', 22.1, 6, mean(-33.9, 6, MIDDLE.jan)],
      ['Sydney, July, °C', 11.8, 6, mean(-33.9, 6, MIDDLE.jul)],
    ],
  ),
  {
    group: 'outdoors',
    check: 'London, January, °C',
    expected: 4.9,
    tolerance: 6,
    source: 'means of airports over the day, a public teaching table',
    confidence: 'read in a copy',
    computed: mean(51.5, 25, MIDDLE.jan),
    misses: { by: -7.41, why: 'the sea keeps west coasts mild in winter; the formula has no sea' },
  },
  ...rows(
    {
      group: 'room heat',
      source: 'step of heat through a film into a thick wall, q/h + 2q/e √(t/π), h 3 W/(m² K)',
      confidence: 'computed',
    },
    [
      ['air above its beginning after 1 h, K', 4.99, 0.25, intoWalls(1)],
      ['after 2 h, K', 5.68, 0.25, intoWalls(2)],
    ],
  ),
  ...rows(
    {
      group: 'hood',
      source: 'Singer et al., three hoods in the laboratory, highest fan',
      confidence: 'read in a copy',
    },
    [
      ['front burners: 46 to 78 %', 0.62, 0.16, () => hoodCapture('vented', 150).typical],
      ['back burners: over 80 or 90 %', 0.9, 0.1, () => hoodCapture('vented', 150).high],
    ],
  ),
  ...rows(
    {
      group: 'hood',
      source: 'Singer et al., fifteen installed hoods: 75 % of a front burner wants 95 L/s',
      confidence: 'read in a copy',
    },
    [['most of a hood of 47 L/s', 0.75, 1e-9, () => hoodCapture('vented', 47.2).high]],
  ),
  ...rows(
    {
      group: 'hood',
      source: 'Singer et al., nine homes: a hood of 108 L/s takes 80 to 95 %',
      confidence: 'read in a copy',
    },
    [['worst hour of NO2, %', 87.5, 7.5, takenByHood]],
  ),
  ...rows(
    { group: 'burners', source: 'one-zone balance, worked out apart', confidence: 'computed' },
    [
      ['NO2 of two, hood takes 0.6, mg/m³', 0.122, 0.013, twoBurners(0.6)],
      ['NO2 of two, hood takes 0.3, mg/m³', 0.199, 0.021, twoBurners(0.3)],
    ],
  ),
  ...rows(
    {
      group: 'emission',
      source:
        'Lebel et al. 2022: mean 7.8, its interval 7.1 to 8.4, 32 homes; spread of homes √32 wider',
      confidence: 'computed',
    },
    [
      [
        'NO2 of a dirty home, ng/J',
        7.8 + 0.65 * Math.sqrt(32),
        0.1,
        () => emissionFactor('NO2').ngJ.high,
      ],
      [
        'NO2 of a clean home, ng/J',
        7.8 - 0.65 * Math.sqrt(32),
        0.1,
        () => emissionFactor('NO2').ngJ.low,
      ],
    ],
  ),
  ...rows(
    {
      group: 'emission',
      source: 'EN 30-1-1: CO at most 0.10 % of the dry air-free flue gas of methane',
      confidence: 'from memory',
    },
    [['CO of a burner at the limit, ng/J', 268, 35, () => emissionFactor('CO').ngJ.high]],
  ),
];
