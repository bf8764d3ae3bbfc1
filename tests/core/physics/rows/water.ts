import { water } from '../../../../src/core/physics/index.ts';
import { rows, type Row } from './row.ts';

const k = (kelvin: number) => water({ tempC: kelvin - 273.15 });
const sigma = (tempC: number) => water({ tempC }).surfaceTensionNM * 1000;

/** Density of air-free water by Kell (1975), another formulation, kg/m³. */
function kell(t: number): number {
  const above =
    999.83952 +
    16.945176 * t -
    7.9870401e-3 * t ** 2 -
    46.170461e-6 * t ** 3 +
    105.56302e-9 * t ** 4 -
    280.54253e-12 * t ** 5;
  return above / (1 + 16.87985e-3 * t);
}

/** °C, ρ, cp (kJ), µ (µPa s), k. */
const TABLE = [
  [0, 999.842, 4.21932, 1791.78, 0.55565],
  [10, 999.702, 4.19514, 1305.9, 0.57879],
  [15, 999.102, 4.18855, 1137.55, 0.5888],
  [20, 998.207, 4.18419, 1001.57, 0.598],
  [25, 997.047, 4.18145, 890, 0.6065],
  [40, 992.216, 4.17936, 652.73, 0.62848],
  [60, 983.195, 4.1849, 466.04, 0.65102],
  [80, 971.79, 4.19686, 354.05, 0.66699],
  [90, 965.309, 4.20523, 314.17, 0.67278],
  [95, 961.887, 4.21012, 297.09, 0.67516],
  [100, 958.348, 4.21557, 281.58, 0.67723],
] as const;

export const WATER_ROWS: readonly Row[] = [
  ...rows(
    { group: 'water', source: 'IAPWS SR6-08(2011), check table', confidence: 'read in a copy' },
    [
      ['ρ(260 K), kg/m³', 997.06836, 1e-6, () => k(260).densityKgM3],
      ['cp(260 K), J/(kg K)', 4300.17472, 1e-5, () => k(260).heatCapacityJKgK],
      ['µ(260 K), µPa s', 3058.36075, 1e-5, () => k(260).viscosityPaS * 1e6],
      ['k(260 K), W/(m K)', 0.51562801, 1e-9, () => k(260).conductivityWMK],
      ['ρ(298.15 K), kg/m³', 997.047013, 1e-6, () => k(298.15).densityKgM3],
      ['cp(298.15 K), J/(kg K)', 4181.44618, 1e-5, () => k(298.15).heatCapacityJKgK],
      ['µ(298.15 K), µPa s', 889.996774, 1e-6, () => k(298.15).viscosityPaS * 1e6],
      ['k(298.15 K), W/(m K)', 0.606502308, 1e-9, () => k(298.15).conductivityWMK],
    ],
  ),
  ...rows(
    {
      group: 'water',
      source: 'IAPWS R12-08, table 4 (density of 998 kg/m³)',
      confidence: 'read in a copy',
    },
    [['µ(298.15 K) of another release, µPa s', 889.7351, 0.5, () => k(298.15).viscosityPaS * 1e6]],
  ),
  ...rows(
    {
      group: 'water',
      source: 'IAPWS R15-11, table 4 (density of 998 kg/m³)',
      confidence: 'read in a copy',
    },
    [
      [
        'k(298.15 K) of another release, mW/(m K)',
        607.712868,
        2,
        () => k(298.15).conductivityWMK * 1000,
      ],
    ],
  ),
  ...rows(
    {
      group: 'surface tension',
      source: 'IAPWS R1-76(2014), table 1',
      confidence: 'read in a copy',
    },
    [
      ['0.01 °C, mN/m', 75.65, 0.005, () => sigma(0.01)],
      ['10 °C, mN/m', 74.22, 0.005, () => sigma(10)],
      ['20 °C, mN/m', 72.74, 0.005, () => sigma(20)],
      ['40 °C, mN/m', 69.6, 0.005, () => sigma(40)],
      ['60 °C, mN/m', 66.24, 0.005, () => sigma(60)],
      ['80 °C, mN/m', 62.67, 0.005, () => sigma(80)],
      ['100 °C, mN/m', 58.91, 0.005, () => sigma(100)],
    ],
  ),
  ...rows({ group: 'water', source: 'Kell 1975, printed values', confidence: 'from memory' }, [
    ['ρ(4 °C), kg/m³', 999.972, 0.02, () => water({ tempC: 4 }).densityKgM3],
    ['ρ(20 °C), kg/m³', 998.2041, 0.02, () => water({ tempC: 20 }).densityKgM3],
    ['ρ(25 °C), kg/m³', 997.0449, 0.02, () => water({ tempC: 25 }).densityKgM3],
    ['ρ(100 °C), kg/m³', 958.3637, 0.02, () => water({ tempC: 100 }).densityKgM3],
  ]),
  ...rows(
    { group: 'water', source: 'Kell 1975, formula', confidence: 'from memory' },
    [5, 30, 50, 70, 90].map(
      (t) => [`ρ(${t} °C), kg/m³`, kell(t), 0.017, () => water({ tempC: t }).densityKgM3] as const,
    ),
  ),
  ...rows(
    { group: 'water', source: 'IAPWS SR6-08(2011), worked out apart', confidence: 'computed' },
    TABLE.flatMap(([t, density, cp, mu, conductivity]) => [
      [`ρ(${t} °C), kg/m³`, density, 6e-4, () => water({ tempC: t }).densityKgM3] as const,
      [
        `cp(${t} °C), kJ/(kg K)`,
        cp,
        6e-6,
        () => water({ tempC: t }).heatCapacityJKgK / 1000,
      ] as const,
      [`µ(${t} °C), µPa s`, mu, 6e-3, () => water({ tempC: t }).viscosityPaS * 1e6] as const,
      [
        `k(${t} °C), W/(m K)`,
        conductivity,
        6e-6,
        () => water({ tempC: t }).conductivityWMK,
      ] as const,
    ]),
  ),
];
