import { Index, Show } from 'solid-js';
import type { RestDayNow, RunView } from '../../../../core/run/index.ts';
import { dayAndTime } from '../../../labels/time.ts';
import '../../../styles/run/run-days.css';
import { namesInWords, runsUntil } from '../timers/days.ts';

/**
 * The still page of a rest day: it asks nothing, counts no seconds, and needs
 * no touch. What runs by itself is told by the hour it ends.
 */
export function RestDayPage(props: { view: RunView; day: RestDayNow; nowMs: number }) {
  return (
    <section class="rest-day" aria-label="Rest day">
      <p class="rest-day-name">{props.day.name}</p>
      <h1>Rest. Nothing is asked of you.</h1>
      <p>
        The run waits, and nothing sounds, until {dayAndTime(props.day.toWallMs, props.nowMs)}. What
        comes due meanwhile is told after that.
      </p>
      <Show when={runsUntil(props.view, props.nowMs).length > 0}>
        <ul class="rest-day-list">
          <Index each={runsUntil(props.view, props.nowMs)}>
            {(wait) => (
              <li>
                {namesInWords(wait().names)}, until {dayAndTime(wait().untilMs, props.nowMs)}
              </li>
            )}
          </Index>
        </ul>
      </Show>
      <Show when={props.view.hot.length > 0}>
        <p>Still hot:</p>
        <ul class="rest-day-list">
          <Index each={props.view.hot}>{(hot) => <li>{hot().makeSafe}</li>}</Index>
        </ul>
      </Show>
      <p class="quiet">Danger to life comes first: call the local emergency number.</p>
    </section>
  );
}
