import {
  boilingTemp,
  boilTime,
  gasPowerW,
  heatNeeded,
  kettleCooling,
  saturationPressure,
  standardPressure,
  water,
} from '../../../core/physics/index.ts';
import { number, optional, type Model, type Values } from '../model/model.ts';
import { physicsSources } from '../model/sources.ts';

/** Values were checked against the inputs of the model, so the shapes fit. */
function as<T>(values: Values): T {
  return values as T;
}

const ALTITUDE = number('altitudeM', 'm', [-500, 11_000]);

export const WATER_MODELS: readonly Model[] = [
  {
    name: 'standard-pressure',
    about: 'Pressure of the standard atmosphere.',
    inputs: [ALTITUDE],
    results: { pressurePa: 'Pa' },
    sources: physicsSources('iso-2533'),
    evaluate: (values) => standardPressure(as(values)),
  },
  {
    name: 'boiling-temp',
    about: 'Temperature of boiling water at an altitude, or under a pressure.',
    inputs: [optional(ALTITUDE), optional(number('pressurePa', 'Pa', [611.213, 22_064_000]))],
    results: { tempC: '°C' },
    sources: physicsSources('iso-2533', 'iapws-if97'),
    evaluate: (values) => boilingTemp(as(values)),
  },
  {
    name: 'saturation-pressure',
    about: 'Pressure under which water boils at a temperature.',
    inputs: [number('tempC', '°C', [0, 373.946])],
    results: { pressurePa: 'Pa' },
    sources: physicsSources('iapws-if97'),
    evaluate: (values) => saturationPressure(as(values)),
  },
  {
    name: 'water',
    about: 'Properties of liquid water at 0.1 MPa.',
    inputs: [number('tempC', '°C', [-20, 110])],
    results: {
      densityKgM3: 'kg/m³',
      heatCapacityJKgK: 'J/(kg K)',
      viscosityPaS: 'Pa s',
      conductivityWMK: 'W/(m K)',
      surfaceTensionNM: 'N/m',
    },
    sources: physicsSources('iapws-sr6-08', 'iapws-r1-76'),
    evaluate: (values) => ({ ...water(as(values)) }),
  },
  {
    name: 'heat-needed',
    about: 'Heat that water and the body of its vessel take up between two temperatures.',
    inputs: [
      number('volumeL', 'L', [0.01, 200]),
      number('startC', '°C', [0, 110], 15),
      number('endC', '°C', [0, 110], 100),
      number('bodyWaterL', 'L', [0, 200], 0),
    ],
    results: { energyJ: 'J' },
    sources: physicsSources('energy-balance'),
    evaluate: (values) => heatNeeded(as(values)),
  },
  {
    name: 'boil-time',
    about:
      'Time and energy from switching on to boiling; power goes with the square of the voltage.',
    inputs: [
      number('volumeL', 'L', [0.05, 200]),
      number('ratedW', 'W', [100, 40_000]),
      number('ratedV', 'V', [90, 440], 230),
      number('supplyV', 'V', [90, 440], 230),
      number('startC', '°C', [0, 110], 15),
      number('altitudeM', 'm', [-500, 11_000], 0),
      number('bodyWaterL', 'L', [0, 200], 0.23),
      number('lossWK', 'W/K', [0, 50], 1.8),
      number('efficiency', '1', [0.05, 1], 1),
      number('roomC', '°C', [-10, 50], 20),
    ],
    results: { timeS: 's', energyKWh: 'kWh', steamGMin: 'g/min', boilingC: '°C' },
    sources: physicsSources('energy-balance', 'iec-60335-1', 'kettle-body-measured'),
    evaluate: (values) => ({ ...boilTime(as(values)) }),
  },
  {
    name: 'kettle-cooling',
    about: 'How long a switched-off kettle stays within a drop of boiling.',
    inputs: [
      number('volumeL', 'L', [0.05, 200]),
      number('lossWK', 'W/K', [0.01, 50], 1.8),
      number('evaporationW', 'W', [0, 2000], 10),
      number('roomC', '°C', [-10, 50], 20),
      number('dropK', 'K', [0.1, 110], 5),
      number('altitudeM', 'm', [-500, 11_000], 0),
      number('bodyWaterL', 'L', [0, 50], 0.23),
    ],
    results: { timeS: 's', boilingC: '°C' },
    sources: physicsSources('energy-balance', 'common-practice', 'kettle-body-measured'),
    evaluate: (values) => kettleCooling(as(values)),
  },
  {
    name: 'gas-power',
    about: 'Power of a gas burner from its plate in Btu/h.',
    inputs: [number('btuH', 'Btu/h', [400, 200_000])],
    results: { powerW: 'W' },
    sources: physicsSources('btu-iso-80000-5'),
    evaluate: (values) => gasPowerW(as(values)),
  },
];
