import {
  contactTemp,
  filmJump,
  heatedSpeed,
  jetLoss,
  keepsUp,
  levelJump,
  materialIds,
  pouredSpot,
  puddleDepth,
  reachedSpeed,
  sheetEquilibrium,
  surfaceAfter,
  thermalShock,
  wettingRate,
  worstOffset,
} from '../../../core/physics/index.ts';
import { number, optional, type Model, type ModelInput, type Values } from '../model/model.ts';
import { physicsSources } from '../model/sources.ts';

/** Values were checked against the inputs of the model, so the shapes fit. */
function as<T>(values: Values): T {
  return values as T;
}

const WATER_C = number('tempC', '°C', [-20, 110]);
const FLOW = number('flowLMin', 'L/min', [0.2, 12]);
const CONTACT = number('contactDeg', 'degree', [1, 180]);
const BOILING = number('boilingC', '°C', [60, 105], 100);
const IMPACT = number('impactC', '°C', [40, 105]);
const OVERLAP = number('overlapShare', '1', [0, 0.5], 0.15);
const FALL = number('fallM', 'm', [0.02, 1], 0.2);
const SURFACE: ModelInput = {
  name: 'material',
  kind: 'text',
  unit: 'id',
  choices: materialIds(),
  usual: 'stainless-steel',
};
const POURED_SOURCES = physicsSources(
  'watson-1964',
  'lienhard-1995',
  'tsou-1967',
  'carslaw-jaeger',
  'stefan-flow',
  'bhagat-2018',
  'bohr-1993',
  'common-practice',
);

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
    name: 'jet-loss',
    about:
      'What a stream loses from the spout to the surface: low for a smooth stream, high for one that mixes as it falls.',
    inputs: [FLOW, number('spoutC', '°C', [40, 105]), BOILING, FALL],
    results: { lossK: 'K' },
    sources: physicsSources('carslaw-jaeger', 'stefan-flow', 'iapws-if97'),
    evaluate: (values) => jetLoss(as(values)),
  },
  {
    name: 'poured-spot',
    about:
      'What the worst-placed spot of a strip meets as a stream passes over it: first water, hottest water, hottest surface; and the water that runs off.',
    inputs: [
      FLOW,
      IMPACT,
      BOILING,
      number('handSpeedMS', 'm/s', [0.001, 0.3]),
      SURFACE,
      optional(number('thicknessMm', 'mm', [0.1, 300])),
      number('surfaceC', '°C', [-20, 100], 20),
      OVERLAP,
      FALL,
      number('standingMm', 'mm', [0, 20], 0),
      number('cells', '1', [6, 64], 16),
    ],
    results: { firstTouchC: '°C', hottestC: '°C', surfaceC: '°C', runOffC: '°C' },
    sources: POURED_SOURCES,
    evaluate: (values) => {
      const of = as<Parameters<typeof pouredSpot>[0] & { overlapShare: number }>(values);
      return { ...pouredSpot({ ...of, offset: worstOffset(of.overlapShare) }) };
    },
  },
  {
    name: 'hand-speed',
    about:
      'How quick a hand may be: until the first touch of the worst-placed spot is touchC (reached), until the surface has followed the water to 95 % (heated), and with a film that keeps up with it (quickest).',
    inputs: [
      FLOW,
      IMPACT,
      BOILING,
      SURFACE,
      optional(number('thicknessMm', 'mm', [0.1, 300])),
      OVERLAP,
      FALL,
      number('touchC', '°C', [30, 105], 71),
    ],
    results: {
      reachedMS: 'm/s',
      reached: 'true or false',
      heatedMS: 'm/s',
      heatedDwellS: 's',
      quickestMS: 'm/s',
    },
    sources: POURED_SOURCES,
    evaluate: (values) => {
      const of = as<Parameters<typeof reachedSpeed>[0]>(values);
      const { speedMS: reachedMS, reached } = reachedSpeed(of);
      const { speedMS: heatedMS, dwellS: heatedDwellS } = heatedSpeed(of);
      return { reachedMS, reached, heatedMS, heatedDwellS, quickestMS: keepsUp(of).speedMS };
    },
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
