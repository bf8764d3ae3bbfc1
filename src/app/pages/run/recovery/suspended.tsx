import { Index, Show } from 'solid-js';
import type { GateView, Request, RunView } from '../../../../core/run/index.ts';
import { isHere, say, t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import { countdown } from '../../../parts/time/countdown-digits.ts';
import { SignalWord } from '../../../parts/signal-word.tsx';
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

type SuspendedProps = { view: RunView; send: (request: Request) => void };

/** A fault stopped progress: what to do, then each fault cleared, each gate opened, then a person resumes. */
export function Suspended(props: SuspendedProps) {
  /** A burn has its own steps and its own clock, above. */
  const cooling = () => props.view.coolings.length > 0;
  const open = () => props.view.faults.filter((fault) => !fault.cleared && fault.kind !== 'burned');
  const unwinding = () =>
    props.view.steps.filter((s) => s.status === 'unwinding').map((s) => s.step.id);
  /** To be made safe now; the rest of what is hot goes on. */
  const waiting = () => props.view.hot.filter((hot) => unwinding().includes(hot.step));
  const goingOn = () => props.view.hot.filter((hot) => !unwinding().includes(hot.step));
  const gates = () => (open().length > 0 || cooling() ? [] : closedConditions(props.view));
  const title = () => {
    if (cooling()) return t('run.suspended.meanwhile');
    const why = open()[0]?.name ?? props.view.reason;
    return why ? say(why) : t('run.suspended.stopped');
  };
  return (
    <section class="stage suspended" aria-label={t('run.suspended')}>
      <Show when={!cooling() || open().length + props.view.hot.length > 0}>
        <h1 class="stage-sentence">{title()}</h1>
      </Show>
      <MakeSafeRows hot={waiting()} asks={() => true} send={props.send} />
      <Show when={goingOn().length > 0}>
        <Show when={open().length === 0}>
          <p class="quiet">{t('run.suspended.go-on')}</p>
        </Show>
        <MakeSafeRows hot={goingOn()} asks={() => false} send={props.send} />
      </Show>
      <Index each={open()}>
        {(fault) => (
          <div class="review-question" data-fault={fault().kind}>
            <Show when={isHere('run-later')}>
              <ol class="do-this">
                <Index each={fault().doThis}>{(line) => <li>{say(line())}</li>}</Index>
              </ol>
            </Show>
            <Action
              class="button button--ember"
              name="clear-fault"
              onPress={() => props.send({ kind: 'clear-fault', faultId: fault().id })}
            >
              {t('run.suspended.clear')}
            </Action>
          </div>
        )}
      </Index>
      <Index each={gates()}>{(gate) => <ClosedGate {...props} gate={gate()} />}</Index>
      <Show
        when={props.view.resumeBlockedBy.length === 0}
        fallback={
          <Show when={!cooling()}>
            <ul class="quiet">
              <Index each={props.view.resumeBlockedBy}>{(why) => <li>{say(why())}</li>}</Index>
            </ul>
          </Show>
        }
      >
        <div class="main-bar">
          <Action class="main-action" name="resume" onPress={() => props.send({ kind: 'resume' })}>
            {t('run.resume')}
          </Action>
        </div>
      </Show>
    </section>
  );
}

/** A condition that must be seen to hold before the run goes on. */
function ClosedGate(props: SuspendedProps & { gate: GateView }) {
  const yes = () =>
    props.send({
      kind: 'answer-gate',
      gate: props.gate.gate.id,
      scopeKey: props.gate.scopeKey,
      answer: 'yes',
    });
  return (
    <div class="review-question" data-gate={props.gate.gate.id}>
      <SignalWord word={props.gate.gate.signal} />
      <p class="review-ask">{say(props.gate.gate.ask)}</p>
      <Show
        when={props.gate.value !== 'yes'}
        fallback={
          <p class="quiet">{t('run.gate.settles', { left: countdown(props.gate.settlesInS) })}</p>
        }
      >
        <Action class="button button--ember" name="answer-gate" onPress={yes}>
          {t('run.action.yes')}
        </Action>
      </Show>
    </div>
  );
}
