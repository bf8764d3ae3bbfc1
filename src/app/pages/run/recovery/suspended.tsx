import { say } from '../../../context/language.ts';
import { Index, Show } from 'solid-js';
import type { GateView, Request, RunView } from '../../../../core/run/index.ts';
import { Action } from '../../../parts/action.tsx';
import { SignalWord } from '../../../parts/signal-word.tsx';
import { countdownText } from '../../../labels/time.ts';
import { MakeSafeRows } from './make-safe-rows.tsx';

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
  const unwinding = () =>
    props.view.steps.filter((s) => s.status === 'unwinding').map((s) => s.step.id);
  const gates = () => (open().length > 0 ? [] : closedConditions(props.view));
  return (
    <section class="stage suspended" aria-label="Fault">
      <h1 class="stage-sentence">{open()[0]?.name ?? props.view.reason ?? 'Stopped'}</h1>
      <Show when={open().length === 0 && props.view.hot.length > 0}>
        <p class="quiet">
          Heat and clocks go on meanwhile: stay with them. Only if you end it here, make it safe:
        </p>
      </Show>
      <MakeSafeRows
        hot={props.view.hot}
        asks={(hot) => unwinding().includes(hot.step)}
        send={props.send}
      />
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
            <p class="review-ask">{say(gate().gate.ask)}</p>
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
      <Show
        when={props.view.resumeBlockedBy.length === 0}
        fallback={
          <ul class="quiet">
            <Index each={props.view.resumeBlockedBy}>{(why) => <li>{why()}</li>}</Index>
          </ul>
        }
      >
        <div class="main-bar">
          <Action class="main-action" onPress={() => props.send({ kind: 'resume' })}>
            Go on
          </Action>
        </div>
      </Show>
    </section>
  );
}
