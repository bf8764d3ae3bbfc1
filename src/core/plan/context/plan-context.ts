import { burnerChoices, chooseMethod, customTable, type BurnerChoice } from '../../custom/index.ts';
import type { Kitchen } from '../../kitchen/index.ts';
import { boilingTemp } from '../../physics/index.ts';
import { vesselResource } from './demands.ts';
import type { About, PlanContext } from './step-draft.ts';
import {
  fillL,
  isGas,
  calibratedBoil,
  calibratedBurner,
  pouringKettles,
  estimateBoil,
  estimateBurner,
  estimateBurnersAtOnce,
  UNLIT,
  usableCalibration,
  type AtOnce,
  type BurnerEstimate,
  type Kettle,
} from '../estimates/index.ts';
import { cleanId, fuelOf, needsRest } from '../steps/clean.ts';
import type { Calibration, Step, StepKind } from '../model/types.ts';

const S_MIN = 60;
/** One more than are ever lit together: enough to tell what limits them. */
const RECKONED_BURNERS = 3;

type LitBurner = BurnerChoice & { readonly reckoned?: BurnerEstimate };

/** The room with the strongest of the burners, as many as may be lit together. */
function roomOf(kitchen: Kitchen, lit: readonly LitBurner[]): AtOnce {
  const strongest = lit.toSorted((a, b) => b.burner.ratedW - a.burner.ratedW)[0];
  if (!strongest) return UNLIT;
  const longestS = Math.max(
    ...lit.map(({ minutes, reckoned }) => minutes * S_MIN + (reckoned?.glowS.typical ?? 0)),
  );
  const { ratedW } = strongest.burner;
  return estimateBurnersAtOnce(
    kitchen,
    {
      ratedW,
      gas: lit.some(({ burner }) => isGas(burner.type)),
      count: Math.min(lit.length, RECKONED_BURNERS),
    },
    Math.max(1, Math.ceil(longestS / S_MIN)),
  );
}

/** Burners as they are purged, with how they heat. */
function burnersOf(kitchen: Kitchen): readonly LitBurner[] {
  return kitchen.fixtures
    .flatMap((one) => (one.kind === 'cooktop' ? burnerChoices(one, kitchen) : []))
    .map((choice) => {
      const reckoned = estimateBurner(choice.burner);
      return { ...choice, ...(reckoned && { reckoned }) };
    });
}

function taught(choice: LitBurner, learned: Calibration | undefined): LitBurner {
  const { id } = choice.burner;
  return choice.reckoned
    ? {
        ...choice,
        reckoned: calibratedBurner(choice.reckoned, learned?.glow?.[id], learned?.cool?.[id]),
      }
    : choice;
}

/** The longer of what is reckoned and what was learned: the room is never reckoned cooler by a lesson. */
function warmer(usual: LitBurner, told: LitBurner): LitBurner {
  const longer = (told.reckoned?.glowS.typical ?? 0) > (usual.reckoned?.glowS.typical ?? 0);
  return longer ? told : usual;
}

/** The methods and the reckoning of everything in a kitchen, with what earlier runs taught. */
export function planContextOf(kitchen: Kitchen, lessons?: Calibration): PlanContext {
  const learned = usableCalibration(kitchen, lessons);
  const choices = new Map(kitchen.fixtures.map((one) => [one.id, chooseMethod(one, kitchen)]));
  const usual = burnersOf(kitchen);
  const burners = usual.map((choice) => taught(choice, learned));
  const kettles = pouringKettles(kitchen);
  const filledL = fillL(kettles);
  const lit = usual
    .map((one, at) => warmer(one, burners[at] ?? one))
    .filter(({ method }) => method === 'glow');
  const room = roomOf(kitchen, lit);
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
        calibratedBoil(estimateBoil(kitchen, kettle, filledL), learned?.boil?.[kettle.vessel.id]),
      ]),
    ),
    room,
    ...(learned && { calibration: learned }),
  };
}

const HEATED: ReadonlySet<StepKind> = new Set(['steam', 'boil-over', 'high-heat']);

/** What heats in a step: its burner, what its kettle stands on, or the fixture itself. */
function fuelOfStep(site: PlanContext, step: Step, about: About, kettle?: Kettle): About['fuel'] {
  if (about.burner) return isGas(about.burner.type) ? 'gas' : 'electric';
  if (kettle) return kettle.burner && site.boils.get(kettle.id)?.fuel;
  const fuel = about.fixture && fuelOf(about.fixture);
  return fuel ?? (HEATED.has(step.kind) ? 'electric' : undefined);
}

/** Does what is cleaned in this step rest after it: a fixture that is purged, or a kettle? */
function restsAfter(site: PlanContext, step: Step): boolean {
  if (step.kind !== 'clean') return false;
  if (step.fixture === undefined) return site.kettles.some(({ id }) => step.id === cleanId(id));
  return needsRest(site.choices.get(step.fixture)?.method.method ?? 'clean');
}

/**
 * What a step of a plan is about, read from the plan alone: its fixture, the
 * burner of its picture, the vessel it holds. The check of a plan uses it, so
 * that it does not lean on what the builders thought.
 */
export function aboutStep(site: PlanContext, step: Step): About {
  const fixture = site.kitchen.fixtures.find(({ id }) => id === step.fixture);
  const { picture } = step;
  const burner = picture?.kind === 'burner' ? site.burners.get(picture.burner)?.burner : undefined;
  const kettle = site.kettles.find((one) => step.demands[vesselResource(one)] !== undefined);
  const about: About = {
    ...(fixture && { fixture }),
    ...(burner && { burner }),
    ...(kettle && { vessel: kettle.vessel.kind }),
    rests: restsAfter(site, step),
  };
  const fuel = fuelOfStep(site, step, about, kettle);
  return fuel ? { ...about, fuel } : about;
}
