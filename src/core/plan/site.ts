import { burnerChoices, chooseMethod, customTable } from '../custom/index.ts';
import type { Kitchen } from '../kitchen/index.ts';
import { boilingTemp } from '../physics/index.ts';
import type { Site } from './draft.ts';
import {
  fillL,
  pouringKettles,
  reckonBoil,
  reckonBurner,
  reckonBurnersAtOnce,
  reckonRoom,
} from './reckon/index.ts';

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
  const strongestW = Math.max(0, ...lit.map(({ burner }) => burner.ratedW));
  const longestS = Math.max(
    0,
    ...lit.map(({ minutes, reckoned }) => minutes * 60 + (reckoned?.glowS.typical ?? 0)),
  );
  return {
    kitchen,
    custom: customTable(kitchen.household.custom),
    boilingC: boilingTemp({ altitudeM: kitchen.altitudeM }).tempC,
    choices,
    burners,
    kettles,
    filledL,
    boils: new Map(kettles.map((kettle) => [kettle.id, reckonBoil(kitchen, kettle, filledL)])),
    room:
      strongestW > 0
        ? reckonBurnersAtOnce(kitchen, strongestW, Math.max(1, Math.ceil(longestS / 60)))
        : { atOnce: 1, ...reckonRoom(kitchen, 0, 0, 1) },
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
    ? fuelOfBurner(burner)
    : kettle
      ? kettle.burner && site.boils.get(kettle.id)?.fuel
      : step.kind === 'steam'
        ? 'electric'
        : fixture && fuelOf(fixture);
  const rests =
    step.kind === 'clean' && fixture !== undefined && needsRest(site.choices.get(fixture.id)?.method.method ?? 'clean');
  return {
    ...(fixture && { fixture }),
    ...(burner && { burner }),
    ...(kettle && { vessel: kettle.vessel.kind }),
    ...(fuel && { fuel }),
    rests,
  };
}
