import { asWritten, message, type Message } from '../messages/index.ts';
import type { Burner, BurnerType, Fixture, Kitchen, MethodId, Override } from '../kitchen/index.ts';
import { findConditionRule, findRow, type Looked } from './find-row.ts';
import { citation } from './sources.ts';
import { tableOf } from './tables.ts';
import { TERMS } from './terms.ts';
import type {
  CoverMaterial,
  ChosenMethod,
  ChosenQuestion,
  ConditionRule,
  CustomRow,
  RowQuestion,
} from './types.ts';

/** The method of a fixture with what is still to be asked about it. */
export type Choice = {
  readonly method: ChosenMethod;
  readonly questions: readonly ChosenQuestion[];
  /** What it is covered or lined with, where it is. */
  readonly coverWith: CoverMaterial;
  /** A line to show where the work is done. */
  readonly notes: readonly Message[];
};

/** The method of one burner: an induction zone may stand beside gas. */
export type BurnerChoice = {
  readonly burner: Burner;
  readonly method: MethodId;
  readonly minutes: number;
};

const COVER_WITH: CoverMaterial = 'cut-to-size';

function lookedOf(fixture: Fixture, kitchen: Kitchen): Looked {
  return {
    kind: fixture.kind,
    purpose: kitchen.household.purpose,
    ...('material' in fixture && { material: fixture.material }),
    ...('condition' in fixture && { condition: fixture.condition }),
    ...(fixture.kind === 'oven' && { cleaning: fixture.cleaning }),
  };
}

function rowFor(fixture: Fixture, kitchen: Kitchen, burner?: Burner): CustomRow {
  const looked = lookedOf(fixture, kitchen);
  return findRow(tableOf(kitchen.household), burner ? { ...looked, burner: burner.type } : looked);
}

/** A cooktop goes by what its burners get; one that glows speaks for all. */
function rowsOf(fixture: Fixture, kitchen: Kitchen): readonly CustomRow[] {
  if (fixture.kind !== 'cooktop' || fixture.burners.length === 0) {
    return [
      fixture.kind === 'cooktop'
        ? findRow(tableOf(kitchen.household), {
            ...lookedOf(fixture, kitchen),
            burner: fixture.surface === 'glass-ceramic' ? 'radiant-glass' : 'electric-coil',
          })
        : rowFor(fixture, kitchen),
    ];
  }
  const rows = [...new Set(fixture.burners.map((burner) => rowFor(fixture, kitchen, burner)))];
  return rows.toSorted((a, b) => Number(b.method === 'glow') - Number(a.method === 'glow'));
}

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

function overridden(fixture: Fixture, rows: readonly CustomRow[], said: Override): Choice {
  const [row] = rows;
  if (!row) throw new RangeError(`rows of ${fixture.id} is empty; allowed: one or more.`);
  const { method } = said;
  const questions = stillOpen(fixture, rows, said);
  const open = questions[0];
  const minutes = said.minutes ?? (method === row.method ? row.minutes : undefined);
  const term = TERMS[method];
  const by = saidBy(said);
  return {
    method: {
      fixture: fixture.id,
      method,
      cover: said.cover ?? (method === 'cover' || method === 'line'),
      ...(minutes !== undefined && { minutes }),
      reason: said.text === undefined ? message('custom.said.reason') : asWritten(said.text),
      ...(term !== undefined && { term }),
      source: by,
      checked: true,
      overriddenBy: by,
      wouldChange: message('custom.said.would-change'),
      ...(open && { question: open.id }),
    },
    questions,
    coverWith: row.coverWith ?? COVER_WITH,
    notes: [],
  };
}

function otherBurners(burners: readonly BurnerType[], own: NonNullable<CustomRow['own']>): Message {
  return message('custom.own-row.burners', {
    burners: burners.map((type) => message(`common.burner.${type}`)),
    why: own.why,
  });
}

/** By whose word, and when. */
function saidBy(said: Pick<Override, 'saidBy' | 'saidOn'>): Message {
  return message('custom.said-by', { saidBy: said.saidBy, saidOn: said.saidOn });
}

function ownRowOf({ custom, saidBy: by, saidOn }: NonNullable<CustomRow['own']>): Message {
  return message('custom.own-row.said-by', { custom, saidBy: by, saidOn });
}

function byCustom(fixture: Fixture, rows: readonly CustomRow[], rule?: ConditionRule): Choice {
  const [row] = rows;
  if (!row) throw new RangeError(`rows of ${fixture.id} is empty; allowed: one or more.`);
  const asked = [
    ...rows.flatMap((one) => (one.question ? [questionOf(fixture, one.id, one.question)] : [])),
    ...(rule?.question ? [questionOf(fixture, rule.id, rule.question)] : []),
  ];
  const method = rule?.method ?? row.method;
  const term = method === row.method ? row.term : TERMS[method];
  const first = asked[0];
  return {
    method: {
      fixture: fixture.id,
      method,
      cover: row.cover || rule?.cover === true || method === 'line' || method === 'cover',
      ...(row.minutes !== undefined && { minutes: row.minutes }),
      reason: rule ? message('custom.reasons', { row: row.reason, rule: rule.reason }) : row.reason,
      ...(term !== undefined && { term }),
      source: row.own ? saidBy(row.own) : citation(row.source),
      checked: row.checked,
      ...(row.own && { overriddenBy: ownRowOf(row.own), ownRow: row.id }),
      wouldChange: row.wouldChange,
      ...(first && { question: first.id }),
    },
    questions: asked,
    coverWith: row.coverWith ?? rule?.coverWith ?? COVER_WITH,
    notes: [
      ...rows.flatMap((one) => (one.note === undefined ? [] : [one.note])),
      // Burners of another type than the ones that glow are told by words: no step is theirs alone.
      ...rows
        .slice(1)
        .flatMap(({ own, burners = [] }) => (own ? [otherBurners(burners, own)] : [])),
    ],
  };
}

/** How a fixture is purged by the household's custom alone, whatever was said about it. */
export function chooseByCustom(fixture: Fixture, kitchen: Kitchen): Choice {
  const rows = rowsOf(fixture, kitchen);
  const [row] = rows;
  const table = tableOf(kitchen.household);
  const rule = row && findConditionRule(table, lookedOf(fixture, kitchen), row.method);
  return byCustom(fixture, rows, rule);
}

/**
 * How a fixture is purged by the household's custom, or by what their rabbi
 * said about it. A row that must be asked about gives its question and, until
 * it is answered, the stricter method.
 */
export function chooseMethod(fixture: Fixture, kitchen: Kitchen): Choice {
  const said = kitchen.household.overrides.findLast((one) => one.fixture === fixture.id);
  return said
    ? overridden(fixture, rowsOf(fixture, kitchen), said)
    : chooseByCustom(fixture, kitchen);
}

/**
 * What each burner of a cooktop gets: by the custom's row for its type, or by
 * the household's answer for the whole cooktop. An answer cannot make an
 * induction zone glow.
 */
export function burnerChoices(
  cooktop: Extract<Fixture, { kind: 'cooktop' }>,
  kitchen: Kitchen,
): readonly BurnerChoice[] {
  const said = kitchen.household.overrides.findLast((one) => one.fixture === cooktop.id);
  return cooktop.burners.map((burner) => {
    const row = rowFor(cooktop, kitchen, burner);
    const heats = said?.method === 'glow' || said?.method === 'light-heat';
    const method =
      said === undefined || (heats && row.method === 'not-purged') ? row.method : said.method;
    const usual =
      row.minutes ??
      tableOf(kitchen.household).rows.find(
        (one) => one.method === 'glow' && one.minutes !== undefined,
      )?.minutes;
    return { burner, method, minutes: said?.minutes ?? usual ?? 0 };
  });
}
