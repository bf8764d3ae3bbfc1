import { message, type Message } from '../../messages/index.ts';
import type { Gate, Plan, Stage, Step, TimerSpec } from '../model/index.ts';
import { line, lines, type Line } from './line.ts';
import { nameOf } from './sections.ts';

/** What stands under the title of a step is set in by this many steps; its details once more. */
const UNDER = 2;
const DETAIL = 2 * UNDER;

function same(a: Message, b: Message | undefined): boolean {
  return b !== undefined && JSON.stringify(a) === JSON.stringify(b);
}

/** A wait by its length; what is looked for by when to look. */
function timerMessage({ role, repeats, label: timer, lengthS }: TimerSpec): Message {
  if (role === 'hold') return message('plan.work.timer', { timer, lengthS });
  if (role === 'estimate') return message('plan.work.timer-about', { timer, lengthS });
  return message(repeats ? 'plan.work.timer-every' : 'plan.work.timer-after', { timer, lengthS });
}

/** A stage that only repeats the heading has no line of its own. */
function stageLines({ title, detail, timers }: Stage, heading?: Message): readonly Line[] {
  if (same(title, heading)) return lines(detail, UNDER);
  const told = timers.map(timerMessage);
  return [
    line(message('plan.work.stage', { stage: title, timers: told }), UNDER),
    ...lines(detail, DETAIL),
  ];
}

/** Cautions where the hand is. Questions asked once a run are told once, apart. */
function cautionMessages(plan: Plan, step: Step): readonly Message[] {
  const asked = plan.gates.filter(({ id, scope }) => scope !== 'run' && step.gates.includes(id));
  const named = (ids: readonly string[]) => plan.cautions.filter(({ id }) => ids.includes(id));
  return [
    ...asked.map(({ signal, ask, say }) =>
      message('plan.work.gate', { signal: message(`common.signal.${signal}`), say, ask }),
    ),
    ...named(step.standing).map(({ signal, say }) =>
      message('plan.work.caution', { signal: message(`common.signal.${signal}`), say }),
    ),
    ...named(step.after).map(({ signal, say }) =>
      message('plan.work.caution-after', { signal: message(`common.signal.${signal}`), say }),
    ),
  ];
}

/** What one kettle of a pour covers. */
function kettleMessage({ picture, stages }: Step, kettle: number): Message {
  if (picture?.kind === 'sink') {
    const own = picture.parts.filter((part) => part.kettle === picture.kettle);
    return message('plan.work.kettle-parts', { kettle, parts: own.map(({ name }) => name) });
  }
  if (picture?.kind === 'lanes') {
    const own = picture.stretches.filter((stretch) => stretch.kettle === picture.kettle);
    const lengthM = own.reduce((sum, stretch) => sum + stretch.lengthM, 0);
    return message('plan.work.kettle-lanes', { kettle, lengthM });
  }
  return message('plan.work.kettle-told', { kettle, told: stages[0]?.detail ?? [] });
}

function pourLines(plan: Plan, fixture: string): readonly Line[] {
  const own = plan.steps.filter((step) => step.fixture === fixture);
  const pours = own.filter(({ kind }) => kind === 'pour');
  const boil = own.find(({ kind }) => kind === 'boil');
  const [first] = pours;
  if (!boil || !first) return [];
  const withinS = first.needs.find((need) => need.withinS !== undefined)?.withinS;
  const ofPour = cautionMessages(plan, first);
  const ofBoil = cautionMessages(plan, boil).filter(
    (caution) => !ofPour.some((told) => same(told, caution)),
  );
  return [
    line(message('plan.work.kettles', { fixture: nameOf(plan, fixture), kettles: pours.length })),
    ...boil.stages.flatMap((stage) => stageLines(stage, boil.title)),
    ...(withinS === undefined ? [] : [line(message('plan.work.pour-within', { withinS }), UNDER)]),
    ...first.stages.filter(({ role }) => role === 'cold').flatMap((stage) => stageLines(stage)),
    ...pours.map((pour, at) => line(kettleMessage(pour, at + 1), DETAIL)),
    ...lines([...ofBoil, ...ofPour], UNDER),
  ];
}

/** How each kind of work on each fixture goes, stage by stage: alike steps are told once. */
export function workLines(plan: Plan): readonly Line[] {
  const seen = new Set<string>();
  const told: Line[] = [];
  for (const step of plan.steps) {
    const kind = step.kind === 'boil' || step.kind === 'pour' ? 'pour' : step.kind;
    const about = `${kind}/${step.fixture ?? step.id}`;
    if (step.kind === 'rest' || seen.has(about)) continue;
    seen.add(about);
    if (kind === 'pour') {
      told.push(...pourLines(plan, step.fixture ?? ''));
      continue;
    }
    told.push(
      line(step.title),
      ...step.stages.flatMap((stage) => stageLines(stage, step.title)),
      ...lines(cautionMessages(plan, step), UNDER),
    );
  }
  return told;
}

/** Questions that are asked once a run, with what stands behind them. */
export function gateLines(plan: Plan): readonly Line[] {
  const of = ({ signal, ask, say }: Gate): readonly Line[] => [
    line(message('plan.work.caution', { signal: message(`common.signal.${signal}`), say: ask })),
    line(say, UNDER),
  ];
  return plan.gates.filter(({ scope }) => scope === 'run').flatMap(of);
}
