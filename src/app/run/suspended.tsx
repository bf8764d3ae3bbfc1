import { Index, Show } from 'solid-js';
import type { GateView, Request, RunView } from '../../core/run/index.ts';
import { Action } from '../parts/action.tsx';
import { SignalWord } from '../parts/signal-word.tsx';
import { countdownText } from '../words/time.ts';

/** Condition gates that are not open, from any step that names them. */
function closedConditions(view: RunView): readonly GateView[] {
  const seen = new Map<string, GateView>();
  for (const step of view.steps)
    for (const gate of step.gates)
      if (gate.gate.kind === 'condition' && (gate.value !== 'yes' || gate.settlesInS > 0))
        seen.set(gate.gate.id, gate);
  return [...seen.values()];
}

/** A fault stopped progress: what to do, then each fault cleared, each gate opened, then a person resumes. */
export function Suspended(props: { view: RunView; send: (request: Request) => void }) {
  const open = () => props.view.faults.filter((fault) => !fault.cleared);
  const gates = () => (open().length > 0 ? [] : closedConditions(props.view));
  return (
    <section class="stage suspended" aria-label="Fault">
      <h1 class="stage-sentence">{open()[0]?.name ?? props.view.reason ?? 'Stopped'}</h1>
      <Show when={props.view.hot.length > 0}>
        <ul class="make-safe-list">
          <Index each={props.view.hot}>{(hot) => <li>{hot().makeSafe}</li>}</Index>
        </ul>
      </Show>
      <Index each={open()}>
        {(fault) => (
          <div class="review-question">
            <ol class="do-this">
              <Index each={fault().doThis}>{(line) => <li>{line()}</li>}</Index>
            </ol>
            <Action
              class="button button--ember"
              onPress={() => props.send({ kind: 'clear-fault', faultId: fault().id })}
            >
              It is put right
            </Action>
          </div>
        )}
      </Index>
      <Index each={gates()}>
        {(gate) => (
          <div class="review-question">
            <SignalWord word={gate().gate.signal} />
            <p class="review-ask">{gate().gate.ask}</p>
            <Show
              when={gate().value !== 'yes'}
              fallback={
                <p class="quiet">Wait {countdownText(gate().settlesInS)} more to be sure.</p>
              }
            >
              <Action
                class="button button--ember"
                onPress={() =>
                  props.send({
                    kind: 'answer-gate',
                    gate: gate().gate.id,
                    scopeKey: gate().scopeKey,
                    answer: 'yes',
                  })
                }
              >
                Yes, it is so
              </Action>
            </Show>
          </div>
        )}
      </Index>
      <Show when={open().length === 0 && gates().length === 0}>
        <div class="main-bar">
          <Action class="main-action" onPress={() => props.send({ kind: 'resume' })}>
            Go on
          </Action>
        </div>
      </Show>
    </section>
  );
}
