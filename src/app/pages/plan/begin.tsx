import { For, Show } from 'solid-js';
import { say, t } from '../../context/language.ts';
import type { PlanDays } from '../../../core/plan/index.ts';
import { MS_PER_SECOND } from '../../../core/units/index.ts';
import { localDateTime, momentIn } from '../../parts/time/local-date-time.ts';

/** Rest days that are told; later ones come when the work is further. */
const TOLD = 3;

/** When the work begins. */
export function BeginWhen(props: {
  startWallMs: number;
  zone: string;
  onChange: (startWallMs: number) => void;
}) {
  const change = (text: string) => {
    // Half a date is no news: the plan stays.
    const atMs = momentIn(text, props.zone);
    if (atMs !== undefined) props.onChange(atMs);
  };
  return (
    <label class="field begin-when">
      <span>
        {t('plan-page.begin')}{' '}
        <small class="quiet">{t('plan-page.begin.zone', { zone: props.zone })}</small>{' '}
        {/* A browser writes the date in its own order, which is not always that of the page. */}
        <small class="begin-day">
          {t('plan-page.course.day', { wallMs: props.startWallMs, zone: props.zone })}
        </small>
      </span>
      <input
        type="datetime-local"
        value={localDateTime(props.startWallMs, props.zone)}
        onChange={(event) => change(event.currentTarget.value)}
      />
    </label>
  );
}

/** The days of rest the work goes round, and the hour it must be done by. */
export function BeginDays(props: {
  startWallMs: number;
  endWallMs: number;
  zone: string;
  /** Absent: the kitchen's place is not told. */
  days?: PlanDays;
}) {
  /** Those the work meets; else the first one after it. */
  const ahead = () => {
    const all = props.days?.restDays ?? [];
    const met = all.filter(({ fromWallMs }) => fromWallMs < props.endWallMs);
    return (met.length > 0 ? met : all.slice(0, 1)).slice(0, TOLD);
  };
  const inside = () =>
    props.days?.restDays.find(
      (day) => day.fromWallMs <= props.startWallMs && props.startWallMs < day.toWallMs,
    );
  return (
    <section class="begin-days" aria-label={t('plan-page.begin.region')}>
      <Show when={props.days} fallback={<p>{t('plan-page.begin.tell-place')}</p>}>
        {(days) => (
          <>
            <Show when={inside()}>
              {(day) => (
                <p class="begin-inside">
                  {t('plan-page.begin.inside', {
                    day: say(day().name),
                    toWallMs: day().toWallMs,
                    zone: props.zone,
                  })}
                </p>
              )}
            </Show>
            <Show when={ahead().length > 0}>
              <p class="quiet">{t('plan-page.begin.nothing-in')}</p>
              <ul class="begin-rests">
                <For each={ahead()}>
                  {(day) => (
                    <li>
                      {t('plan-page.begin.from-to', {
                        day: day.name,
                        fromWallMs: day.fromWallMs,
                        toWallMs: day.toWallMs,
                        zone: props.zone,
                      })}
                    </li>
                  )}
                </For>
              </ul>
            </Show>
            <Show when={days().deadline}>
              {(deadline) => (
                <p class="begin-deadline">
                  {deadline().atWallMs > props.startWallMs
                    ? t('plan-page.begin.deadline-ahead', {
                        what: deadline().name,
                        atWallMs: deadline().atWallMs,
                        leftS: (deadline().atWallMs - props.startWallMs) / MS_PER_SECOND,
                        zone: props.zone,
                      })
                    : t('plan-page.begin.deadline-passed', {
                        what: deadline().name,
                        atWallMs: deadline().atWallMs,
                        beginWallMs: props.startWallMs,
                        zone: props.zone,
                      })}
                </p>
              )}
            </Show>
          </>
        )}
      </Show>
    </section>
  );
}
