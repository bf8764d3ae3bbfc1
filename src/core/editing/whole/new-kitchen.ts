import { countryOf, kettlePlateV, type Kitchen } from '../../kitchen/index.ts';
import type { Translator } from '../../messages/index.ts';
import { NEW_KETTLE_BODY, NEW_KITCHEN, sizesIn, socketCircuitA } from '../tables/usual.ts';

/** Mains and kettle where the table of countries has no row: the commonest of the world. */
const WORLD = { supplyV: 230, kettleW: 2200 } as const;

/**
 * An empty kitchen with what is usual in a country: mains, tap water, a room of
 * 12 m², one kettle, two socket circuits. It is a good file once it has a fixture.
 * Purpose and custom begin with the wider work (a new kitchen, the stricter
 * table); the household says.
 * @param o country as ISO 3166-1 alpha-2
 * @param language kettle and circuits are named in it
 */
export function newKitchen(
  o: { readonly name: string; readonly country: string },
  language: Translator,
): Kitchen {
  const { supplyV, kettleW } = countryOf(o.country) ?? WORLD;
  const ratingA = socketCircuitA(o.country);
  const circuit = (n: number) => ({
    id: `sockets-${n}`,
    name: n === 1 ? language.t('survey.circuit') : `${language.t('survey.circuit')} ${n}`,
    ratingA,
    voltsV: supplyV,
  });
  return {
    format: 'glowpour-kitchen',
    version: 1,
    name: o.name,
    country: o.country,
    altitudeM: 0,
    supplyV,
    tapColdC: NEW_KITCHEN.tapColdC,
    household: {
      purpose: 'new-kitchen',
      custom: 'ashkenazic',
      people: 1,
      keepsRestDays: true,
      overrides: [],
    },
    room: {
      floorAreaM2: NEW_KITCHEN.floorAreaM2,
      heightM: NEW_KITCHEN.heightM[sizesIn(o.country)],
      hood: { kind: 'unknown', flowLS: 0 },
    },
    circuits: [circuit(1), circuit(2)],
    vessels: [
      {
        id: 'kettle',
        name: language.t('survey.vessel.electric-kettle'),
        kind: 'electric-kettle',
        body: NEW_KETTLE_BODY,
        maxFillL: NEW_KITCHEN.maxFillL,
        ratedW: kettleW,
        ratedV: kettlePlateV(o.country, supplyV),
        circuit: 'sockets-1',
        count: 1,
      },
    ],
    fixtures: [],
  };
}
