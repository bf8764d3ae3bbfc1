import '../../styles/plan/plan-days.css';
import { For, Show } from 'solid-js';
import { say, t } from '../../context/language.ts';
import { parseMoment, wallTime } from '../../../core/calendar/index.ts';
import type { PlanDays } from '../../../core/plan/index.ts';
import { MS_PER_SECOND } from '../../../core/units/index.ts';

/** Rest days that are told; later ones come when the work is further. */
const TOLD = 3;

/** What the control of date and time shows: the wall clock of the kitchen, not of the tablet. */
function localText(atWallMs: number, zone: string): string {
  const { year, month, day, hour, minute } = wallTime(atWallMs, zone);
  const two = (value: number) => String(value).padStart(2, '0');
  return `${year}-${two(month)}-${two(day)}T${two(hour)}:${two(minute)}`;
}

/** When the work begins, the days of rest it goes round, and the hour it must be done by. */
export function Begin(props: {
  startWallMs: number;
  zone: string;
  /** Absent: the kitchen's place is not told. */
  days?: PlanDays;
  onChange: (startWallMs: number) => void;
}) {
  const change = (text: string) => {
    try {
      props.onChange(parseMoment('start', text, props.zone));
    } catch {
      // Half a date is no news: the control shows what is missing, and the plan stays.
    }
  };
  const ahead = () => props.days?.restDays.slice(0, TOLD) ?? [];
  const inside = () =>
    props.days?.restDays.find(
      (day) => day.fromWallMs <= props.startWallMs && props.startWallMs < day.toWallMs,
    );
  return (
    <section class="begin" aria-label={t('plan-page.begin.region')}>
      <label class="field begin-when">
        <span>{t('plan-page.begin')}</span>
        <input
          type="datetime-local"
          value={localText(props.startWallMs, props.zone)}
          onChange={(event) => change(event.currentTarget.value)}
        />
        <small class="quiet">{t('plan-page.begin.zone', { zone: props.zone })}</small>
      </label>
      <div class="begin-days">
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
                        <b>{say(day.name)}</b>,{' '}
                        {t('plan-page.begin.from-to', {
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
                    <b>{say(deadline().name)}</b>:{' '}
                    {deadline().atWallMs > props.startWallMs
                      ? t('plan-page.begin.deadline-ahead', {
                          atWallMs: deadline().atWallMs,
                          leftS: (deadline().atWallMs - props.startWallMs) / MS_PER_SECOND,
                          zone: props.zone,
                        })
                      : t('plan-page.begin.deadline-passed', {
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
      </div>
    </section>
  );
}
