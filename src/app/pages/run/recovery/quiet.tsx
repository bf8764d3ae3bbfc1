import { Show } from 'solid-js';
import type { TimerView, RunView } from '../../../../core/run/index.ts';
import { Countdown } from '../../../parts/countdown.tsx';
import { scrolls } from '../../../parts/scrolls.ts';
import { dayAndTime } from '../../../labels/time.ts';
import { DaysView } from '../timers/days-view.tsx';

/** Nothing for hands: the clock that ends first, then what runs until when and what can be done when. */
export function Quiet(props: { view: RunView; nowMs: number }) {
  const first = () => props.view.timers.find((clock) => clock.leftS > 0);
  const endMs = (clock: TimerView) => props.nowMs + clock.leftS * 1000;
  return (
    <section class="stage stage--quiet" aria-label="What to do now">
      <h1 class="stage-sentence" aria-live="polite">
        Nothing to do just now
      </h1>
      <Show when={first()} fallback={<p>No step can begin.</p>}>
        {(clock) => (
          <Countdown
            leftS={clock().leftS}
            label={`${clock().label}: over ${dayAndTime(endMs(clock()), props.nowMs)}`}
          />
        )}
      </Show>
      <div class="quiet-days" ref={scrolls}>
        <DaysView view={props.view} nowMs={props.nowMs} />
      </div>
      <p class="stage-next">
        Leave what rests unused. Go, sleep, come back: the clocks run on, and what came due
        meanwhile is told at once.
      </p>
    </section>
  );
}
