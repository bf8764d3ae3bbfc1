import { citation, sourceState } from '../../custom/index.ts';
import type { Household, Utensil } from '../../kitchen/index.ts';
import { asWritten, message, type Message } from '../../messages/index.ts';
import { kindRow, TABLE, type MethodRow } from '../model/table.ts';
import type { UtensilChoice, UtensilQuestion } from '../model/types.ts';

/** What the table is asked with: nothing in it is unknown but the condition. */
type Looked = Pick<Utensil, 'kind' | 'material' | 'condition'> & {
  readonly use: UtensilChoice['use'];
  readonly closedJoints: boolean;
};

function lookedOf({ kind, material, condition, use, closedJoints }: Utensil): Looked {
  const row = kindRow(kind);
  return {
    kind,
    material,
    condition,
    use: use === 'unknown' ? row.use : use,
    // Nobody looked: as the kind usually is, which asks where it may be closed.
    closedJoints: closedJoints ?? row.closedJoints,
  };
}

function holds<T>(list: readonly T[] | undefined, value: T): boolean {
  return list === undefined || list.includes(value);
}

function rowFor(looked: Looked, { custom, purpose }: Household): MethodRow {
  const row = TABLE.rows.find(
    (one) =>
      holds(one.kinds, looked.kind) &&
      holds(one.materials, looked.material) &&
      holds(one.uses, looked.use) &&
      holds(one.conditions, looked.condition) &&
      holds(one.customs, custom) &&
      holds(one.purposes, purpose) &&
      (one.closedJoints === undefined || one.closedJoints === looked.closedJoints),
  );
  if (!row)
    throw new RangeError(
      `utensils are without a row for ${JSON.stringify(looked)}; allowed: a row for everything. Add it to the table.`,
    );
  return row;
}

/** The families of keys of a row; a test walks the table and finds every one in the catalogue. */
function rowText(id: string, part: 'reason' | 'ask'): Message {
  return { key: `utensils.row.${id}.${part}`, params: {} };
}

function questionOf({ id, question }: MethodRow): UtensilQuestion | undefined {
  return (
    question && {
      about: question.about,
      ask: rowText(id, 'ask'),
      answers: question.answers.map((method) => ({
        method,
        text: message(`utensils.answer.${method}`),
      })),
    }
  );
}

/** What the household calls it, or its kind. */
function nameOf({ name, kind, designation }: Utensil): Message {
  if (name !== undefined) return asWritten(name);
  const plain = message(`utensils.kind.${kind}`);
  if (designation === 'undecided') return plain;
  return message('utensils.kind-for', {
    kind: plain,
    designation: message(`common.designation.${designation}`),
  });
}

/**
 * How a line of utensils is treated in this household: by its rabbi's word
 * where there is one, else by the first row of the table that holds.
 */
export function chooseUtensilMethod(utensil: Utensil, household: Household): UtensilChoice {
  const looked = lookedOf(utensil);
  const row = rowFor(looked, household);
  const told = {
    utensil: utensil.id,
    name: nameOf(utensil),
    count: utensil.count,
    material: utensil.material,
    use: looked.use,
    useAssumed: utensil.use === 'unknown',
    row: row.id,
  };
  const { answer } = utensil;
  if (answer) {
    const { saidBy, saidOn, text } = answer;
    return {
      ...told,
      method: answer.method,
      reason: text === undefined ? message('custom.said.reason') : asWritten(text),
      source: message('custom.said-by', { saidBy, saidOn }),
      sourceState: 'said',
      answer,
    };
  }
  const question = questionOf(row);
  return {
    ...told,
    method: row.method,
    reason: rowText(row.id, 'reason'),
    ...(row.term !== undefined && {
      term: { key: `custom.term.${row.term}`, params: {} },
    }),
    source: citation(row.source),
    sourceState: sourceState(row.source),
    ...(question && { question }),
  };
}
