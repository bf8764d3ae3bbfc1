import { hoodTold, isGas, toldAirless, windowTold } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';
import type { PlanContext } from '../context/plan-context.ts';

/** Least room that heat and air are reckoned for, m³. */
const LEAST_M3 = 3;

/** How many burners at a time, why, and how warm the room is then expected to get. */
function limitSentence({ room }: PlanContext): Message | undefined {
  const { atOnce, limitedBy, peakC } = room;
  if (!peakC) return undefined;
  const told =
    limitedBy === 'heat' || limitedBy === 'air' || limitedBy === 'circuit' ? limitedBy : 'none';
  return message('plan.notice.burners-at-once', {
    atOnce,
    limitedBy: told,
    peakC: peakC.typical,
    lowC: peakC.low,
    highC: peakC.high,
  });
}

/** A room that is refused by the models, and which of its numbers is why. */
function unknownSentence({ kitchen }: PlanContext): Message {
  const volumeM3 = kitchen.room.floorAreaM2 * kitchen.room.heightM;
  return volumeM3 < LEAST_M3
    ? message('plan.notice.room-tiny', { volumeM3, leastM3: LEAST_M3 })
    : message('plan.notice.room-unknown');
}

/** What is said first where the room does not bear even one burner: the gravest reason alone. */
function gravest(context: PlanContext, gas: boolean): Message | undefined {
  const { kitchen, room } = context;
  if (gas && toldAirless(kitchen)) return message('plan.notice.no-air');
  if (room.withinLimits) return undefined;
  if (!room.peakC) return unknownSentence(context);
  const nothingTold = !hoodTold(kitchen) && !windowTold(kitchen) && !toldAirless(kitchen);
  return message(nothingTold ? 'plan.notice.air-not-told' : 'plan.notice.room-too-much');
}

/**
 * What the room allows: one notice, the gravest first, however many reasons
 * there are; beside it only that a hood which filters takes no gas away, where
 * that is news.
 */
export function roomNotices(context: PlanContext): readonly Message[] {
  const lit = [...context.burners.values()].filter(({ method }) => method === 'glow');
  if (lit.length === 0) return [];
  const gas = lit.some(({ burner }) => isGas(burner.type));
  const limit = limitSentence(context);
  const first = gravest(context, gas);
  const says = [...(first ? [first] : []), ...(limit ? [limit] : [])];
  const [only] = says;
  if (!only) return [];
  if (first && limit) {
    // Bad air stops the work; heat is borne by waiting between burners.
    const hot = context.room.limitedBy === 'heat' && !(gas && toldAirless(context.kitchen));
    return [message(hot ? 'plan.notice.room-hot' : 'plan.notice.room-blocked', { says })];
  }
  if (first) return [first];
  const filters = gas && context.kitchen.room.hood.kind === 'recirculating';
  return [only, ...(filters ? [message('plan.notice.hood-filters')] : [])];
}
