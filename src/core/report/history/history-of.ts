import type { Purpose } from '../../kitchen/index.ts';
import type { Message } from '../../messages/index.ts';
import type { Report } from '../model/report.ts';
import type { PlaceRow } from '../model/summary.ts';
import { lacksOf, rowsOf } from '../summary/index.ts';

/** What one run did with a place. */
export type PlaceInRun = {
  /** When the plan of that run was laid down, ms since 1970-01-01 UTC. */
  readonly draftedWallMs: number;
  readonly purpose: Purpose;
  readonly outcome: Report['outcome'];
  readonly row: PlaceRow;
  /** What was left out, stopped or in doubt here. */
  readonly lacks: readonly Message[];
};

/** The places that any of these runs did something with, by id, under the name they had last. */
export function placesInRuns(reports: readonly Report[]): ReadonlyMap<string, string> {
  const names = new Map<string, string>();
  for (const { fixtures } of inTime(reports))
    for (const { id, name, method } of fixtures) if (method) names.set(id, name);
  return names;
}

/**
 * What happened to one place over the runs of its kitchen, the first run first. Runs that planned
 * nothing for it are left out.
 * @param zone IANA name of the zone whose hours are told
 */
export function historyOf(
  reports: readonly Report[],
  fixture: string,
  zone: string,
): readonly PlaceInRun[] {
  return inTime(reports).flatMap((report): readonly PlaceInRun[] => {
    const row = rowsOf(report, zone).find(({ place }) => place.fixture === fixture);
    if (!row || row.place.state === 'untouched') return [];
    const { draftedWallMs, purpose, outcome } = report;
    return [{ draftedWallMs, purpose, outcome, row, lacks: ownLacks(report, fixture, zone) }];
  });
}

/** What a reader must not overlook of this place, without what is lacking of the whole run. */
function ownLacks(report: Report, id: string, zone: string): readonly Message[] {
  const lacksWith = (fixtures: Report['fixtures']) => lacksOf({ ...report, fixtures }, zone);
  const ofAll = new Set(lacksWith([]).map((lack) => JSON.stringify(lack)));
  const own = lacksWith(report.fixtures.filter((one) => one.id === id));
  return own.filter((lack) => !ofAll.has(JSON.stringify(lack)));
}

function inTime(reports: readonly Report[]): readonly Report[] {
  return reports.toSorted((a, b) => a.draftedWallMs - b.draftedWallMs);
}
