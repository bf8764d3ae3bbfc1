import { Index, Show, Suspense } from 'solid-js';
import type { RunView } from '../../../../core/run/index.ts';
import { MS_PER_MINUTE, SECONDS_PER_MINUTE } from '../../../../core/units/index.ts';
import '../../../styles/run/run-days.css';
import { lazyPage, say, t } from '../../../context/language.ts';
import { wallZone } from '../../../context/zone.ts';
import { OtherZone } from '../../../parts/time/other-zone.tsx';
import { when } from '../../../parts/time/when.ts';
import { meanwhileOf } from './meanwhile.ts';
import { type DayOfWork, freeHours, runsUntil, workAhead } from './days.ts';

const OutlookLine = lazyPage(
  ['advice', 'plan'],
  async () => (await import('../../../parts/outlook/outlook-line.tsx')).OutlookLine,
);

/** More lines than this a day are counted, not listed. */
const MOST_LINES = 6;

/** What rests until when, and what hands can do now, tonight, tomorrow. */
export function DaysView(props: { view: RunView; nowMs: number }) {
  // By the minute: nothing here changes sooner.
  const minuteMs = () => Math.ceil(props.nowMs / MS_PER_MINUTE) * MS_PER_MINUTE;
  const waits = () => runsUntil(props.view, props.nowMs);
  return (
    <div class="days">
      <p class="days-free">{say(freeHours(props.view, minuteMs()))}</p>
      <Suspense>
        <OutlookLine view={props.view} nowMs={props.nowMs} />
      </Suspense>
      <OtherZone nowMs={props.nowMs} />
      <Show when={waits().length > 0}>
        <section aria-label={t('run.days.by-itself')}>
          <h2>{t('run.days.until')}</h2>
          <ul class="days-list">
            <Index each={waits()}>
              {(wait) => (
                <li>
                  <span>{say(wait().waits)}</span>
                  <strong>{say(when(wait().untilMs, props.nowMs))}</strong>
                  <span class="quiet">
                    {t('run.days.in', {
                      leftS: Math.ceil(wait().leftS / SECONDS_PER_MINUTE) * SECONDS_PER_MINUTE,
                    })}
                  </span>
                </li>
              )}
            </Index>
          </ul>
        </section>
      </Show>
      <Show when={waits().length > 0}>
        <MeanwhileHere view={props.view} />
      </Show>
      <Show when={props.view.nextRestDay}>
        {(day) => (
          <p class="days-rest">
            {t('run.days.rest-day', {
              day: day().name,
              from: when(day().fromWallMs, props.nowMs),
              to: when(day().toWallMs, props.nowMs),
            })}
          </p>
        )}
      </Show>
      <Show when={props.view.deadline}>
        {(deadline) => (
          <p class="days-rest" data-passed={deadline().leftS === 0}>
            {t(deadline().leftS > 0 ? 'run.days.deadline' : 'run.days.deadline-passed', {
              name: deadline().name,
              when: when(deadline().atWallMs, props.nowMs),
            })}{' '}
            <Show when={deadline().leftS === 0 && deadline().hardLeftS > 0 && deadline().hard}>
              {(hard) => (
                <>
                  {say(hard().asks)}{' '}
                  {t('run.days.deadline', {
                    name: hard().name,
                    when: when(hard().atWallMs, props.nowMs),
                  })}
                </>
              )}
            </Show>
          </p>
        )}
      </Show>
      <section aria-label={t('run.days.work.region')}>
        <h2>{t('run.days.work')}</h2>
        <dl class="days-work">
          <Index each={workAhead(props.view, minuteMs())}>{(day) => <Day day={day()} />}</Index>
        </dl>
        <p class="quiet">{t('run.days.work.about')}</p>
      </section>
    </div>
  );
}

/** Where to eat, wash and boil while it rests. */
function MeanwhileHere(props: { view: RunView }) {
  return (
    <section class="days-meanwhile" aria-label={t('run.meanwhile')}>
      <h2>{t('run.meanwhile')}</h2>
      <dl class="days-work">
        <Index each={meanwhileOf(props.view)}>
          {(one) => (
            <div>
              <dt>{say(one().need)}</dt>
              <dd>
                <ul>
                  <Index each={one().lines}>{(line) => <li>{say(line())}</li>}</Index>
                </ul>
              </dd>
            </div>
          )}
        </Index>
      </dl>
      <p class="quiet">
        <Show when={props.view.plan.purpose === 'passover'}>{t('run.meanwhile.leaven')} </Show>
        {t('run.meanwhile.ask')}
      </p>
    </section>
  );
}

function Day(props: { day: DayOfWork }) {
  return (
    <div data-when={props.day.when.key}>
      <dt>{say(props.day.when)}</dt>
      <dd>
        <ul>
          <Index each={props.day.work.slice(0, MOST_LINES)}>
            {(line) => (
              <li>
                {t('run.days.work.line', { work: line().work, steps: line().steps })}
                <Show when={!line().canBegin}>
                  <span class="quiet">
                    {' '}
                    {t('run.days.work.from', { wallMs: line().fromMs, zone: wallZone() })}
                  </span>
                </Show>
              </li>
            )}
          </Index>
          <Show when={props.day.work.length > MOST_LINES}>
            <li class="quiet">
              {t('run.days.work.more', { count: props.day.work.length - MOST_LINES })}
            </li>
          </Show>
        </ul>
      </dd>
    </div>
  );
}
