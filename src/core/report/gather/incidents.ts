import { asWritten, message, type Message } from '../../messages/index.ts';
import { MS_PER_SECOND } from '../../units/index.ts';
import type { Plan } from '../../plan/index.ts';
import {
  clockQuestion,
  NO_REASON,
  stepsOfScope,
  type Fact,
  type FactBody,
  type Readings,
  type RunState,
} from '../../run/index.ts';
import type {
  ClockQuestion,
  RecheckReport,
  FaultReport,
  GapReport,
  GateOverride,
  LateTimer,
  NoteReport,
  PauseReport,
  ReviewReport,
  SilentAlarm,
  StorageTrouble,
} from '../model/report.ts';

type Loose<T> = { -readonly [K in keyof T]: T[K] };
type Body<K extends FactBody['kind']> = Extract<FactBody, { kind: K }>;

/** A timer told later than this after it was due counts as late, s; the screens use the same. */
const LATE_S = 30;

/** Every run knows it, whatever its plan was made with. */
const BURNED = message('cautions.fault.burned.name');

/** Everything beside the steps, in the order in which it happened. */
export class Incidents {
  readonly overriddenGates: GateOverride[] = [];
  readonly faults: Loose<FaultReport>[] = [];
  readonly rechecks: Loose<RecheckReport>[] = [];
  readonly gaps: GapReport[] = [];
  readonly clockQuestions: Loose<ClockQuestion>[] = [];
  readonly reviews: Loose<ReviewReport>[] = [];
  readonly lateTimers: LateTimer[] = [];
  readonly pauses: Loose<PauseReport>[] = [];
  readonly storage: Loose<StorageTrouble>[] = [];
  readonly notes: NoteReport[] = [];
  readonly silentAlarms: SilentAlarm[] = [];
  #clockAsked = false;
  readonly #reviewOf = new Map<string, Loose<ReviewReport>>();

  follow(before: RunState | null, after: RunState, fact: Fact): void {
    const { plan } = after;
    const { wallMs } = fact.at;
    this.#take(plan, before, fact);
    this.#questions(after, wallMs);
    this.#clock(after, fact);
    const pause = this.pauses.at(-1);
    if (pause?.toWallMs === null && (after.status === 'running' || after.status === 'closed'))
      pause.toWallMs = wallMs;
  }

  #take(plan: Plan, before: RunState | null, { at, body }: Fact): void {
    const { wallMs } = at;
    switch (body.kind) {
      case 'noted':
        this.notes.push({ text: body.text, wallMs });
        return;
      case 'recheck-reported':
        this.rechecks.push({
          fixture: body.fixture,
          name: fixtureName(plan, body.fixture),
          text: body.text,
          wallMs,
        });
        return;
      case 'recheck-withdrawn': {
        const last = this.rechecks.at(-1);
        if (last) last.withdrawnWallMs = wallMs;
        return;
      }
      case 'paused':
        this.pauses.push({ fromWallMs: wallMs, toWallMs: null });
        return;
      case 'gate-overridden':
        this.overriddenGates.push(gateOverride(before, plan, body, wallMs));
        return;
      case 'timer-due':
        this.#late(plan, before, body, wallMs);
        return;
      case 'alarm-failed':
        this.#silent(plan, before, body, wallMs);
        return;
      case 'clock-answered':
        this.#clockAnswer(body, wallMs);
        return;
      case 'review-answered':
        this.#reviewAnswer(body.question, body.answer, wallMs);
        return;
      case 'review-answer-withdrawn':
        this.#reviewAnswer(body.question, 'broke-off', wallMs);
        return;
      case 'session-opened':
        if (before) this.gaps.push(sessionGap(before.clock.lastAt, body, at));
        return;
      case 'clocks-disagree':
        this.gaps.push(clockGap(body, wallMs));
        return;
      default:
        this.#trouble(plan, before, body, wallMs);
    }
  }

  /** The question stands until it is answered, or no clock is left for which it matters. */
  #clock(after: RunState, { at }: Fact): void {
    const asked = clockQuestion(after);
    if (asked && !this.#clockAsked) {
      this.clockQuestions.push({
        askedWallMs: at.wallMs,
        answeredWallMs: null,
        answer: null,
        actualWallMs: null,
      });
    }
    this.#clockAsked = asked;
  }

  #trouble(plan: Plan, before: RunState | null, body: FactBody, wallMs: number): void {
    if (body.kind === 'fault-raised') {
      const about = aboutStep(plan, body.step);
      const name =
        body.faultKind === 'burned'
          ? BURNED
          : plan.faults.find((one) => one.kind === body.faultKind)?.name;
      this.faults.push({
        id: body.fault,
        kind: body.faultKind,
        name: name ?? message('engine.fault.undefined'),
        step: body.step,
        ...about,
        text: faultText(before, body),
        wallMs,
        clearedWallMs: null,
        cooled: null,
      });
    } else if (body.kind === 'cooling-ended') {
      const burn = this.faults.find((one) => one.id === body.fault);
      if (burn) {
        burn.clearedWallMs = wallMs;
        burn.cooled = { as: body.as, cooledS: body.cooledS };
      }
    } else if (body.kind === 'fault-cleared') {
      const fault = this.faults.find((one) => one.id === body.fault);
      if (fault) fault.clearedWallMs = wallMs;
    } else if (body.kind === 'storage-failed') {
      this.storage.push({ text: body.text, fromWallMs: wallMs, mendedWallMs: null });
    } else if (body.kind === 'storage-mended') {
      const last = this.storage.at(-1);
      if (last) last.mendedWallMs = wallMs;
    }
  }

  #silent(plan: Plan, before: RunState | null, body: Body<'alarm-failed'>, wallMs: number): void {
    const timer = before?.timers[body.timer];
    if (!timer) {
      const isBurn = before?.coolings.some(({ id }) => id === body.timer) === true;
      const label = message('report.cooling.clock');
      if (isBurn) this.silentAlarms.push({ stepTitle: BURNED, label, text: body.text, wallMs });
      return;
    }
    const { stepTitle } = aboutStep(plan, timer.step);
    this.silentAlarms.push({
      stepTitle: stepTitle ?? asWritten(timer.step),
      label: timer.spec.label,
      text: body.text,
      wallMs,
    });
  }

  #late(plan: Plan, before: RunState | null, body: Body<'timer-due'>, toldWallMs: number): void {
    const timer = before?.timers[body.timer];
    if (!timer || body.lateByS <= LATE_S) return;
    const { stepTitle, fixture } = aboutStep(plan, timer.step);
    this.lateTimers.push({
      step: timer.step,
      stepTitle: stepTitle ?? asWritten(timer.step),
      fixture,
      label: timer.spec.label,
      lateByS: body.lateByS,
      toldWallMs,
    });
  }

  #clockAnswer(body: Body<'clock-answered'>, wallMs: number): void {
    const open = this.clockQuestions.at(-1);
    if (!open || open.answer !== null) return;
    open.answeredWallMs = wallMs;
    open.answer = body.right ? 'right' : body.actualWallMs === null ? 'wrong' : 'corrected';
    open.actualWallMs = body.right ? null : body.actualWallMs;
  }

  /** The last word counts, from when it was said. */
  #reviewAnswer(question: string, answer: ReviewReport['answer'], wallMs: number): void {
    const review = this.#reviewOf.get(question);
    if (!review) return;
    review.answeredWallMs = wallMs;
    review.answer = answer;
  }

  #questions(after: RunState, wallMs: number): void {
    for (const { id, step, ask, gapS } of after.questions) {
      const known = this.#reviewOf.get(id);
      if (known) {
        known.gapS = gapS;
        continue;
      }
      const { stepTitle, fixture } = aboutStep(after.plan, step);
      const review: Loose<ReviewReport> = {
        step,
        stepTitle: stepTitle ?? asWritten(step),
        fixture,
        ask,
        gapS,
        askedWallMs: wallMs,
        answeredWallMs: null,
        answer: null,
      };
      this.#reviewOf.set(id, review);
      this.reviews.push(review);
    }
  }
}

/** What was told of a fault; of a limit, the timer that ran out. */
function faultText(before: RunState | null, { text, timer }: Body<'fault-raised'>): Message {
  if (text !== '') return asWritten(text);
  return (timer === null ? undefined : before?.timers[timer]?.spec.label) ?? NO_REASON;
}

/** Name of a fixture or of a vessel. */
export function fixtureName({ kitchen }: Plan, id: string): string {
  return [...kitchen.fixtures, ...kitchen.vessels].find((one) => one.id === id)?.name ?? id;
}

function aboutStep(
  plan: Plan,
  id: string | null,
): { readonly stepTitle: Message | null; readonly fixture: string | null } {
  const step = plan.steps.find((one) => one.id === id);
  return { stepTitle: step?.title ?? null, fixture: step?.fixture ?? null };
}

/** What was overridden for the whole run is about no one fixture. */
function gateOverride(
  before: RunState | null,
  plan: Plan,
  body: Body<'gate-overridden'>,
  wallMs: number,
): GateOverride {
  const gate = plan.gates.find((one) => one.id === body.gate);
  const [first] =
    before && gate?.scope !== 'run' ? stepsOfScope(before, body.gate, body.scopeKey) : [];
  const fixture = first?.fixture ?? null;
  return {
    gate: body.gate,
    signal: gate?.signal ?? null,
    ask: gate?.ask ?? asWritten(body.gate),
    fixture,
    reason: body.reason,
    wallMs,
  };
}

/** Nothing is known between the last proof of life and the page that opened. */
function sessionGap(lastAt: Readings, body: Body<'session-opened'>, at: Readings): GapReport {
  const beat = body.lastHeartbeat;
  const alive = beat?.session === lastAt.session && beat.monoMs > lastAt.monoMs ? beat : lastAt;
  return {
    kind: 'not-running',
    fromWallMs: alive.wallMs,
    toWallMs: at.wallMs,
    unprovedS: Math.max(0, (at.wallMs - alive.wallMs) / MS_PER_SECOND),
    tornRecords: body.tornRecords,
  };
}

function clockGap(body: Body<'clocks-disagree'>, wallMs: number): GapReport {
  return {
    kind: body.cause === 'slept' ? 'slept-or-set' : 'set-back',
    fromWallMs: wallMs - body.wallS * MS_PER_SECOND,
    toWallMs: wallMs,
    unprovedS: Math.abs(body.wallS - body.monoS),
    tornRecords: 0,
  };
}
