import {
  immersionDrop,
  immersionRecovery,
  potLoss,
  specificHeatIds,
} from '../../../core/physics/index.ts';
import { number, type Model, type ModelInput, type Values } from '../model/model.ts';
import { physicsSources } from '../model/sources.ts';

/** Values were checked against the inputs of the model, so the shapes fit. */
function as<T>(values: Values): T {
  return values as T;
}

const DIPPED: readonly ModelInput[] = [
  number('waterL', 'L', [0.05, 200]),
  number('waterC', '°C', [0, 110]),
  number('itemKg', 'kg', [0, 100]),
  {
    name: 'itemMaterial',
    kind: 'text',
    unit: 'id of the table of specific heats',
    choices: specificHeatIds(),
  },
  number('itemC', '°C', [-30, 300]),
  {
    ...number('potWaterL', 'L', [0, 200], 0),
    about: 'the pot, as hot as its water, as the volume of water with its heat capacity',
  },
];

export const IMMERSION_MODELS: readonly Model[] = [
  {
    name: 'immersion-drop',
    about: 'Temperature of water and of what is dipped into it, once they are one.',
    inputs: DIPPED,
    results: { mixedC: '°C' },
    sources: physicsSources('energy-balance', 'halliday-18-3', 'handbook-specific-heats'),
    evaluate: (values) => ({ ...immersionDrop(as(values)) }),
  },
  {
    name: 'immersion-recovery',
    about: 'The same, and how long until it boils again on its burner.',
    inputs: [
      ...DIPPED,
      number('powerW', 'W', [100, 100_000]),
      number('efficiency', '1', [0.05, 1], 1),
      number('lossW', 'W', [0, 50_000], 0),
      number('altitudeM', 'm', [-500, 11_000], 0),
    ],
    results: { mixedC: '°C', recoverS: 's', boilingC: '°C' },
    sources: physicsSources(
      'energy-balance',
      'halliday-18-3',
      'handbook-specific-heats',
      'iec-60335-1',
      'iso-2533',
      'iapws-if97',
    ),
    evaluate: (values) => ({ ...immersionRecovery(as(values)) }),
  },
  {
    name: 'pot-loss',
    about: 'What a round pot of boiling water loses from its surface and through its wall.',
    inputs: [
      number('diameterM', 'm', [0.05, 1.5]),
      number('heightM', 'm', [0.02, 1.5]),
      { name: 'lid', kind: 'flag', unit: 'true or false', usual: false },
    ],
    results: { lossW: 'W' },
    sources: physicsSources('open-tank-loss', 'common-practice'),
    evaluate: (values) => potLoss(as(values)),
  },
];
