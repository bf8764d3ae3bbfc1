import { message, type Message } from '../../messages/index.ts';
import { MS_PER_SECOND } from '../../units/index.ts';
import { NO_REASON } from '../../run/index.ts';
import { standing, standingHolds } from '../gather/attempt-history.ts';
import { faultEnd } from '../lines/steps.ts';
import { clockMessage, reviewMessage } from '../lines/whole-run.ts';
import type { FixtureReport, HoldReport, NotDone, Report, StepReport } from '../model/report.ts';
import type { PlaceNow } from '../model/summary.ts';
import { placesOf, purgesOf } from './places.ts';
import { counted } from './rows.ts';

const CM2_PER_M2 = 1e4;
/** Tolerance of the clocks that is not worth a sentence, s. */
const WORTH_TELLING_S = 1;

/** A step that a person or a fault ended; what never began follows from it. */
const GIVEN_UP: ReadonlySet<NotDone['outcome']> = new Set(['skipped', 'failed', 'stopped']);

/**
 * What a reader must not overlook, the gravest first, a short sentence each:
 * what was not purged, left out or stopped, time that no clock proves,
 * conditions overridden, faults and how they ended, questions without an answer, and
 * when nobody could see. Nothing of what is merely still to come.
 */
export function lacksOf(report: Report, zone: string): readonly Message[] {
  const places = placesOf(report);
  const of = ({ fixture }: PlaceNow) => report.fixtures.find(({ id }) => id === fixture);
  const each = (tell: (fixture: FixtureReport, place: PlaceNow) => readonly Message[]) =>
    places.flatMap((place) => {
      const fixture = of(place);
      return fixture ? tell(fixture, place) : [];
    });
  const lacks = [
    ...each((fixture, place) => purgeLacks(report, fixture, place)),
    ...each(unreachedLack),
    ...each((fixture, place) => workLacks(report, fixture, place)),
    ...generalLacks(report),
    // How long something cooled is about hands, and in the long log.
    ...each((fixture) =>
      [...fixture.rests, ...purgesOf(fixture).flatMap(standingHolds)].flatMap((hold) =>
        holdLacks(fixture.name, hold),
      ),
    ),
    ...each(({ name, kettles: { poured, cold } }) =>
      cold < poured ? [message('report.lack.cold', { name, poured, cold })] : [],
    ),
    ...doubtLacks(report, zone),
    ...tabletLacks(report),
  ];
  // Two burners of one range that fail together are one sentence.
  return [...new Map(lacks.map((lack) => [JSON.stringify(lack), lack])).values()];
}

/** Of steps alike so many are named: the burners of a range. */
const MOST_NAMED = 4;

/** Steps alike in how they ended and why, told together. */
function grouped(
  name: string | null,
  steps: readonly NotDone[],
  planned: number,
): readonly Message[] {
  const groups = new Map<string, NotDone[]>();
  for (const step of steps) {
    const key = JSON.stringify([step.outcome, step.reason]);
    groups.set(key, [...(groups.get(key) ?? []), step]);
  }
  return [...groups.values()].flatMap((group) => {
    const [first] = group;
    if (!first) return [];
    return [
      message('report.lack.steps', {
        name: name ?? '',
        steps: group.slice(0, MOST_NAMED).map(({ title }) => title),
        many: group.length,
        planned,
        outcome: message(`report.outcome.${first.outcome}`),
        reason: first.reason,
      }),
    ];
  });
}

function purgeLacks(report: Report, fixture: FixtureReport, place: PlaceNow): readonly Message[] {
  if (place.state !== 'not-purged') return [];
  const ids = new Set(purgesOf(fixture).map(({ id }) => id));
  const left = report.notDone.filter(
    ({ step, outcome }) => ids.has(step) && (report.outcome !== 'open' || GIVEN_UP.has(outcome)),
  );
  return grouped(fixture.name, left, ids.size);
}

/** A purge by pouring that some spots were out of reach of. */
function unreachedLack({ name, unreachedM2 }: FixtureReport, place: PlaceNow): readonly Message[] {
  if (unreachedM2 === undefined || place.state !== 'poured') return [];
  return [message('report.lack.unreached', { name, areaCm2: unreachedM2 * CM2_PER_M2 })];
}

/** Cleaning, rest, cover and the rest: what was given up, and all of a place that has no purge. */
function workLacks(report: Report, fixture: FixtureReport, place: PlaceNow): readonly Message[] {
  const told = new Set(
    fixture.steps
      .filter(
        ({ phase, kind }) => phase === 'purge' && (kind !== 'boil' || place.state === 'not-purged'),
      )
      .map(({ id }) => id),
  );
  const isWhole = place.state === 'not-done';
  const left = report.notDone.filter(
    ({ step, fixture: at, outcome }) =>
      at === fixture.id &&
      !told.has(step) &&
      (isWhole || GIVEN_UP.has(outcome)) &&
      outcome !== 'open' &&
      outcome !== 'waiting',
  );
  const cut = fixture.steps.filter(
    (step) => step.kind === 'rest' && left.some((one) => one.step === step.id),
  );
  const rests = cut.flatMap((step) => restLack(fixture.name, step));
  return [
    ...rests,
    ...grouped(
      fixture.name,
      left.filter(({ step }) => !cut.some(({ id }) => id === step)),
      0,
    ),
  ];
}

/** A rest that was cut short, with how much of it was proved until then. */
function restLack(name: string, step: StepReport): readonly Message[] {
  const attempt = standing(step);
  if (!attempt) return [];
  const hold = attempt.stages.flatMap(({ holds }) => holds).at(-1);
  return [
    message('report.lack.rest', {
      name,
      provedS: hold?.provedS ?? 0,
      neededS: hold?.neededS ?? 0,
      outcome: message(`report.outcome.${attempt.outcome}`),
      reason: attempt.reason,
    }),
  ];
}

function generalLacks(report: Report): readonly Message[] {
  const told = new Set(unpurged(report).map(({ id }) => id));
  const left = report.notDone.filter(
    ({ fixture, outcome, step }) => fixture === null && GIVEN_UP.has(outcome) && !told.has(step),
  );
  return [...unpurged(report).map(utensilLack), ...grouped(null, left, 0)];
}

/** Batches, heat and soaking that were given up, or that a run which is over never came to. */
function unpurged(report: Report): readonly StepReport[] {
  const isOver = report.outcome !== 'open';
  const missing = new Set(
    report.notDone.filter(({ outcome }) => isOver || GIVEN_UP.has(outcome)).map(({ step }) => step),
  );
  return report.general.filter(
    ({ id, phase, items }) => items !== undefined && phase === 'purge' && missing.has(id),
  );
}

function utensilLack(step: StepReport): Message {
  const attempt = standing(step);
  return message('report.lack.utensils', {
    step: step.title,
    items: counted(step.items ?? []),
    outcome: message(`report.outcome.${attempt?.outcome ?? 'not-run'}`),
    reason: attempt?.reason ?? NO_REASON,
  });
}

function holdLacks(name: string, hold: HoldReport): readonly Message[] {
  const { label, toWallMs, provedS, neededS, onWordS, unproved, corrections } = hold;
  const isShort = toWallMs !== null && provedS + WORTH_TELLING_S < neededS;
  const wordS = onWordS > WORTH_TELLING_S ? onWordS : 0;
  if (!isShort && !unproved && wordS === 0) return [];
  return [
    message('report.lack.hold', {
      name,
      label,
      provedS,
      neededS,
      isShort,
      unproved,
      wordS,
      why: corrections,
    }),
  ];
}

function doubtLacks(report: Report, zone: string): readonly Message[] {
  const name = (id: string | null): string =>
    report.fixtures.find((fixture) => fixture.id === id)?.name ?? '';
  const questions = report.questions.length;
  return [
    ...report.overriddenGates.map(({ fixture, ask, reason }) =>
      message('report.lack.overridden', { name: name(fixture), ask, reason }),
    ),
    ...report.faults.map((fault) =>
      message('report.lack.fault', {
        name: name(fault.fixture),
        fault: fault.name,
        wallMs: fault.wallMs,
        zone,
        end: faultEnd(fault, zone),
      }),
    ),
    ...(questions === 0 ? [] : [message('report.lack.questions', { count: questions })]),
    ...report.clockQuestions
      .filter(({ answer }) => answer === null || answer === 'wrong')
      .map((question) => clockMessage(question, zone)),
    ...report.reviews
      .filter(({ answer }) => answer !== 'went-on')
      .map((review) => reviewMessage(review, zone)),
  ];
}

function tabletLacks(report: Report): readonly Message[] {
  const { gaps, lateTimers, silentAlarms, storage } = report;
  const unprovedS = gaps.reduce((sum, gap) => sum + gap.unprovedS, 0);
  const storedLateS = storage.reduce(
    (sum, { fromWallMs, mendedWallMs }) =>
      sum + ((mendedWallMs ?? report.lastWallMs) - fromWallMs) / MS_PER_SECOND,
    0,
  );
  return [
    ...(gaps.length === 0 ? [] : [message('report.lack.gaps', { count: gaps.length, unprovedS })]),
    ...(lateTimers.length + silentAlarms.length === 0
      ? []
      : [
          message('report.lack.alarms', {
            late: lateTimers.length,
            silent: silentAlarms.length,
          }),
        ]),
    ...(storage.length === 0 ? [] : [message('report.lack.storage', { lengthS: storedLateS })]),
  ];
}
