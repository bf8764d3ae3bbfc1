import { asWritten, message, type Message } from '../../../../core/messages/index.ts';
import {
  expectedTimes,
  type FixturePhase,
  type RunView,
  type StepView,
} from '../../../../core/run/index.ts';
import { MS_PER_SECOND } from '../../../../core/units/index.ts';
import { when } from '../../../parts/time/when.ts';
import { fixtureName } from '../step/step-text.ts';

/** The order of the legend: what can hurt, what must be left alone, what is to be done, what is over. */
const PHASES: readonly FixturePhase[] = [
  'hot',
  'purging',
  'resting',
  'ready',
  'to-clean',
  'not-purged',
  'left-out',
  'done',
  'covered',
];

/** The phase of each fixture as a hand has to know it: what can burn now is hot, whatever is done there. */
export function phasesById(view: RunView): Readonly<Record<string, FixturePhase>> {
  const hot = new Set(hotSteps(view).map(({ step }) => step.fixture));
  return Object.fromEntries(
    view.fixtures.map(({ id, phase }) => [id, hot.has(id) ? 'hot' : phase]),
  );
}

/** Phases that a place of the kitchen is in now. */
export function phasesNow(view: RunView): readonly FixturePhase[] {
  const now = new Set(Object.values(phasesById(view)));
  return PHASES.filter((one) => now.has(one));
}

function hotSteps(view: RunView): readonly StepView[] {
  return view.steps.filter((one) => view.hot.some((hot) => hot.step === one.step.id));
}

/** Where a step is: its fixture, its vessel, or what it does. */
function placeOf(view: RunView, { step }: StepView): Message {
  const name = fixtureName(view, step.fixture);
  if (name !== undefined) return asWritten(name);
  const { work } = step;
  if ('vessel' in work && work.vessel) return work.vessel.name;
  return work.on === 'utensils' ? message('utensils.all') : step.title;
}

/** What can burn now, each once. */
export function hotNow(view: RunView): readonly Message[] {
  const cooling = view.fixtures
    .filter(({ phase }) => phase === 'hot')
    .flatMap(({ id }) => fixtureName(view, id) ?? []);
  const all = [...hotSteps(view).map((one) => placeOf(view, one)), ...cooling.map(asWritten)];
  const known = new Set<string>();
  return all.filter((one) => {
    const key = JSON.stringify(one);
    return !known.has(key) && known.add(key);
  });
}

/** Rests that end this close to each other are told together, s. */
const TOGETHER_S = 300;
/** The nearest ends; the list of clocks has the others. */
const MOST_ENDS = 2;

/** What rests until when, the nearest end first. */
export function restsNow(view: RunView, nowMs: number): readonly Message[] {
  const groups: { untilS: number; names: Message[] }[] = [];
  for (const one of view.steps) {
    if (one.step.kind !== 'rest') continue;
    const timer = one.timers.find(({ role, leftS }) => role === 'hold' && leftS > 0);
    if (!timer || timer.leftS === Infinity) continue;
    const group = groups.find(({ untilS }) => Math.abs(untilS - timer.leftS) < TOGETHER_S);
    if (group) {
      group.untilS = Math.max(group.untilS, timer.leftS);
      group.names.push(placeOf(view, one));
    } else groups.push({ untilS: timer.leftS, names: [placeOf(view, one)] });
  }
  return groups
    .toSorted((a, b) => a.untilS - b.untilS)
    .slice(0, MOST_ENDS)
    .map(({ untilS, names: [first, ...more] }) => {
      const until = when(nowMs + untilS * MS_PER_SECOND, nowMs);
      return first !== undefined && more.length === 0
        ? message('run.glance.rests-one', { name: first, until })
        : message('run.glance.rests', { count: more.length + 1, until });
    });
}

/** The next work for hands after the step that is shown, and when it can begin. */
export type NextWork = {
  readonly step: StepView;
  /** Absent: now. */
  readonly fromMs?: number;
};

/** The work that comes next; undefined when none is left. */
export function nextWork(view: RunView, nowMs: number, current?: string): NextWork | undefined {
  const ready = view.currentSteps.find(
    ({ status, step }) => status === 'ready' && step.id !== current,
  );
  if (ready) return { step: ready };
  const times = expectedTimes(view, nowMs);
  const ahead = view.steps
    .filter(({ status, step }) => status === 'waiting' && step.attention !== 'none')
    .flatMap((step) => {
      const time = times.get(step.step.id);
      return time ? [{ step, fromMs: time.startMs }] : [];
    });
  return ahead.toSorted((a, b) => a.fromMs - b.fromMs)[0];
}
