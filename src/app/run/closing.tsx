import { Index, Show } from 'solid-js';
import type { Request, RunView } from '../../core/run/index.ts';
import { Action } from '../parts/action.tsx';

/** The run is stopping: each hot thing is made safe and confirmed, one line each. */
export function Closing(props: { view: RunView; send: (request: Request) => void }) {
  return (
    <section class="stage closing" aria-label="Make safe">
      <h1 class="stage-sentence">Make these safe, then say so</h1>
      <ul class="make-safe-rows">
        <Index each={props.view.hot}>
          {(hot) => (
            <li>
              <span>{hot().makeSafe}</span>
              <Show when={!hot().confirmed} fallback={<span class="quiet">safe</span>}>
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
    </section>
  );
}
