import {
  coolToTouch,
  freeConvection,
  freeNusselt,
  glowTime,
} from '../../../../src/core/physics/index.ts';
import { rows, type Row } from './row.ts';

const SIGMA = 5.670374419e-8;
const minutes = (burner: string) => coolToTouch({ burner }).timeS.typical / 60;

/** A bare steam pipe in a still room: convection and radiation of a metre of it, W. */
function pipeW(diameterM: number, surfaceC: number, airC: number, emissivity: number): number {
  const { filmWM2K } = freeConvection({
    shape: 'horizontal-cylinder',
    sizeM: diameterM,
    surfaceC,
    airC,
  });
  const radiated = emissivity * SIGMA * ((surfaceC + 273.15) ** 4 - (airC + 273.15) ** 4);
  return Math.PI * diameterM * (filmWM2K * (surfaceC - airC) + radiated);
}

const film = (shape: 'upright-plate' | 'disc-up', sizeM: number, surfaceC: number, airC: number) =>
  freeConvection({ shape, sizeM, surfaceC, airC }).filmWM2K;

/** The library takes the Grashof number. */
const nusselt = (
  shape: 'horizontal-cylinder' | 'upright-plate' | 'disc-up',
  prandtl: number,
  grashof: number,
) => freeNusselt({ shape, prandtl, rayleigh: prandtl * grashof }).nusselt;

/** The same bodies in still air, reckoned by another hand; its sizes are not told. */
const APART = {
  group: 'safe to touch',
  source: 'the same bodies in still air, worked out apart',
  confidence: 'computed',
} as const;
const OTHER_SIZES = 'the other reckoning does not tell its sizes; within the band of both';

export const TOUCH_ROWS: readonly Row[] = [
  ...rows(
    {
      group: 'still air',
      source: 'Incropera problem of a steam line, 100 mm, 150 °C in 20 °C, ε 0.8: a printed answer',
      confidence: 'read in a copy',
    },
    [['heat lost by a metre, W', 642.358, 3.2, () => pipeW(0.1, 150, 20, 0.8)]],
  ),
  ...rows(
    {
      group: 'still air',
      source: 'a worked example by another correlation: 0.53 Ra^¼, 100 mm pipe, 170 °C in 30 °C',
      confidence: 'read in a copy',
    },
    [
      [
        'film, W/(m² K)',
        8.07,
        1.2,
        () =>
          freeConvection({
            shape: 'horizontal-cylinder',
            sizeM: 0.1,
            surfaceC: 170,
            airC: 30,
          }).filmWM2K,
      ],
    ],
  ),
  ...rows({ group: 'still air', source: 'Incropera ex. 9.2 and 9.3', confidence: 'from memory' }, [
    ['fire screen 0.71 m, 232 °C in 23 °C', 7, 0.1, () => film('upright-plate', 0.71, 232, 23)],
    // A strip of 0.375 m: area over perimeter as a disc of four times that.
    ['top of a duct, 45 °C in 15 °C', 5.47, 0.1, () => film('disc-up', 1.5, 45, 15)],
  ]),
  ...rows(
    {
      group: 'still air',
      source: 'tests of an open library of heat transfer (Pr 0.69, Gr 2.63e9)',
      confidence: 'reference library',
    },
    [
      [
        'Nusselt number, lying cylinder',
        139.13493970073597,
        1e-9,
        () => nusselt('horizontal-cylinder', 0.69, 2.63e9),
      ],
      [
        'Nusselt number, upright plate',
        147.16185223770603,
        1e-9,
        () => nusselt('upright-plate', 0.69, 2.63e9),
      ],
      [
        'Nusselt number, plate facing up (Pr 5.54, Gr 3.21e8)',
        181.73121274384457,
        1e-9,
        () => nusselt('disc-up', 5.54, 3.21e8),
      ],
    ],
  ),
  ...rows(APART, [
    ['hob glass, min', 21.6, 21.6 * 0.15, () => minutes('radiant-glass')],
    ['gas grate, min', 13, 13 * 0.15, () => minutes('gas-sealed')],
    ['solid plate, min', 76, 76 * 0.15, () => minutes('solid-plate')],
  ]),
  {
    ...APART,
    check: 'coil, min',
    expected: 11,
    tolerance: 11 * 0.15,
    computed: () => minutes('electric-coil'),
    misses: { by: 1.74, why: OTHER_SIZES },
  },
  {
    ...APART,
    check: 'commercial open burner, min',
    expected: 26,
    tolerance: 26 * 0.15,
    computed: () => minutes('commercial-open'),
    misses: { by: 5.747, why: OTHER_SIZES },
  },
  ...rows(
    {
      group: 'glow',
      source: 'a thermal imager on a coil; the ends of the band were sized to it: no evidence',
      confidence: 'computed',
    },
    [
      ['low end, bare, °C', 550, 10, () => glowTime({ burner: 'electric-coil' }).steadyC.low],
      ['high end, covered, °C', 750, 10, () => glowTime({ burner: 'electric-coil' }).steadyC.high],
    ],
  ),
];
