import {
  burnTime,
  coolToTouch,
  glowTime,
  luminance,
  lumpSeconds,
  ovenCooling,
  ovenStages,
  steadyTempC,
  circuitLoad,
  type Lump,
} from '../../../../src/core/physics/index.ts';
import { rows, type Row } from './row.ts';

const coil = {
  powerW: 2400,
  areaM2: 0.05,
  emissivity: 0.85,
  heatCapacityJK: 290,
  filmWM2K: 12,
  roomC: 20,
} as const satisfies Lump;
const LUMINANCES = [
  [400, 3.9e-5],
  [474, 1.1e-3],
  [525, 7.6e-3],
  [581, 5.1e-2],
  [600, 9.2e-2],
  [650, 0.39],
  [700, 1.42],
  [750, 4.6],
  [800, 13.5],
  [900, 89],
] as const;
const limitW = (supplyV: number, ratingA: number) =>
  circuitLoad({ supplyV, ratingA, loadsW: [], continuous: true }).spareA * supplyV;
const lockedMin = () => ovenStages({ cycle: 'normal' }).coolMin;
const shutMin = (toC: number) => ovenCooling({ fromC: 470, toC, tauMin: 60 }).coolMin.typical;
const BURNS = [
  [45, 7200, 10_800],
  [47, 1200, 2700],
  [48, 900, 1200],
  [49, 480, 600],
  [51, 120, 252],
  [55, 17, 30],
  [60, 3, 5],
] as const;

export const HEAT_ROWS: readonly Row[] = [
  ...rows(
    {
      group: 'luminance',
      source: 'candela before 1979: black body at freezing platinum',
      confidence: 'from memory',
    },
    [['2041.4 K, cd/m²', 6e5, 6e3, () => luminance({ tempC: 2041.4 - 273.15 }).luminanceCdM2]],
  ),
  ...rows(
    {
      group: 'luminance',
      source: 'Planck and the CIE eye, worked out apart',
      confidence: 'computed',
    },
    LUMINANCES.map(
      ([tempC, cd]) =>
        [`${tempC} °C, cd/m²`, cd, cd * 0.03, () => luminance({ tempC }).luminanceCdM2] as const,
    ),
  ),
  ...rows(
    {
      group: 'glow',
      source: 'Stefan–Boltzmann, coil of 2400 W, worked out apart',
      confidence: 'computed',
    },
    [
      [
        'radiation alone, ε 0.8, steady °C',
        743,
        1,
        () => steadyTempC({ ...coil, emissivity: 0.8, filmWM2K: 0 }),
      ],
      ['ε 0.85, h 12, steady °C', 684, 1, () => steadyTempC(coil)],
      ['s to 525 °C', 77, 1.5, () => glowTime(coil).timeS.typical],
      ['s to 600 °C', 101, 1.5, () => lumpSeconds(coil, 20, 600) ?? NaN],
      [
        'min to cool to 60 °C',
        11.5,
        0.6,
        () => coolToTouch({ ...coil, touchC: 60 }).timeS.typical / 60,
      ],
    ],
  ),
  ...rows(
    { group: 'oven', source: 'Newton’s law, τ 60 min, worked out apart', confidence: 'computed' },
    [
      ['470 to 285 °C, min', 32, 1, () => shutMin(285)],
      ['470 to 150 °C, min', 76, 2, () => shutMin(150)],
    ],
  ),
  ...rows(
    {
      group: 'oven',
      source: 'a maker’s support page: locked 3 to 5 h in all',
      confidence: 'read in a copy',
    },
    [
      ['normal cycle, h', 4, 1, () => ovenStages({ cycle: 'normal' }).totalMin.typical / 60],
      ['heavy cycle, h', 4, 1, () => ovenStages({ cycle: 'heavy' }).totalMin.typical / 60],
    ],
  ),
  ...rows(
    {
      group: 'oven',
      source: 'an owner’s manual: about an hour to cool',
      confidence: 'read in a copy',
    },
    [
      ['usual time to the open lock, min', 60, 15, () => lockedMin().typical],
      ['slow end, which the clock takes, min', 60, 15, () => lockedMin().high],
    ],
  ),
  ...rows(
    {
      group: 'burn',
      source: 'Moritz & Henriques 1947: the table that is interpolated, read back',
      confidence: 'computed',
    },
    BURNS.flatMap(([tempC, second, third]) => [
      [
        `${tempC} °C second degree, s`,
        second,
        second * 1e-9,
        () => burnTime({ tempC }).secondDegreeS,
      ] as const,
      [
        `${tempC} °C third degree, s`,
        third,
        third * 1e-9,
        () => burnTime({ tempC }).thirdDegreeS,
      ] as const,
    ]),
  ),
  ...rows(
    {
      group: 'burn',
      source: 'another table of serious burns: 130 °F 30 s, 120 °F over 5 min',
      confidence: 'read in a copy',
    },
    [
      ['54.44 °C third degree, s', 30, 15, () => burnTime({ tempC: 54.44 }).thirdDegreeS],
      ['57.2 °C third degree, s', 10, 5, () => burnTime({ tempC: 57.2 }).thirdDegreeS],
    ],
  ),
  ...rows(
    { group: 'circuit', source: 'NEC 80 % rule, a trade page', confidence: 'read in a copy' },
    [
      ['15 A, 120 V, W', 1440, 1e-9, () => limitW(120, 15)],
      ['20 A, 120 V, W', 1920, 1e-9, () => limitW(120, 20)],
      ['16 A, 230 V, W', 2944, 1e-9, () => limitW(230, 16)],
    ],
  ),
];
