import {
  burnerChoices,
  chooseMethod,
  customTable,
  type BurnerChoice,
  type Choice,
  type CustomTable,
} from '../../custom/index.ts';
import { isGas, type Kitchen } from '../../kitchen/index.ts';
import { boilingTemp } from '../../physics/index.ts';
import { SECONDS_PER_MINUTE } from '../../units/index.ts';
import {
  calibratedBoil,
  calibratedBurner,
  estimateBoil,
  estimateBurner,
  estimateBurnersAtOnce,
  fillL,
  pouringKettles,
  UNLIT,
  usableCalibration,
  type AtOnce,
  type BoilEstimate,
  type BurnerEstimate,
  type Kettle,
} from '../estimates/index.ts';
import type { Calibration } from '../model/index.ts';
import { restsFirst } from './purging.ts';
import { cleanId, restId } from './step-ids.ts';

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
  /** What of the calibration this kitchen can use; in `burners` and `boils` it is used already. */
  readonly calibration?: Calibration;
};

/** One more than are ever lit together: enough to tell what limits them. */
const ESTIMATED_BURNERS = 3;

/** The room with the strongest of the burners, as many as may be lit together. */
function roomWith(kitchen: Kitchen, lit: readonly BurnerPlanned[]): AtOnce {
  const strongest = lit.toSorted((a, b) => b.burner.ratedW - a.burner.ratedW)[0];
  if (!strongest) return UNLIT;
  const longestS = Math.max(
    ...lit.map(
      ({ minutes, estimate }) => minutes * SECONDS_PER_MINUTE + (estimate?.glowS.typical ?? 0),
    ),
  );
  const { ratedW } = strongest.burner;
  return estimateBurnersAtOnce(
    kitchen,
    {
      ratedW,
      gas: lit.some(({ burner }) => isGas(burner.type)),
      count: Math.min(lit.length, ESTIMATED_BURNERS),
    },
    Math.max(1, Math.ceil(longestS / SECONDS_PER_MINUTE)),
  );
}

/** Burners as they are purged, with how they heat. */
function burnersOf(kitchen: Kitchen): readonly BurnerPlanned[] {
  return kitchen.fixtures
    .flatMap((one) => (one.kind === 'cooktop' ? burnerChoices(one, kitchen) : []))
    .map((choice) => {
      const estimate = estimateBurner(choice.burner);
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

/** The methods and the estimates of everything in a kitchen, with what earlier runs taught. */
export function planContextOf(kitchen: Kitchen, given?: Calibration): PlanContext {
  const calibration = usableCalibration(kitchen, given);
  const choices = new Map(kitchen.fixtures.map((one) => [one.id, chooseMethod(one, kitchen)]));
  const usual = burnersOf(kitchen);
  const burners = usual.map((choice) => calibrated(choice, calibration));
  const kettles = pouringKettles(kitchen);
  const filledL = fillL(kettles);
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
    boils: new Map(
      kettles.map((kettle) => [
        kettle.id,
        calibratedBoil(
          estimateBoil(kitchen, kettle, filledL),
          calibration?.boil?.[kettle.vessel.id],
        ),
      ]),
    ),
    room: roomWith(kitchen, lit),
    ...(calibration && { calibration }),
  };
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
