import {
  burnerChoices,
  chooseMethod,
  closedUp,
  customTable,
  type BurnerChoice,
  type Choice,
  type CustomTable,
} from '../../custom/index.ts';
import { isPassover } from '../../calendar/index.ts';
import { isGas, type Kitchen } from '../../kitchen/index.ts';
import { boilingTemp } from '../../physics/index.ts';
import { SECONDS_PER_MINUTE } from '../../units/index.ts';
import {
  besideHeat,
  calibratedBoil,
  calibratedBurner,
  estimateBoil,
  estimateBurner,
  estimateBurnersAtOnce,
  fillL,
  OVEN_DUTY_SHARE,
  pouringKettles,
  UNLIT,
  usableCalibration,
  type AtOnce,
  type BoilEstimate,
  type BurnerEstimate,
  type Kettle,
} from '../estimates/index.ts';
import type { Calibration } from '../model/index.ts';
import { lastHotsOf, type LastHot } from './last-hot.ts';
import { restsFirst } from './purging.ts';
import { cleanId, restId } from './step-ids.ts';
import { utensilContextOf, type UtensilContext } from './utensil-context.ts';

/** A burner as it is purged, with how it heats where it does. */
type BurnerPlanned = BurnerChoice & { readonly estimate?: BurnerEstimate };

/** Everything the builders of steps look at; made once a plan. */
export type PlanContext = {
  readonly kitchen: Kitchen;
  readonly custom: CustomTable;
  readonly boilingC: number;
  readonly choices: ReadonlyMap<string, Choice>;
  readonly burners: ReadonlyMap<string, BurnerPlanned>;
  readonly kettles: readonly Kettle[];
  /** What each kettle is filled with, L. */
  readonly filledL: number;
  readonly boils: ReadonlyMap<string, BoilEstimate>;
  readonly room: AtOnce;
  /** What was told of the last hot use, by fixture or vessel. */
  readonly lastHots: ReadonlyMap<string, LastHot>;
  /** What of the calibration this kitchen can use; in `burners` and `boils` it is used already. */
  readonly calibration?: Calibration;
  /** Absent: there are none, or nothing is purged now. */
  readonly utensils?: UtensilContext;
};

/** A gas oven that is fired takes the place of a burner, with what its thermostat lets it have, W. */
function gasOvensW(kitchen: Kitchen, choices: PlanContext['choices']): readonly number[] {
  return kitchen.fixtures.flatMap((one) => {
    const method = choices.get(one.id)?.method.method;
    const fired = method === 'light-heat' || method === 'glow';
    return one.kind === 'oven' && one.heat === 'gas' && fired ? [one.ratedW * OVEN_DUTY_SHARE] : [];
  });
}

/** The room with the strongest of the burners, as many as may be lit together, after and beside whatever else heats it. */
function roomWith(
  kitchen: Kitchen,
  lit: readonly BurnerPlanned[],
  choices: PlanContext['choices'],
  startWallMs: number | undefined,
): AtOnce {
  if (lit.length === 0) return UNLIT;
  const ovensW = gasOvensW(kitchen, choices);
  const longestS = Math.max(
    ...lit.map(
      ({ minutes, estimate }) => minutes * SECONDS_PER_MINUTE + (estimate?.glowS.typical ?? 0),
    ),
  );
  const minutes = Math.max(1, Math.ceil(longestS / SECONDS_PER_MINUTE));
  const burners = {
    allW: [...ovensW, ...lit.map(({ burner }) => burner.ratedW)],
    gas: ovensW.length > 0 || lit.some(({ burner }) => isGas(burner.type)),
    minutes,
  };
  const methodOf = (fixture: string) => choices.get(fixture)?.method;
  const beside = besideHeat(kitchen, methodOf, minutes * lit.length);
  return estimateBurnersAtOnce(kitchen, burners, beside, startWallMs);
}

/** Does the work begin inside Passover? Unknown where place or start are. */
function isInside({ place, household }: Kitchen, startWallMs: number | undefined): boolean {
  const { lightingMin } = household;
  return (
    place !== undefined &&
    startWallMs !== undefined &&
    isPassover({ ...place, lightingMin }, startWallMs)
  );
}

/** By the custom; inside Passover without water. */
function choicesOf(kitchen: Kitchen, inside: boolean): PlanContext['choices'] {
  return new Map(
    kitchen.fixtures.map((one) => {
      const choice = chooseMethod(one, kitchen);
      return [one.id, inside ? closedUp(choice) : choice];
    }),
  );
}

/** Burners as they are purged, with how they heat. */
function burnersOf(kitchen: Kitchen): readonly BurnerPlanned[] {
  return kitchen.fixtures
    .flatMap((one) => (one.kind === 'cooktop' ? burnerChoices(one, kitchen) : []))
    .map((choice) => {
      const estimate = estimateBurner(kitchen, choice.burner);
      return { ...choice, ...(estimate && { estimate }) };
    });
}

function calibrated(choice: BurnerPlanned, calibration: Calibration | undefined): BurnerPlanned {
  const { id } = choice.burner;
  return choice.estimate
    ? {
        ...choice,
        estimate: calibratedBurner(
          choice.estimate,
          calibration?.glow?.[id],
          calibration?.cool?.[id],
        ),
      }
    : choice;
}

/** The longer of what is estimated and what was measured: calibration never makes the room cooler. */
function warmer(usual: BurnerPlanned, measured: BurnerPlanned): BurnerPlanned {
  const longer = (measured.estimate?.glowS.typical ?? 0) > (usual.estimate?.glowS.typical ?? 0);
  return longer ? measured : usual;
}

/**
 * The methods and the estimates of everything in a kitchen, with what earlier runs taught.
 * @param o startWallMs: when the work begins, it tells the season; room: not reckoned but taken as given
 */
export function planContextOf(
  kitchen: Kitchen,
  given?: Calibration,
  o: { readonly startWallMs?: number; readonly room?: AtOnce } = {},
): PlanContext {
  const calibration = usableCalibration(kitchen, given);
  const inside = isInside(kitchen, o.startWallMs);
  const choices = choicesOf(kitchen, inside);
  const usual = burnersOf(kitchen);
  const burners = usual.map((choice) => calibrated(choice, calibration));
  const kettles = pouringKettles(kitchen);
  const filledL = fillL(kettles);
  const utensils = inside ? undefined : utensilContextOf(kitchen, calibration?.boil);
  const pot = utensils?.pot;
  const lit = usual
    .map((one, at) => warmer(one, burners[at] ?? one))
    .filter(({ method }) => method === 'glow');
  return {
    kitchen,
    custom: customTable(kitchen.household.custom),
    boilingC: boilingTemp({ altitudeM: kitchen.altitudeM }).tempC,
    choices,
    burners: new Map(burners.map((choice) => [choice.burner.id, choice])),
    kettles,
    filledL,
    boils: new Map([
      ...kettles.map(
        (kettle) =>
          [
            kettle.id,
            calibratedBoil(
              estimateBoil(kitchen, kettle, filledL),
              calibration?.boil?.[kettle.vessel.id],
            ),
          ] as const,
      ),
      ...(pot ? [[pot.kettle.id, pot.boil] as const] : []),
    ]),
    ...(utensils && { utensils }),
    lastHots: lastHotsOf(kitchen, o.startWallMs),
    room: o.room ?? roomWith(kitchen, lit, choices, o.startWallMs),
    ...(calibration && { calibration }),
  };
}

/** Every vessel that boils water in this plan: those that pour, and the pot of the utensils. */
export function boilingVessels({ kettles, utensils }: PlanContext): readonly Kettle[] {
  return utensils?.pot ? [...kettles, utensils.pot.kettle] : kettles;
}

/** What a vessel is filled with, L. */
export function filledOf({ filledL, utensils }: PlanContext, { id, vessel }: Kettle): number {
  return id === utensils?.pot?.kettle.id ? vessel.maxFillL : filledL;
}

/** The step after which a fixture may be purged: its rest, or its cleaning where none is needed. */
export function readyId(context: PlanContext, fixture: string): string {
  return restsFirst(choiceOf(context, fixture).method) ? restId(fixture) : cleanId(fixture);
}

/**
 * How a fixture of the kitchen is purged.
 * @throws RangeError for a fixture that is not in it
 */
export function choiceOf({ choices }: PlanContext, fixture: string): Choice {
  const choice = choices.get(fixture);
  if (!choice)
    throw new RangeError(
      `fixture is "${fixture}"; allowed: ${[...choices.keys()].join(', ')}. Choose one of the kitchen.`,
    );
  return choice;
}
