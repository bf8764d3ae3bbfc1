import { Index, Show } from 'solid-js';
import type { HotView, Request } from '../../../../core/run/index.ts';
import { Action } from '../../../parts/action.tsx';

/** What is hot, how it is made safe, and a person's word for each that waits for one. */
export function MakeSafeRows(props: {
  hot: readonly HotView[];
  /** Does this one wait for a word now? */
  asks: (hot: HotView) => boolean;
  send: (request: Request) => void;
}) {
  return (
    <ul class="make-safe-rows">
      <Index each={props.hot}>
        {(hot) => (
          <li>
            <span>{hot().makeSafe}</span>
            <Show when={hot().confirmed}>
              <span class="quiet">safe</span>
            </Show>
            <Show when={!hot().confirmed && props.asks(hot())}>
              <Action
                class="button button--ember"
                onPress={() => props.send({ kind: 'confirm-safe', step: hot().step })}
              >
                It is safe
              </Action>
            </Show>
          </li>
        )}
      </Index>
    </ul>
  );
}
