import {
  burnerTypes,
  burnTime,
  circuitLoad,
  coolToTouch,
  draperPoint,
  freeConvection,
  glowTime,
  luminance,
  ovenStages,
  STILL_SHAPES,
  touchThreshold,
} from '../../../core/physics/index.ts';
import { number, optional, type Model, type ModelInput, type Values } from '../model/model.ts';
import { physicsSources } from '../model/sources.ts';

/** Values were checked against the inputs of the model, so the shapes fit. */
function as<T>(values: Values): T {
  return values as T;
}

const BURNER: readonly ModelInput[] = [
  {
    name: 'burner',
    kind: 'text',
    unit: 'id of the catalogue',
    optional: true,
    about: `${burnerTypes().join(', ')}; or the numbers of one body instead`,
  },
  optional(number('ratedW', 'W', [500, 12_000])),
  optional({
    ...number('ratedV', 'V', [90, 440]),
    about: 'what ratedW is for; with supplyV, power goes with the square (240 on 208: 75 %)',
  }),
  optional({ ...number('supplyV', 'V', [90, 440]), about: 'what it gets' }),
  optional(number('powerW', 'W', [0, 40_000])),
  optional(number('areaM2', 'm²', [1e-6, 10])),
  optional(number('emissivity', '1', [0, 1])),
  optional(number('heatCapacityJK', 'J/K', [0.1, 1e6])),
  optional({
    ...number('filmWM2K', 'W/(m² K)', [0, 5000]),
    about: 'while it is lit; cool-to-touch takes still air instead, unless it is given',
  }),
  number('roomC', '°C', [-10, 50], 20),
];

const STILL_SHAPE: ModelInput = {
  name: 'shape',
  kind: 'text',
  unit: 'how it stands in still air',
  choices: STILL_SHAPES,
  optional: true,
  about: 'with sizeM: diameter of a bar or disc, height of a plate',
};

export const HEAT_MODELS: readonly Model[] = [
  {
    name: 'glow-time',
    about:
      'Seconds from lighting to a glow: in twilight (low), at 525 °C, with the lamp on or the coolest of its type (high). steadyC: coolest and hottest of its type; surelyGlows false: the coolest may stay dark.',
    inputs: BURNER,
    results: { timeS: 's', steadyC: '°C', litC: '°C', surelyGlows: 'true or false' },
    sources: physicsSources(
      'stefan-boltzmann',
      'draper-point',
      'burner-memory',
      'coil-thermal-imager',
    ),
    evaluate: (values) => ({ ...glowTime(as(values)) }),
  },
  {
    name: 'cool-to-touch',
    about:
      'Seconds from turning off until it may be touched for a minute: radiation and still air. high: what the clock takes.',
    inputs: [
      ...BURNER,
      optional(number('fromC', '°C', [-30, 1300])),
      {
        name: 'material',
        kind: 'text',
        unit: 'id of a material, or metal, mineral, plastic, wood',
        optional: true,
      },
      number('contactS', 's', [1, 28_800], 60),
      optional(number('touchC', '°C', [20, 400])),
      STILL_SHAPE,
      optional(number('sizeM', 'm', [0.002, 2])),
      number('altitudeM', 'm', [-430, 5000], 0),
    ],
    results: { timeS: 's', touchC: '°C', fromC: '°C' },
    sources: physicsSources('stefan-boltzmann', 'incropera-9', 'iso-13732-1', 'astm-c1055'),
    evaluate: (values) => ({ ...coolToTouch(as(values)) }),
  },
  {
    name: 'free-convection',
    about: 'Film coefficient of still air at a hot body.',
    inputs: [
      { ...STILL_SHAPE, optional: false },
      number('sizeM', 'm', [0.002, 2]),
      number('surfaceC', '°C', [-20, 1300]),
      number('airC', '°C', [-20, 60], 20),
      number('pressurePa', 'Pa', [40_000, 110_000], 101_325),
    ],
    results: { filmWM2K: 'W/(m² K)', rayleigh: '1', nusselt: '1' },
    sources: physicsSources('incropera-9'),
    evaluate: (values) => freeConvection(as(values)),
  },
  {
    name: 'glow-luminance',
    about: 'Luminance of a glowing body.',
    inputs: [number('tempC', '°C', [300, 3000]), number('emissivity', '1', [0.01, 1], 1)],
    results: { luminanceCdM2: 'cd/m²' },
    sources: physicsSources('wyman-2013'),
    evaluate: (values) => luminance(as(values)),
  },
  {
    name: 'draper-point',
    about: 'Temperature at which a glow is seen in a room with this much light.',
    inputs: [number('lux', 'lx', [0, 20_000])],
    results: { tempC: '°C', luminanceCdM2: 'cd/m²' },
    sources: physicsSources('draper-point', 'wyman-2013', 'common-practice'),
    evaluate: (values) => draperPoint(as(values)),
  },
  {
    name: 'oven-stages',
    about:
      'Stages of a self-clean cycle: by name, by its length (heating included), or by its hold.',
    inputs: [
      {
        name: 'cycle',
        kind: 'text',
        unit: 'name',
        choices: ['light', 'normal', 'heavy'],
        optional: true,
      },
      optional(number('cycleMin', 'min', [60, 480])),
      optional(number('holdMin', 'min', [10, 480])),
      number('roomC', '°C', [-10, 50], 20),
    ],
    results: { heatMin: 'min', holdMin: 'min', coolMin: 'min', totalMin: 'min' },
    sources: physicsSources('owners-manuals', 'common-practice'),
    evaluate: (values) => ({ ...ovenStages(as(values)) }),
  },
  {
    name: 'burn-time',
    about: 'Seconds of hot water on adult skin to a burn.',
    inputs: [number('tempC', '°C', [45, 60])],
    results: { secondDegreeS: 's', thirdDegreeS: 's' },
    sources: physicsSources('moritz-henriques'),
    evaluate: (values) => burnTime(as(values)),
  },
  {
    name: 'touch-threshold',
    about: 'Temperature of a surface below which a touch of that length does not burn.',
    inputs: [
      {
        name: 'material',
        kind: 'text',
        unit: 'id of a material, or metal, mineral, plastic, wood',
      },
      number('contactS', 's', [1, 28_800]),
    ],
    results: { touchC: '°C' },
    sources: physicsSources('iso-13732-1'),
    evaluate: (values) => touchThreshold(as(values)),
  },
  {
    name: 'circuit-load',
    about: 'What several loads draw from one circuit, and whether it bears them.',
    inputs: [
      number('supplyV', 'V', [90, 440]),
      number('ratingA', 'A', [1, 125]),
      { name: 'loadsW', kind: 'numbers', unit: 'W, with commas between', range: [0, 40_000] },
      number('bearsShare', '1', [1, 1.6], 1),
      { name: 'continuous', kind: 'flag', unit: 'true or false', usual: false },
    ],
    results: { loadA: 'A', spareA: 'A', allowed: 'true or false' },
    sources: physicsSources('nec-210'),
    evaluate: (values) => circuitLoad(as(values)),
  },
];
