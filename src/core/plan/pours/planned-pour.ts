import type { Kitchen, PourUntil } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';
import { mapBand, type Band } from '../../units/index.ts';
import {
  calibratedPour,
  estimatePour,
  HAND_RECOIL_C,
  spotWater,
  usualHands,
  type PouredFixture,
  type PourEstimate,
  type PourPlace,
  type SpotWater,
} from '../estimates/index.ts';
import type { Calibration, PlannedPour, PourAmount } from '../model/index.ts';
import { kettlePours } from './pouring.ts';

function saysOf(fixture: PouredFixture, until: PourUntil, spot: SpotWater): Message {
  const told = {
    fixture: fixture.name,
    firstTouchC: spot.firstTouchC.typical,
    surfaceC: spot.surfaceC.typical,
    leastC: HAND_RECOIL_C.low,
    mostC: HAND_RECOIL_C.high,
  };
  if (until === 'heated') return message('plan.pour.heated', told);
  return spot.firstTouchC.low >= HAND_RECOIL_C.high
    ? message('plan.pour.reached', told)
    : message('plan.pour.reached-by-some', { ...told, lowC: spot.firstTouchC.low });
}

type Poured = {
  readonly kitchen: Kitchen;
  readonly fixture: PouredFixture;
  readonly need: PourEstimate;
  /** How often it is poured as a whole. */
  readonly times: number;
  /** Kettles that are planned, all times together. */
  readonly planned: number;
  readonly filledL: number;
  readonly place: PourPlace;
  readonly calibration: Calibration | undefined;
};

/** What a planned pour does to the surface, and what it would take by the other aim. */
export function plannedPour(of: Poured): PlannedPour {
  const { kitchen, fixture, need, times, planned, filledL, place } = of;
  const often = (litres: Band): Band => mapBand(litres, (one) => one * times);
  const { boilingC, until } = place;
  const { material } = fixture;
  const hands = usualHands({ material, boilingC });
  const handSpeedMS = hands[until].typical;
  const spot = spotWater(material, boilingC, { impactC: hands.impactC }, handSpeedMS);
  const amountOf = (aim: PourUntil): PourAmount => {
    if (aim === until) return { litres: often(need.litres), kettles: planned };
    const estimated = estimatePour(fixture, filledL, { boilingC, until: aim });
    const other = calibratedPour(estimated, filledL, of.calibration);
    // A sink is poured in whole pieces, which may take a kettle more than its litres do.
    const kettles =
      fixture.kind === 'sink'
        ? kettlePours(kitchen, fixture, other, filledL).pours.length
        : other.kettles.typical;
    return { litres: often(other.litres), kettles: kettles * times };
  };
  return {
    fixture: fixture.id,
    until,
    handSpeedMS: need.handSpeedMS,
    ...spot,
    reached: amountOf('reached'),
    heated: amountOf('heated'),
    says: saysOf(fixture, until, spot),
  };
}
