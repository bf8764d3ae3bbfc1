import type { Kitchen, Override } from '../../kitchen/index.ts';
import { chooseByCustom, chooseMethod } from '../choose/choose-method.ts';
import { customTable, ownCustomOf } from '../table/tables.ts';
import type { AnsweredQuestion, ChosenQuestion } from '../model/types.ts';

/** The kitchen as the built-in custom sees it. */
function withoutOwn(kitchen: Kitchen): Kitchen {
  const { ownCustom: _own, ...household } = kitchen.household;
  return { ...kitchen, household };
}

/** What was said to a question: about its part or its row, or about the whole fixture. */
function saidTo(kitchen: Kitchen, { fixture, row, part }: ChosenQuestion): Override | undefined {
  const said = kitchen.household.overrides.filter(
    (one) => one.fixture === fixture && one.burner === undefined,
  );
  if (part !== undefined) return said.findLast((one) => one.part === part);
  const whole = said.filter((one) => one.part === undefined);
  return (
    whole.findLast((one) => one.row !== undefined && one.row === row) ??
    whole.findLast((one) => one.row === undefined)
  );
}

/**
 * The questions of a kitchen that have their answer, with who gave it and
 * when: by an answer about the fixture, or by a row of the household's own
 * custom.
 */
export function answeredQuestions(kitchen: Kitchen): readonly AnsweredQuestion[] {
  const { household, fixtures } = kitchen;
  const own = ownCustomOf(household);
  const plain = withoutOwn(kitchen);
  return fixtures.flatMap((fixture) => {
    const open = new Set(chooseMethod(fixture, kitchen).questions.map(({ id }) => id));
    return chooseByCustom(fixture, plain).questions.flatMap((question): AnsweredQuestion[] => {
      if (open.has(question.id)) return [];
      const row = own?.changedRows.find((one) => one.row === question.row);
      if (row) {
        const { saidBy, saidOn, why } = row;
        return [{ ...question, answer: why, saidBy, saidOn, by: 'own-row' }];
      }
      const said = saidTo(kitchen, question);
      if (!said) return [];
      const { saidBy, saidOn, text } = said;
      return [{ ...question, answer: text ?? '', saidBy, saidOn, by: 'override' }];
    });
  });
}

/** Rows of the built-in custom, in its order, with what the household made of them. */
export function rowsToChange(kitchen: Kitchen) {
  const own = ownCustomOf(kitchen.household);
  return customTable(kitchen.household.custom).rows.map((row) => ({
    row,
    changed: own?.changedRows.find((one) => one.row === row.id),
  }));
}
