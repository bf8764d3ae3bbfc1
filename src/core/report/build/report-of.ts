import { customName, ownCustomOf } from '../../custom/index.ts';
import { apply, type Fact, type RunState } from '../../run/index.ts';
import { plainLine } from '../../kitchen/index.ts';
import { assumptions } from './assumed.ts';
import { fixtureReport, notDone, purgesMissing } from './fixtures.ts';
import { fixtureName, Incidents } from '../gather/incidents.ts';
import { STANDING_LINES } from './standing-lines.ts';
import { AttemptHistory } from '../gather/attempt-history.ts';
import type { ReportOptions } from '../model/report-options.ts';
import type { OverrideReport, OwnRowReport, Report } from '../model/report.ts';

/** Longest version of an app that is told, letters. */
const LONGEST_VERSION = 24;

/**
 * What was done, from the facts of a run: whole, or up to any fact of it.
 * @param facts from the first, `drafted`, without gaps
 * @throws RangeError when the facts are none, do not follow each other, or do not belong to one run
 */
export function reportOf(facts: readonly Fact[], options: ReportOptions = {}): Report {
  const attempts = new AttemptHistory();
  const incidents = new Incidents();
  let state: RunState | null = null;
  let startedWallMs: number | null = null;
  for (const fact of facts) {
    const after: RunState = apply(state, fact);
    attempts.follow(state, after, fact);
    incidents.follow(state, after, fact);
    if (fact.body.kind === 'run-started') startedWallMs = fact.at.wallMs;
    state = after;
  }
  const first = facts[0];
  if (state === null || first === undefined)
    throw new RangeError('facts is empty; allowed: at least "drafted". Open a run first.');
  const { body } = first;
  return {
    ...modelOf(state, attempts, incidents, options),
    ...(body.kind === 'drafted' && typeof body.app === 'string' && { app: versionTold(body.app) }),
    draftedWallMs: first.at.wallMs,
    startedWallMs,
  };
}

/** A file may tell anything. */
function versionTold(app: string): string {
  return plainLine(app).slice(0, LONGEST_VERSION);
}

type Model = Omit<Report, 'app' | 'draftedWallMs' | 'startedWallMs'>;

function modelOf(
  state: RunState,
  attempts: AttemptHistory,
  incidents: Incidents,
  options: ReportOptions,
): Model {
  const { plan } = state;
  const steps = attempts.steps(state);
  const { lastAt } = state.clock;
  return {
    kitchen: plan.kitchen.name,
    purpose: plan.purpose,
    custom: plan.custom,
    customName: customName(plan.kitchen.household),
    closedWallMs: state.status === 'closed' ? lastAt.wallMs : null,
    outcome: state.closedAs ?? 'open',
    reason: state.reason,
    lastWallMs: lastAt.wallMs,
    fixtures: plan.kitchen.fixtures.map((fixture) => fixtureReport(plan, fixture, steps)),
    general: steps.filter((step) => step.fixture === null),
    overrides: overridesOf(state),
    ownRows: ownRowsOf(state),
    overriddenGates: incidents.overriddenGates,
    faults: incidents.faults,
    rechecks: incidents.rechecks,
    gaps: incidents.gaps,
    clockQuestions: incidents.clockQuestions,
    reviews: incidents.reviews,
    lateTimers: incidents.lateTimers,
    pauses: incidents.pauses,
    storage: incidents.storage,
    silentAlarms: incidents.silentAlarms,
    notes: incidents.notes,
    questions: plan.questions,
    assumed: assumptions(plan.kitchen, options.filled ?? []),
    notDone: notDone(plan, steps),
    ...purgesMissing(plan, steps),
    standing: STANDING_LINES,
  };
}

function overridesOf({ plan }: RunState): readonly OverrideReport[] {
  return plan.kitchen.household.overrides.map((one) => ({
    fixture: one.fixture,
    name: fixtureName(plan, one.fixture),
    method: one.method,
    minutes: one.minutes ?? null,
    cover: one.cover ?? null,
    saidBy: one.saidBy,
    saidOn: one.saidOn,
    text: one.text ?? '',
  }));
}

function ownRowsOf({ plan }: RunState): readonly OwnRowReport[] {
  const rows = ownCustomOf(plan.kitchen.household)?.changedRows ?? [];
  return rows.flatMap(({ row, method, minutes, saidBy, saidOn, why }) => {
    const names = plan.methods
      .filter(({ ownRow }) => ownRow === row)
      .map(({ fixture }) => fixtureName(plan, fixture));
    return names.length === 0
      ? []
      : [{ names, method, minutes: minutes ?? null, saidBy, saidOn, why }];
  });
}
