import { burnerChoices, chooseMethod, customTable, type BurnerChoice } from '../custom/index.ts';
import type { Kitchen } from '../kitchen/index.ts';
import { boilingTemp } from '../physics/index.ts';
import type { About, Site } from './draft.ts';
import {
  fillL,
  isGas,
  pouringKettles,
  reckonBoil,
  reckonBurner,
  reckonBurnersAtOnce,
  reckonRoom,
  type AtOnce,
  type BurnerReckoned,
} from './reckon/index.ts';
import { fuelOf, needsRest } from './steps/clean.ts';
import type { Step } from './types.ts';

const S_MIN = 60;
/** One more than are ever lit together: enough to tell what limits them. */
const RECKONED_BURNERS = 3;

type Lit = BurnerChoice & { readonly reckoned?: BurnerReckoned };

/** The room with the strongest of the burners, as many as may be lit together. */
function roomOf(kitchen: Kitchen, lit: readonly Lit[]): AtOnce {
  const strongest = lit.toSorted((a, b) => b.burner.ratedW - a.burner.ratedW)[0];
  if (!strongest)
    return { ...reckonRoom(kitchen, 0, 0, 1), atOnce: 1, limitedBy: 'burners', withinLimits: true };
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

/**
 * What a step of a plan is about, read from the plan alone: its fixture, the
 * burner of its picture, the vessel it holds.
 */
export function aboutStep(site: Site, step: Step): About {
  const fixture = site.kitchen.fixtures.find(({ id }) => id === step.fixture);
  const { picture } = step;
  const burner = picture?.kind === 'burner' ? site.burners.get(picture.burner)?.burner : undefined;
  const kettle = site.kettles.find((one) => step.demands[`vessel-${one.id}`] !== undefined);
  const fuel = burner
    ? isGas(burner.type)
      ? 'gas'
      : 'electric'
    : kettle
      ? kettle.burner && site.boils.get(kettle.id)?.fuel
      : step.kind === 'steam'
        ? 'electric'
        : fixture && fuelOf(fixture);
  const rests =
    step.kind === 'clean' &&
    fixture !== undefined &&
    needsRest(site.choices.get(fixture.id)?.method.method ?? 'clean');
  return {
    ...(fixture && { fixture }),
    ...(burner && { burner }),
    ...(kettle && { vessel: kettle.vessel.kind }),
    ...(fuel && { fuel }),
    rests,
  };
}
