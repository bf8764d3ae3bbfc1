import { align } from './align.ts';
import type { Dump } from './dump/dump.ts';
import type { Json } from './dump/plan-dump.ts';

/** What is compared: numbers and names of plans and runs, and three kinds of text. */
export type Area = 'plan' | 'run' | 'plan text' | 'sentence' | 'record';

export type Difference = {
  readonly area: Area;
  readonly scene: string;
  /** Where in the plan or the run; for texts: empty. */
  readonly place: string;
  readonly before: string;
  readonly after: string;
};

/** How much was compared, by area. */
export type Compared = Readonly<Record<Area, { readonly scenes: number; readonly things: number }>>;

/** Shown for what only one version has. */
const ABSENT = '(not there)';
/** Sums may be added up in another order; nothing else may move a number. */
const RELATIVE = 1e-9;

function shown(value: Json): string {
  return value === undefined ? ABSENT : JSON.stringify(value);
}

function same(before: Json, after: Json): boolean {
  if (typeof before !== 'number' || typeof after !== 'number') return before === after;
  return Math.abs(before - after) <= RELATIVE * Math.max(Math.abs(before), Math.abs(after));
}

type Found = Pick<Difference, 'place' | 'before' | 'after'>;

function isParts(value: Json): value is { readonly [place: string]: Json } {
  return typeof value === 'object' && value !== null;
}

/** Every leaf that is not the same, with its place. Lists of unequal length are told as a whole. */
export function jsonDifferences(before: Json, after: Json, place = ''): readonly Found[] {
  if (same(before, after)) return [];
  const lists = Array.isArray(before) ? before : undefined;
  const unequal = lists !== undefined && (!Array.isArray(after) || after.length !== lists.length);
  if (!isParts(before) || !isParts(after) || unequal)
    return [{ place, before: shown(before), after: shown(after) }];
  const names = new Set([...Object.keys(before), ...Object.keys(after)]);
  return [...names].flatMap((name) =>
    jsonDifferences(before[name], after[name], place === '' ? name : `${place}.${name}`),
  );
}

type FactDump = { readonly [field: string]: Json };

/** What a fact is about: facts of the same name are compared field by field. */
function factName(fact: Json): string {
  const { kind, step, stage, timer, gate } = fact as FactDump;
  return [kind, step, stage, timer, gate].filter((one) => one !== undefined).join(' ');
}

function runDifferences(before: readonly Json[], after: readonly Json[]): readonly Found[] {
  return align(before, after, factName, false).flatMap((pair) => {
    const name = factName(pair.before ?? pair.after);
    return jsonDifferences(pair.before, pair.after, name);
  });
}

function lineDifferences(before: readonly string[], after: readonly string[]): readonly Found[] {
  return align(before, after, (line) => line, true)
    .filter((pair) => pair.before !== pair.after)
    .map((pair) => ({ place: '', before: pair.before ?? ABSENT, after: pair.after ?? ABSENT }));
}

type Sheets<T> = Readonly<Record<string, T>>;

function inScenes<T>(
  area: Area,
  before: Sheets<T>,
  after: Sheets<T>,
  compare: (before: T, after: T) => readonly Found[],
): readonly Difference[] {
  const scenes = new Set([...Object.keys(before), ...Object.keys(after)]);
  return [...scenes].flatMap((scene) => {
    const one = before[scene];
    const other = after[scene];
    const found =
      one === undefined || other === undefined
        ? [
            {
              place: 'scene',
              before: one === undefined ? ABSENT : 'played',
              after: other === undefined ? ABSENT : 'played',
            },
          ]
        : compare(one, other);
    return found.map((difference) => ({ area, scene, ...difference }));
  });
}

/** Everything in which the two dumps are not the same. */
export function differencesOf(before: Dump, after: Dump): readonly Difference[] {
  return [
    ...inScenes('plan', before.plans, after.plans, jsonDifferences),
    ...inScenes('run', before.facts, after.facts, runDifferences),
    ...inScenes('plan text', before.planTexts, after.planTexts, lineDifferences),
    ...inScenes('sentence', before.sentences, after.sentences, lineDifferences),
    ...inScenes('record', before.records, after.records, lineDifferences),
  ];
}

/** How much stands in the version before. */
export function comparedOf({ plans, facts, planTexts, sentences, records }: Dump): Compared {
  const count = (sheets: Sheets<readonly unknown[]>) => ({
    scenes: Object.keys(sheets).length,
    things: Object.values(sheets).reduce((sum, one) => sum + one.length, 0),
  });
  const steps = Object.fromEntries(
    Object.entries(plans).map(([scene, plan]) => [
      scene,
      Object.keys((plan as { readonly steps: object }).steps),
    ]),
  );
  return {
    plan: count(steps),
    run: count(facts),
    'plan text': count(planTexts),
    sentence: count(sentences),
    record: count(records),
  };
}
