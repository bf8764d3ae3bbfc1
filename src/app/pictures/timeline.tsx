import { createMemo, For, Show } from 'solid-js';
import { message, type Message } from '../../core/messages/index.ts';
import type { Phase, Plan, Step } from '../../core/plan/index.ts';
import { MS_PER_SECOND, SECONDS_PER_DAY } from '../../core/units/index.ts';
import { say, t } from '../context/language.ts';
import { TimelineDays } from './timeline-days.tsx';

const WIDTH = 1000;
const ROW = 26;
const LEFT = 190;
const HEAD = 24;
/** With a second line, for the names of rest days. */
const HEAD_DAYS = 44;

type Bar = {
  readonly x: number;
  readonly w: number;
  readonly phase: Phase;
  readonly hands: boolean;
  readonly title: Message;
};
type Row = {
  /** As the kitchen has it; absent: the whole kitchen. */
  readonly name?: string;
  readonly bars: readonly Bar[];
};

/** "Clean: Sink", with its day and hour where the plan knows them. */
function titleOf({ days, kitchen, timetable }: Plan, step: Step): Message {
  if (!days) return step.title;
  const zone = kitchen.place?.zone ?? 'UTC';
  const wallMs = days.startWallMs + (timetable.startS[step.id] ?? 0) * MS_PER_SECOND;
  return message('plan-page.timeline.step', { wallMs, zone, step: step.title });
}

function rowsOf(plan: Plan): readonly Row[] {
  const scale = (WIDTH - LEFT) / Math.max(plan.timetable.finishS, 1);
  const bar = (step: Step): Bar => ({
    x: LEFT + (plan.timetable.startS[step.id] ?? 0) * scale,
    w: Math.max(2.5, step.durationS.typical * scale),
    phase: step.phase,
    hands: step.attention === 'hands',
    title: titleOf(plan, step),
  });
  const rows: Row[] = [];
  const general = plan.steps.filter((step) => step.fixture === undefined);
  if (general.length > 0) rows.push({ bars: general.map(bar) });
  for (const fixture of plan.kitchen.fixtures) {
    const steps = plan.steps.filter((step) => step.fixture === fixture.id);
    if (steps.length > 0) rows.push({ name: fixture.name, bars: steps.map(bar) });
  }
  return rows;
}

/** Most letters of a name beside its row. */
const MOST_LETTERS = 24;

function shortened(name: string): string {
  return name.length > MOST_LETTERS ? `${name.slice(0, MOST_LETTERS - 1)}…` : name;
}

/** The whole job at a glance: a row a fixture, days marked, hands-on work in ink, waiting in pale. */
export function Timeline(props: { plan: Plan }) {
  const rows = createMemo(() => rowsOf(props.plan));
  const head = () => (props.plan.days ? HEAD_DAYS : HEAD);
  const height = () => head() + rows().length * ROW + 6;
  const days = () =>
    Array.from({ length: Math.ceil(props.plan.timetable.finishS / SECONDS_PER_DAY) }, (_, i) => i);
  const x = (atS: number) =>
    LEFT + (atS * (WIDTH - LEFT)) / Math.max(props.plan.timetable.finishS, 1);
  return (
    <figure class="timeline">
      <div class="timeline-scroll" tabindex="0" role="group" aria-label={t('plan-page.timeline')}>
        <svg
          viewBox={`0 0 ${WIDTH} ${height()}`}
          role="img"
          aria-label={t('plan-page.timeline.about', {
            rows: rows().length,
            days: days().length,
          })}
        >
          <Show
            when={props.plan.days}
            fallback={
              <For each={days()}>
                {(day) => (
                  <g>
                    <line
                      class="tl-day"
                      x1={x(day * SECONDS_PER_DAY)}
                      x2={x(day * SECONDS_PER_DAY)}
                      y1="0"
                      y2={height()}
                    />
                    <text class="tl-word" x={x(day * SECONDS_PER_DAY) + 6} y="15">
                      {t('plan-page.timeline.day', { day: day + 1 })}
                    </text>
                  </g>
                )}
              </For>
            }
          >
            <TimelineDays plan={props.plan} x={x} height={height()} top={head()} />
          </Show>
          <For each={rows()}>
            {(row, i) => (
              <g transform={`translate(0 ${head() + i() * ROW})`}>
                <text class="tl-name" x={LEFT - 10} y="17" text-anchor="end">
                  {shortened(row.name ?? t('run.whole-kitchen'))}
                </text>
                <line class="tl-base" x1={LEFT} x2={WIDTH} y1={ROW - 3} y2={ROW - 3} />
                <For each={row.bars}>
                  {(bar) => (
                    <rect
                      class={`tl-bar tl-bar--${bar.phase}`}
                      classList={{ 'tl-bar--hands': bar.hands }}
                      x={bar.x}
                      y={bar.phase === 'rest' || bar.phase === 'cool' ? 9 : 4}
                      width={bar.w}
                      height={bar.phase === 'rest' || bar.phase === 'cool' ? 10 : 18}
                    >
                      <title>{say(bar.title)}</title>
                    </rect>
                  )}
                </For>
              </g>
            )}
          </For>
        </svg>
      </div>
      <figcaption class="timeline-key">
        <For each={['clean', 'rest', 'purge', 'cool', 'cover'] as const}>
          {(phase) => (
            <span>
              <i class={`tl-key tl-key--${phase}`} />
              {t(`common.phase.${phase}`)}
            </span>
          )}
        </For>
        <Show when={props.plan.days}>
          <span>
            <i class="tl-key tl-key--night" />
            {t('plan-page.timeline.key.night')}
          </span>
          <Show when={(props.plan.days?.restDays.length ?? 0) > 0}>
            <span>
              <i class="tl-key tl-key--rest-day" />
              {t('plan-page.timeline.key.rest-day')}
            </span>
          </Show>
        </Show>
      </figcaption>
    </figure>
  );
}
