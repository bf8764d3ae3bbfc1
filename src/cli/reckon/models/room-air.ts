import {
  admittance,
  air,
  heatIndex,
  outdoorTemp,
  windowFlow,
} from '../../../core/physics/index.ts';
import { number, optional, type Model, type Values } from '../model/model.ts';
import { physicsSources } from '../model/sources.ts';

/** Values were checked against the inputs of the model, so the shapes fit. */
function as<T>(values: Values): T {
  return values as T;
}

export const ROOM_MODELS: readonly Model[] = [
  {
    name: 'air',
    about:
      'Concentration of a substance in one well-mixed room after a time, and where it tends to.',
    inputs: [
      number('volumeM3', 'm³', [1, 10_000]),
      number('airChangesPerH', '1/h', [0, 500]),
      number('emissionMgH', 'mg/h', [0, 1e9]),
      number('outdoorMgM3', 'mg/m³', [0, 1e5], 0),
      number('startMgM3', 'mg/m³', [0, 1e6], 0),
      number('depositionPerH', '1/h', [0, 100], 0),
      number('timeH', 'h', [0, 1e4]),
    ],
    results: { concentrationMgM3: 'mg/m³', steadyMgM3: 'mg/m³' },
    sources: physicsSources('single-zone'),
    evaluate: (values) => air(as(values)),
  },
  {
    name: 'heat-index',
    about: 'What the warmth feels like to a person at rest in the shade.',
    inputs: [number('tempC', '°C', [-20, 50]), number('humidityPct', '%', [0, 100])],
    results: { heatIndexC: '°C', band: 'name' },
    sources: physicsSources('nws-heat-index'),
    evaluate: (values) => ({ ...heatIndex(as(values)) }),
  },
  {
    name: 'window-flow',
    about: 'Air that one open window exchanges.',
    inputs: [
      number('areaM2', 'm²', [0, 20]),
      number('heightM', 'm', [0.05, 5]),
      number('differenceK', 'K', [-60, 60]),
      number('windMS', 'm/s', [0, 30], 2),
      number('meanC', '°C', [-40, 60], 24.85),
    ],
    results: {
      flowM3S: 'm³/s',
      stackM3S: 'm³/s',
      windM3S: 'm³/s',
      phaffM3S: 'm³/s',
      ashraeM3S: 'm³/s',
    },
    sources: physicsSources('warren-parkins-1984', 'degids-phaff-1982'),
    evaluate: (values) => ({ ...windowFlow(as(values)) }),
  },
  {
    name: 'outdoor-temp',
    about:
      'Air outside on a usual afternoon, by latitude, altitude and day of the year; fitted to towns.',
    inputs: [
      number('latDeg', '°', [-90, 90]),
      number('altitudeM', 'm', [-500, 5000], 0),
      optional({ ...number('dayOfYear', '1', [1, 366]), about: 'absent: the warmest of the year' }),
    ],
    results: { afternoonC: '°C', meanC: '°C' },
    sources: physicsSources('climate-fit'),
    evaluate: (values) => ({ ...outdoorTemp(as(values)) }),
  },
  {
    name: 'admittance',
    about: 'Admittance of a thick wall layer for a swing of that period.',
    inputs: [
      number('effusivity', 'W s^½/(m² K)', [10, 10_000]),
      number('periodS', 's', [60, 604_800], 3600),
    ],
    results: { admittanceWM2K: 'W/(m² K)' },
    sources: physicsSources('cibse-admittance'),
    evaluate: (values) => admittance(as(values)),
  },
];
