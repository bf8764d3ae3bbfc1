import fc from 'fast-check';
import type { Activity, After, Problem } from '../../../src/core/schedule/index.ts';

/** A problem, with starts that are known to solve it. */
export type Solved = {
  readonly problem: Problem;
  readonly startS: Readonly<Record<string, number>>;
};

const DAY_S = 24;
const NIGHT = { fromS: 16, toS: DAY_S };

const night = {
  id: 'day',
  closed: Array.from({ length: 12 }, (_, day) => ({
    fromS: day * DAY_S + NIGHT.fromS,
    toS: day * DAY_S + NIGHT.toS,
  })),
};

function touchesNight(start: number, duration: number): boolean {
  return night.closed.some(({ fromS, toS }) => start < toS && start + duration > fromS);
}

type Raw = {
  readonly start: number;
  readonly duration: number;
  readonly a: number;
  readonly b: number;
  readonly link: readonly {
    readonly to: number;
    readonly min: boolean;
    readonly slack: number;
    readonly max: boolean;
  }[];
  readonly day: boolean;
};

const raw: fc.Arbitrary<Raw> = fc.record({
  start: fc.integer({ min: 0, max: 60 }),
  duration: fc.integer({ min: 0, max: 9 }),
  a: fc.integer({ min: 0, max: 3 }),
  b: fc.integer({ min: 0, max: 2 }),
  link: fc.array(
    fc.record({
      to: fc.nat(),
      min: fc.boolean(),
      slack: fc.integer({ min: 0, max: 6 }),
      max: fc.boolean(),
    }),
    { maxLength: 2 },
  ),
  day: fc.boolean(),
});

function peak(rows: readonly Raw[], amount: (row: Raw) => number): number {
  return Math.max(
    1,
    ...rows.map(({ start }) =>
      rows
        .filter((other) => other.start <= start && other.start + other.duration > start)
        .reduce((sum, other) => sum + amount(other), 0),
    ),
    ...rows.map(amount),
  );
}

/** Lags that the known starts keep, with `slack` seconds to spare. */
function lagsInto(rows: readonly Raw[], to: number): After[] {
  return rows.flatMap((from, at) =>
    from.link.flatMap(({ to: wanted, min, slack, max }) => {
      if (at === to || wanted % rows.length !== to) return [];
      const gap = rows[to]!.start - from.start - from.duration;
      const minLagS = min ? Math.min(gap, 0) + Math.min(0, -slack) : gap - slack;
      return [{ id: `a${at}`, minLagS, ...(max && { maxLagS: gap + slack }) }];
    }),
  );
}

/**
 * Random problems that surely have a schedule: starts are drawn first, then
 * lags, capacities and calendars that they keep.
 */
export const solvedProblem: fc.Arbitrary<Solved> = fc
  .array(raw, { minLength: 1, maxLength: 14 })
  .map((rows) => {
    const activities = rows.map(({ duration, a, b, day, start }, at): Activity => ({
      id: `a${at}`,
      durationS: duration,
      demand: { a, b },
      after: lagsInto(rows, at),
      ...(day && !touchesNight(start, duration) && { calendar: 'day' }),
    }));
    const problem = {
      activities,
      resources: [
        { id: 'a', capacity: peak(rows, (row) => row.a) },
        { id: 'b', capacity: peak(rows, (row) => row.b) },
      ],
      calendars: [night],
    };
    return { problem, startS: Object.fromEntries(rows.map(({ start }, at) => [`a${at}`, start])) };
  });

/** Small problems in whole seconds, with or without a schedule, to be solved by trying everything. */
export const smallProblem: fc.Arbitrary<Problem> = fc
  .array(
    fc.record({
      durationS: fc.integer({ min: 0, max: 3 }),
      r: fc.integer({ min: 0, max: 2 }),
      day: fc.boolean(),
      after: fc.array(
        fc.record({
          from: fc.nat(),
          minLagS: fc.integer({ min: -4, max: 2 }),
          spare: fc.option(fc.integer({ min: 0, max: 3 }), { nil: undefined }),
        }),
        { maxLength: 2 },
      ),
    }),
    { minLength: 1, maxLength: 4 },
  )
  .map((rows) => ({
    activities: rows.map(({ durationS, r, day, after }, at) => ({
      id: `a${at}`,
      durationS,
      demand: { r },
      ...(day && { calendar: 'day' }),
      after: after
        .filter(({ from }) => from % rows.length !== at)
        .map(({ from, minLagS, spare }) => ({
          id: `a${from % rows.length}`,
          minLagS,
          ...(spare !== undefined && { maxLagS: minLagS + spare }),
        })),
    })),
    resources: [{ id: 'r', capacity: 2 }],
    calendars: [{ id: 'day', closed: [{ fromS: 3, toS: 5 }] }],
  }));

/** Problems of up to ten activities in whole seconds that press on their resources, with nights and limits; with or without a schedule. */
export const crowdedProblem: fc.Arbitrary<Problem> = fc
  .array(
    fc.record({
      durationS: fc.integer({ min: 1, max: 7 }),
      a: fc.integer({ min: 0, max: 3 }),
      b: fc.integer({ min: 0, max: 2 }),
      day: fc.boolean(),
      after: fc.array(
        fc.record({
          from: fc.nat(),
          minLagS: fc.integer({ min: -1, max: 2 }),
          spare: fc.oneof(
            { arbitrary: fc.constant(undefined), weight: 6 },
            { arbitrary: fc.integer({ min: 0, max: 6 }), weight: 1 },
          ),
        }),
        { maxLength: 1 },
      ),
    }),
    { minLength: 6, maxLength: 10 },
  )
  .map((rows) => ({
    activities: rows.map(({ durationS, a, b, day, after }, at) => ({
      id: `a${at}`,
      durationS,
      demand: { a, b },
      ...(day && { calendar: 'day' }),
      after: after.flatMap(({ from, minLagS, spare }) =>
        at === 0
          ? []
          : [
              {
                id: `a${from % at}`,
                minLagS,
                ...(spare !== undefined && { maxLagS: minLagS + spare }),
              },
            ],
      ),
    })),
    resources: [
      { id: 'a', capacity: 3 },
      { id: 'b', capacity: 2 },
    ],
    calendars: [night],
  }));

/** Problems of up to ten activities of which most are there several times over: alone, or with something that follows close behind. */
export const twinnedProblem: fc.Arbitrary<Problem> = fc
  .array(
    fc.record({
      copies: fc.integer({ min: 1, max: 4 }),
      parts: fc.array(
        fc.record({
          durationS: fc.integer({ min: 1, max: 6 }),
          a: fc.integer({ min: 0, max: 3 }),
          b: fc.integer({ min: 0, max: 2 }),
          day: fc.boolean(),
        }),
        { minLength: 1, maxLength: 2 },
      ),
      spare: fc.oneof(
        { arbitrary: fc.constant(0), weight: 3 },
        { arbitrary: fc.integer({ min: 1, max: 5 }), weight: 1 },
      ),
      behind: fc.option(fc.nat(), { nil: undefined }),
    }),
    { minLength: 2, maxLength: 5 },
  )
  .map((kinds) => {
    const all = kinds.flatMap(({ copies, parts, spare, behind }, at) =>
      Array.from({ length: copies }, (_, copy) =>
        parts.map(({ durationS, a, b, day }, part): Activity => {
          const before = at > 0 && behind !== undefined && part === 0;
          return {
            id: `k${at}-${copy}-${part}`,
            durationS,
            demand: { a, b },
            ...(day && { calendar: 'day' }),
            after: [
              ...(before ? [{ id: `k${behind % at}-0-0` }] : []),
              ...(part > 0 ? [{ id: `k${at}-${copy}-0`, maxLagS: spare }] : []),
            ],
          };
        }),
      ),
    );
    return {
      activities: all.flat().slice(0, 10),
      resources: [
        { id: 'a', capacity: 3 },
        { id: 'b', capacity: 2 },
      ],
      calendars: [night],
    };
  });

/** Kettles that boil on one burner and are poured while it stands idle, beside other work that may or may not go on meanwhile. */
export const kettleProblem: fc.Arbitrary<Problem> = fc
  .record({
    pours: fc.array(
      fc.record({
        boilS: fc.integer({ min: 1, max: 3 }),
        pourS: fc.integer({ min: 1, max: 4 }),
        // Often so long that another kettle boils before the pour.
        spare: fc.integer({ min: 0, max: 8 }),
        inTurn: fc.integer({ min: 0, max: 3 }).map((n) => n === 0),
        other: fc.integer({ min: 0, max: 3 }).map((n) => n === 0),
      }),
      { minLength: 2, maxLength: 4 },
    ),
    others: fc.array(
      fc.record({
        durationS: fc.integer({ min: 1, max: 9 }),
        hands: fc.integer({ min: 0, max: 3 }).map((n) => Math.max(0, n - 2)),
        day: fc.boolean(),
      }),
      { maxLength: 3 },
    ),
    hands: fc.integer({ min: 1, max: 2 }),
    day: fc.boolean(),
  })
  .map(({ pours, others, hands, day }) => ({
    activities: [
      ...pours.flatMap(({ boilS, pourS, spare, inTurn, other }, at): Activity[] => {
        const kettle = other ? 'other-kettle' : 'kettle';
        const hours = day && { calendar: 'day' };
        return [
          {
            id: `boil${at}`,
            durationS: boilS,
            demand: { burner: 1, [kettle]: 1 },
            ...hours,
            ...(inTurn && at > 0 && { after: [{ id: `pour${at - 1}` }] }),
          },
          {
            id: `pour${at}`,
            durationS: pourS,
            demand: { hands: 1, [kettle]: 1 },
            ...hours,
            after: [{ id: `boil${at}`, maxLagS: spare }],
          },
        ];
      }),
      ...others.map((one, at) => ({
        id: `heat${at}`,
        durationS: one.durationS,
        demand: { burner: 1, hands: one.hands },
        ...(one.day && { calendar: 'day' }),
      })),
    ],
    resources: [
      { id: 'burner', capacity: 1 },
      { id: 'hands', capacity: hands },
      { id: 'kettle', capacity: 1 },
      { id: 'other-kettle', capacity: 1 },
    ],
    calendars: [night],
  }));
