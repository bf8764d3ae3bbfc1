import { createMemo, For, Show } from 'solid-js';
import { nightsBetween, type Plan, type TimeSpan } from '../../../core/plan/index.ts';
import { MS_PER_SECOND } from '../../../core/units/index.ts';
import { say, t } from '../../context/language.ts';
import { daysOf, partsOf, ticksOf } from './days.ts';
import { textPx, type Frame, type WallClock } from './frame.ts';

const DAY_PX = 15;
const WORD_PX = 13;
/** Base lines of the three lines of the axis, px from the top. */
const DAY_Y = 14;
const PART_Y = 31;
const TICK_Y = 48;
/** Where the rows may begin. */
export const AXIS_PX = 56;

type Shade = { readonly left: number; readonly width: number; readonly word?: string };

/** Days, parts of the day and hours over the rows; nights and days of rest behind them, by name. */
export function CourseAxis(props: {
  plan: Plan;
  frame: Frame;
  clock: WallClock;
  idle: readonly TimeSpan[];
  heightPx: number;
}) {
  const isIdle = (atS: number) => props.idle.some(({ fromS, toS }) => fromS <= atS && atS < toS);
  const atS = (wallMs: number) => (wallMs - props.clock.startWallMs) / MS_PER_SECOND;
  const spans = (list: readonly { readonly fromWallMs: number; readonly toWallMs: number }[]) =>
    list
      .map((span) => ({
        left: props.frame.x(Math.max(0, atS(span.fromWallMs))),
        right: props.frame.x(Math.min(props.frame.toS, Math.max(0, atS(span.toWallMs)))),
      }))
      .map(({ left, right }) => ({ left, width: right - left }));
  const rests = createMemo(() => {
    const all = props.plan.days?.restDays ?? [];
    return spans(all).flatMap((span, n): Shade[] => {
      const day = all[n];
      return day && span.width > 1 ? [{ ...span, word: say(day.name) }] : [];
    });
  });
  const inRest = (left: number, right: number) =>
    rests().some((one) => left < one.left + one.width && right > one.left);
  const nights = createMemo(() => {
    const { startWallMs, zone } = props.clock;
    const all = spans(
      nightsBetween(startWallMs, startWallMs + props.frame.toS * MS_PER_SECOND, zone),
    );
    return all.filter(
      ({ left, width }) => width > 1 && !inRest(left + width / 2, left + width / 2),
    );
  });
  const days = createMemo(() =>
    daysOf(props.frame, props.clock).map(({ left, right, of: wallMs }) => {
      const at = { wallMs, zone: props.clock.zone };
      const names = [
        t('plan-page.course.day', at),
        t('plan-page.course.weekday', at),
        t('plan-page.course.short-weekday', at),
      ];
      return { left, name: names.find((one) => textPx(one, DAY_PX) + 8 <= right - left) ?? '' };
    }),
  );
  const parts = createMemo(() =>
    partsOf(props.frame, props.clock, isIdle).flatMap(({ left, right, of }) => {
      const word = t(`plan-page.course.part.${of}`);
      return of !== 'night' && textPx(word, WORD_PX) + 6 <= right - left && !inRest(left, right)
        ? [{ x: (left + right) / 2, word }]
        : [];
    }),
  );
  /** A name over its shade, where it has room and no other name lies there. */
  const shadeWord = ({ left, width, word }: Shade) =>
    word !== undefined && textPx(word, WORD_PX) + 4 <= width
      ? { x: left + width / 2, word }
      : undefined;
  return (
    <g class="course-axis">
      <For each={nights()}>
        {(night) => (
          <>
            <rect
              class="course-night"
              x={night.left}
              y={PART_Y - 13}
              width={night.width}
              height={props.heightPx - PART_Y + 13}
            />
            <Show
              when={
                !inRest(night.left, night.left + night.width) &&
                shadeWord({ ...night, word: t('plan-page.course.part.night') })
              }
            >
              {(word) => (
                <text class="course-part" x={word().x} y={PART_Y} text-anchor="middle">
                  {word().word}
                </text>
              )}
            </Show>
          </>
        )}
      </For>
      <For each={rests()}>
        {(rest) => (
          <>
            <rect
              class="course-rest-day"
              x={rest.left}
              y={PART_Y - 13}
              width={rest.width}
              height={props.heightPx - PART_Y + 13}
            />
            <Show
              when={shadeWord(rest)}
              fallback={
                rest.width > 14 && (
                  <text
                    class="course-part course-part--rest"
                    transform={`translate(${rest.left + rest.width / 2 + 4} ${TICK_Y + 8}) rotate(90)`}
                  >
                    {rest.word}
                  </text>
                )
              }
            >
              {(word) => (
                <text
                  class="course-part course-part--rest"
                  x={word().x}
                  y={PART_Y}
                  text-anchor="middle"
                >
                  {word().word}
                </text>
              )}
            </Show>
          </>
        )}
      </For>
      <For each={days()}>
        {(day) => (
          <>
            <line class="course-day" x1={day.left} x2={day.left} y1="2" y2={props.heightPx} />
            <text class="course-day-name" x={day.left + 5} y={DAY_Y}>
              {day.name}
            </text>
          </>
        )}
      </For>
      <For each={parts()}>
        {(part) => (
          <text class="course-part" x={part.x} y={PART_Y} text-anchor="middle">
            {part.word}
          </text>
        )}
      </For>
      <For each={ticksOf(props.frame, props.clock, isIdle)}>
        {(tick) => (
          <>
            <line class="course-tick" x1={tick.x} x2={tick.x} y1={TICK_Y + 3} y2={props.heightPx} />
            <Show
              when={
                tick.x + 18 <= props.frame.widthPx &&
                tick.x - 16 >= (props.frame.isNarrow ? 0 : props.frame.leftPx - 16)
              }
            >
              <text class="course-hour" x={tick.x} y={TICK_Y} text-anchor="middle">
                {t('plan-page.course.hour', { wallMs: tick.wallMs, zone: props.clock.zone })}
              </text>
            </Show>
          </>
        )}
      </For>
    </g>
  );
}
