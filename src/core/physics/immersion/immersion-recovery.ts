import { band, exactly, inRange, OutOfRangeError, type Band } from '../../units/index.ts';
import { PLATE_HIGH, PLATE_LOW } from '../kettle/plate.ts';
import { boilingTemp } from '../water/boiling-temp.ts';
import { bathJK, dipDrop, dipOf, mixedC, type Dip, type Immersion } from './immersion-drop.ts';

/** The burner under the pot, and what gets away. */
type Fire = {
  /** What the burner draws or burns, W. */
  readonly powerW: number;
  /** Share of it that reaches the water. */
  readonly efficiency: number | Band;
  /** What pot and surface lose at the boil, W. */
  readonly lossW: number | Band;
  readonly altitudeM: number;
};

/** Water read with a thermometer may lie this much over the boil of the standard atmosphere, K: weather. */
const READING_K = 1;

export type Recovered = {
  readonly mixedC: Band;
  /** Until it boils again. */
  readonly recoverS: Band;
  readonly boilingC: number;
};

function bandOf(value: number | Band): Band {
  return typeof value === 'number' ? exactly(value) : value;
}

/** Watts left to heat with at the best, as expected, and at the worst. */
function netW({ powerW, efficiency, lossW }: Fire): Band {
  inRange('powerW', powerW, 100, 100_000);
  const share = bandOf(efficiency);
  inRange('efficiency', share.low, 0.05, 1);
  inRange('efficiency', share.high, 0.05, 1);
  const loss = bandOf(lossW);
  inRange('lossW', loss.low, 0, 50_000);
  inRange('lossW', loss.high, 0, 50_000);
  const low = powerW * share.low * PLATE_LOW - loss.high;
  if (low <= 0) {
    const leastW = loss.high / (share.low * PLATE_LOW);
    throw new OutOfRangeError(
      'powerW',
      powerW,
      `more than ${leastW.toFixed(0)} W`,
      'It would not boil again: use a stronger burner or a lid.',
    );
  }
  return band(
    low,
    powerW * share.typical - loss.typical,
    powerW * share.high * PLATE_HIGH - loss.low,
  );
}

/**
 * How far things dipped together cool the water, and how long until it boils again.
 * @throws OutOfRangeError also when the losses exceed the heat
 */
export function dipRecovery(of: Dip & Fire): Recovered {
  const drop = dipDrop(of);
  const boilingC = boilingTemp({ altitudeM: of.altitudeM }).tempC;
  inRange('waterC', of.waterC, 0, boilingC + READING_K);
  const net = netW(of);
  const seconds = (itemJK: number, watts: number) => {
    const fromC = mixedC(of, itemJK);
    if (fromC >= boilingC) return 0;
    return ((bathJK(of, fromC, boilingC) + itemJK) * (boilingC - fromC)) / watts;
  };
  const { itemJK } = of;
  // Hot things bring heat with them: then the one that takes least heat waits longest.
  const ends = [itemJK.low, itemJK.high];
  const typical = seconds(itemJK.typical, net.typical);
  const quick = Math.min(typical, ...ends.map((end) => seconds(end, net.high)));
  const slow = Math.max(typical, ...ends.map((end) => seconds(end, net.low)));
  return { ...drop, recoverS: band(quick, typical, slow), boilingC };
}

/**
 * Temperature after something is dipped into water that boils or nearly does,
 * and how long until it boils again. The bands are those of the specific heat,
 * of the burner's plate and of what else has one.
 * @param of as immersionDrop; powerW 100 to 100 000 W, efficiency 0.05 to 1, lossW to 50 000 W
 * @throws OutOfRangeError also when the losses exceed the heat
 * Source: heat balance; plate tolerance IEC 60335-1; altitude ISO 2533 and IAPWS-IF97.
 */
export function immersionRecovery(of: Immersion & Fire): Recovered {
  const { powerW, efficiency, lossW, altitudeM, ...immersion } = of;
  return dipRecovery({ ...dipOf(immersion), powerW, efficiency, lossW, altitudeM });
}
