import type { Fixture, Kitchen, MethodId, Override } from '../../kitchen/index.ts';
import type { ConditionRule, CoverMaterial, Fact, FactRule, RowQuestion } from '../model/types.ts';
import { findConditionRule, findFactRules } from '../table/find-row.ts';
import { tableOf } from '../table/tables.ts';
import { lookedOf, rowsOf } from './looked.ts';
import { endsCovered } from './said.ts';

type Rule = ConditionRule | FactRule;

type Asked = { readonly row: string; readonly question: RowQuestion; readonly fact?: Fact };

/** The row of a fixture with every rule that holds for it, each as it was answered. */
export type Composed = {
  readonly method: MethodId;
  readonly cover: boolean;
  readonly coverWith?: CoverMaterial;
  readonly minutes?: number;
  readonly times: number;
  readonly stone: boolean;
  /** Rules that hold and were not answered. */
  readonly rules: readonly Rule[];
  readonly asked: readonly Asked[];
  /** What was said and counted. */
  readonly answered: readonly Override[];
};

function rulesFor(fixture: Fixture, kitchen: Kitchen, method: MethodId): readonly Rule[] {
  const table = tableOf(kitchen.household);
  const looked = lookedOf(fixture, kitchen);
  const byCondition = findConditionRule(table, looked, method);
  return [...(byCondition ? [byCondition] : []), ...findFactRules(table, looked, method)];
}

function keptCovered(method: MethodId): boolean {
  return endsCovered(method) || method === 'not-purged';
}

/** What the rules make of the row: a cover stays a cover, whatever else holds. */
function methodBy(own: MethodId, rules: readonly Rule[], answers: readonly Override[]): MethodId {
  const wanted = [
    ...rules.flatMap(({ method }) => (method === undefined ? [] : [method])),
    // An answer about one rule does not undo what another row or rule asks for.
    ...answers.map(({ method }) => method).filter(keptCovered),
  ];
  return [own, ...wanted].find(keptCovered) ?? wanted[0] ?? own;
}

/** What the custom and the answers to its questions make of a fixture together. */
export function composed(fixture: Fixture, kitchen: Kitchen, said: readonly Override[]): Composed {
  const rows = rowsOf(fixture, kitchen);
  const [row] = rows;
  const saidOfRow = (id: string) => said.findLast((one) => one.row === id);
  const own = saidOfRow(row.id);
  const ownMethod = own?.method ?? row.method;
  const ownCover = own?.cover ?? (row.cover || endsCovered(ownMethod));
  const all = rulesFor(fixture, kitchen, ownMethod);
  const open = all.filter(({ id }) => !saidOfRow(id));
  const ofRules = all.flatMap(({ id }) => saidOfRow(id) ?? []);
  const method = methodBy(ownMethod, open, ofRules);
  const coverWith =
    (method === ownMethod ? row.coverWith : undefined) ??
    all.find((rule) => rule.method === method)?.coverWith ??
    row.coverWith ??
    all.find((rule) => rule.coverWith !== undefined)?.coverWith;
  const minutes = own?.minutes ?? (ownMethod === row.method ? row.minutes : undefined);
  return {
    method,
    cover:
      ownCover ||
      endsCovered(method) ||
      open.some((rule) => rule.cover) ||
      ofRules.some(({ cover }) => cover === true),
    ...(coverWith !== undefined && { coverWith }),
    ...(minutes !== undefined && { minutes }),
    times: own?.times ?? 1,
    stone: ofRules.some(({ stone }) => stone === true) || own?.stone === true,
    rules: open,
    asked: [...rows, ...open].flatMap((one): Asked[] =>
      one.question && !saidOfRow(one.id)
        ? [{ row: one.id, question: one.question, ...('fact' in one && { fact: one.fact }) }]
        : [],
    ),
    answered: [...rows.flatMap(({ id }) => saidOfRow(id) ?? []), ...ofRules],
  };
}
