import { createSignal, Show } from 'solid-js';
import type { TimerView, GateView, Request } from '../../../../core/run/index.ts';
import { say, t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import { scrolls } from '../../../parts/scrolls.ts';
import { Sheet } from '../../../parts/sheet.tsx';
import { SignalWord } from '../../../parts/signal-word.tsx';
import { countdown } from '../../../parts/time/countdown-digits.ts';

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
    <div
      class="gate-panel"
      role="group"
      aria-label={t('run.gate')}
      data-gate={props.gate.gate.id}
      ref={scrolls}
    >
      <div class="gate-head">
        <SignalWord word={props.gate.gate.signal} />
        <span class="quiet">
          {props.left > 1 ? t('run.gate.left', { count: props.left }) : t('run.gate')}
        </span>
      </div>
      <p class="gate-ask" tabindex="-1">
        {say(props.gate.gate.ask)}
      </p>
      <p class="gate-say">{say(props.gate.gate.say)}</p>
      <Show when={props.gate.value === 'no'}>
        <p class="gate-waits">{t('run.gate.no')}</p>
      </Show>
      <Show when={props.gate.settlesInS > 0 && props.gate.value === 'yes'}>
        <p class="gate-say">{t('run.gate.settles', { left: countdown(props.gate.settlesInS) })}</p>
      </Show>
      <Show when={props.waits}>
        {(timer) => (
          <p class="gate-waits">{t('run.gate.water-waits', { left: countdown(timer().leftS) })}</p>
        )}
      </Show>
      <Show when={may()}>
        <Action class="button button--plain gate-past" name="go-past" onPress={() => setOpen(true)}>
          {t('run.gate.go-past')}
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
    <Sheet label={t('run.gate.go-past.title')} onClose={props.onClose}>
      <h2>{say(props.gate.gate.ask)}</h2>
      <label class="field">
        <span>{t('run.gate.go-past.why')}</span>
        <input
          name="reason"
          value={reason()}
          onInput={(event) => setReason(event.currentTarget.value)}
          maxLength={300}
        />
      </label>
      <div class="button-row">
        <Action
          class="button button--ember"
          name="override-gate"
          disabled={reason().trim() === ''}
          onPress={goOn}
        >
          {t('run.gate.go-past.press')}
        </Action>
        <Action class="button button--plain" name="back" onPress={props.onClose}>
          {t('run.back')}
        </Action>
      </div>
    </Sheet>
  );
}
