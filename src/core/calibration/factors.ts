import { learn, startEstimate, type Estimate } from '../physics/index.ts';
import type { Kitchen } from '../kitchen/index.ts';
import type { Message } from '../messages/index.ts';
import type { Calibration, CalibrationFactor } from '../plan/index.ts';
import type { Fact } from '../run/index.ts';
import { measurementsOf, type MeasuredQuantity, type Measurement } from './measurements.ts';

/** What runs taught about one piece of hardware, or about the person's hand. */
export type CalibrationRow = {
  /** `boil-kettle`, `pour-hand`; what is left out is named by it. */
  readonly id: string;
  readonly what: MeasuredQuantity;
  /** Kettle, burner or oven by its id; `hand` for the person's. */
  readonly key: string;
  /** What the household calls it; empty for the hand. */
  readonly name: Message;
  /** All reports, those left out too. */
  readonly reports: number;
  /** Measured over estimated. Pour: litres a minute. */
  readonly estimate: Estimate;
  /** Seconds that were planned last, and estimated; pour and reach: none. */
  readonly plannedS?: number;
  readonly estimatedS?: number;
};

/** Numbers of reports (from 0) not to be counted, by the id of the row. */
export type LeftOutMeasurements = Readonly<Record<string, readonly number[]>>;

/** A person's word on a cool-down can only be late, so the longest counts; its spread is that of a clock. */
const CLOCK_SPREAD = 0.005;

function longest(prior: Measurement['prior'], values: readonly number[]): Estimate {
  return {
    mean: Math.max(1, ...values),
    spread: CLOCK_SPREAD,
    n: values.length,
    outliers: [],
    observations: values,
    prior,
  };
}

/** A report, and whether it is to be counted. */
type Counted = { readonly report: Measurement; readonly counts: boolean };

function idOf({ what, key }: Measurement): string {
  return `${what}-${key}`;
}

/** Reports of one run, without those left out by their number among the reports of the same row. */
function counted(
  reports: readonly Measurement[],
  leaveOut: LeftOutMeasurements,
): readonly Counted[] {
  const seen = new Map<string, number>();
  return reports.map((report) => {
    const id = idOf(report);
    const at = seen.get(id) ?? 0;
    seen.set(id, at + 1);
    return { report, counts: !(leaveOut[id] ?? []).includes(at) };
  });
}

function rowOf(id: string, all: readonly Counted[]): CalibrationRow | undefined {
  const last = all.at(-1)?.report;
  if (!last) return undefined;
  const { what, key, name, prior, plannedS, estimatedS } = last;
  const values = all.filter(({ counts }) => counts).map(({ report }) => report.value);
  return {
    id,
    what,
    key,
    name,
    reports: all.length,
    estimate: what === 'cool' ? longest(prior, values) : values.reduce(learn, startEstimate(prior)),
    ...(plannedS !== undefined && { plannedS }),
    ...(estimatedS !== undefined && { estimatedS }),
  };
}

function rowsOf(all: readonly Counted[]): readonly CalibrationRow[] {
  const groups = new Map<string, Counted[]>();
  for (const one of all) {
    const id = idOf(one.report);
    groups.set(id, [...(groups.get(id) ?? []), one]);
  }
  return [...groups].flatMap(([id, ones]) => rowOf(id, ones) ?? []);
}

/**
 * What the reports of a run teach, against what physics estimated: boil, glow
 * and heat-up times, cool-downs that had to be lengthened, the stream of the
 * pour and how far a kettle reached. Far-off reports (a word given late) are
 * set apart, never swallowed. Pure; the same facts teach the same.
 * @param leaveOut numbers of reports of an id to undo, from 0
 */
export function calibrationFrom(
  facts: readonly Fact[],
  leaveOut: LeftOutMeasurements = {},
): readonly CalibrationRow[] {
  return rowsOf(counted(measurementsOf(facts), leaveOut));
}

/** Everything but what it is called and what it belongs to. */
function hardware(of: object): string {
  const {
    name: _name,
    comment: _comment,
    designation: _for,
    ...rest
  } = of as Record<string, unknown>;
  return JSON.stringify(Object.entries(rest).toSorted(([a], [b]) => (a < b ? -1 : 1)));
}

/** Each vessel, burner and oven of a kitchen as it is built. */
function hardwareOf({ vessels, fixtures }: Kitchen): ReadonlyMap<string, string> {
  const burners = fixtures.flatMap((one) => (one.kind === 'cooktop' ? one.burners : []));
  const ovens = fixtures.filter(({ kind }) => kind === 'oven');
  return new Map([...vessels, ...burners, ...ovens].map((one) => [one.id, hardware(one)]));
}

/** Is a report about the hand, or about hardware that is still the same in this kitchen? */
function stillTrue(
  { what, key }: Measurement,
  facts: readonly Fact[],
  kitchen: Kitchen | undefined,
): boolean {
  const first = facts[0]?.body;
  if (what === 'pour' || what === 'reach' || !kitchen || first?.kind !== 'drafted') return true;
  const then = hardwareOf(first.plan.kitchen).get(key);
  return then !== undefined && then === hardwareOf(kitchen).get(key);
}

/** Facts of one run, with the reports of it that are not to be counted. */
export type MeasuredRun = {
  readonly facts: readonly Fact[];
  readonly leaveOut?: LeftOutMeasurements;
};

const FIELD: Readonly<Record<MeasuredQuantity, keyof Calibration>> = {
  boil: 'boil',
  glow: 'glow',
  'heat-up': 'heatUp',
  cool: 'cool',
  pour: 'flowLMin',
  reach: 'reach',
};

/**
 * What the runs of one kitchen taught together, for its next plan.
 * @param runs the oldest first
 * @param kitchen as it is now: what was exchanged since a run teaches nothing about what replaced it
 */
export function calibrationOf(runs: readonly MeasuredRun[], kitchen?: Kitchen): Calibration {
  const calibration: Record<string, CalibrationFactor | Record<string, CalibrationFactor>> = {};
  const all = runs.flatMap(({ facts, leaveOut = {} }) =>
    counted(measurementsOf(facts), leaveOut).filter(({ report }) =>
      stillTrue(report, facts, kitchen),
    ),
  );
  for (const { what, key, estimate } of rowsOf(all)) {
    const { mean, spread, n } = estimate;
    if (n === 0) continue;
    const field = FIELD[what];
    calibration[field] =
      what === 'pour' || what === 'reach'
        ? { mean, spread, n }
        : {
            ...(calibration[field] as Record<string, CalibrationFactor>),
            [key]: { mean, spread, n },
          };
  }
  return calibration as Calibration;
}
