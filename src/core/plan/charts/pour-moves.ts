import { message, type Message } from '../../messages/index.ts';
import {
  estimatePour,
  fillL,
  HAND_RECOIL_C,
  isPoured,
  pouringKettles,
  pourPlaceOf,
  type PourAssumed,
} from '../estimates/index.ts';
import type { Plan } from '../model/index.ts';
import { amountMessage } from './pour-words.ts';

/** Boiling water of everything that is poured, under one assumption. */
type MovedAmount = { readonly litres: number; readonly kettles: number };

/** How far one assumption moves the whole. */
export type PourMove = {
  readonly what: Message;
  readonly less: MovedAmount;
  readonly more: MovedAmount;
};

type Ends = readonly [PourAssumed, PourAssumed];

/** Each assumption at both ends; the words of the catalogue name them. Nothing told: as planned. */
const ENDS = {
  flow: [{ flowLMin: 1.5 }, { flowLMin: 2.5 }],
  fall: [{ fallM: 0.1 }, { fallM: 0.5 }],
  thickness: [{ thickness: 'low' }, { thickness: 'high' }],
  overlap: [{ overlapShare: 0.05 }, { overlapShare: 0.3 }],
  loss: [{ lossShare: 0 }, { lossShare: 0.15 }],
  fresh: [{ dropK: 0 }, {}],
  touch: [{ touchC: HAND_RECOIL_C.typical }, {}],
  wet: [{}, { standingMm: 1 }],
} as const satisfies Readonly<Record<string, Ends>>;

type Assumption = keyof typeof ENDS;

/**
 * What each assumption does to the litres and kettles of a whole plan, by the
 * aim it goes by, from the one that moves most. Worked out anew, never stored;
 * takes as long as several plans.
 */
export function pourMoves({ kitchen, pours = [] }: Plan): readonly PourMove[] {
  const filledL = fillL(pouringKettles(kitchen));
  const place = pourPlaceOf(kitchen);
  const ids = new Set(pours.map(({ fixture }) => fixture));
  const poured = kitchen.fixtures.filter(isPoured).filter(({ id }) => ids.has(id));
  const under = (assumed: PourAssumed): MovedAmount => {
    const needs = poured.map((fixture) => estimatePour(fixture, filledL, place, assumed));
    return {
      litres: needs.reduce((sum, { litres }) => sum + litres.typical, 0),
      kettles: needs.reduce((sum, { kettles }) => sum + kettles.typical, 0),
    };
  };
  return (Object.keys(ENDS) as Assumption[])
    .map((id): PourMove => {
      const [less, more] = ENDS[id];
      return { what: message(`plan.pour.move.${id}`), less: under(less), more: under(more) };
    })
    .toSorted((a, b) => spanL(b) - spanL(a));
}

/** One assumption in a line. */
export function moveMessage({ what, less, more }: PourMove): Message {
  return message('plan.pour.move', {
    what,
    less: amountMessage(less),
    more: amountMessage(more),
  });
}

function spanL({ less, more }: PourMove): number {
  return Math.abs(more.litres - less.litres);
}
