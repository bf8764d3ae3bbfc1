import { Index, Show } from 'solid-js';
import { message } from '../../../../core/messages/index.ts';
import type { RunView, TimerView } from '../../../../core/run/index.ts';
import { say, t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import { countdown } from '../../../parts/time/countdown-digits.ts';
import { scrolls } from '../../../parts/scrolls.ts';
import { timerState, timerTitle } from './timer-messages.ts';

type TimerListProps = {
  readonly view: RunView;
  /** Its timers are on the screen already. */
  readonly current: string | undefined;
  readonly onChoose: (stepId: string) => void;
  /** A wait that ends by itself: what can be told about it lies on a sheet. */
  readonly onWait: (timer: string) => void;
  readonly onDays: () => void;
  /** Where no step is shown (a fault, a review) a due timer is answered here; else it goes to its step. */
  readonly answersHere: boolean;
  readonly onAnswer: (timer: string) => void;
};

/** Every other running timer, nearest first, as a vessel that fills. */
export function TimerList(props: TimerListProps) {
  const timers = () =>
    props.view.timers.filter((timer) => timer.step !== props.current || timer.role === 'reminder');
  return (
    <section class="shelf" aria-label={t('run.timers')} data-list="timers" ref={scrolls}>
      <div class="shelf-head">
        <h2 class="shelf-title">{t('run.timers')}</h2>
        <Action class="button button--plain shelf-days" name="until-when" onPress={props.onDays}>
          {t('run.until-when')}
        </Action>
      </div>
      <Show when={timers().length > 0} fallback={<p class="quiet">{t('run.timers.none')}</p>}>
        <ul>
          <Index each={timers()}>{(timer) => <TimerRow {...props} timer={timer()} />}</Index>
        </ul>
      </Show>
    </section>
  );
}

function TimerRow(props: TimerListProps & { readonly timer: TimerView }) {
  const touch = () => {
    const { timer } = props;
    if (timer.alerting && props.answersHere) return props.onAnswer(timer.id);
    const shows = props.view.currentSteps.some((step) => step.step.id === timer.step);
    return shows ? props.onChoose(timer.step) : props.onWait(timer.id);
  };
  const title = () => timerTitle(props.view, props.timer);
  const state = () => {
    const now = timerState(props.timer);
    const here = now && props.timer.alerting && props.answersHere;
    return here ? message('run.timer.calls-here', { state: now }) : now;
  };
  return (
    <li data-timer={props.timer.id} data-role={props.timer.role} data-state={props.timer.status}>
      <Action
        class={`clock-row${props.timer.alerting ? ' clock-row--due' : ''}`}
        name="timer"
        onPress={touch}
      >
        <span
          class={`clock-fill clock-fill--${props.timer.role === 'hold' ? props.timer.purpose : 'look'}`}
          style={{
            transform: `scaleX(${Math.min(1, props.timer.atLeastS / props.timer.lengthS)})`,
          }}
        />
        <span class="clock-name">
          <Show when={title().name}>{(name) => <>{say(name())}</>}</Show>
          <span class="clock-label">{say(title().label)}</span>
        </span>
        <span class="clock-left">{say(countdown(props.timer.leftS))}</span>
        <Show when={state()}>{(words) => <span class="clock-state">{say(words())}</span>}</Show>
      </Action>
    </li>
  );
}
