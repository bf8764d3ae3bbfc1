import { standing } from '../gather/attempt-history.ts';
import type { FixtureReport, Report, StepReport } from '../model/report.ts';
import type { PlaceNow, PlaceState } from '../model/summary.ts';

const BY_HEAT: ReadonlySet<StepReport['kind']> = new Set(['glow', 'high-heat', 'self-clean']);

const PURGED: ReadonlySet<PlaceState> = new Set(['heated', 'poured', 'steamed']);

/** What every place of the kitchen is now, numbered in the order of the kitchen file. */
export function placesOf(report: Report): readonly PlaceNow[] {
  return report.fixtures.map((fixture, index) => {
    const purges = purgesOf(fixture);
    const state = stateOf(fixture, purges, report.outcome === 'open');
    return {
      fixture: fixture.id,
      name: fixture.name,
      number: index + 1,
      designation: fixture.designation,
      state,
      isCoveredToo: PURGED.has(state) && isCovered(fixture),
      purges: { planned: purges.length, done: purges.filter(isDone).length },
    };
  });
}

/** The steps that purge; boiling is part of its pour. */
export function purgesOf({ steps }: FixtureReport): readonly StepReport[] {
  return steps.filter(({ phase, kind }) => phase === 'purge' && kind !== 'boil');
}

export function isDone(step: StepReport): boolean {
  return standing(step)?.outcome === 'done';
}

/** Neither begun nor given up: in a run that goes on it is still to come. */
function isToCome(step: StepReport): boolean {
  const outcome = standing(step)?.outcome;
  return outcome === 'waiting' || outcome === 'open';
}

function isCovered({ method, steps }: FixtureReport): boolean {
  const covers = steps.filter(({ kind }) => kind === 'cover');
  const isMeant = method !== null && (method.cover || ['cover', 'line'].includes(method.method));
  return isMeant && covers.length > 0 && covers.every(isDone);
}

function purgedBy(purges: readonly StepReport[]): PlaceState {
  if (purges.some(({ kind }) => BY_HEAT.has(kind))) return 'heated';
  return purges.every(({ kind }) => kind === 'steam') ? 'steamed' : 'poured';
}

function stateOf(
  fixture: FixtureReport,
  purges: readonly StepReport[],
  isOpen: boolean,
): PlaceState {
  const { method, steps } = fixture;
  if (purges.length > 0) {
    if (purges.every(isDone)) return purgedBy(purges);
    const isWaiting = isOpen && purges.every((step) => isDone(step) || isToCome(step));
    return isWaiting ? 'not-yet' : 'not-purged';
  }
  if (method === null || steps.length === 0) return 'untouched';
  const work = steps.filter(({ phase }) => phase === 'clean' || phase === 'cover');
  if (work.every(isDone)) {
    if (method.method === 'not-purged') return 'closed-up';
    return isCovered(fixture) ? 'covered' : 'cleaned';
  }
  const isWaiting = isOpen && work.every((step) => isDone(step) || isToCome(step));
  return isWaiting ? 'not-yet' : 'not-done';
}
