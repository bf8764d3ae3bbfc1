import { Index, Show } from 'solid-js';
import type { Request, RunView } from '../../../../core/run/index.ts';
import { Action } from '../../../parts/action.tsx';
import { Sheet } from '../../../parts/sheet.tsx';

/** Always in the same corner: one tap (or S, or Escape) opens it, a second one stops. */
export function StopSafe(props: {
  view: RunView;
  open: boolean;
  onOpen: (open: boolean) => void;
  send: (request: Request) => void;
}) {
  const stop = () => {
    props.onOpen(false);
    props.send({ kind: 'stop-run', reason: 'Stopped by the person: make safe.' });
  };
  return (
    <>
      <Action class="stop-corner" onPress={() => props.onOpen(true)}>
        <svg viewBox="0 0 24 24" aria-hidden="true">
          <path d="M8 2h8l6 6v8l-6 6H8l-6-6V8z" fill="currentColor" />
        </svg>
        Stop – make safe
      </Action>
      <Show when={props.open}>
        <Sheet label="Stop and make safe" onClose={() => props.onOpen(false)}>
          <h2>Stop – make safe</h2>
          <Show when={props.view.hot.length > 0} fallback={<p>Nothing in the plan is hot now.</p>}>
            <p>Do this first, whatever you press:</p>
            <ul class="make-safe-list">
              <Index each={props.view.hot}>{(hot) => <li>{hot().makeSafe}</li>}</Index>
            </ul>
          </Show>
          <p class="quiet">
            Fire, gas or someone hurt: get out and call the local emergency number. The app can
            wait.
          </p>
          <div class="button-row">
            <Action class="button button--danger" onPress={stop}>
              Stop the run now
            </Action>
            <Action class="button button--plain" onPress={() => props.onOpen(false)}>
              Keep going
            </Action>
          </div>
        </Sheet>
      </Show>
    </>
  );
}
