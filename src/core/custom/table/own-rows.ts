import { asWritten, message } from '../../messages/index.ts';
import type { OwnCustom, OwnRow } from '../../kitchen/index.ts';
import { TERMS } from './terms.ts';
import type { CustomRow, CustomTable } from '../model/types.ts';

function ownRow(base: CustomRow, changed: OwnRow, custom: string): CustomRow {
  const { question: _answered, minutes: usual, term: _usual, ...kept } = base;
  const { method } = changed;
  const minutes = changed.minutes ?? (method === base.method ? usual : undefined);
  const term = method === base.method ? base.term : TERMS[method];
  return {
    ...kept,
    method,
    // What it does not name is not weakened.
    cover:
      changed.cover ??
      (method === 'cover' || method === 'line' || (method === base.method && base.cover)),
    ...(minutes !== undefined && { minutes }),
    ...(term !== undefined && { term }),
    reason: asWritten(changed.why),
    wouldChange: message('custom.own-row.would-change'),
    checked: true,
    own: { ...changed, custom },
  };
}

/**
 * A built-in table with the rows a household changed. What a row is looked up
 * by stays; its question is answered by whoever said it.
 */
export function withOwnRows(table: CustomTable, own: OwnCustom): CustomTable {
  const changes = new Map(own.changedRows.map((one) => [one.row, one]));
  return {
    ...table,
    rows: table.rows.map((row) => {
      const changed = changes.get(row.id);
      return changed ? ownRow(row, changed, own.name) : row;
    }),
  };
}
