import { Show } from 'solid-js';
import type { ClockView, RunView } from '../../core/run/index.ts';
import { Countdown } from '../parts/countdown.tsx';
import { dayAndTime } from '../words/time.ts';

/** Nothing for hands: the clock that ends first, how long it still takes, and when that is. */
export function Quiet(props: { view: RunView; nowMs: number }) {
  const first = () => props.view.clocks.find((clock) => clock.leftS > 0);
  const endMs = (clock: ClockView) => props.nowMs + clock.leftS * 1000;
  return (
    <section class="stage" aria-label="What to do now">
      <h1 class="stage-sentence">Nothing to do just now</h1>
      <Show when={first()} fallback={<p>No step can begin.</p>}>
        {(clock) => (
          <>
            <div class="stage-middle">
              <Countdown
                leftS={clock().leftS}
                label={`${clock().label}: over ${dayAndTime(endMs(clock()), props.nowMs)}`}
              />
            </div>
            <p class="stage-next">
              Leave what rests unused. Go, sleep, come back: the clocks run on, and what came due
              meanwhile is told at once.
            </p>
          </>
        )}
      </Show>
    </section>
  );
}
