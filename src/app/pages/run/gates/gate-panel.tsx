import { createSignal, Show, Suspense } from 'solid-js';
import type { TimerView, GateView, Request } from '../../../../core/run/index.ts';
import { lazyPage, say, t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import { SignalWord } from '../../../parts/signal-word.tsx';
import { countdown } from '../../../parts/time/countdown-digits.ts';

// Few gates are gone past, and none without a typed reason.
const GoPast = lazyPage(['run-later'], async () => (await import('./go-past.tsx')).GoPast);

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
    <div class="gate-panel" role="group" aria-label={t('run.gate')} data-gate={props.gate.gate.id}>
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
        <Suspense>
          <GoPast gate={props.gate} send={props.send} onClose={() => setOpen(false)} />
        </Suspense>
      </Show>
    </div>
  );
}
