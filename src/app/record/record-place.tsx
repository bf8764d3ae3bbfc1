import { createResource, For, Show } from 'solid-js';
import type { RunEntry } from '../../core/journal/index.ts';
import { recordOf, recordText, type RecordModel } from '../../core/record/index.ts';
import type { Fact } from '../../core/run/index.ts';
import { Action } from '../parts/action.tsx';
import { formatRoute } from '../state/route.ts';
import { dayAndTime } from '../words/time.ts';
import { LearnedList } from './learned.tsx';
import { RecordText } from './record-text.tsx';

const formatTime = (wallMs: number): string =>
  new Date(wallMs).toLocaleString('en-GB', {
    weekday: 'short',
    day: 'numeric',
    month: 'short',
    hour: '2-digit',
    minute: '2-digit',
  });

/** Prove, share, come back: what was done, by which custom, when, by whom. */
export function RecordPlace(props: {
  runs: readonly RunEntry[];
  openId: string | undefined;
  readFacts: (runId: string) => Promise<readonly Fact[]>;
  onSaveText: (name: string, text: string) => void;
  onExport: (runId: string) => void;
  onImport: () => void;
  nowMs: number;
}) {
  const openId = () => props.openId ?? props.runs[0]?.id;
  const [model] = createResource(openId, async (id) => {
    const facts = await props.readFacts(id);
    return facts.length > 0 ? { facts, record: recordOf(facts) } : undefined;
  });
  return (
    <main class="place record-place">
      <h1>Record</h1>
      <Show
        when={props.runs.length > 0}
        fallback={<p class="quiet">No run yet. What you do in a run is kept here.</p>}
      >
        <ul class="run-list">
          <For each={props.runs}>
            {(run) => (
              <li>
                <a
                  href={formatRoute({ place: 'record', id: run.id })}
                  aria-current={run.id === openId() ? 'true' : undefined}
                >
                  <span>{run.name}</span>
                  <span class="quiet">
                    {dayAndTime(run.openedWallMs, props.nowMs)},{' '}
                    {run.closed ? (run.closedAs ?? 'closed') : 'open'}
                  </span>
                </a>
              </li>
            )}
          </For>
        </ul>
      </Show>
      <Show when={model()}>
        {(record) => (
          <RecordPage
            record={record().record}
            facts={record().facts}
            onSaveText={() =>
              props.onSaveText('record.txt', recordText(record().record, formatTime))
            }
            onExport={() => props.onExport(openId() ?? '')}
          />
        )}
      </Show>
      <Action class="button button--plain" onPress={props.onImport}>
        Bring in a run from a file
      </Action>
    </main>
  );
}

function RecordPage(props: {
  record: RecordModel;
  facts: readonly Fact[];
  onSaveText: () => void;
  onExport: () => void;
}) {
  return (
    <article class="record-page" aria-label="Record of the run">
      <div class="button-row">
        <Action class="button" onPress={() => window.print()}>
          Print
        </Action>
        <Action class="button" onPress={props.onSaveText}>
          Save as text
        </Action>
        <Action class="button" onPress={props.onExport}>
          Save the run as a file
        </Action>
      </div>
      <RecordText text={recordText(props.record, formatTime)} />
      <LearnedList facts={props.facts} />
    </article>
  );
}
