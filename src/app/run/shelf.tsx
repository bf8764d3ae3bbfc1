import { Index, Show } from 'solid-js';
import type { ClockView, RunView } from '../../core/run/index.ts';
import { countdownText } from '../words/time.ts';
import { TIMER_STATUS_NAMES } from '../words/names.ts';

function fixtureName(view: RunView, clock: ClockView): string {
  return view.plan.kitchen.fixtures.find((f) => f.id === clock.fixture)?.name ?? '';
}

/** The label without the name that stands above it. */
function shortLabel(view: RunView, clock: ClockView): string {
  const name = fixtureName(view, clock);
  return name === '' ? clock.label : clock.label.replace(`: ${name}`, '');
}

/** State of a clock in words, with how late it is when it could not be told in time. */
export function clockState(clock: ClockView): string {
  if (clock.status === 'late')
    return `came due ${countdownText(clock.lateByS)} ago, while nobody could be told`;
  if (clock.alerting) return 'now';
  return clock.status === 'running' ? '' : TIMER_STATUS_NAMES[clock.status];
}

/** Every other running clock, nearest first, as a vessel that fills. */
export function Shelf(props: {
  view: RunView;
  /** Its clocks are on the stage already. */
  onStage: string | undefined;
  onChoose: (stepId: string) => void;
  /** Where no stage is shown (a fault, a review) a due clock is answered here; absent: it goes to the stage. */
  onAnswer?: ((timer: string) => void) | undefined;
}) {
  const touch = (clock: ClockView) =>
    clock.alerting && props.onAnswer ? props.onAnswer(clock.id) : props.onChoose(clock.step);
  const clocks = () =>
    props.view.clocks.filter((clock) => clock.step !== props.onStage || clock.role === 'reminder');
  return (
    <section class="shelf" aria-label="Clocks">
      <h2 class="shelf-title">Clocks</h2>
      <Show when={clocks().length > 0} fallback={<p class="quiet">No other clock is running.</p>}>
        <ul>
          <Index each={clocks()}>
            {(clock) => (
              <li>
                <button
                  type="button"
                  class="clock-row"
                  classList={{ 'clock-row--due': clock().alerting }}
                  onClick={() => touch(clock())}
                >
                  <span
                    class={`clock-fill clock-fill--${clock().role === 'hold' ? clock().purpose : 'look'}`}
                    style={{
                      transform: `scaleX(${Math.min(1, clock().atLeastS / clock().lengthS)})`,
                    }}
                  />
                  <span class="clock-name">
                    {fixtureName(props.view, clock())}
                    <span class="clock-label">{shortLabel(props.view, clock())}</span>
                  </span>
                  <span class="clock-left">{countdownText(clock().leftS)}</span>
                  <Show when={clockState(clock())}>
                    <span class="clock-state">
                      {clockState(clock())}
                      {clock().alerting && props.onAnswer ? ': touch when you have heard it' : ''}
                    </span>
                  </Show>
                </button>
              </li>
            )}
          </Index>
        </ul>
      </Show>
    </section>
  );
}
