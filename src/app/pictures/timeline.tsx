import { createMemo, For } from 'solid-js';
import type { Plan, Phase, Step } from '../../core/plan/index.ts';
import { PHASE_NAMES } from '../words/names.ts';

const WIDTH = 1000;
const ROW = 26;
const LEFT = 190;
const HEAD = 24;
const DAY_S = 86_400;

type Bar = {
  readonly x: number;
  readonly w: number;
  readonly phase: Phase;
  readonly hands: boolean;
  readonly title: string;
};
type Row = { readonly name: string; readonly bars: readonly Bar[] };

function rowsOf(plan: Plan): readonly Row[] {
  const scale = (WIDTH - LEFT) / Math.max(plan.timetable.finishS, 1);
  const bar = (step: Step): Bar => ({
    x: LEFT + (plan.timetable.startS[step.id] ?? 0) * scale,
    w: Math.max(2.5, step.durationS.typical * scale),
    phase: step.phase,
    hands: step.attention === 'hands',
    title: step.title,
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
  const height = () => HEAD + rows().length * ROW + 6;
  const days = () =>
    Array.from({ length: Math.ceil(props.plan.timetable.finishS / DAY_S) }, (_, i) => i);
  const dayX = (day: number) =>
    LEFT + (day * DAY_S * (WIDTH - LEFT)) / Math.max(props.plan.timetable.finishS, 1);
  return (
    <figure class="timeline">
      <div class="timeline-scroll" tabindex="0" role="group" aria-label="Timeline of the whole job">
        <svg
          viewBox={`0 0 ${WIDTH} ${height()}`}
          role="img"
          aria-label={`${rows().length} fixtures over ${days().length} days. The same times are listed with the steps below.`}
        >
          <For each={days()}>
            {(day) => (
              <g>
                <line class="tl-day" x1={dayX(day)} x2={dayX(day)} y1="0" y2={height()} />
                <text class="tl-word" x={dayX(day) + 6} y="15">
                  Day {day + 1}
                </text>
              </g>
            )}
          </For>
          <For each={rows()}>
            {(row, i) => (
              <g transform={`translate(0 ${HEAD + i() * ROW})`}>
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
      </figcaption>
    </figure>
  );
}
