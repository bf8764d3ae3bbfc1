import { customName, stateOfMethod } from '../../custom/index.ts';
import { message, type Message } from '../../messages/index.ts';
import { LOW_BOIL_C } from '../steps/pour.ts';
import type { FixtureMethod, Plan } from '../model/index.ts';
import { line, lines, type Line } from './line.ts';

/** What stands under a fixture or a question is set in by this many steps. */
const UNDER = 2;
/** An end this near its bound is as early as it can be, s. */
const AT_BOUND_S = 60;

export function nameOf(plan: Plan, fixture: string): string {
  return plan.kitchen.fixtures.find(({ id }) => id === fixture)?.name ?? fixture;
}

export function headerMessages(plan: Plan): readonly Message[] {
  const { name, household } = plan.kitchen;
  const { finishS, lowerBoundS } = plan.timetable;
  return [
    message('plan.title', { kitchen: name }),
    message('plan.for', {
      purpose: message(`common.purpose.${plan.purpose}`),
      custom: customName(household),
      people: household.people,
    }),
    message('plan.boils-at', {
      boilingC: plan.boilingC,
      low: plan.boilingC < LOW_BOIL_C,
    }),
    finishS - lowerBoundS < AT_BOUND_S
      ? message('plan.done-earliest', { finishS })
      : message('plan.done-after', { finishS, boundS: lowerBoundS }),
  ];
}

function methodMessage(plan: Plan, row: FixtureMethod): Message {
  return message('plan.method', {
    fixture: nameOf(plan, row.fixture),
    method: message(`common.method.${row.method}`),
    minutes: row.minutes ?? 0,
    cover: row.cover && row.method !== 'cover' && row.method !== 'line',
    ...(row.term ? { term: row.term } : {}),
  });
}

function methodDetail(plan: Plan, row: FixtureMethod): readonly Message[] {
  const { reason, source, wouldChange, overriddenBy } = row;
  const open = plan.questions.filter(({ fixture }) => fixture === row.fixture);
  return [
    reason,
    ...(row.times ? [message('plan.method.times', { times: row.times })] : []),
    ...(row.stone ? [message('plan.method.stone')] : []),
    ...(row.rest === false ? [message('plan.method.no-rest')] : []),
    message('plan.method.source', {
      source,
      state: message(`custom.state.${stateOfMethod(row)}`),
      wouldChange,
    }),
    ...(overriddenBy === undefined
      ? []
      : [message('plan.method.instead-of-row', { by: overriddenBy })]),
    ...open.map(({ ask, untilThen }) => message('plan.to-ask', { ask, untilThen })),
  ];
}

/** How each part is treated, with its source. */
function partMessages({ parts = [] }: FixtureMethod): readonly Message[] {
  return parts.map(({ part, method, minutes, reason, source, sourceState }) =>
    message('plan.method.part', {
      part: message(`steps.part.${part}`),
      method:
        method === 'not-purged'
          ? message('plan.method.part.not-purged')
          : message(`common.method.${method}`),
      minutes: minutes ?? 0,
      reason,
      source,
      state: message(`custom.state.${sourceState}`),
    }),
  );
}

export function methodLines(plan: Plan): readonly Line[] {
  return plan.methods.flatMap((row) => [
    line(methodMessage(plan, row)),
    ...lines([...methodDetail(plan, row), ...partMessages(row)], UNDER),
  ]);
}

export function questionLines(plan: Plan): readonly Line[] {
  return plan.questions.flatMap(({ fixture, ask, why, untilThen }, at) => [
    line(
      message('plan.question.numbered', { number: at + 1, fixture: nameOf(plan, fixture), ask }),
    ),
    ...lines([why, message('plan.question.until-then', { untilThen })], UNDER),
  ]);
}

export function totalsMessages(plan: Plan): readonly Message[] {
  const { hotL, coldL, kettles, electricityKWh, gasKWh, handsOnS } = plan.totals;
  return [
    ...(hotL.high > 0
      ? [message('plan.total.hot', { hotL, kettles }), message('plan.total.cold', { coldL })]
      : []),
    ...(electricityKWh > 0 ? [message('plan.total.electricity', { kWh: electricityKWh })] : []),
    ...(gasKWh > 0 ? [message('plan.total.gas', { kWh: gasKWh })] : []),
    message('plan.total.hands', { lengthS: handsOnS }),
  ];
}

export function shoppingMessages(plan: Plan): readonly Message[] {
  return plan.shopping.map(({ name, amount, why }) => message('plan.buy', { name, amount, why }));
}
