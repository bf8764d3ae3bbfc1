import { burnersOf, type Burner, type BurnerType, type Kitchen } from '../../kitchen/index.ts';
import { message } from '../../messages/index.ts';
import { DRAPER_C, glowCurve } from '../../physics/index.ts';
import { OutOfRangeError, SECONDS_PER_MINUTE } from '../../units/index.ts';
import { burnerHeat, estimateBurner, glowVisible, usualHeat } from '../estimates/index.ts';
import type { HeatChart } from './types.ts';

/** A power outside the catalogue is drawn as the usual one of its type, as it is planned. */
function curveOf(kitchen: Kitchen, burner: Burner, holdMin: number) {
  const of = burnerHeat(kitchen, burner);
  try {
    return glowCurve({ ...of, holdMin });
  } catch (refusal) {
    if (!(refusal instanceof OutOfRangeError)) throw refusal;
    return glowCurve({ ...usualHeat(of), holdMin });
  }
}

/** The moment the course turns down: switched off. */
function offS(points: HeatChart['lines'][number]['points']): number {
  const top = Math.max(...points.map(({ y }) => y));
  return points.findLast(({ y }) => y >= top - 1)?.timeS ?? 0;
}

function chartOf(
  kitchen: Kitchen,
  burner: Burner,
  type: Exclude<BurnerType, 'induction'>,
  holdMin: number,
): readonly HeatChart[] {
  const estimate = estimateBurner(kitchen, burner);
  if (!estimate) return [];
  const points = curveOf(kitchen, burner, holdMin).map(({ timeS, tempC }) => ({ timeS, y: tempC }));
  const burnerType = message(`plan.chart.burner.${type}`);
  return [
    {
      id: `glow-${type}`,
      title: message('plan.chart.glow.title', { burnerType }),
      says: message('plan.chart.glow.says', {
        visible: glowVisible(type),
        holdS: holdMin * SECONDS_PER_MINUTE,
      }),
      unit: message('plan.chart.unit.temperature'),
      counts: '°C',
      lines: [{ name: message('plan.chart.glow.line'), weight: 'main', points }],
      limits: [{ name: message('plan.chart.glow.first-red'), y: DRAPER_C }],
      moments: [
        { name: message('plan.chart.glow.seen'), timeS: estimate.glowS.typical },
        { name: message('plan.chart.moment.off'), timeS: offS(points) },
      ],
    },
  ];
}

/** Warm-up, hold and cool-down, one picture a type of burner: within a type a larger one is longer, not hotter. */
export function burnerCharts(kitchen: Kitchen, holdMin: number): readonly HeatChart[] {
  const largestFirst = burnersOf(kitchen).toSorted((a, b) => b.ratedW - a.ratedW);
  const types = largestFirst.filter(
    (burner, i, all) => all.findIndex(({ type }) => type === burner.type) === i,
  );
  return types.flatMap((burner) =>
    burner.type === 'induction' ? [] : chartOf(kitchen, burner, burner.type, holdMin),
  );
}
