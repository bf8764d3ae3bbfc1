import { inEnglish } from '../../messages/temporary.ts';
import type { StepGate } from './gates.ts';
import { settlesInS } from './gates.ts';
import type { NeedProblem } from './needs.ts';
import { stepOf } from '../model/plan-index.ts';
import type { RestDayObstacle } from './rest-days.ts';
import type { Shortage } from './resources.ts';
import type { RunState } from '../model/state.ts';
import type { Readings } from '../model/types.ts';

const NUMBERS = ['none', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight'];

function inWords(count: number): string {
  return NUMBERS[count] ?? String(Math.round(count * 10) / 10);
}

function titles(shortage: Shortage): string {
  return shortage.usedBy.map((step) => `“${inEnglish(step.title)}”`).join(', ');
}

/** Why a resource cannot be had, for a cook. */
export function shortageSentence(shortage: Shortage): string {
  const { resource, used, usedBy, wanted } = shortage;
  if (usedBy.length === 0) {
    return `This needs ${inWords(wanted)} ${inEnglish(resource.unit)} of ${inEnglish(resource.name)}; there is ${inWords(resource.capacity)}.`;
  }
  if (resource.id === 'hands') return `All hands are busy with ${titles(shortage)}.`;
  if (resource.id.startsWith('burners')) {
    return `Burner limit reached: ${inWords(used)} ${used === 1 ? 'is' : 'are'} lit.`;
  }
  if (resource.capacity === 1)
    return `${inEnglish(resource.name)} is in use by ${titles(shortage)}.`;
  return `${inEnglish(resource.name)}: ${inWords(used)} of ${inWords(resource.capacity)} ${inEnglish(resource.unit)} taken by ${titles(shortage)}.`;
}

export function needSentence(state: RunState, problem: NeedProblem): string {
  const title = stepOf(state.plan, problem.need.step).title;
  switch (problem.why) {
    case 'open':
      return `First: “${inEnglish(title)}”.`;
    case 'undone':
      return `“${inEnglish(title)}” was not finished. Repeat it, or skip it with a reason.`;
    case 'late':
      return `Too long since “${inEnglish(title)}”. Repeat it first.`;
  }
}

/** Inside a rest day; when exactly it is over, the view says. */
export function insideSentence(name: string): string {
  return `It is ${name}. No work begins until it is over.`;
}

export function restDaySentence({ why, day }: RestDayObstacle): string {
  return why === 'inside'
    ? insideSentence(day.name)
    : `It would not be over before ${day.name} begins. Begin it when ${day.name} is over.`;
}

export function gateSentence({ gate, known }: StepGate, now: Readings): string {
  if (known.value === 'yes') {
    const minutes = Math.ceil(settlesInS(gate, known, now) / 60);
    return `Wait ${minutes} min until it has settled: ${inEnglish(gate.say)}`;
  }
  return known.value === 'no'
    ? `Answered no: ${inEnglish(gate.ask)}`
    : `Confirm first: ${inEnglish(gate.ask)}`;
}
