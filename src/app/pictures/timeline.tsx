import { say } from '../context/language.ts';
import { createMemo, For, Show } from 'solid-js';
import { clockText, dayText, type Plan, type Phase, type Step } from '../../core/plan/index.ts';
import { PHASE_NAMES } from '../labels/names.ts';
import { TimelineDays } from './timeline-days.tsx';

const WIDTH = 1000;
const ROW = 26;
const LEFT = 190;
const HEAD = 24;
/** With a second line, for the names of rest days. */
const HEAD_DAYS = 44;
const DAY_S = 86_400;

type Bar = {
  readonly x: number;
  readonly w: number;
  readonly phase: Phase;
  readonly hands: boolean;
  readonly title: string;
};
type Row = { readonly name: string; readonly bars: readonly Bar[] };

/** "Clean: Sink", with its day and hour where the plan knows them. */
function titleOf({ days, kitchen, timetable }: Plan, step: Step): string {
  if (!days) return say(step.title);
  const zone = kitchen.place?.zone ?? 'UTC';
  const atMs = days.startWallMs + (timetable.startS[step.id] ?? 0) * 1000;
  return `${dayText(atMs, zone)} ${clockText(atMs, zone)}: ${say(step.title)}`;
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
  if (general.length > 0) rows.push({ name: 'Whole kitchen', bars: general.map(bar) });
  for (const fixture of plan.kitchen.fixtures) {
    const steps = plan.steps.filter((step) => step.fixture === fixture.id);
    if (steps.length > 0) rows.push({ name: fixture.name, bars: steps.map(bar) });
  }
  return rows;
}

/** The whole job at a glance: a row a fixture, days marked, hands-on work in ink, waiting in pale. */
export function Timeline(props: { plan: Plan }) {
  const rows = createMemo(() => rowsOf(props.plan));
  const head = () => (props.plan.days ? HEAD_DAYS : HEAD);
  const height = () => head() + rows().length * ROW + 6;
  const days = () =>
    Array.from({ length: Math.ceil(props.plan.timetable.finishS / DAY_S) }, (_, i) => i);
  const x = (atS: number) =>
    LEFT + (atS * (WIDTH - LEFT)) / Math.max(props.plan.timetable.finishS, 1);
  return (
    <figure class="timeline">
      <div class="timeline-scroll" tabindex="0" role="group" aria-label="Timeline of the whole job">
        <svg
          viewBox={`0 0 ${WIDTH} ${height()}`}
          role="img"
          aria-label={`${rows().length} fixtures over ${days().length} days. The same times are listed with the steps below.`}
        >
          <Show
            when={props.plan.days}
            fallback={
              <For each={days()}>
                {(day) => (
                  <g>
                    <line
                      class="tl-day"
                      x1={x(day * DAY_S)}
                      x2={x(day * DAY_S)}
                      y1="0"
                      y2={height()}
                    />
                    <text class="tl-word" x={x(day * DAY_S) + 6} y="15">
                      Day {day + 1}
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
                  {row.name.length > 24 ? `${row.name.slice(0, 23)}…` : row.name}
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
                      <title>{bar.title}</title>
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
              {PHASE_NAMES[phase]}
            </span>
          )}
        </For>
        <Show when={props.plan.days}>
          <span>
            <i class="tl-key tl-key--night" />
            Night
          </span>
          <Show when={(props.plan.days?.restDays.length ?? 0) > 0}>
            <span>
              <i class="tl-key tl-key--rest-day" />
              Sabbath or festival
            </span>
          </Show>
        </Show>
      </figcaption>
    </figure>
  );
}
