import type { Kitchen } from '../../kitchen/index.ts';
import { message } from '../../messages/index.ts';
import { boilCurve, kettleCoolingCurve } from '../../physics/index.ts';
import {
  boilOf,
  calibratedBoil,
  coolingOf,
  DROP_K,
  fillL,
  pouringKettles,
  estimateBoil,
  type Kettle,
} from '../estimates/index.ts';
import type { Calibration } from '../model/index.ts';
import type { HeatChart } from './types.ts';

/** The picture goes on until the water has lost this much, K. */
const SHOWN_DROP_K = 15;

function coolLine(kitchen: Kitchen, kettle: Kettle, volumeL: number, end: 'low' | 'high') {
  return kettleCoolingCurve({
    ...coolingOf(kitchen, kettle, volumeL, end),
    dropK: SHOWN_DROP_K,
  }).map(({ timeS, tempC }) => ({ timeS, y: tempC }));
}

function boilPicture(
  kitchen: Kitchen,
  kettle: Kettle,
  volumeL: number,
  calibration: Calibration | undefined,
): HeatChart {
  const { vessel } = kettle;
  const points = boilCurve(boilOf(kitchen, kettle, volumeL)).map(({ timeS, tempC }) => ({
    timeS,
    y: tempC,
  }));
  const factor = calibration?.boil?.[vessel.id];
  const { timeS } = calibratedBoil(estimateBoil(kitchen, kettle, volumeL), factor);
  return {
    id: `boil-${kettle.id}`,
    title: message('plan.chart.boil.title', { vessel: kettle.name }),
    says: message(factor ? 'plan.chart.boil.says-calibrated' : 'plan.chart.boil.says', {
      litres: volumeL,
    }),
    unit: message('plan.chart.unit.temperature'),
    counts: '°C',
    lines: [{ name: message('plan.chart.boil.water'), weight: 'main', points }],
    limits: [{ name: message('plan.chart.boil.boils-here'), y: points.at(-1)?.y ?? 100 }],
    moments: [
      { name: message('plan.chart.boil.soonest'), timeS: timeS.low },
      { name: message('plan.chart.boil.about'), timeS: timeS.typical },
      { name: message('plan.chart.boil.latest'), timeS: timeS.high },
    ],
  };
}

function coolPicture(kitchen: Kitchen, kettle: Kettle, volumeL: number): HeatChart {
  const quick = coolLine(kitchen, kettle, volumeL, 'high');
  const slow = coolLine(kitchen, kettle, volumeL, 'low');
  const boilingC = quick[0]?.y ?? 100;
  return {
    id: `cool-${kettle.id}`,
    title: message('plan.chart.after-boil.title', { vessel: kettle.name }),
    says: message('plan.chart.after-boil.says', { dropK: DROP_K }),
    unit: message('plan.chart.unit.temperature'),
    counts: '°C',
    lines: [
      { name: message('plan.chart.after-boil.loses-much'), weight: 'main', points: quick },
      { name: message('plan.chart.after-boil.loses-little'), weight: 'beside', points: slow },
    ],
    limits: [{ name: message('plan.chart.after-boil.boil-again'), y: boilingC - DROP_K }],
    moments: [
      {
        name: message('plan.chart.after-boil.pour-by'),
        timeS: estimateBoil(kitchen, kettle, volumeL).waitS,
      },
    ],
  };
}

/** Boil and cool-down of each kind of kettle that pours. */
export function kettleCharts(kitchen: Kitchen, calibration?: Calibration): readonly HeatChart[] {
  const kettles = pouringKettles(kitchen);
  const volumeL = fillL(kettles);
  const kinds = kettles.filter(
    (kettle, i) => kettles.findIndex((one) => one.vessel.id === kettle.vessel.id) === i,
  );
  return kinds.flatMap((kettle) => [
    boilPicture(kitchen, kettle, volumeL, calibration),
    coolPicture(kitchen, kettle, volumeL),
  ]);
}
