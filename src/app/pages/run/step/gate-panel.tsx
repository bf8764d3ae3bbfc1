import { say } from '../../../context/language.ts';
import { createSignal, Show } from 'solid-js';
import type { TimerView, GateView, Request } from '../../../../core/run/index.ts';
import { Action } from '../../../parts/action.tsx';
import { scrolls } from '../../../parts/scrolls.ts';
import { Sheet } from '../../../parts/sheet.tsx';
import { SignalWord } from '../../../parts/signal-word.tsx';
import { countdownText } from '../../../labels/time.ts';

/**
 * One caution at a time, to be answered before the step can begin. One that is
 * not DANGER can be gone past with a typed reason, which the record keeps.
 */
export function GatePanel(props: {
  gate: GateView;
  left: number;
  /** Boiled water that waits while the question is answered. */
  waits?: TimerView | undefined;
  send: (request: Request) => void;
}) {
  const [open, setOpen] = createSignal(false);
  const may = () => props.gate.gate.signal !== 'DANGER' && props.gate.gate.kind === 'caution';
  return (
    <div class="gate-panel" role="group" aria-label="Before you begin" ref={scrolls}>
      <div class="gate-head">
        <SignalWord word={props.gate.gate.signal} />
        <span class="quiet">
          Before you begin{props.left > 1 ? `: ${props.left} to answer` : ''}
        </span>
      </div>
      <p class="gate-ask" tabindex="-1">
        {say(props.gate.gate.ask)}
      </p>
      <p class="gate-say">{say(props.gate.gate.say)}</p>
      <Show when={props.gate.settlesInS > 0 && props.gate.value === 'yes'}>
        <p class="gate-say">Wait {countdownText(props.gate.settlesInS)} more to be sure.</p>
      </Show>
      <Show when={props.waits}>
        {(clock) => (
          <p class="gate-waits">
            The boiled water waits: {countdownText(clock().leftS)} left, then it boils again.
          </p>
        )}
      </Show>
      <Show when={may()}>
        <Action class="button button--plain gate-past" onPress={() => setOpen(true)}>
          It is not so, and I go on
        </Action>
      </Show>
      <Show when={open()}>
        <GoPast gate={props.gate} send={props.send} onClose={() => setOpen(false)} />
      </Show>
    </div>
  );
}

function GoPast(props: { gate: GateView; send: (request: Request) => void; onClose: () => void }) {
  const [reason, setReason] = createSignal('');
  const goOn = () => {
    props.send({
      kind: 'override-gate',
      gate: props.gate.gate.id,
      scopeKey: props.gate.scopeKey,
      reason: reason().trim(),
    });
    props.onClose();
  };
  return (
    <Sheet label="Go on without it" onClose={props.onClose}>
      <h2>{say(props.gate.gate.ask)}</h2>
      <label class="field">
        <span>Why do you go on without it? It goes into the record.</span>
        <input
          value={reason()}
          onInput={(event) => setReason(event.currentTarget.value)}
          maxLength={300}
        />
      </label>
      <div class="button-row">
        <Action class="button button--ember" disabled={reason().trim() === ''} onPress={goOn}>
          Go on
        </Action>
        <Action class="button button--plain" onPress={props.onClose}>
          Back
        </Action>
      </div>
    </Sheet>
  );
}
