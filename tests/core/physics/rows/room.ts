import {
  admittance,
  air,
  emissionFactor,
  heatIndex,
  windowFlow,
} from '../../../../src/core/physics/index.ts';
import { rows, type Row } from './row.ts';

const celsius = (f: number) => ((f - 32) * 5) / 9;
const indexF = (f: number, humidityPct: number) =>
  (heatIndex({ tempC: celsius(f), humidityPct }).heatIndexC * 9) / 5 + 32;
const indexC = (tempC: number, humidityPct: number) => heatIndex({ tempC, humidityPct }).heatIndexC;
const flow = windowFlow({ areaM2: 0.5, heightM: 1, differenceK: 10, windMS: 3, meanC: 24.85 });

const no2MgH = () => 2000 * emissionFactor('NO2').ngJ.typical * 3600e-6;
const no2 = (timeH: number, depositionPerH = 0) =>
  1000 *
  air({
    volumeM3: 25,
    airChangesPerH: 0.5,
    emissionMgH: no2MgH(),
    outdoorMgM3: 0,
    startMgM3: 0,
    depositionPerH,
    timeH,
  }).concentrationMgM3;
/** First second above 188 µg/m³. */
const no2PassesS = () =>
  Array.from({ length: 3600 }, (_, s) => s).find((s) => no2(s / 3600) > 188) ?? NaN;
const cadr = {
  volumeM3: 240,
  airChangesPerH: 1.5,
  emissionMgH: 180,
  outdoorMgM3: 0.012,
  startMgM3: 0.005,
  depositionPerH: 0.15 + 0.05 + (900 * 0.6) / 240,
};
const brick = (periodS: number) => admittance({ effusivity: brickE(), periodS }).admittanceWM2K;
/** Effusivity at which the day's admittance is the published one. */
function brickE(): number {
  let [low, high] = [100, 5000];
  for (let i = 0; i < 60; i += 1) {
    const e = (low + high) / 2;
    if (admittance({ effusivity: e, periodS: 86_400 }).admittanceWM2K < 4.72) low = e;
    else high = e;
  }
  return (low + high) / 2;
}

export const ROOM_ROWS: readonly Row[] = [
  ...rows(
    {
      group: 'heat index',
      source: 'US National Weather Service, text',
      confidence: 'read in a copy',
    },
    [
      ['96 °F, 65 %, °F', 121, 1, () => indexF(96, 65)],
      ['90 °F, 70 %, °F (chart 105 or 106)', 105.5, 1.3, () => indexF(90, 70)],
    ],
  ),
  ...rows(
    {
      group: 'heat index',
      source: 'validation data of a public comfort library',
      confidence: 'reference library',
    },
    [
      ['30 °C, 80 %, °C', 37.7, 0.1, () => indexC(30, 80)],
      ['29 °C, 50 %, °C', 29.7, 0.1, () => indexC(29, 50)],
    ],
  ),
  ...rows(
    {
      group: 'window',
      source: 'Warren & Parkins, de Gids & Phaff, ASHRAE, worked out apart',
      confidence: 'computed',
    },
    [
      ['stack, m³/s', 0.0583, 1e-4, () => flow.stackM3S],
      ['wind, m³/s', 0.0375, 1e-4, () => flow.windM3S],
      ['de Gids & Phaff, m³/s', 0.0581, 1e-4, () => flow.phaffM3S],
      ['ASHRAE, m³/s', 0.1266, 1e-4, () => flow.ashraeM3S],
    ],
  ),
  ...rows(
    { group: 'admittance', source: 'CIBSE formula, worked out apart', confidence: 'computed' },
    [
      [
        'concrete, 24 h, W/(m² K)',
        5.67,
        0.06,
        () => admittance({ effusivity: 1683, periodS: 86_400 }).admittanceWM2K,
      ],
      ['brick, 1 h, W/(m² K)', 7.32, 0.06, () => brick(3600)],
    ],
  ),
  ...rows(
    {
      group: 'air',
      source: 'one-zone balance, inputs of public worked examples',
      confidence: 'computed',
    },
    [
      [
        'CO 1 g/h, 50 m³, 1/h, mg/m³',
        20,
        1e-9,
        () =>
          air({
            volumeM3: 50,
            airChangesPerH: 1,
            emissionMgH: 1000,
            outdoorMgM3: 0,
            startMgM3: 0,
            depositionPerH: 0,
            timeH: 1,
          }).steadyMgM3,
      ],
      [
        '240 m³ with cleaner, steady µg/m³',
        194.43,
        0.01,
        () => air({ ...cadr, timeH: 2 }).steadyMgM3 * 1000,
      ],
      [
        'the same after 2 h, µg/m³',
        194.36,
        0.01,
        () => air({ ...cadr, timeH: 2 }).concentrationMgM3 * 1000,
      ],
      [
        '320 m³, steady µg/m³',
        468.15,
        0.01,
        () =>
          air({
            volumeM3: 320,
            airChangesPerH: 0.5,
            emissionMgH: 90,
            outdoorMgM3: 0.018,
            startMgM3: 0,
            depositionPerH: 0.12,
            timeH: 1,
          }).steadyMgM3 * 1000,
      ],
      ['NO2 of 2 kW gas, 25 m³, 10 min, µg/m³', 359, 1, () => no2(1 / 6)],
      ['the same, 1 h, µg/m³', 1768, 2, () => no2(1)],
      ['passes 188 µg/m³ after, s', 308, 2, no2PassesS],
      ['with deposition 1/h, 10 min, µg/m³', 331, 1, () => no2(1 / 6, 1)],
      ['with deposition 1/h, 1 h, µg/m³', 1163, 2, () => no2(1, 1)],
    ],
  ),
  ...rows(
    {
      group: 'emission',
      source:
        'Illinois EPA common factors, 120 000 lb CO2 per million scf: the table’s own source in other units',
      confidence: 'computed',
    },
    [['CO2, kg/kWh', 0.1821, 2e-4, () => emissionFactor('CO2').ngJ.typical * 3.6e-6]],
  ),
  ...rows({ group: 'emission', source: 'combustion of methane', confidence: 'computed' }, [
    ['H2O, kg/kWh', 0.1457, 2e-4, () => emissionFactor('H2O').ngJ.typical * 3.6e-6],
  ]),
];
