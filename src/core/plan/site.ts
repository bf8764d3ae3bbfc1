import { burnerChoices, chooseMethod, customTable, type BurnerChoice } from '../custom/index.ts';
import type { Kitchen } from '../kitchen/index.ts';
import { boilingTemp } from '../physics/index.ts';
import { vesselResource } from './demands.ts';
import type { About, Site } from './draft.ts';
import {
  fillL,
  isGas,
  pouringKettles,
  reckonBoil,
  reckonBurner,
  reckonBurnersAtOnce,
  UNLIT,
  type AtOnce,
  type BurnerReckoned,
  type Kettle,
} from './reckon/index.ts';
import { fuelOf, needsRest } from './steps/clean.ts';
import type { Step, StepKind } from './types.ts';

const S_MIN = 60;
/** One more than are ever lit together: enough to tell what limits them. */
const RECKONED_BURNERS = 3;

type Lit = BurnerChoice & { readonly reckoned?: BurnerReckoned };

/** The room with the strongest of the burners, as many as may be lit together. */
function roomOf(kitchen: Kitchen, lit: readonly Lit[]): AtOnce {
  const strongest = lit.toSorted((a, b) => b.burner.ratedW - a.burner.ratedW)[0];
  if (!strongest) return UNLIT;
  const longestS = Math.max(
    ...lit.map(({ minutes, reckoned }) => minutes * S_MIN + (reckoned?.glowS.typical ?? 0)),
  );
  const { ratedW } = strongest.burner;
  return reckonBurnersAtOnce(
    kitchen,
    {
      ratedW,
      gas: lit.some(({ burner }) => isGas(burner.type)),
      count: Math.min(lit.length, RECKONED_BURNERS),
    },
    Math.max(1, Math.ceil(longestS / S_MIN)),
  );
}

/** The methods and the reckoning of everything in a kitchen. */
export function siteOf(kitchen: Kitchen): Site {
  const choices = new Map(kitchen.fixtures.map((one) => [one.id, chooseMethod(one, kitchen)]));
  const burners = new Map(
    kitchen.fixtures
      .flatMap((one) => (one.kind === 'cooktop' ? burnerChoices(one, kitchen) : []))
      .map((choice) => {
        const reckoned = reckonBurner(choice.burner);
        return [choice.burner.id, { ...choice, ...(reckoned && { reckoned }) }] as const;
      }),
  );
  const kettles = pouringKettles(kitchen);
  const filledL = fillL(kettles);
  const lit = [...burners.values()].filter(({ method }) => method === 'glow');
  const room = roomOf(kitchen, lit);
  return {
    kitchen,
    custom: customTable(kitchen.household.custom),
    boilingC: boilingTemp({ altitudeM: kitchen.altitudeM }).tempC,
    choices,
    burners,
    kettles,
    filledL,
    boils: new Map(kettles.map((kettle) => [kettle.id, reckonBoil(kitchen, kettle, filledL)])),
    room,
  };
}

const HEATED: ReadonlySet<StepKind> = new Set(['steam', 'boil-over', 'high-heat']);

/** What heats in a step: its burner, what its kettle stands on, or the fixture itself. */
function fuelOfStep(site: Site, step: Step, about: About, kettle?: Kettle): About['fuel'] {
  if (about.burner) return isGas(about.burner.type) ? 'gas' : 'electric';
  if (kettle) return kettle.burner && site.boils.get(kettle.id)?.fuel;
  const fuel = about.fixture && fuelOf(about.fixture);
  return fuel ?? (HEATED.has(step.kind) ? 'electric' : undefined);
}

/**
 * What a step of a plan is about, read from the plan alone: its fixture, the
 * burner of its picture, the vessel it holds. The check of a plan uses it, so
 * that it does not lean on what the builders thought.
 */
export function aboutStep(site: Site, step: Step): About {
  const fixture = site.kitchen.fixtures.find(({ id }) => id === step.fixture);
  const { picture } = step;
  const burner = picture?.kind === 'burner' ? site.burners.get(picture.burner)?.burner : undefined;
  const kettle = site.kettles.find((one) => step.demands[vesselResource(one)] !== undefined);
  const about: About = {
    ...(fixture && { fixture }),
    ...(burner && { burner }),
    ...(kettle && { vessel: kettle.vessel.kind }),
    rests:
      step.kind === 'clean' &&
      fixture !== undefined &&
      needsRest(site.choices.get(fixture.id)?.method.method ?? 'clean'),
  };
  const fuel = fuelOfStep(site, step, about, kettle);
  return fuel ? { ...about, fuel } : about;
}
