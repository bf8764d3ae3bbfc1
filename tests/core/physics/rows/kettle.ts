import {
  boilTime,
  gasPowerW,
  heatingPowerW,
  heatNeeded,
  kettleCooling,
} from '../../../../src/core/physics/index.ts';
import { rows, type Row } from './row.ts';

const J_BTU = 1055.05585262;
const QUART_L = 0.946352946;
const ideal = { volumeL: 1, startC: 15, endC: 100, bodyWaterL: 0 };
/** One US quart from 60 to 212 °F, as the tester's ideal heat implies. */
const quartJ = () =>
  heatNeeded({ volumeL: QUART_L, startC: 15.56, endC: 100, bodyWaterL: 0 }).energyJ;
const gasJ = () => gasPowerW({ btuH: 7000 }).powerW * 510;
const boil = (volumeL: number, ratedW: number, bodyWaterL: number) =>
  boilTime({
    volumeL,
    ratedW,
    ratedV: 230,
    supplyV: 230,
    startC: 20,
    altitudeM: 0,
    bodyWaterL,
    lossWK: 0,
  }).timeS.typical;
/** The quart as the plan reckons a kettle on a hob: what the efficiency holds is not counted again. */
const quartS = (ratedW: number, efficiency: number) =>
  boilTime({
    volumeL: QUART_L,
    ratedW,
    ratedV: 120,
    supplyV: 120,
    startC: 15.56,
    altitudeM: 0,
    bodyWaterL: 0,
    lossWK: 0,
    efficiency,
  }).timeS.typical;
const steel = { lossWK: 1.8, evaporationW: 10, roomC: 20, altitudeM: 0 };
const coolMin = (volumeL: number, dropK: number) =>
  kettleCooling({ ...steel, volumeL, dropK }).timeS / 60;

export const KETTLE_ROWS: readonly Row[] = [
  ...rows(
    {
      group: 'kettle',
      source: 'a physics teacher’s worked example, 2012',
      confidence: 'read in a copy',
    },
    [
      ['1 L, 15 to 100 °C, kJ', 355, 1, () => heatNeeded(ideal).energyJ / 1000],
      ['the same at 2800 W, s', 127, 0.5, () => heatNeeded(ideal).energyJ / 2800],
      ['the same at 1500 W, s', 237, 0.5, () => heatNeeded(ideal).energyJ / 1500],
    ],
  ),
  ...rows(
    {
      group: 'stove kettle',
      source: 'P. Scheckel’s quart test, magazine article',
      confidence: 'read in a copy',
    },
    [
      ['gas used, Btu', 992, 9.9, () => gasJ() / J_BTU],
      ['heat into the water, Btu', 317, 3.2, () => quartJ() / J_BTU],
      ['gas efficiency, %', 32, 0.32, () => (100 * quartJ()) / gasJ()],
      ['induction efficiency, %', 73.7, 0.74, () => (100 * quartJ()) / (1300 * 350)],
    ],
  ),
  ...rows(
    {
      group: 'stove kettle',
      source: 'P. Scheckel’s quart test through boilTime, by its own efficiency',
      confidence: 'read in a copy',
    },
    [
      ['gas, 2051.5 W at 32 %, s', 510, 5, () => quartS(2051.5, 0.32)],
      ['induction, 1300 W at 73.7 %, s', 350, 4, () => quartS(1300, 0.737)],
    ],
  ),
  ...rows(
    { group: 'kettle', source: 'energy balance with the measured bodies', confidence: 'computed' },
    [
      ['1.0 L, 2200 W, plastic, 20 °C to the boil, s', 168, 1, () => boil(1, 2200, 0.105)],
      ['1.7 L, 3000 W, plastic, 20 °C to the boil, s', 201, 1, () => boil(1.7, 3000, 0.105)],
      [
        'capacity efficiency of 1 L, plastic, %',
        90.5,
        0.1,
        () => (100 * boil(1, 2200, 0)) / boil(1, 2200, 0.105),
      ],
      [
        'capacity efficiency of 1 L, steel, %',
        81.3,
        0.1,
        () => (100 * boil(1, 2200, 0)) / boil(1, 2200, 0.23),
      ],
    ],
  ),
  ...rows(
    {
      group: 'kettle cooling',
      source: 'lumped cooling with guessed losses',
      confidence: 'computed',
    },
    [
      ['1.0 L steel, first kelvins, K/min', 1.8, 0.1, () => 0.5 / coolMin(1, 0.5)],
      ['1.0 L steel, 5 K, min', 2.8, 0.15, () => coolMin(1, 5)],
      ['1.7 L steel, 5 K, min', 4.4, 0.2, () => coolMin(1.7, 5)],
    ],
  ),
  ...rows({ group: 'gas', source: 'Btu/h × 2.9307e-4 kW', confidence: 'from memory' }, [
    ['5000 Btu/h, kW', 1.465, 5e-4, () => gasPowerW({ btuH: 5000 }).powerW / 1000],
    ['9500 Btu/h, kW', 2.784, 5e-4, () => gasPowerW({ btuH: 9500 }).powerW / 1000],
    ['12 000 Btu/h, kW', 3.517, 5e-4, () => gasPowerW({ btuH: 12_000 }).powerW / 1000],
    ['15 000 Btu/h, kW', 4.396, 5e-4, () => gasPowerW({ btuH: 15_000 }).powerW / 1000],
    ['22 000 Btu/h, kW', 6.448, 5e-4, () => gasPowerW({ btuH: 22_000 }).powerW / 1000],
  ]),
  ...rows({ group: 'voltage', source: 'P ~ U²', confidence: 'computed' }, [
    [
      '3000 W at 240 V, on 230 V, W',
      2755,
      0.6,
      () => heatingPowerW({ ratedW: 3000, ratedV: 240, supplyV: 230 }).powerW,
    ],
    [
      '3000 W at 240 V, on 207 V, W',
      2232,
      0.6,
      () => heatingPowerW({ ratedW: 3000, ratedV: 240, supplyV: 207 }).powerW,
    ],
  ]),
];
