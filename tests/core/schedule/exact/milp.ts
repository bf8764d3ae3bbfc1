import loadHighs from 'highs';
import type { Activity, Problem } from '../../../../src/core/schedule/index.ts';

/** HiGHS (MIT), a solver of mixed integer programs that shares nothing with the scheduler. */
const highs = await loadHighs();

/** Starts in whole seconds that the activity's own window and calendar leave. */
function startsOf(activity: Activity, problem: Problem, horizonS: number): number[] {
  const { durationS, notBeforeS = 0, notAfterS = Infinity } = activity;
  const calendar = problem.calendars?.find(({ id }) => id === activity.calendar);
  return Array.from({ length: horizonS - durationS + 1 }, (_, at) => at).filter(
    (at) =>
      at >= notBeforeS &&
      at <= notAfterS &&
      !calendar?.closed.some(({ fromS, toS }) => toS > fromS && at < toS && at + durationS > fromS),
  );
}

type Term = readonly [factor: number, name: string];

function sum(terms: readonly Term[]): string {
  return terms
    .map(([factor, name]) => `${factor < 0 ? '-' : '+'} ${Math.abs(factor)} ${name}`)
    .join(' ');
}

/** One row: terms that are at least, at most or equal to a number. */
function row(terms: readonly Term[], sign: '>=' | '<=' | '=', right: number): string {
  return `${sum(terms)} ${sign} ${right}`;
}

type Starts = ReadonlyMap<string, readonly { readonly at: number; readonly name: string }[]>;

function lagRows(problem: Problem, starts: Starts): string[] {
  const startTerms = (id: string, sign: 1 | -1): Term[] =>
    starts.get(id)!.flatMap(({ at, name }) => (at === 0 ? [] : [[sign * at, name] as const]));
  return problem.activities.flatMap(({ id, after = [] }) =>
    after.flatMap((lag) => {
      const { durationS } = problem.activities.find((one) => one.id === lag.id)!;
      const between = [[0, 'finish'] as const, ...startTerms(id, 1), ...startTerms(lag.id, -1)];
      const least = row(between, '>=', durationS + (lag.minLagS ?? 0));
      return lag.maxLagS === undefined
        ? [least]
        : [least, row(between, '<=', durationS + lag.maxLagS)];
    }),
  );
}

function capacityRows(problem: Problem, starts: Starts, horizonS: number): string[] {
  return problem.resources.flatMap(({ id: resource, capacity }) =>
    Array.from({ length: horizonS }, (_, second) => second).flatMap((second) => {
      const running = problem.activities.flatMap(({ id, durationS, demand }): Term[] => {
        const amount = demand[resource] ?? 0;
        if (amount === 0) return [];
        return starts
          .get(id)!
          .filter(({ at }) => at <= second && at + durationS > second)
          .map(({ name }) => [amount, name] as const);
      });
      return running.length < 2 ? [] : [row(running, '<=', capacity)];
    }),
  );
}

/**
 * The earliest finish of a problem in whole seconds, s; undefined: there is none by the horizon. Found as a program over one
 * variable for each activity and second it may start (Pritsker, Watters &
 * Wolfe, Management Science 16 (1969) 93).
 */
export function earliestFinish(problem: Problem, horizonS: number): number | undefined {
  const starts: Starts = new Map(
    problem.activities.map((activity, number) => [
      activity.id,
      startsOf(activity, problem, horizonS).map((at) => ({ at, name: `x${number}_${at}` })),
    ]),
  );
  const once = [...starts.values()].map((list) =>
    row(
      list.map(({ name }) => [1, name] as const),
      '=',
      1,
    ),
  );
  const ends = problem.activities.map(({ id, durationS }) =>
    row(
      [[1, 'finish'], ...starts.get(id)!.map(({ at, name }) => [-at, name] as const)],
      '>=',
      durationS,
    ),
  );
  const rows = [
    ...once,
    ...ends,
    ...lagRows(problem, starts),
    ...capacityRows(problem, starts, horizonS),
  ];
  const names = [...starts.values()].flatMap((list) => list.map(({ name }) => name));
  const program = [
    'Minimize',
    ' obj: finish',
    'Subject To',
    ...rows.map((text, at) => ` r${at}: ${text}`),
    'Bounds',
    ' finish >= 0',
    'Binaries',
    ...names.map((name) => ` ${name}`),
    'End',
  ].join('\n');
  const { Status, ObjectiveValue } = highs.solve(program, { output_flag: false });
  if (Status === 'Infeasible') return undefined;
  if (Status !== 'Optimal') throw new Error(`the program ended with ${Status}`);
  return Math.round(ObjectiveValue);
}
