import { crc32 } from '../../journal/index.ts';
import { asWritten, message, type Message, type Translator } from '../../messages/index.ts';
import { MS_PER_HOUR, MS_PER_SECOND } from '../../units/index.ts';
import type { Plan, Step } from '../../plan/index.ts';
import { expectedTimes, view, type ExpectedTime, type RunState } from '../../run/index.ts';
import { fixtureName } from '../gather/incidents.ts';
import type { CalendarEvent } from './calendar-of.ts';

/** A shorter break does not end a block of work, ms. A choice: nobody changes out of wet clothes for less. */
const BLOCK_BREAK_MS = 2 * MS_PER_HOUR;

/** More names than this do not fit into a title. */
const MOST_NAMES = 3;

type Timed = { readonly step: Step; readonly span: ExpectedTime };

/** Of a plan: its timetable. */
function timesOfPlan(plan: Plan, startWallMs: number): ReadonlyMap<string, ExpectedTime> {
  return new Map(
    plan.steps.map((step) => {
      const startMs = startWallMs + (plan.timetable.startS[step.id] ?? 0) * MS_PER_SECOND;
      return [step.id, { startMs, endMs: startMs + step.durationS.typical * MS_PER_SECOND }];
    }),
  );
}

function timesOfRun(state: RunState, timetableMs: number): ReadonlyMap<string, ExpectedTime> {
  const { lastAt } = state.clock;
  // Before it has begun nothing is late: it is expected from the start of its timetable.
  const nowMs = state.status === 'drafting' ? timetableMs : lastAt.wallMs;
  return expectedTimes(view(state, lastAt), nowMs, { timetableMs });
}

/**
 * The ends of the rests and the blocks of purge work that lie ahead, of a plan
 * or of a run in progress. What is over is left out. A closed run has none.
 * @param startWallMs wall time of second 0 of the timetable; also part of the uid, as the kitchen's name is
 * @param state the run, if it has begun: then its clocks are asked first
 */
export function restEvents(
  plan: Plan,
  startWallMs: number,
  translator: Translator,
  state?: RunState,
): readonly CalendarEvent[] {
  if (state && (state.status === 'closed' || state.status === 'closing')) return [];
  const times = state ? timesOfRun(state, startWallMs) : timesOfPlan(plan, startWallMs);
  const timed = plan.steps.flatMap((step): Timed[] => {
    const span = times.get(step.id);
    return span ? [{ step, span }] : [];
  });
  // Steps of two kitchens are called alike, and both may begin on Sunday at nine.
  const kitchen = crc32(plan.kitchen.name);
  const uid = (what: string): string => `${startWallMs}-${kitchen}-${what}@glowpour.invalid`;
  const rests = timed
    .filter(({ step }) => step.kind === 'rest')
    .map(({ step, span }) => restEvent(plan, step, span, uid(`rest-${step.id}`), translator));
  const blocks = blocksOf(timed.filter(({ step }) => step.phase === 'purge'));
  return [
    ...rests,
    ...blocks.map((block) =>
      blockEvent(plan, block, uid(`purge-${block.at(-1)?.step.id ?? ''}`), translator),
    ),
  ];
}

function restEvent(
  plan: Plan,
  step: Step,
  { endMs }: ExpectedTime,
  uid: string,
  { say }: Translator,
): CalendarEvent {
  const name = step.fixture === undefined ? step.title : asWritten(fixtureName(plan, step.fixture));
  return {
    uid,
    startMs: endMs,
    title: say(message('report.event.rest-over', { name })),
    text: say(message('report.event.rest-text')),
    busy: false,
  };
}

function blocksOf(purge: readonly Timed[]): readonly (readonly Timed[])[] {
  const blocks: Timed[][] = [];
  let endMs = -Infinity;
  for (const one of purge.toSorted((a, b) => a.span.startMs - b.span.startMs)) {
    if (one.span.startMs - endMs >= BLOCK_BREAK_MS) blocks.push([]);
    blocks.at(-1)?.push(one);
    endMs = Math.max(endMs, one.span.endMs);
  }
  return blocks;
}

function blockTitle(names: readonly string[], more: number): Message {
  if (names.length === 0) return message('report.event.purge');
  return more > 0
    ? message('report.event.purge-of-more', { names: names.slice(0, MOST_NAMES), more })
    : message('report.event.purge-of', { names });
}

function blockEvent(
  plan: Plan,
  block: readonly Timed[],
  uid: string,
  { say }: Translator,
): CalendarEvent {
  const fixtures = [
    ...new Set(block.flatMap(({ step }) => (step.fixture === undefined ? [] : [step.fixture]))),
  ];
  const names = fixtures.map((id) => fixtureName(plan, id));
  const more = names.length - MOST_NAMES;
  const lines = fixtures.map((id) => {
    const row = plan.methods.find((one) => one.fixture === id);
    return row
      ? say(
          message('report.event.method', {
            name: fixtureName(plan, id),
            method: message(`common.method.${row.method}`),
          }),
        )
      : fixtureName(plan, id);
  });
  return {
    uid,
    startMs: Math.min(...block.map(({ span }) => span.startMs)),
    endMs: Math.max(...block.map(({ span }) => span.endMs)),
    title: say(blockTitle(names, more)),
    text: [...lines, say(message('report.event.stay'))].join('\n'),
    busy: true,
  };
}
