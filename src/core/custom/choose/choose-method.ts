import { asWritten, message, type Message } from '../../messages/index.ts';
import type { BurnerType, Fixture, Kitchen, Override } from '../../kitchen/index.ts';
import type {
  Choice,
  ChosenMethod,
  ChosenQuestion,
  CoverMaterial,
  CustomRow,
  RowQuestion,
} from '../model/types.ts';
import { citation, sourceState } from '../table/sources.ts';
import { TERMS } from '../table/terms.ts';
import { burnerChoices } from './burners.ts';
import { composed, type Composed } from './compose.ts';
import { rowsOf } from './looked.ts';
import { chooseParts } from './parts.ts';
import { withRest } from './rest.ts';
import { cannotGlow, endsCovered, saidBy, saidOf } from './said.ts';

const COVER_WITH: CoverMaterial = 'cut-to-size';

function questionOf(fixture: Fixture, rowId: string, question: RowQuestion): ChosenQuestion {
  return { id: `ask-${fixture.id}-${rowId}`, fixture: fixture.id, row: rowId, ...question };
}

/** A zone that no answer can make glow is still asked about when the answer is to glow. */
function stillOpen(fixture: Fixture, rows: readonly CustomRow[], said: Override) {
  const heats = said.method === 'glow' || said.method === 'light-heat';
  return rows.flatMap((row) =>
    heats && fixture.kind === 'cooktop' && row.method === 'not-purged' && row.question
      ? [questionOf(fixture, row.id, row.question)]
      : [],
  );
}

/** The longer of both, where either is told. */
function longer(a: number | undefined, b: number | undefined): number | undefined {
  if (a === undefined || b === undefined) return a ?? b;
  return Math.max(a, b);
}

/** What was said of the whole fixture. What it does not name stays as strict as the custom has it. */
function overridden(fixture: Fixture, kitchen: Kitchen, said: Override): Choice {
  const rows = rowsOf(fixture, kitchen);
  const [row] = rows;
  const { method } = said;
  const byCustom = composed(fixture, kitchen, []);
  const dull = cannotGlow(fixture, method);
  const questions = stillOpen(fixture, rows, said);
  const open = questions[0];
  const usual = method === row.method || dull ? row.minutes : undefined;
  const minutes = dull ? longer(said.minutes, usual) : (said.minutes ?? usual);
  const term = TERMS[method];
  const by = saidBy(said);
  const keeps = said.cover === undefined && method === byCustom.method && byCustom.cover;
  return {
    method: {
      fixture: fixture.id,
      method,
      cover: dull || (said.cover ?? (keeps || endsCovered(method))),
      ...(minutes !== undefined && { minutes }),
      ...(said.times !== undefined && said.times > 1 && { times: said.times }),
      ...(said.stone && { stone: true }),
      reason: said.text === undefined ? message('custom.said.reason') : asWritten(said.text),
      ...(term !== undefined && { term }),
      source: by,
      sourceState: 'said',
      checked: true,
      overriddenBy: by,
      wouldChange: message('custom.said.would-change'),
      ...(open && { question: open.id }),
    },
    questions,
    coverWith: byCustom.coverWith ?? row.coverWith ?? COVER_WITH,
    notes: [],
  };
}

function otherBurners(burners: readonly BurnerType[], own: NonNullable<CustomRow['own']>): Message {
  return message('custom.own-row.burners', {
    burners: burners.map((type) => message(`common.burner.${type}`)),
    why: own.why,
  });
}

function ownRowOf({ custom, saidBy: by, saidOn }: NonNullable<CustomRow['own']>): Message {
  return message('custom.own-row.said-by', { custom, saidBy: by, saidOn });
}

function sourceOf(
  row: CustomRow,
  { rules, answered }: Composed,
): Pick<ChosenMethod, 'source' | 'sourceState' | 'checked'> {
  const whole = answered.findLast((said) => said.row === row.id);
  if (whole) return { source: saidBy(whole), sourceState: 'said', checked: true };
  if (row.own) return { source: saidBy(row.own), sourceState: 'said', checked: true };
  const setting = rules.find((rule) => rule.method !== undefined);
  const first = setting ?? row;
  const keys = [row, ...rules].flatMap(({ source, alsoSources = [] }) => [source, ...alsoSources]);
  const also = [...new Set([...(first.alsoSources ?? []), ...keys])].filter(
    (key) => key !== first.source,
  );
  return {
    source: citation(first.source, also),
    sourceState: sourceState(first.source),
    checked: first.checked,
  };
}

/** By the custom's row and rules, each replaced by what was said of it. */
function byRows(fixture: Fixture, kitchen: Kitchen, said: readonly Override[]): Choice {
  const rows = rowsOf(fixture, kitchen);
  const [row] = rows;
  const planned = composed(fixture, kitchen, said);
  const { method, rules, answered } = planned;
  const questions = planned.asked.map(({ row: id, question, fact }) => ({
    ...questionOf(fixture, id, question),
    ...(fact && { fact }),
  }));
  const term = method === row.method ? row.term : TERMS[method];
  const first = questions[0];
  const last = answered.at(-1);
  return {
    method: {
      fixture: fixture.id,
      method,
      cover: planned.cover,
      ...(planned.minutes !== undefined && { minutes: planned.minutes }),
      ...(planned.times > 1 && { times: planned.times }),
      ...(planned.stone && { stone: true }),
      reason: rules.reduce<Message>(
        (reason, rule) => message('custom.reasons', { row: reason, rule: rule.reason }),
        row.reason,
      ),
      ...(term !== undefined && { term }),
      ...sourceOf(row, planned),
      ...(row.own && { overriddenBy: ownRowOf(row.own), ownRow: row.id }),
      ...(last && { overriddenBy: saidBy(last) }),
      wouldChange: row.wouldChange,
      ...(first && { question: first.id }),
    },
    questions,
    coverWith: planned.coverWith ?? COVER_WITH,
    notes: [
      ...rows.flatMap((one) => (one.note === undefined ? [] : [one.note])),
      // Burners of another type than the ones that glow are told by words: no step is theirs alone.
      ...rows
        .slice(1)
        .flatMap(({ own, burners = [] }) => (own ? [otherBurners(burners, own)] : [])),
    ],
  };
}

/** A cooktop of which no burner glows any more, by what was said of its grates or burners, says so. */
function asItsBurners(fixture: Fixture, kitchen: Kitchen, choice: Choice): Choice {
  if (fixture.kind !== 'cooktop' || choice.method.method !== 'glow') return choice;
  const burners = burnerChoices(fixture, kitchen);
  const heated = burners.filter(({ method }) => method === 'glow' || method === 'light-heat');
  if (heated.length === 0) return choice;
  const method = heated.some((one) => one.method === 'glow') ? 'glow' : 'light-heat';
  const term = TERMS[method];
  const minutes = Math.max(...heated.map((one) => one.minutes));
  return { ...choice, method: { ...choice.method, method, ...(term && { term }), minutes } };
}

function withParts(fixture: Fixture, kitchen: Kitchen, choice: Choice): Choice {
  const parts = chooseParts(fixture, choice.method.method, kitchen);
  if (parts.length === 0) return choice;
  const asked = parts.flatMap(({ question }) => (question ? [question] : []));
  const question = choice.method.question ?? asked[0]?.id;
  return {
    ...choice,
    method: {
      ...choice.method,
      parts: parts.map(({ chosen }) => chosen),
      ...(question !== undefined && { question }),
    },
    questions: [...choice.questions, ...asked],
  };
}

function finished(fixture: Fixture, kitchen: Kitchen, choice: Choice): Choice {
  return withParts(
    fixture,
    kitchen,
    withRest(fixture, kitchen, asItsBurners(fixture, kitchen, choice)),
  );
}

/** The kitchen as the household's custom sees it, whatever was said of single fixtures. */
function withoutAnswers(kitchen: Kitchen): Kitchen {
  return { ...kitchen, household: { ...kitchen.household, overrides: [] } };
}

/** How a fixture is purged by the household's custom alone, whatever was said about it. */
export function chooseByCustom(fixture: Fixture, kitchen: Kitchen): Choice {
  const plain = withoutAnswers(kitchen);
  return finished(fixture, plain, byRows(fixture, plain, []));
}

/**
 * How a fixture is purged by the household's custom, or by what their rabbi
 * said about it. A row that must be asked about gives its question and, until
 * it is answered, the stricter method. An answer changes what it speaks of,
 * and weakens nothing that it does not name.
 */
export function chooseMethod(fixture: Fixture, kitchen: Kitchen): Choice {
  const said = saidOf(fixture, kitchen);
  const whole = said.findLast((one) => one.row === undefined);
  const choice = whole ? overridden(fixture, kitchen, whole) : byRows(fixture, kitchen, said);
  return finished(fixture, kitchen, choice);
}
