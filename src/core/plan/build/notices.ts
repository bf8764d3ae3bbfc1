import { asWritten, message, type Message } from '../../messages/index.ts';
import { boundingBox } from '../../geometry/index.ts';
import { isGas } from '../../kitchen/index.ts';
import type { PlanContext } from '../context/plan-context.ts';
import type { StepDraft } from '../context/step-draft.ts';
import { LOW_BOIL_C } from '../steps/pour.ts';
import { planCautions } from '../cautions/index.ts';
import { isPoured, standingVessels } from '../estimates/index.ts';
import { dayNotices, type Known } from '../timetable/day-notices.ts';
import type { Timed } from '../timetable/timetable.ts';

const CM2_PER_M2 = 1e4;

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
        })),
      ...[...context.burners.values()]
        .filter(({ burner }) => burner.circuit === circuit.id)
        .map(({ burner }) => ({
          name: message('plan.burner', { burner: burner.name }),
          w: burner.ratedW,
        })),
      ...kitchen.fixtures.flatMap((one) =>
        'circuit' in one && one.circuit === circuit.id && one.ratedW !== undefined
          ? [{ name: asWritten(one.name), w: one.ratedW }]
          : [],
      ),
    ];
    for (const { name, w } of loads) {
      if (w / circuit.voltsV > circuit.ratingA)
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

function airNotices(context: PlanContext): readonly Message[] {
  const { hood, window } = context.kitchen.room;
  const lit = [...context.burners.values()].filter(({ method }) => method === 'glow');
  if (lit.length === 0) return [];
  const gas = lit.some(({ burner }) => isGas(burner.type));
  const { atOnce, peakC, limitedBy, withinLimits } = context.room;
  const told =
    limitedBy === 'heat' || limitedBy === 'air' || limitedBy === 'circuit' ? limitedBy : 'none';
  const notices: Message[] = [
    peakC
      ? message('plan.notice.burners-at-once', {
          atOnce,
          limitedBy: told,
          peakC: peakC.typical,
          lowC: peakC.low,
          highC: peakC.high,
        })
      : message('plan.notice.room-unknown'),
  ];
  if (!withinLimits && peakC) notices.push(message('plan.notice.room-too-much'));
  if (gas && hood.kind !== 'vented' && window.areaM2 === 0)
    notices.push(message('plan.notice.no-air'));
  else if (gas && hood.kind === 'recirculating') notices.push(message('plan.notice.hood-filters'));
  return notices;
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

/** Where water boils well below 100 °C people doubt that it boils. */
function boilNotices({ boilingC }: PlanContext, drafts: readonly StepDraft[]): readonly Message[] {
  const boils = drafts.some(({ step }) => step.kind === 'boil');
  return boils && boilingC < LOW_BOIL_C ? [message('plan.notice.boils-low', { boilingC })] : [];
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

/** Spots that no kettle is planned for, each with how large and where, and what is asked about it. */
function reachNotices({ kitchen }: PlanContext, drafts: readonly StepDraft[]): readonly Message[] {
  return kitchen.fixtures.flatMap((one) => {
    const picture = drafts.find(({ step }) => step.kind === 'pour' && step.fixture === one.id)?.step
      .picture;
    if (picture?.kind !== 'lanes' || !picture.unreached) return [];
    const box = boundingBox(picture.outline);
    const spots = picture.unreached.map(({ areaM2, at: [x, y] }) =>
      message('plan.notice.spot', {
        areaCm2: areaM2 * CM2_PER_M2,
        leftM: x - box.xMinM,
        nearM: y - box.yMinM,
      }),
    );
    return [message('plan.notice.unreached', { fixture: one.name, spots })];
  });
}

/** What the household should know before it starts. */
export function noticesOf(
  context: PlanContext,
  drafts: readonly StepDraft[],
  timed: Timed,
  known: Known,
): readonly Message[] {
  return [
    ...dayNotices(context, drafts, timed, known),
    ...timed.overnight.map((step) => message('plan.notice.overnight', { step })),
    ...planCautions(drafts, context).map(({ say }) => say),
    ...airNotices(context),
    ...circuitNotices(context),
    ...fixtureNotices(context),
    ...boilNotices(context, drafts),
    ...reachNotices(context, drafts),
    ...vesselNotices(context),
    ...customNotices(context, known),
  ];
}
