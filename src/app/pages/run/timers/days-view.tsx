import { Index, Show } from 'solid-js';
import type { RunView } from '../../../../core/run/index.ts';
import '../../../styles/run/run-days.css';
import { dayAndTime, lengthInWords, timeOfDay } from '../../../labels/time.ts';
import { namesInWords, runsUntil, workAhead } from './days.ts';

/** More lines than this a day are counted, not listed. */
const MOST_LINES = 6;

/** What rests until when, and what hands can do now, tonight, tomorrow. */
export function DaysView(props: { view: RunView; nowMs: number }) {
  // By the minute: nothing here changes sooner.
  const minuteMs = () => Math.ceil(props.nowMs / 60_000) * 60_000;
  const waits = () => runsUntil(props.view, props.nowMs);
  return (
    <div class="days">
      <Show when={waits().length > 0}>
        <section aria-label="What runs by itself">
          <h2>Until when</h2>
          <ul class="days-list">
            <Index each={waits()}>
              {(wait) => (
                <li>
                  <span>{namesInWords(wait().names)}</span>
                  <strong>{dayAndTime(wait().untilMs, props.nowMs)}</strong>
                  <span class="quiet">in {lengthInWords(Math.ceil(wait().leftS / 60) * 60)}</span>
                </li>
              )}
            </Index>
          </ul>
        </section>
      </Show>
      <Show when={props.view.nextRestDay}>
        {(day) => (
          <p class="days-rest">
            {day().name} from {dayAndTime(day().fromWallMs, props.nowMs)} to{' '}
            {dayAndTime(day().toWallMs, props.nowMs)}: nothing is asked of you then, and nothing
            sounds.
          </p>
        )}
      </Show>
      <section aria-label="What hands can do">
        <h2>What can be done when</h2>
        <dl class="days-work">
          <Index each={workAhead(props.view, minuteMs())}>
            {(day) => (
              <div>
                <dt>{day().when}</dt>
                <dd>
                  <ul>
                    <Index each={day().work.slice(0, MOST_LINES)}>
                      {(one) => (
                        <li>
                          {one().name}
                          <Show when={one().steps > 1}>, {one().steps} steps</Show>
                          <Show when={day().when !== 'Now'}>
                            <span class="quiet"> from {timeOfDay(one().fromMs)}</span>
                          </Show>
                        </li>
                      )}
                    </Index>
                    <Show when={day().work.length > MOST_LINES}>
                      <li class="quiet">and {day().work.length - MOST_LINES} more</li>
                    </Show>
                  </ul>
                </dd>
              </div>
            )}
          </Index>
        </dl>
        <p class="quiet">The earliest times, by what each step waits for; hands may need longer.</p>
      </section>
    </div>
  );
}
