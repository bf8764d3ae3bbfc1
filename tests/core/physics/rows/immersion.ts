import { immersionDrop, immersionRecovery, water } from '../../../../src/core/physics/index.ts';
import { rows, type Row } from './row.ts';

/** Litres of a mass of water: the examples weigh it. */
const litres = (kg: number, tempC: number) => (kg / water({ tempC }).densityKgM3) * 1000;

const mixed = (
  waterKg: number,
  waterC: number,
  itemKg: number,
  itemMaterial: string,
  itemC: number,
) =>
  immersionDrop({ waterL: litres(waterKg, waterC), waterC, itemKg, itemMaterial, itemC }).mixedC
    .typical;

/** 10 L at the boil, 2 kg of stainless steel from 20 °C, 3 kW of which half arrives, 300 W lost. */
const dip = {
  waterL: 10,
  waterC: 99.97,
  itemKg: 2,
  itemMaterial: 'stainless-steel',
  itemC: 20,
  powerW: 3000,
  efficiency: 0.5,
  lossW: 300,
  altitudeM: 0,
};

/**
 * By hand. Water at 99.97 °C: 958.4 kg/m³ and 4.216 kJ/(kg K) (IAPWS tables), so 10 L take
 * 9.584 · 4216 = 40 406 J/K; the steel 2 · 477 = 954 J/K. Mixed at
 * (40 406 · 99.97 + 954 · 20) / 41 360 = 98.126 °C. To the boil at 99.974 °C the steel took
 * 954 · 79.97 = 76.29 kJ from the water, and 0.004 K are missing besides: 76.45 kJ, at
 * 3000 · 0.5 − 300 = 1200 W: 63.7 s.
 */
const HAND = { mixedC: 98.126, recoverS: 63.7 };

export const IMMERSION_ROWS: readonly Row[] = [
  ...rows(
    {
      group: 'immersion',
      source:
        'OpenStax, College Physics, section 14.2, example 2 (cold water in a hot pan); the number read in a copy',
      confidence: 'read in a copy',
    },
    [
      [
        '0.25 kg of 20 °C, aluminium 0.5 kg of 150 °C, °C',
        59.1,
        0.1,
        () => mixed(0.25, 20, 0.5, 'aluminium', 150),
      ],
    ],
  ),
  ...rows(
    {
      group: 'immersion',
      source: 'worked textbook problem: aluminium in a styrofoam cup',
      confidence: 'read in a copy',
    },
    [
      [
        '0.297 kg of 23.5 °C, aluminium 0.153 kg of 85.1 °C, °C',
        29.64,
        0.05,
        () => mixed(0.297, 23.5, 0.153, 'aluminium', 85.1),
      ],
    ],
  ),
  ...rows(
    {
      group: 'immersion',
      source: 'worked textbook problem: copper in 50 g of water',
      confidence: 'read in a copy',
    },
    [
      [
        '0.05 kg of 25 °C, copper 0.025425 kg of 62.2 °C, °C',
        26.7,
        0.1,
        () => mixed(0.05, 25, 0.025425, 'copper', 62.2),
      ],
    ],
  ),
  ...rows({ group: 'immersion', source: 'heat balance worked by hand', confidence: 'computed' }, [
    [
      '10 L at the boil, 2 kg of steel of 20 °C, °C',
      HAND.mixedC,
      0.01,
      () => immersionRecovery(dip).mixedC.typical,
    ],
    ['until it boils again, s', HAND.recoverS, 0.3, () => immersionRecovery(dip).recoverS.typical],
  ]),
];
