import { Index, Show } from 'solid-js';
import type { RestDayNow, RunView } from '../../../../core/run/index.ts';
import { say, t } from '../../../context/language.ts';
import { when } from '../../../parts/time/when.ts';
import '../../../styles/run/run-days.css';
import { runsUntil } from '../timers/days.ts';

/**
 * The still page of a rest day: it asks nothing, counts no seconds, and needs
 * no touch. What runs by itself is told by the hour it ends.
 */
export function RestDayPage(props: { view: RunView; day: RestDayNow; nowMs: number }) {
  return (
    <section class="rest-day" aria-label={t('run.rest-day')}>
      <p class="rest-day-name">{say(props.day.name)}</p>
      <h1>{t('run.rest-day.title')}</h1>
      <p>{t('run.rest-day.until', { when: when(props.day.toWallMs, props.nowMs) })}</p>
      <Show when={runsUntil(props.view, props.nowMs).length > 0}>
        <ul class="rest-day-list">
          <Index each={runsUntil(props.view, props.nowMs)}>
            {(wait) => (
              <li>
                {t('run.rest-day.wait', {
                  waits: wait().waits,
                  when: when(wait().untilMs, props.nowMs),
                })}
              </li>
            )}
          </Index>
        </ul>
      </Show>
      <Show when={props.view.hot.length > 0}>
        <p>{t('run.rest-day.hot')}</p>
        <ul class="rest-day-list">
          <Index each={props.view.hot}>{(hot) => <li>{say(hot().makeSafe)}</li>}</Index>
        </ul>
      </Show>
      <p class="quiet">{t('run.rest-day.danger')}</p>
    </section>
  );
}
