import { SECONDS_PER_HOUR, asBand, band, inRange, type Band } from '../../units/index.ts';
import { thinned } from '../common/curve.ts';
import { AIR_LIMITS, emissionFactor, type AirLimit, type Pollutant } from '../tables/emissions.ts';
import { MOST_CHANGES_PERH } from './air-changes.ts';
import { air } from './air.ts';
import { ROOM_M3 } from './room-heat.ts';
import type { Hood } from './room-types.ts';

const STEP_S = 30;
const MG_NG = 1e-6;
/** A shut room still leaks, 1/h; below this the balance has no end. */
const LEAST_CHANGES_PERH = 0.05;
const LONGEST_S = 24 * SECONDS_PER_HOUR;

type GasPiece = { readonly fromS: number; readonly toS: number; readonly gasW: number };

export type AirCurveInput = {
  readonly volumeM3: number;
  /** Burners, gas used in W (higher heating value). */
  readonly gas: readonly GasPiece[];
  readonly hood: Hood;
  /** Window and cracks, without the hood; see airChanges. */
  readonly airChangesPerH: number | Band;
  readonly pollutant: Exclude<Pollutant, 'H2O'>;
  readonly untilS?: number;
};

export type LimitCheck = AirLimit & {
  /** Highest mean over the limit's own averaging time; rest of that time is in the outdoor air. */
  readonly meanMgM3: Band;
  /** At the bad corner: a dirty flame, a poor hood, still air, walls that take up nothing. */
  readonly exceeded: boolean;
  /** First moment the expected concentration itself passes the limit; absent: never. */
  readonly passesAtS?: number;
};

export type AirPoint = { readonly timeS: number; readonly mgM3: number };

function pathOf(of: AirCurveInput, corner: keyof Band, untilS: number): readonly AirPoint[] {
  const factor = emissionFactor(of.pollutant);
  // The low end of the curve is a clean flame, a good hood, and walls that take up most.
  const best = corner === 'low' ? 'high' : corner === 'high' ? 'low' : 'typical';
  const kept = 1 - of.hood.capture[best];
  const changes =
    asBand(of.airChangesPerH)[best] + (of.hood.flowM3S * SECONDS_PER_HOUR) / of.volumeM3;
  const points: AirPoint[] = [{ timeS: 0, mgM3: factor.outdoorMgM3 }];
  let mgM3 = factor.outdoorMgM3;
  for (let timeS = 0; timeS < untilS; timeS += STEP_S) {
    const gasW = of.gas
      .filter(({ fromS, toS }) => timeS >= fromS && timeS < toS)
      .reduce((sum, piece) => sum + piece.gasW, 0);
    mgM3 = air({
      volumeM3: of.volumeM3,
      airChangesPerH: Math.min(Math.max(changes, LEAST_CHANGES_PERH), MOST_CHANGES_PERH),
      emissionMgH: gasW * factor.ngJ[corner] * kept * MG_NG * SECONDS_PER_HOUR,
      outdoorMgM3: factor.outdoorMgM3,
      startMgM3: mgM3,
      depositionPerH: factor.depositionPerH[best],
      timeH: STEP_S / SECONDS_PER_HOUR,
    }).concentrationMgM3;
    points.push({ timeS: timeS + STEP_S, mgM3 });
  }
  return points;
}

/** Highest mean over a window of that length; the time before the start counts as outdoor air. */
function worstMean(points: readonly AirPoint[], averagingS: number, outdoor: number): number {
  const steps = Math.round(averagingS / STEP_S);
  let sum = 0;
  let worst = outdoor;
  points.forEach(({ mgM3 }, i) => {
    sum += mgM3;
    if (i >= steps) sum -= points[i - steps]?.mgM3 ?? 0;
    const inside = Math.min(i + 1, steps);
    worst = Math.max(worst, (sum + (steps - inside) * outdoor) / steps);
  });
  return worst;
}

/**
 * NO2, CO or CO2 of gas burners in a kitchen over time, beside its limits. It
 * never says that the air is safe: a burner out of tune can give ten times the
 * CO; the alarm on the wall is what counts.
 * @throws OutOfRangeError
 * Source: one-zone mass balance; emission factors and limits of shared/air/emissions.json.
 */
export function airCurve(of: AirCurveInput): {
  readonly curve: readonly AirPoint[];
  /** The same at the bad corner, by which burners are planned. */
  readonly badCurve: readonly AirPoint[];
  readonly peakMgM3: Band;
  readonly limits: readonly LimitCheck[];
} {
  inRange('volumeM3', of.volumeM3, ...ROOM_M3);
  inRange('airChangesPerH', asBand(of.airChangesPerH).low, 0, 100_000);
  of.gas.forEach(({ gasW }, i) => inRange(`gas[${i}].gasW`, gasW, 0, 500_000));
  const lastS = Math.max(0, ...of.gas.map(({ toS }) => toS));
  const untilS = inRange('untilS', of.untilS ?? lastS + SECONDS_PER_HOUR / 2, STEP_S, LONGEST_S);
  const low = pathOf(of, 'low', untilS);
  const usual = pathOf(of, 'typical', untilS);
  const high = pathOf(of, 'high', untilS);
  const { outdoorMgM3 } = emissionFactor(of.pollutant);
  const over = (value: (points: readonly AirPoint[]) => number): Band =>
    band(value(low), value(usual), value(high));
  const limits = AIR_LIMITS.filter(({ pollutant }) => pollutant === of.pollutant).map((limit) => {
    const meanMgM3 = over((points) =>
      worstMean(points, limit.averagingH * SECONDS_PER_HOUR, outdoorMgM3),
    );
    const passed = usual.find(({ mgM3 }) => mgM3 > limit.mgM3);
    return {
      ...limit,
      meanMgM3,
      exceeded: meanMgM3.high > limit.mgM3,
      ...(passed && { passesAtS: passed.timeS }),
    };
  });
  const peakMgM3 = over((points) => Math.max(...points.map(({ mgM3 }) => mgM3)));
  return { curve: thinned(usual), badCurve: thinned(high), peakMgM3, limits };
}
