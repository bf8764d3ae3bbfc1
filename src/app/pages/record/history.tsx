import { createMemo, createResource, createSignal, For, Show } from 'solid-js';
import {
  historyOf,
  placesInRuns,
  type PlaceInRun,
  type Report,
} from '../../../core/report/index.ts';
import { message } from '../../../core/messages/index.ts';
import { say, t, written } from '../../context/language.ts';

type HistoryProps = {
  /** Reads the reports of all runs of this kitchen: asked for when somebody wants to know. */
  reports: () => Promise<readonly Report[]>;
  /** Another kitchen is looked at when this is another one. */
  kitchen: string;
  zone: string;
};

/** What happened to one place over the runs of its kitchen. */
export function History(props: HistoryProps) {
  const [isOpen, setIsOpen] = createSignal(false);
  const [reports] = createResource(
    () => (isOpen() ? props.kitchen : undefined),
    () => props.reports(),
  );
  const places = createMemo(() => [...placesInRuns(reports() ?? [])]);
  const [picked, setPicked] = createSignal<string>();
  const place = () => (places().some(([id]) => id === picked()) ? picked() : places()[0]?.[0]);
  const history = createMemo(() => {
    const id = place();
    return id === undefined ? [] : historyOf(reports() ?? [], id, props.zone);
  });
  return (
    <details class="record-history" onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary>{t('record-page.history')}</summary>
      <Show when={reports()} fallback={<p role="status">{t('record-page.history.reading')}</p>}>
        <label class="record-history-place">
          <span>{t('record-page.history.place')}</span>
          <select value={place()} onChange={(event) => setPicked(event.currentTarget.value)}>
            <For each={places()}>{([id, name]) => <option value={id}>{written(name)}</option>}</For>
          </select>
        </label>
        <ol class="record-history-runs">
          <For each={history()} fallback={<li>{t('record-page.history.nothing')}</li>}>
            {(one) => <InRun one={one} zone={props.zone} />}
          </For>
        </ol>
      </Show>
    </details>
  );
}

function InRun(props: { one: PlaceInRun; zone: string }) {
  const row = () => props.one.row;
  const status = () => t(`record-page.status.${props.one.outcome}`);
  const lines = () => [
    ...props.one.lacks,
    ...row().how,
    ...row().when,
    ...row().rested.map((rest) => message('record-page.history.rested', { rest })),
    ...row().source,
    ...row().note,
  ];
  return (
    <li>
      <h3>
        {t('record-page.history.run', {
          wallMs: props.one.draftedWallMs,
          zone: props.zone,
          purpose: t(`common.purpose.${props.one.purpose}`),
          status: status(),
        })}
      </h3>
      <p>
        <strong>{t(`record-page.state.${row().place.state}`)}</strong>
        <Show when={row().place.isCoveredToo}>, {t('record-page.covered-too')}</Show>
      </p>
      <ul>
        <For each={lines()}>{(line) => <li>{say(line)}</li>}</For>
      </ul>
    </li>
  );
}
