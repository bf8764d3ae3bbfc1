import {
  boilingTemp,
  saturationPressure,
  saturationTemp,
  standardPressure,
} from '../../../../src/core/physics/index.ts';
import { rows, type Row } from './row.ts';

const fahrenheit = (c: number) => (c * 9) / 5 + 32;
const M_FT = 0.3048;
const at = (altitudeM: number) => boilingTemp({ altitudeM }).tempC;
const feet = (ft: number) => fahrenheit(at(ft * M_FT));
const pressure = (altitudeM: number) => standardPressure({ altitudeM }).pressurePa;
const psat = (tempC: number) => saturationPressure({ tempC }).pressurePa;
const tsat = (pressurePa: number) => saturationTemp({ pressurePa }).tempC + 273.15;

/** Boiling point (°F) against barometer (inHg): Forbes, 1857, 17 pairs; open data. */
const FORBES = [
  [194.5, 20.79],
  [194.3, 20.79],
  [197.9, 22.4],
  [198.4, 22.67],
  [199.4, 23.15],
  [199.9, 23.35],
  [200.9, 23.89],
  [201.1, 23.99],
  [201.4, 24.02],
  [201.3, 24.01],
  [203.6, 25.14],
  [204.6, 26.57],
  [209.5, 28.49],
  [208.6, 27.76],
  [210.7, 29.04],
  [211.9, 29.88],
  [212.2, 30.06],
] as const;
const PA_INHG = 3386.389;
/** Known since 1857 to be out by more than the others. */
const OUTLIER = 11;

const standard = { group: 'standard atmosphere', confidence: 'read in a copy' } as const;
const boiling = 'boiling point by altitude';

export const BOILING_ROWS: readonly Row[] = [
  ...rows({ ...standard, source: 'ASHRAE Handbook of Fundamentals 2017, ch. 1, table 1' }, [
    ['p(-500 m), Pa', 107478, 1, () => pressure(-500)],
    ['p(0), Pa', 101325, 1e-9, () => pressure(0)],
    ['p(500 m), Pa', 95461, 1, () => pressure(500)],
    ['p(1000 m), Pa', 89875, 1, () => pressure(1000)],
    ['p(10 000 m), Pa', 26436, 1, () => pressure(10_000)],
  ]),
  ...rows({ ...standard, source: 'ISO 2533 table', confidence: 'from memory' }, [
    ['p(2000 m), Pa', 79495, 1, () => pressure(2000)],
    ['p(3000 m), Pa', 70109, 1, () => pressure(3000)],
    ['p(5000 m), Pa', 54020, 1, () => pressure(5000)],
  ]),
  ...rows(
    { group: 'saturation', source: 'IAPWS-IF97, tables 35 and 36', confidence: 'read in a copy' },
    [
      ['psat(300 K), Pa', 3536.58941, 1e-5, () => psat(26.85)],
      ['psat(500 K), Pa', 2638897.76, 1e-2, () => psat(226.85)],
      ['Tsat(0.1 MPa), K', 372.755919, 1e-6, () => tsat(1e5)],
      ['Tsat(10 MPa), K', 584.149488, 1e-6, () => tsat(1e7)],
    ],
  ),
  ...rows(
    {
      group: 'saturation',
      source: 'ASHRAE Handbook of Fundamentals 2017, table 3 (another formulation)',
      confidence: 'read in a copy',
    },
    [
      ['psat(25 °C), Pa', 3169.7, 3169.7 * 3e-4, () => psat(25)],
      ['psat(50 °C), Pa', 12351.3, 12351.3 * 3e-4, () => psat(50)],
      ['psat(100 °C), Pa', 101418, 101418 * 3e-4, () => psat(100)],
    ],
  ),
  ...rows({ group: boiling, source: 'ISO 2533 with IAPWS-IF97', confidence: 'computed' }, [
    ['-430 m, °C', 101.4, 0.01, () => at(-430)],
    ['0 m, °C', 99.974, 1e-3, () => at(0)],
    ['800 m, °C', 97.31, 0.01, () => at(800)],
    ['1609 m, °C', 94.62, 0.01, () => at(1609)],
    ['2000 m, °C', 93.32, 0.01, () => at(2000)],
    ['3000 m, °C', 89.97, 0.01, () => at(3000)],
    ['5000 m, °C', 83.25, 0.01, () => at(5000)],
  ]),
  ...rows(
    { group: boiling, source: 'university extension table, rounded', confidence: 'read in a copy' },
    [
      ['2000 ft, °F', 208, 0.5, () => feet(2000)],
      ['5000 ft, °F', 203, 0.5, () => feet(5000)],
      ['7500 ft, °F', 198, 0.5, () => feet(7500)],
      ['10 000 ft, °F', 194, 0.5, () => feet(10_000)],
    ],
  ),
  ...rows({ group: boiling, source: 'cooks’ high-altitude chart', confidence: 'read in a copy' }, [
    ['500 ft, °F', 211, 0.35, () => feet(500)],
    ['1000 ft, °F', 210, 0.35, () => feet(1000)],
    ['2000 ft, °F', 208.2, 0.35, () => feet(2000)],
    ['3000 ft, °F', 206.2, 0.35, () => feet(3000)],
    ['4000 ft, °F', 204.4, 0.35, () => feet(4000)],
    ['5000 ft, °F', 202.6, 0.5, () => feet(5000)],
    ['6000 ft, °F', 200.7, 0.5, () => feet(6000)],
    ['7000 ft, °F', 198.7, 0.5, () => feet(7000)],
    ['8000 ft, °F', 196.9, 0.5, () => feet(8000)],
    ['10 000 ft, °F', 194, 1.1, () => feet(10_000)],
    ['12 500 ft, °F', 189.8, 1.1, () => feet(12_500)],
    ['14 000 ft, °F', 187.3, 1.1, () => feet(14_000)],
  ]),
  ...rows({ group: boiling, source: 'a metric altitude table', confidence: 'read in a copy' }, [
    ['300 m, °C', 99.1, 0.2, () => at(300)],
    ['600 m, °C', 98.1, 0.2, () => at(600)],
    ['1000 m, °C', 96.8, 0.2, () => at(1000)],
    ['2000 m, °C', 93.3, 0.2, () => at(2000)],
  ]),
  ...rows(
    {
      group: 'measured by Forbes',
      source: 'Forbes 1857, boiling point against barometer',
      confidence: 'read in a copy',
    },
    FORBES.map(
      ([tempF, inHg], i) =>
        [
          `pair ${i + 1}${i === OUTLIER ? ' (outlier)' : ''}, °F`,
          tempF,
          i === OUTLIER ? 1.5 : 0.45,
          () => fahrenheit(boilingTemp({ pressurePa: inHg * PA_INHG }).tempC),
        ] as const,
    ),
  ),
];
