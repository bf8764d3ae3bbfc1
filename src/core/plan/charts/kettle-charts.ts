import type { Kitchen } from '../../kitchen/index.ts';
import { boilCurve, hobEfficiency, kettleBody, kettleCoolingCurve } from '../../physics/index.ts';
import {
  fillL,
  calibratedBoil,
  pouringKettles,
  estimateBoil,
  ROOM_C,
  type Kettle,
} from '../estimates/index.ts';
import type { Calibration } from '../model/types.ts';
import type { HeatChart } from './types.ts';

/** The picture goes on until the water has lost this much, K. */
const SHOWN_DROP_K = 15;
/** Boiled water that has lost this much is boiled again, K: common practice, no published source. */
const DROP_K = 5;

function coolingOf(kitchen: Kitchen, kettle: Kettle, volumeL: number, end: 'low' | 'high') {
  const body = kettleBody(kettle.vessel.body);
  return kettleCoolingCurve({
    volumeL,
    lossWK: body.lossWK[end],
    evaporationW: body.evaporationW[end],
    bodyWaterL: body.bodyWaterL,
    roomC: ROOM_C,
    dropK: SHOWN_DROP_K,
    altitudeM: kitchen.altitudeM,
  }).map(({ timeS, tempC }) => ({ timeS, y: tempC }));
}

function boilPicture(
  kitchen: Kitchen,
  kettle: Kettle,
  volumeL: number,
  learned: Calibration | undefined,
): HeatChart {
  const { vessel, burner } = kettle;
  const body = kettleBody(vessel.body);
  const share = burner && hobEfficiency(burner.type);
  const points = boilCurve({
    volumeL,
    ratedW: burner ? burner.ratedW : vessel.ratedW,
    ratedV: vessel.ratedV,
    supplyV: burner ? vessel.ratedV : kitchen.supplyV,
    startC: kitchen.tapColdC,
    altitudeM: kitchen.altitudeM,
    bodyWaterL: body.bodyWaterL,
    lossWK: body.lossWK.typical,
    ...(share && { efficiency: share.typical }),
  }).map(({ timeS, tempC }) => ({ timeS, y: tempC }));
  const lesson = learned?.boil?.[vessel.id];
  const { timeS } = calibratedBoil(estimateBoil(kitchen, kettle, volumeL), lesson);
  const from = `${volumeL.toFixed(1)} L from the tap to a rolling boil.`;
  return {
    id: `boil-${kettle.id}`,
    title: `Boil: ${kettle.name}`,
    says: lesson ? `${from} The line is reckoned; the moments are from your last run.` : from,
    unit: '°C',
    lines: [{ name: 'Water', weight: 'main', points }],
    limits: [{ name: 'Boils here', y: points.at(-1)?.y ?? 100 }],
    moments: [
      { name: 'soonest', timeS: timeS.low },
      { name: 'about', timeS: timeS.typical },
      { name: 'latest', timeS: timeS.high },
    ],
  };
}

function coolPicture(kitchen: Kitchen, kettle: Kettle, volumeL: number): HeatChart {
  const quick = coolingOf(kitchen, kettle, volumeL, 'high');
  const slow = coolingOf(kitchen, kettle, volumeL, 'low');
  const boilingC = quick[0]?.y ?? 100;
  return {
    id: `cool-${kettle.id}`,
    title: `After the boil: ${kettle.name}`,
    says: `It is poured before it has lost ${DROP_K} K; the plan counts by the quicker of the two.`,
    unit: '°C',
    lines: [
      { name: 'A kettle that loses much', weight: 'main', points: quick },
      { name: 'A kettle that loses little', weight: 'beside', points: slow },
    ],
    limits: [{ name: 'Boil again below', y: boilingC - DROP_K }],
    moments: [{ name: 'pour by', timeS: estimateBoil(kitchen, kettle, volumeL).waitS }],
  };
}

/** Boil and cool-down of each kind of kettle that pours. */
export function kettleCharts(kitchen: Kitchen, learned?: Calibration): readonly HeatChart[] {
  const kettles = pouringKettles(kitchen);
  const volumeL = fillL(kettles);
  const kinds = kettles.filter(
    (kettle, i) => kettles.findIndex((one) => one.vessel.id === kettle.vessel.id) === i,
  );
  return kinds.flatMap((kettle) => [
    boilPicture(kitchen, kettle, volumeL, learned),
    coolPicture(kitchen, kettle, volumeL),
  ]);
}
