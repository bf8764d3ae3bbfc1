import {
  contactTemp,
  filmJump,
  handSpeed,
  levelJump,
  materialIds,
  puddleDepth,
  sheetEquilibrium,
  surfaceAfter,
  thermalShock,
  wettingRate,
} from '../../../core/physics/index.ts';
import { number, type Model, type Values } from '../model/model.ts';
import { physicsSources } from '../model/sources.ts';

/** Values were checked against the inputs of the model, so the shapes fit. */
function as<T>(values: Values): T {
  return values as T;
}

const WATER_C = number('tempC', '°C', [-20, 110]);
const FLOW = number('flowLMin', 'L/min', [0.2, 12]);
const CONTACT = number('contactDeg', 'degree', [1, 180]);

export const POUR_MODELS: readonly Model[] = [
  {
    name: 'puddle-depth',
    about: 'Depth of a puddle that spreads freely on a level top.',
    inputs: [WATER_C, CONTACT],
    results: { depthMm: 'mm' },
    sources: physicsSources('capillarity-book', 'iapws-r1-76'),
    evaluate: (values) => puddleDepth(as(values)),
  },
  {
    name: 'wetting-rate',
    about: 'Least flow for each metre of width that keeps an upright wall wet.',
    inputs: [WATER_C, CONTACT],
    results: { rateKgMS: 'kg/(m s)', thicknessMm: 'mm' },
    sources: physicsSources('hartley-murgatroyd'),
    evaluate: (values) => wettingRate(as(values)),
  },
  {
    name: 'film-jump',
    about:
      'Radius of the fast film round a stream on an upright wall. contactDeg is the angle of the formula; halfAngleRadiusMm is the radius with half of it, for an advancing contact angle.',
    inputs: [FLOW, WATER_C, number('contactDeg', 'degree', [5, 180])],
    results: { radiusMm: 'mm', halfAngleRadiusMm: 'mm' },
    sources: physicsSources('wilson-2012', 'aouad-2016'),
    evaluate: (values) => filmJump(as(values)),
  },
  {
    name: 'level-jump',
    about: 'Radius of the fast film round a stream on a level top.',
    inputs: [FLOW, WATER_C],
    results: { radiusMm: 'mm' },
    sources: physicsSources('bhagat-2018', 'bohr-1993'),
    evaluate: (values) => levelJump(as(values)),
  },
  {
    name: 'hand-speed',
    about: 'Hand speed at which a thin steel sheet has time to follow the water.',
    inputs: [
      FLOW,
      number('tempC', '°C', [40, 105], 95),
      number('overlapShare', '1', [0, 0.5], 0.15),
      number('sheetMm', 'mm', [0.3, 5], 1),
      number('fallM', 'm', [0.02, 1], 0.2),
    ],
    results: { speedMS: 'm/s', dwellS: 's', filmWM2K: 'W/(m² K)' },
    sources: physicsSources('watson-1964', 'bhagat-2018', 'bohr-1993', 'common-practice'),
    evaluate: (values) => handSpeed(as(values)),
  },
];

export const SURFACE_MODELS: readonly Model[] = [
  {
    name: 'contact-temp',
    about: 'Temperature where two thick bodies touch, in the first moment.',
    inputs: [
      number('hotTempC', '°C', [-100, 1500]),
      number('hotEffusivity', 'W s^½/(m² K)', [1, 50_000]),
      number('bodyTempC', '°C', [-100, 1500]),
      number('bodyEffusivity', 'W s^½/(m² K)', [1, 50_000]),
    ],
    results: { tempC: '°C' },
    sources: physicsSources('incropera-5'),
    evaluate: (values) => contactTemp(as(values)),
  },
  {
    name: 'surface-after',
    about: 'Temperature in a thick body some time after a fluid begins to flow over it.',
    inputs: [
      number('bodyTempC', '°C', [-100, 1500]),
      number('fluidTempC', '°C', [-100, 1500]),
      number('filmWM2K', 'W/(m² K)', [0.1, 1e6]),
      number('conductivityWMK', 'W/(m K)', [0.01, 500]),
      number('diffusivityM2S', 'm²/s', [1e-9, 1e-3]),
      number('depthM', 'm', [0, 10], 0),
      number('timeS', 's', [0, 3.2e8]),
    ],
    results: { tempC: '°C' },
    sources: physicsSources('incropera-5'),
    evaluate: (values) => surfaceAfter(as(values)),
  },
  {
    name: 'sheet-equilibrium',
    about: 'Temperature at which a thin sheet and the hot water on it meet.',
    inputs: [
      number('sheetMm', 'mm', [0.1, 20]),
      number('waterDepthMm', 'mm', [0.05, 100]),
      number('waterC', '°C', [0, 110]),
      number('sheetC', '°C', [-20, 300]),
      {
        name: 'material',
        kind: 'text',
        unit: 'id',
        choices: materialIds(),
        usual: 'stainless-steel',
      },
    ],
    results: { tempC: '°C' },
    sources: physicsSources('energy-balance', 'incropera-a'),
    evaluate: (values) => sheetEquilibrium(as(values)),
  },
  {
    name: 'thermal-shock',
    about: 'Whether water of one temperature on a surface of another may crack it.',
    inputs: [
      { name: 'material', kind: 'text', unit: 'id', choices: materialIds() },
      number('surfaceC', '°C', [-30, 900]),
      number('waterC', '°C', [0, 110]),
    ],
    results: { verdict: 'safe, risky or cracks', differenceK: 'K', limitK: 'K' },
    sources: physicsSources('thermal-shock'),
    evaluate: (values) => ({ ...thermalShock(as(values)) }),
  },
];
