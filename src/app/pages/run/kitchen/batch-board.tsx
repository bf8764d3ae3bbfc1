import { createMemo, For, Show } from 'solid-js';
import { message } from '../../../../core/messages/index.ts';
import type { RunView } from '../../../../core/run/index.ts';
import { say, t, translator } from '../../../context/language.ts';
import { batchBoard } from './batches.ts';

/** What has been dipped, what is in the pot now and what goes in next, for all who help. */
export function BatchBoard(props: { view: RunView }) {
  const lines = createMemo(() => batchBoard(props.view));
  const done = () => lines().filter(({ state }) => state === 'done').length;
  return (
    <Show when={lines().length > 0}>
      <section class="batch-board" aria-label={t('run.batches')}>
        <h3>{t('run.batches.line', { done: done(), of: lines().length })}</h3>
        <ol>
          <For each={lines()}>
            {({ items, state }) => (
              <li data-batch={state}>
                <span>
                  {translator().format.list(
                    items.map(({ count, name }) => say(message('utensils.count', { count, name }))),
                  )}
                </span>
                <strong>{t(`run.batches.state.${state}`)}</strong>
              </li>
            )}
          </For>
        </ol>
      </section>
    </Show>
  );
}
