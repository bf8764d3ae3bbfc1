import { For, Show } from 'solid-js';
import type { Message } from '../../../core/messages/index.ts';
import { rowsOf, type PlaceRow, type Report } from '../../../core/report/index.ts';
import { say, t } from '../../context/language.ts';
import { lettersOf } from './picture/record-picture.tsx';

const COLUMNS = ['place', 'how', 'when', 'rested', 'source'] as const;

/** One cell; beside the rows of a narrow screen it says itself what it is. */
function Cell(props: { of: (typeof COLUMNS)[number]; lines: readonly Message[] }) {
  return (
    <td
      data-label={t(`record-page.column.${props.of}`)}
      data-empty={props.lines.length === 0 ? '' : undefined}
    >
      <For each={props.lines} fallback={'–'}>
        {(line) => <div>{say(line)}</div>}
      </For>
    </td>
  );
}

function Place(props: { row: PlaceRow }) {
  const place = () => props.row.place;
  const state = () => t(`record-page.state.${place().state}`);
  return (
    <th scope="row">
      <span class="record-number">{place().number}</span> {place().name}
      <div class="record-state" data-state={place().state}>
        <b>{lettersOf(place())}</b> {state()}
        <Show when={place().isCoveredToo}>, {t('record-page.covered-too')}</Show>
      </div>
    </th>
  );
}

/** A row a place: what was done, when, how long it rested, by which source and whose word. */
export function RecordTable(props: { report: Report; zone: string }) {
  return (
    <table class="record-table">
      <caption>{t('record-page.table')}</caption>
      <thead>
        <tr>
          <For each={COLUMNS}>
            {(column) => <th scope="col">{t(`record-page.column.${column}`)}</th>}
          </For>
        </tr>
      </thead>
      <tbody>
        <For each={rowsOf(props.report, props.zone)}>
          {(row) => (
            <tr>
              <Place row={row} />
              <Cell of="how" lines={[...row.how, ...row.note]} />
              <Cell of="when" lines={row.when} />
              <Cell of="rested" lines={row.rested} />
              <Cell of="source" lines={row.source} />
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}
