import { Index, Show } from 'solid-js';
import type { TimerView, RunView } from '../../../../core/run/index.ts';
import { Action } from '../../../parts/action.tsx';
import { countdownText } from '../../../labels/time.ts';
import { TIMER_STATUS_NAMES } from '../../../labels/names.ts';
import { scrolls } from '../../../parts/scrolls.ts';
import { fixtureName, shortLabel } from '../step/step-text.ts';

/** State of a clock in words, with how late it is when it could not be told in time. */
export function timerState(clock: TimerView): string {
  if (clock.cameDueIn !== undefined)
    return `came due during ${clock.cameDueIn}, ${countdownText(clock.lateByS)} ago`;
  if (clock.status === 'late')
    return `came due ${countdownText(clock.lateByS)} ago, while nobody could be told`;
  if (clock.alerting) return 'now';
  return clock.status === 'running' ? '' : TIMER_STATUS_NAMES[clock.status];
}

/** Every other running clock, nearest first, as a vessel that fills. */
export function TimerList(props: {
  view: RunView;
  /** Its clocks are on the stage already. */
  onStage: string | undefined;
  onChoose: (stepId: string) => void;
  /** A wait that ends by itself: what can be told about it lies on a sheet. */
  onWait: (timer: string) => void;
  onDays: () => void;
  /** Where no stage is shown (a fault, a review) a due clock is answered here; else it goes to the stage. */
  answersHere: boolean;
  onAnswer: (timer: string) => void;
}) {
  const touch = (clock: TimerView) => {
    if (clock.alerting && props.answersHere) return props.onAnswer(clock.id);
    const staged = props.view.currentSteps.some((step) => step.step.id === clock.step);
    return staged ? props.onChoose(clock.step) : props.onWait(clock.id);
  };
  const clocks = () =>
    props.view.timers.filter((clock) => clock.step !== props.onStage || clock.role === 'reminder');
  return (
    <section class="shelf" aria-label="Clocks" ref={scrolls}>
      <div class="shelf-head">
        <h2 class="shelf-title">Clocks</h2>
        <Action class="button button--plain shelf-days" onPress={props.onDays}>
          Until when
        </Action>
      </div>
      <Show when={clocks().length > 0} fallback={<p class="quiet">No other clock is running.</p>}>
        <ul>
          <Index each={clocks()}>
            {(clock) => (
              <li>
                <Action
                  class={`clock-row${clock().alerting ? ' clock-row--due' : ''}`}
                  onPress={() => touch(clock())}
                >
                  <span
                    class={`clock-fill clock-fill--${clock().role === 'hold' ? clock().purpose : 'look'}`}
                    style={{
                      transform: `scaleX(${Math.min(1, clock().atLeastS / clock().lengthS)})`,
                    }}
                  />
                  <span class="clock-name">
                    {fixtureName(props.view, clock().fixture)}
                    <span class="clock-label">{shortLabel(props.view, clock())}</span>
                  </span>
                  <span class="clock-left">{countdownText(clock().leftS)}</span>
                  <Show when={timerState(clock())}>
                    <span class="clock-state">
                      {timerState(clock())}
                      {clock().alerting && props.answersHere
                        ? ': touch when you have heard it'
                        : ''}
                    </span>
                  </Show>
                </Action>
              </li>
            )}
          </Index>
        </ul>
      </Show>
    </section>
  );
}
