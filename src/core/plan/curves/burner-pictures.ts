import type { Burner, Kitchen } from '../../kitchen/index.ts';
import { DRAPER_C, glowCurve } from '../../physics/index.ts';
import { OutOfRangeError } from '../../quantity/index.ts';
import { reckonBurner } from '../reckon/index.ts';
import type { HeatPicture } from './types.ts';

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

/** Warm-up, hold and cool-down of each kind of burner that glows. */
export function burnerPictures(kitchen: Kitchen, holdMin: number): readonly HeatPicture[] {
  const kinds = burnersOf(kitchen).filter(
    (burner, i, all) =>
      all.findIndex((one) => one.type === burner.type && one.ratedW === burner.ratedW) === i,
  );
  return kinds.flatMap((burner) => {
    const reckoned = reckonBurner(burner);
    if (!reckoned) return [];
    const points = curveOf(burner, holdMin).map(({ timeS, tempC }) => ({ timeS, y: tempC }));
    return [
      {
        id: `glow-${burner.type}-${burner.ratedW}`,
        title: `Glow and cool-down: ${burner.type.replaceAll('-', ' ')}, ${burner.ratedW} W`,
        says: `${reckoned.visible} The hold begins when you say that it glows.`,
        unit: '°C',
        lines: [{ name: 'What glows', weight: 'main' as const, points }],
        limits: [{ name: 'First red in the dark', y: DRAPER_C }],
        moments: [
          { name: 'glow seen', timeS: reckoned.glowS.typical },
          { name: 'off', timeS: reckoned.glowS.typical + holdMin * 60 },
        ],
      },
    ];
  });
}
