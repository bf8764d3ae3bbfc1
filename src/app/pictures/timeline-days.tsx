import '../styles/plan/plan-days.css';
import { createMemo, For, Show } from 'solid-js';
import { midnightsBetween, nightsBetween, type Plan } from '../../core/plan/index.ts';
import { MS_PER_SECOND } from '../../core/units/index.ts';
import { say, t } from '../context/language.ts';

/** Widths from which a day's name is written out, and in short, in units of the picture. */
const FULL_W = 165;
const SHORT_W = 76;
const WORD_W = 34;
/** Room a rest day's name takes a letter, in units of the picture. */
const LETTER_W = 8;

/** A moment on the picture; outside of it at its edge. */
type Scale = (atS: number) => number;

/** "Sunday 29 March" as wide as there is room for. */
function nameFor(wallMs: number, zone: string, width: number): string {
  if (width >= FULL_W) return t('plan-page.timeline.date', { wallMs, zone });
  if (width >= SHORT_W) return t('plan-page.timeline.short-date', { wallMs, zone });
  return width >= WORD_W ? t('plan-page.timeline.weekday', { wallMs, zone }) : '';
}

/** As much of a rest day's name as its width holds. */
function shortened(name: string, width: number): string {
  const letters = Math.floor(width / LETTER_W);
  return name.length <= letters ? name : `${name.slice(0, Math.max(3, letters - 2))}…`;
}

/** Names of days, nights and rest days behind the rows, and the line work must not cross. */
export function TimelineDays(props: { plan: Plan; x: Scale; height: number; top: number }) {
  const zone = () => props.plan.kitchen.place?.zone ?? 'UTC';
  const startMs = () => props.plan.days?.startWallMs ?? 0;
  const endMs = () => startMs() + props.plan.timetable.finishS * MS_PER_SECOND;
  const x = (atWallMs: number) =>
    props.x(
      Math.min(Math.max(atWallMs, startMs()), endMs()) / MS_PER_SECOND - startMs() / MS_PER_SECOND,
    );
  const days = createMemo(() => {
    const starts = [startMs(), ...midnightsBetween(startMs(), endMs(), zone())];
    return starts.map((atMs, at) => {
      const left = x(atMs);
      const width = x(starts[at + 1] ?? endMs()) - left;
      return { left, name: nameFor(atMs, zone(), width - 8) };
    });
  });
  const spans = <T extends { readonly fromWallMs: number; readonly toWallMs: number }>(
    list: readonly T[],
  ) =>
    list
      .filter(({ fromWallMs, toWallMs }) => toWallMs > startMs() && fromWallMs < endMs())
      .map((span) => {
        const left = x(span.fromWallMs);
        return { ...span, left, width: x(span.toWallMs) - left };
      });
  const nights = createMemo(() => spans(nightsBetween(startMs(), endMs(), zone())));
  const rests = createMemo(() => spans(props.plan.days?.restDays ?? []));
  const deadline = () => {
    const found = props.plan.days?.deadline;
    return found && found.atWallMs > startMs() && found.atWallMs < endMs() ? found : undefined;
  };
  return (
    <g class="tl-days">
      <For each={nights()}>
        {(night) => (
          <rect
            class="tl-night"
            x={night.left}
            y={props.top}
            width={night.width}
            height={props.height - props.top}
          />
        )}
      </For>
      <For each={rests()}>
        {(rest) => (
          <g>
            <rect
              class="tl-rest-day"
              x={rest.left}
              y={props.top - 20}
              width={rest.width}
              height={props.height - props.top + 20}
            />
            <title>
              {t('plan-page.timeline.rest-day', {
                day: rest.name,
                fromWallMs: rest.fromWallMs,
                toWallMs: rest.toWallMs,
                zone: zone(),
              })}
            </title>
          </g>
        )}
      </For>
      <For each={days()}>
        {(day) => (
          <g>
            <line class="tl-day" x1={day.left} x2={day.left} y1="0" y2={props.height} />
            <text class="tl-word" x={day.left + 6} y="15">
              {day.name}
            </text>
          </g>
        )}
      </For>
      <For each={rests()}>
        {(rest) => (
          <Show when={rest.width > 4 * LETTER_W}>
            <text class="tl-word tl-rest-word" x={rest.left + 6} y={props.top - 5}>
              {shortened(say(rest.name), rest.width)}
            </text>
          </Show>
        )}
      </For>
      <Show when={deadline()}>
        {(found) => (
          <g>
            <line
              class="tl-deadline"
              x1={x(found().atWallMs)}
              x2={x(found().atWallMs)}
              y1={props.top - 20}
              y2={props.height}
            />
            <text
              class="tl-word tl-deadline-word"
              x={x(found().atWallMs) - 6}
              y={props.top - 5}
              text-anchor="end"
            >
              {t('plan-page.timeline.deadline', { wallMs: found().atWallMs, zone: zone() })}
            </text>
          </g>
        )}
      </Show>
    </g>
  );
}
