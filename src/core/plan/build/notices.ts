import { shortLoadShare } from '../../kitchen/index.ts';
import { asWritten, message, type Message } from '../../messages/index.ts';
import { planCautions } from '../cautions/index.ts';
import type { PlanContext } from '../context/plan-context.ts';
import type { StepDraft } from '../context/step-draft.ts';
import { isPoured, standingVessels } from '../estimates/index.ts';
import type { PourTotal } from '../steps/purge.ts';
import { dayNotices, type Known } from '../timetable/day-notices.ts';
import type { Timed } from '../timetable/timetable.ts';
import { withoutPot } from '../utensils/utensil-work.ts';
import { gravestFirst } from './gravity.ts';
import { restNotices } from './rest-notices.ts';
import { roomNotices } from './room-notices.ts';
import { boilNotices, reachNotices, waterNotices } from './water-notices.ts';

function circuitNotices(context: PlanContext): readonly Message[] {
  const { kitchen, kettles } = context;
  const notices: Message[] = [];
  for (const circuit of kitchen.circuits) {
    const loads = [
      ...kettles
        .filter(({ vessel, burner }) => !burner && vessel.circuit === circuit.id)
        .map(({ name, vessel }) => ({
          name,
          w: vessel.ratedW * (kitchen.supplyV / vessel.ratedV) ** 2,
          // Minutes on, minutes off: what a fuse bears for an hour counts.
          bearsA: circuit.ratingA * shortLoadShare(kitchen.country),
        })),
      ...[...context.burners.values()]
        .filter(({ burner }) => burner.circuit === circuit.id)
        .map(({ burner }) => ({
          name: message('plan.burner', { burner: burner.name }),
          w: burner.ratedW,
          bearsA: circuit.ratingA,
        })),
      ...kitchen.fixtures.flatMap((one) =>
        'circuit' in one && one.circuit === circuit.id && one.ratedW !== undefined
          ? [{ name: asWritten(one.name), w: one.ratedW, bearsA: circuit.ratingA }]
          : [],
      ),
    ];
    for (const { name, w, bearsA } of loads) {
      if (w / circuit.voltsV > bearsA)
        notices.push(
          message('plan.notice.circuit-overloaded', {
            name,
            drawsA: w / circuit.voltsV,
            circuit: circuit.name,
            ratingA: circuit.ratingA,
          }),
        );
    }
    const all = loads.reduce((sum, { w }) => sum + w, 0) / circuit.voltsV;
    if (loads.length > 1 && all > circuit.ratingA)
      notices.push(
        message('plan.notice.circuit-shared', {
          circuit: circuit.name,
          ratingA: circuit.ratingA,
          names: loads.map(({ name }) => name),
          drawsA: all,
        }),
      );
  }
  return notices;
}

/** Burners that are to glow and may stay dark, cooktop by cooktop. */
function darkNotices({ kitchen, burners }: PlanContext): readonly Message[] {
  return kitchen.fixtures.flatMap((one) => {
    if (one.kind !== 'cooktop') return [];
    const names = one.burners
      .map(({ id }) => burners.get(id))
      .filter((choice) => choice?.method === 'glow' && choice.estimate?.mayStayDark)
      .map((choice) => choice?.burner.name ?? '');
    return names.length > 0
      ? [message('plan.notice.may-stay-dark', { cooktop: one.name, names })]
      : [];
  });
}

function fixtureNotices(context: PlanContext): readonly Message[] {
  return context.kitchen.fixtures.flatMap((one) => {
    const method = context.choices.get(one.id)?.method.method;
    if (one.kind === 'oven' && (one.cleaning === 'steam' || one.cleaning === 'catalytic'))
      return [message(`plan.notice.clean-not-purge.${one.cleaning}`, { oven: one.name })];
    if (one.kind === 'cooktop' && one.burners.some(({ type }) => type === 'induction'))
      return [message('plan.notice.induction', { cooktop: one.name })];
    if (method === 'pour' && !isPoured(one))
      return [message('plan.notice.by-hand', { fixture: one.name })];
    return [];
  });
}

function vesselNotices(context: PlanContext): readonly Message[] {
  const standing = standingVessels(context.kitchen);
  if (standing.length === 0) return [];
  const pots = standing.filter(({ kind }) => kind === 'urn' || kind === 'pot');
  const small = standing.filter(({ kind }) => kind !== 'urn' && kind !== 'pot');
  return [
    ...(pots.length > 0
      ? [message('plan.notice.pots', { names: pots.map(({ name }) => name) })]
      : []),
    ...(small.length > 0
      ? [message('plan.notice.unused-vessels', { names: small.map(({ name }) => name) })]
      : []),
  ];
}

/** What of the utensils has no step, and why. */
function utensilNotices(context: PlanContext): readonly Message[] {
  const { kitchen, utensils } = context;
  if ((kitchen.utensils ?? []).length === 0) return [];
  if (!utensils) return [message('plan.notice.utensils-now')];
  const names = withoutPot(context).map(({ name }) => name);
  return names.length > 0 ? [message('plan.notice.utensils-no-pot', { names })] : [];
}

function customNotices(context: PlanContext, { calendar }: Known): readonly Message[] {
  const { custom, purpose } = context.kitchen.household;
  return [
    ...(custom === 'ashkenazic' && purpose !== 'passover'
      ? [message('plan.notice.no-change')]
      : []),
    ...(purpose === 'passover' && !calendar?.days.deadline
      ? [message('plan.notice.passover-hour')]
      : []),
  ];
}

/** What the household should know before it starts. */
export function noticesOf(
  context: PlanContext,
  drafts: readonly StepDraft[],
  timed: Timed,
  known: Known,
  pours: readonly PourTotal[],
): readonly Message[] {
  return gravestFirst([
    ...dayNotices(context, drafts, timed, known),
    ...timed.overnight.map((step) => message('plan.notice.overnight', { step })),
    ...planCautions(drafts, context).map(({ say }) => say),
    ...restNotices(context, drafts),
    ...roomNotices(context),
    ...circuitNotices(context),
    ...darkNotices(context),
    ...fixtureNotices(context),
    ...boilNotices(context, drafts),
    ...reachNotices(context, drafts),
    ...vesselNotices(context),
    ...waterNotices(context.kitchen, pours),
    ...utensilNotices(context),
    ...customNotices(context, known),
  ]);
}
