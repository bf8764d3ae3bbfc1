import { message, type Message } from '../../messages/index.ts';
import type { RestDay } from '../../plan/index.ts';
import { stepOf } from '../model/plan-index.ts';
import type { RunState } from '../model/state.ts';
import type { Readings } from '../model/types.ts';
import type { WorkObstacle } from './work-guard.ts';
import { settlesInS, type StepGate } from './gates.ts';
import type { NeedProblem } from './needs.ts';
import type { Shortage } from './resources.ts';

const SECONDS_PER_MINUTE = 60;

/** Why a resource cannot be had, for a cook. */
export function shortageMessage({ resource, used, usedBy, wanted }: Shortage): Message {
  const { name, unit, capacity } = resource;
  const steps = usedBy.map(({ title }) => title);
  if (steps.length === 0)
    return message('engine.resource.too-few', { name, unit, wanted, capacity });
  if (resource.kind === 'hands') return message('engine.resource.hands', { steps });
  if (resource.kind === 'burners-lit') return message('engine.resource.burners', { lit: used });
  if (resource.kind === 'place') return message('engine.resource.place', { name, steps });
  if (resource.kind === 'watch') return message('engine.resource.watch', { steps });
  if (capacity === 1) return message('engine.resource.in-use', { name, steps });
  return message('engine.resource.taken', { name, unit, used, capacity, steps });
}

export function needObstacle(state: RunState, { need, why }: NeedProblem): Message {
  return message(`engine.need.${why}`, { step: stepOf(state.plan, need.step).title });
}

/** Inside a rest day; when exactly it is over, the view says. */
export function insideRestDay(day: Pick<RestDay, 'name'>): Message {
  return message('engine.rest-day.inside', { day: day.name });
}

/** A day or an hour that is kept, and the work that would fall into it. */
export function workMessage({ why, what, name }: WorkObstacle): Message {
  if (what === 'deadline') return message(`engine.deadline.${why}`, { deadline: name });
  return message(`engine.rest-day.${why}`, { day: name });
}

export function gateObstacle({ gate, known }: StepGate, now: Readings): Message {
  if (known.value === 'yes') {
    const leftMin = Math.ceil(settlesInS(gate, known, now) / SECONDS_PER_MINUTE);
    return message('engine.gate.settling', { say: gate.say, leftMin });
  }
  return known.value === 'no'
    ? message('engine.gate.answered-no', { ask: gate.ask })
    : message('engine.gate.confirm-first', { ask: gate.ask });
}
