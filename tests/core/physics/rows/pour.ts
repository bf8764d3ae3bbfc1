import {
  fallingFilm,
  filmJump,
  levelJump,
  puddleDepth,
  wettingRate,
} from '../../../../src/core/physics/index.ts';
import { rows, type Row } from './row.ts';

const ANGLES = [30, 45, 60, 75, 85, 90, 180] as const;
const PUDDLES = [
  [20, [1.411, 2.086, 2.726, 3.319, 3.683, 3.855, 5.452]],
  [95, [1.304, 1.928, 2.519, 3.067, 3.404, 3.563, 5.039]],
] as const;
/** °C, degree, film mm, kg/(m s). */
const WETTING = [
  [20, 30, 0.274, 0.0666],
  [20, 60, 0.356, 0.1468],
  [20, 90, 0.409, 0.2225],
  [95, 30, 0.165, 0.0461],
  [95, 60, 0.215, 0.1017],
  [95, 90, 0.247, 0.1541],
] as const;
const FLOWS = [1, 2, 4, 6] as const;
/** °C, β, mm at each flow. */
const FILMS = [
  [20, 45, [33.5, 56.3, 94.7, 128.3]],
  [20, 60, [29.3, 49.2, 82.8, 112.3]],
  [20, 90, [24.6, 41.4, 69.6, 94.4]],
  [95, 45, [46.7, 78.6, 132.2, 179.2]],
  [95, 90, [34.4, 57.8, 97.3, 131.8]],
] as const;
const film = (flowLMin: number, tempC: number, contactDeg: number) =>
  filmJump({ flowLMin, tempC, contactDeg }).radiusMm;
const level = (flowLMin: number, tempC: number) => levelJump({ flowLMin, tempC }).radiusMm;

export const POUR_ROWS: readonly Row[] = [
  ...rows(
    {
      group: 'puddle',
      source: 'capillary length of water at 20 °C, 2.7 mm',
      confidence: 'from memory',
    },
    [
      [
        'e at 60° is the capillary length, mm',
        2.7,
        0.05,
        () => puddleDepth({ tempC: 20, contactDeg: 60 }).depthMm,
      ],
    ],
  ),
  ...rows(
    {
      group: 'puddle',
      source: 'de Gennes, Brochard-Wyart, Quéré, worked out apart',
      confidence: 'computed',
    },
    PUDDLES.flatMap(([tempC, depths]) =>
      depths.map(
        (depth, i) =>
          [
            `${tempC} °C, ${ANGLES[i]}°, mm`,
            depth,
            1e-3,
            () => puddleDepth({ tempC, contactDeg: ANGLES[i] ?? 0 }).depthMm,
          ] as const,
      ),
    ),
  ),
  ...rows(
    {
      group: 'wetting',
      source: 'Hartley & Murgatroyd 1964, worked out apart',
      confidence: 'computed',
    },
    WETTING.flatMap(([tempC, contactDeg, mm, rate]) => [
      [
        `film ${tempC} °C, ${contactDeg}°, mm`,
        mm,
        6e-4,
        () => wettingRate({ tempC, contactDeg }).thicknessMm,
      ] as const,
      [
        `rate ${tempC} °C, ${contactDeg}°, kg/(m s)`,
        rate,
        6e-5,
        () => wettingRate({ tempC, contactDeg }).rateKgMS,
      ] as const,
    ]),
  ),
  ...rows({ group: 'wetting', source: 'Nusselt 1916, worked out apart', confidence: 'computed' }, [
    [
      'film of 0.1 kg/(m s), 20 °C, mm',
      0.3133,
      1e-4,
      () => fallingFilm({ tempC: 20, rateKgMS: 0.1 }).thicknessMm,
    ],
    [
      'film of 0.1 kg/(m s), 95 °C, mm',
      0.2142,
      1e-4,
      () => fallingFilm({ tempC: 95, rateKgMS: 0.1 }).thicknessMm,
    ],
    [
      'its Reynolds number at 95 °C',
      1346,
      1,
      () => fallingFilm({ tempC: 95, rateKgMS: 0.1 }).reynolds,
    ],
  ]),
  ...rows(
    { group: 'film jump', source: 'Wilson et al. 2012, worked out apart', confidence: 'computed' },
    FILMS.flatMap(([tempC, beta, radii]) =>
      radii.map(
        (radius, i) =>
          [
            `${FLOWS[i]} L/min, ${tempC} °C, β ${beta}°, mm`,
            radius,
            0.06,
            () => film(FLOWS[i] ?? 0, tempC, beta),
          ] as const,
      ),
    ),
  ),
  ...rows(
    { group: 'film jump', source: 'Wilson et al. 2012, R ~ ṁ^(3/4)', confidence: 'from memory' },
    [['twice the flow', 1.682, 1e-3, () => film(4, 60, 45) / film(2, 60, 45)]],
  ),
  ...rows(
    { group: 'level jump', source: 'Bohr et al. 1993, worked out apart', confidence: 'computed' },
    [
      ['1 L/min, 20 °C, mm', 31.9, 0.06, () => level(1, 20).high],
      ['2 L/min, 20 °C, mm', 49.2, 0.06, () => level(2, 20).high],
      ['4 L/min, 20 °C, mm', 75.8, 0.06, () => level(4, 20).high],
      ['1 L/min, 95 °C, mm', 49.6, 0.06, () => level(1, 95).high],
      ['2 L/min, 95 °C, mm', 76.5, 0.06, () => level(2, 95).high],
      ['4 L/min, 95 °C, mm', 118, 0.06, () => level(4, 95).high],
    ],
  ),
  ...rows(
    { group: 'level jump', source: 'Bhagat et al. 2018, worked out apart', confidence: 'computed' },
    [
      ['1 L/min, 20 °C, mm', 24.7, 0.06, () => level(1, 20).low],
      ['2 L/min, 20 °C, mm', 41.6, 0.06, () => level(2, 20).low],
    ],
  ),
];
