import type { PlanContext, StepDraft } from '../context/step-draft.ts';
import { planCautions } from '../cautions/index.ts';
import { isGas, isPoured, standingVessels } from '../estimates/index.ts';
import { dayNotices, type Known } from '../timetable/day-notices.ts';
import type { Timed } from '../timetable/timetable.ts';

function circuitNotices(site: PlanContext): string[] {
  const { kitchen, kettles } = site;
  const notices: string[] = [];
  for (const circuit of kitchen.circuits) {
    const loads = [
      ...kettles
        .filter(({ vessel, burner }) => !burner && vessel.circuit === circuit.id)
        .map(({ name, vessel }) => ({
          name,
          w: vessel.ratedW * (kitchen.supplyV / vessel.ratedV) ** 2,
        })),
      ...[...site.burners.values()]
        .filter(({ burner }) => burner.circuit === circuit.id)
        .map(({ burner }) => ({ name: `the ${burner.name} burner`, w: burner.ratedW })),
      ...kitchen.fixtures.flatMap((one) =>
        'circuit' in one && one.circuit === circuit.id && one.ratedW !== undefined
          ? [{ name: one.name, w: one.ratedW }]
          : [],
      ),
    ];
    for (const { name, w } of loads) {
      if (w / circuit.voltsV > circuit.ratingA)
        notices.push(
          `${name} draws ${(w / circuit.voltsV).toFixed(0)} A, and ${circuit.name} bears ${circuit.ratingA} A: have an electrician look at it before you heat.`,
        );
    }
    const all = loads.reduce((sum, { w }) => sum + w, 0) / circuit.voltsV;
    if (loads.length > 1 && all > circuit.ratingA)
      notices.push(
        `${circuit.name} (${circuit.ratingA} A) cannot carry ${loads.map(({ name }) => name).join(', ')} together (${all.toFixed(0)} A): never run them together, as the plan does not.`,
      );
  }
  return notices;
}

function airNotices(site: PlanContext): string[] {
  const { hood, window } = site.kitchen.room;
  const lit = [...site.burners.values()].filter(({ method }) => method === 'glow');
  if (lit.length === 0) return [];
  const gas = lit.some(({ burner }) => isGas(burner.type));
  const { atOnce, peakC, limitedBy, withinLimits } = site.room;
  const why = { heat: ', for the heat', air: ', for the air', circuit: ', for the circuit' };
  const because = limitedBy in why ? why[limitedBy as keyof typeof why] : '';
  const number = atOnce === 1 ? 'One burner' : 'Two burners';
  const notices = [
    peakC
      ? `${number} at a time${because}: the room is expected to reach about ${peakC.typical.toFixed(0)} °C (${peakC.low.toFixed(0)} to ${peakC.high.toFixed(0)} °C). It advises; it never says the air is safe.`
      : 'One burner at a time: how warm this room gets cannot be reckoned as it is described. Check its size, its hood and its window.',
  ];
  if (!withinLimits && peakC)
    notices.push(
      'By the reckoning even one burner makes the room too hot or its air too bad as it is described: give air a way out, and wait between burners.',
    );
  if (gas && hood.kind !== 'vented' && window.areaM2 === 0)
    notices.push(
      'There is neither a hood to the outside nor a window: gas burners cannot be purged here before air has a way out.',
    );
  else if (gas && hood.kind === 'recirculating')
    notices.push('The hood only filters: it removes no gas. The window must be open.');
  return notices;
}

function fixtureNotices(site: PlanContext): string[] {
  return site.kitchen.fixtures.flatMap((one) => {
    const method = site.choices.get(one.id)?.method.method;
    if (one.kind === 'oven' && (one.cleaning === 'steam' || one.cleaning === 'catalytic'))
      return [
        `${one.name}: a ${one.cleaning} clean is not a purge; it is treated as an oven without self-clean.`,
      ];
    if (one.kind === 'cooktop' && one.burners.some(({ type }) => type === 'induction'))
      return [
        `${one.name}: induction gives no glow. Ask how it may be purged before you plan the day.`,
      ];
    if (method === 'pour' && !isPoured(one))
      return [
        `${one.name}: how much water it takes is not reckoned; it is planned as work by hand.`,
      ];
    return [];
  });
}

function vesselNotices(site: PlanContext): string[] {
  const standing = standingVessels(site.kitchen);
  if (standing.length === 0) return [];
  const pots = standing.filter(({ kind }) => kind === 'urn' || kind === 'pot');
  const small = standing.filter(({ kind }) => kind !== 'urn' && kind !== 'pot');
  return [
    ...(pots.length > 0
      ? [
          `Not poured from: ${pots.map(({ name }) => name).join(', ')}. What is ladled from it is in a second vessel, and it is too heavy to carry full.`,
        ]
      : []),
    ...(small.length > 0
      ? [
          `Not used: ${small.map(({ name }) => name).join(', ')}, with no heater named, too weak to boil here, or too small beside the others.`,
        ]
      : []),
  ];
}

function customNotices(site: PlanContext, { calendar }: Known): string[] {
  const { custom, purpose } = site.kitchen.household;
  return [
    ...(custom === 'ashkenazic' && purpose !== 'passover'
      ? [
          'By custom a vessel is not changed between meat and dairy (Magen Avraham 509:11, from memory): ask before you do.',
        ]
      : []),
    ...(purpose === 'passover' && !calendar?.days.deadline
      ? [
          'The purge must be over before the hour on the eve of Passover at which leaven becomes forbidden: plan it to end a day earlier.',
        ]
      : []),
  ];
}

/** What the household should know before it starts. */
export function noticesOf(
  site: PlanContext,
  drafts: readonly StepDraft[],
  timed: Timed,
  known: Known,
): readonly string[] {
  return [
    ...dayNotices(site, drafts, timed, known),
    ...timed.overnight.map(
      (title) => `No working day is long enough for this, so it runs into the night: ${title}`,
    ),
    ...planCautions(drafts, site).map(({ say }) => say),
    ...airNotices(site),
    ...circuitNotices(site),
    ...fixtureNotices(site),
    ...vesselNotices(site),
    ...customNotices(site, known),
  ];
}
