import {
  isGas,
  type Burner,
  type Fixture,
  type Kitchen,
  type MethodId,
} from '../../kitchen/index.ts';
import type { CustomRow } from '../model/types.ts';
import { tableOf } from '../table/tables.ts';
import { rowFor } from './looked.ts';
import { saidOf } from './said.ts';

type Cooktop = Extract<Fixture, { kind: 'cooktop' }>;

/** The method of one burner: an induction zone may stand beside gas. */
export type BurnerChoice = {
  readonly burner: Burner;
  readonly method: MethodId;
  readonly minutes: number;
};

type Way = { readonly method: MethodId; readonly minutes?: number | undefined };

function heats({ method }: Way): boolean {
  return method === 'glow' || method === 'light-heat';
}

/** What was said of its grates: without them its head takes the full flame, and nothing reddens. */
function byGrates(cooktop: Cooktop, kitchen: Kitchen, burner: Burner, row: CustomRow) {
  if (!isGas(burner.type)) return undefined;
  const said = kitchen.household.overrides.findLast(
    (one) => one.fixture === cooktop.id && one.part === 'grates',
  );
  if (!said) return undefined;
  const way: Way = heats(said)
    ? { method: said.method, minutes: said.minutes }
    : { method: heats(row) ? 'light-heat' : row.method };
  return way;
}

/** What was said that holds for this burner: of itself, of its grates, of its row, of the whole. */
function saidFor(cooktop: Cooktop, kitchen: Kitchen, burner: Burner, row: CustomRow) {
  const own = kitchen.household.overrides.findLast(
    (one) => one.fixture === cooktop.id && one.burner === burner.id,
  );
  const said = saidOf(cooktop, kitchen);
  return (
    own ??
    byGrates(cooktop, kitchen, burner, row) ??
    said.findLast((one) => one.row === row.id) ??
    said.findLast((one) => one.row === undefined)
  );
}

/**
 * What each burner of a cooktop gets: by the custom's row for its type, or by
 * what the household was told of it, of its grates or of the whole cooktop. An
 * answer cannot make an induction zone glow.
 */
export function burnerChoices(cooktop: Cooktop, kitchen: Kitchen): readonly BurnerChoice[] {
  return cooktop.burners.map((burner) => {
    const row = rowFor(cooktop, kitchen, burner);
    const said = saidFor(cooktop, kitchen, burner, row);
    const way: Way =
      said === undefined || (heats(said) && row.method === 'not-purged') ? row : said;
    const usual =
      row.minutes ??
      tableOf(kitchen.household).rows.find(
        (one) => one.method === 'glow' && one.minutes !== undefined,
      )?.minutes;
    return { burner, method: way.method, minutes: said?.minutes ?? usual ?? 0 };
  });
}
