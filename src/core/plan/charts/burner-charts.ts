import type { Burner, Kitchen } from '../../kitchen/index.ts';
import { DRAPER_C, glowCurve } from '../../physics/index.ts';
import { OutOfRangeError } from '../../units/index.ts';
import { estimateBurner } from '../estimates/index.ts';
import type { HeatChart } from './types.ts';

function burnersOf(kitchen: Kitchen): readonly Burner[] {
  return kitchen.fixtures.flatMap((one) => (one.kind === 'cooktop' ? one.burners : []));
}

/** A power outside the catalogue is drawn as the usual one of its type, as it is planned. */
function curveOf(burner: Burner, holdMin: number) {
  try {
    return glowCurve({ burner: burner.type, ratedW: burner.ratedW, holdMin });
  } catch (refusal) {
    if (!(refusal instanceof OutOfRangeError)) throw refusal;
    return glowCurve({ burner: burner.type, holdMin });
  }
}

/** The moment the course turns down: switched off. */
function offS(points: HeatChart['lines'][number]['points']): number {
  const top = Math.max(...points.map(({ y }) => y));
  return points.findLast(({ y }) => y >= top - 1)?.timeS ?? 0;
}

/** Warm-up, hold and cool-down, one picture a type of burner: within a type a larger one is longer, not hotter. */
export function burnerCharts(kitchen: Kitchen, holdMin: number): readonly HeatChart[] {
  const largestFirst = burnersOf(kitchen).toSorted((a, b) => b.ratedW - a.ratedW);
  const types = largestFirst.filter(
    (burner, i, all) => all.findIndex((one) => one.type === burner.type) === i,
  );
  return types.flatMap((burner) => {
    const reckoned = estimateBurner(burner);
    if (!reckoned) return [];
    const points = curveOf(burner, holdMin).map(({ timeS, tempC }) => ({ timeS, y: tempC }));
    return [
      {
        id: `glow-${burner.type}`,
        title: `Glow and cool-down: ${burner.type.replaceAll('-', ' ')}`,
        says: `${reckoned.visible} The hold of ${holdMin} min begins when you say that it glows; the drawing begins it at full heat.`,
        unit: '°C',
        lines: [{ name: 'What glows', weight: 'main' as const, points }],
        limits: [{ name: 'First red in the dark', y: DRAPER_C }],
        moments: [
          { name: 'glow seen', timeS: reckoned.glowS.typical },
          { name: 'off', timeS: offS(points) },
        ],
      },
    ];
  });
}
