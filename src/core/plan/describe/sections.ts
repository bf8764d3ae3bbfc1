import { inEnglish } from '../../messages/temporary.ts';
import { customName } from '../../custom/index.ts';
import type { FixtureMethod, Plan } from '../model/types.ts';
import { amountText, lengthText } from './times.ts';
import { METHOD_WORDS, PURPOSE_WORDS } from './words.ts';

export function nameOf(plan: Plan, fixture: string): string {
  return plan.kitchen.fixtures.find(({ id }) => id === fixture)?.name ?? fixture;
}

export function headerLines(plan: Plan): readonly string[] {
  const { name, household, altitudeM } = plan.kitchen;
  const bound = plan.timetable.finishS - plan.timetable.lowerBoundS;
  const people = `${household.people} ${household.people === 1 ? 'person' : 'people'}`;
  return [
    `Plan for ${name}`,
    `${PURPOSE_WORDS[plan.purpose]}, custom: ${customName(plan.kitchen.household)}, ${people}`,
    `Water boils at ${plan.boilingC.toFixed(1)} °C here (${altitudeM} m).`,
    `Done after ${lengthText(plan.timetable.finishS)}${
      bound < 60
        ? ', as early as it can be'
        : `; not before ${lengthText(plan.timetable.lowerBoundS)} in any order of work`
    }.`,
  ];
}

function methodLine(plan: Plan, row: FixtureMethod): string {
  const minutes = row.minutes === undefined ? '' : `, ${row.minutes} min`;
  const cover = row.cover && row.method !== 'cover' && row.method !== 'line' ? ', then cover' : '';
  const term = row.term === undefined ? '' : ` (${row.term})`;
  return `${nameOf(plan, row.fixture)}: ${METHOD_WORDS[row.method]}${minutes}${cover}${term}`;
}

function methodDetail(plan: Plan, row: FixtureMethod): readonly string[] {
  const open = plan.questions.filter(({ fixture }) => fixture === row.fixture);
  return [
    row.reason,
    `${row.source}${row.checked ? '' : ' (from memory, not yet checked)'}. Would change it: ${row.wouldChange}`,
    ...(row.overriddenBy === undefined
      ? []
      : [`In place of the custom’s row: ${row.overriddenBy}`]),
    ...open.map(
      ({ ask, untilThen }) => `To ask: ${inEnglish(ask)} Until then: ${inEnglish(untilThen)}`,
    ),
  ];
}

export function methodLines(plan: Plan): readonly string[] {
  return plan.methods.flatMap((row) => [
    methodLine(plan, row),
    ...methodDetail(plan, row).map((line) => `    ${line}`),
  ]);
}

export function questionLines(plan: Plan): readonly string[] {
  return plan.questions.flatMap((question, at) => [
    `${at + 1}. ${nameOf(plan, question.fixture)}: ${inEnglish(question.ask)}`,
    `    ${inEnglish(question.why)}`,
    `    Until then: ${inEnglish(question.untilThen)}`,
  ]);
}

export function totalsLines(plan: Plan): readonly string[] {
  const { hotL, coldL, kettles, electricityKWh, gasKWh, handsOnS } = plan.totals;
  return [
    ...(hotL.high > 0
      ? [
          `Boiling water: ${amountText(hotL, 0)} L in ${amountText(kettles, 0)} kettles`,
          `Cold water after it: ${amountText(coldL, 0)} L`,
        ]
      : []),
    ...(electricityKWh > 0 ? [`Electricity: about ${electricityKWh.toFixed(1)} kWh`] : []),
    ...(gasKWh > 0 ? [`Gas: about ${gasKWh.toFixed(1)} kWh`] : []),
    `Work with the hands: ${lengthText(handsOnS)}`,
  ];
}

export function shoppingLines(plan: Plan): readonly string[] {
  return plan.shopping.map(
    ({ name, amount, why }) => `${inEnglish(name)}: ${inEnglish(amount)}. ${inEnglish(why)}`,
  );
}
