import { message, type Message } from '../../messages/index.ts';
import { standing, standingHolds } from '../gather/attempt-history.ts';
import { saidMessage } from '../lines/fixture.ts';
import { stepLines } from '../lines/steps.ts';
import type { FixtureReport, HoldReport, Report, StepReport } from '../model/report.ts';
import type { PlaceNow, PlaceRow, PlaceState } from '../model/summary.ts';
import { isDone, placesOf, purgesOf } from './places.ts';

/** A row for each place: what, how, when, rested, by which source, and what is to be noted. */
export function rowsOf(report: Report, zone: string): readonly PlaceRow[] {
  return placesOf(report).flatMap((place) => {
    const fixture = report.fixtures.find(({ id }) => id === place.fixture);
    if (!fixture) return [];
    return [
      {
        place,
        how: howOf(fixture, place),
        when: whenOf(fixture, zone),
        rested: fixture.rests.map((hold) => restMessage(hold, zone)),
        source: sourceOf(report, fixture),
        note: noteOf(report, fixture, zone),
      },
    ];
  });
}

/** The vessels that purged, which are purged first: their rests and purges, a sentence each. */
export function vesselsOf(report: Report, zone: string): readonly Message[] {
  return report.general
    .filter(({ phase, items }) => !items && (phase === 'rest' || phase === 'purge'))
    .flatMap((step) => stepLines(step, zone))
    .flatMap(({ text }) => text);
}

/** What was done with each group of utensils, and when: their rest, each batch, heat and soaking. */
export function utensilsOf(report: Report, zone: string): readonly Message[] {
  return report.general.flatMap((step) => {
    const { phase, items = [] } = step;
    if (items.length === 0 || (phase !== 'rest' && phase !== 'purge')) return [];
    return stepLines(step, zone)
      .flatMap(({ text }) => text)
      .map((told, at) =>
        at > 0 || phase === 'rest'
          ? told
          : message('report.utensils.line', { told, items: counted(items) }),
      );
  });
}

/** "24 × Cutlery (Meat)" for each. */
export function counted(items: NonNullable<StepReport['items']>): readonly Message[] {
  return items.map(({ count, name }) => message('utensils.count', { count, name }));
}

/** Of these the method is what was meant, not what was done. */
const MEANT: ReadonlySet<PlaceState> = new Set(['not-purged', 'not-done', 'not-yet']);

function howOf(fixture: FixtureReport, place: PlaceNow): readonly Message[] {
  const { method, kettles } = fixture;
  if (!method) return [];
  return [
    message('report.row.method', {
      method: message(`common.method.${method.method}`),
      isMeant: MEANT.has(place.state),
      cover: place.isCoveredToo,
      ...(method.term && { term: method.term }),
    }),
    ...(kettles.planned === 0
      ? []
      : [message('report.row.kettles', { poured: kettles.poured, planned: kettles.planned })]),
    ...heatsOf(fixture),
    ...byOf(fixture),
  ];
}

/** Heat without a break, alike told once: "Glow, 30 min, 4 times". The shortest counts. */
function heatsOf(fixture: FixtureReport): readonly Message[] {
  const heats = purgesOf(fixture)
    .flatMap(standingHolds)
    .filter(({ purpose }) => purpose === 'unbroken');
  const byLabel = new Map<string, HoldReport[]>();
  for (const hold of heats) {
    const key = JSON.stringify(hold.label);
    byLabel.set(key, [...(byLabel.get(key) ?? []), hold]);
  }
  return [...byLabel.values()].flatMap((holds) => {
    const [first] = holds;
    if (!first) return [];
    const provedS = Math.min(...holds.map((hold) => hold.provedS));
    return [message('report.row.heat', { label: first.label, provedS, times: holds.length })];
  });
}

/** Who did what makes the place what it is, each once. */
function byOf(fixture: FixtureReport): readonly Message[] {
  const all = worksOf(fixture).flatMap((step) => standing(step)?.by ?? []);
  const who = [...new Map(all.map((one) => [JSON.stringify(one), one])).values()];
  return who.length === 0 ? [] : [message('report.row.by', { who })];
}

/** Its purge, or where there is none its cleaning and cover, as far as it is done. */
function worksOf(fixture: FixtureReport): readonly StepReport[] {
  const purges = purgesOf(fixture);
  const work =
    purges.length > 0
      ? purges
      : fixture.steps.filter(({ phase }) => phase === 'clean' || phase === 'cover');
  return work.filter(isDone);
}

/** From the first to the last of what makes the place what it is. */
function whenOf(fixture: FixtureReport, zone: string): readonly Message[] {
  const done = worksOf(fixture).flatMap((step) => standing(step) ?? []);
  const from = done.flatMap(({ startedWallMs }) => startedWallMs ?? []);
  const to = done.flatMap(({ endedWallMs }) => endedWallMs ?? []);
  if (from.length === 0 || to.length === 0) return [];
  return [
    message('report.row.when', {
      fromWallMs: Math.min(...from),
      toWallMs: Math.max(...to),
      zone,
    }),
  ];
}

function restMessage({ fromWallMs, toWallMs, provedS }: HoldReport, zone: string): Message {
  return toWallMs === null
    ? message('report.row.resting', { wallMs: fromWallMs, zone, provedS })
    : message('report.row.rested', { fromWallMs, toWallMs, zone, provedS });
}

function sourceOf(report: Report, { id, method }: FixtureReport): readonly Message[] {
  if (!method) return [];
  const said = report.overrides.filter(({ fixture }) => fixture === id).map(saidMessage);
  return [
    message('report.row.source', {
      source: method.source,
      state: message(`custom.state.${method.sourceState}`),
    }),
    ...said,
    ...(method.overriddenBy === null || said.length > 0
      ? []
      : [message('report.replaces-row', { by: method.overriddenBy })]),
  ];
}

function noteOf(report: Report, fixture: FixtureReport, zone: string): readonly Message[] {
  const at = <T extends { readonly fixture: string | null }>(all: readonly T[]): readonly T[] =>
    all.filter((row) => row.fixture === fixture.id);
  const { voided } = fixture.kettles;
  return [
    ...at(report.rechecks).map(({ wallMs, text }) =>
      message('report.recheck', { wallMs, zone, text }),
    ),
    ...(voided === 0 ? [] : [message('report.row.voided', { count: voided })]),
    ...(fixture.method?.question ? [message('report.row.question')] : []),
  ];
}
