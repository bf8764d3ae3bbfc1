import { createMemo, For, Show } from 'solid-js';
import { nightsBetween, type Plan, type TimeSpan } from '../../../core/plan/index.ts';
import { MS_PER_SECOND } from '../../../core/units/index.ts';
import { say, t } from '../../context/language.ts';
import { daysOf, partsOf, ticksOf } from './days.ts';
import { textPx, type Frame, type WallClock } from './frame.ts';
import { isMirrored, upright } from './mirror.ts';

const DAY_PX = 15;
const WORD_PX = 13;
/** Base lines of the three lines of the axis, px from the top. */
const DAY_Y = 14;
const PART_Y = 31;
const TICK_Y = 48;
/** Shades reach up to over the names of the parts of the day. */
const SHADE_Y = PART_Y - 13;
/** A name that stands upright in its shade needs this, px. */
const UPRIGHT_PX = 14;

type Props = {
  plan: Plan;
  frame: Frame;
  clock: WallClock;
  idle: readonly TimeSpan[];
  heightPx: number;
};
type WallSpan = { readonly fromWallMs: number; readonly toWallMs: number };
type Shade = { readonly left: number; readonly width: number; readonly word: string };
type Word = { readonly x: number; readonly text: string };

function shadeOf({ frame, clock }: Props, { fromWallMs, toWallMs }: WallSpan, word: string): Shade {
  const x = (wallMs: number) =>
    frame.x(Math.min(frame.toS, Math.max(0, (wallMs - clock.startWallMs) / MS_PER_SECOND)));
  return { left: x(fromWallMs), width: x(toWallMs) - x(fromWallMs), word };
}

const isIn = (x: number, { left, width }: Shade): boolean => x >= left && x <= left + width;

/** Days of rest, and the nights between them. */
function shadesOf(props: Props): {
  readonly rests: readonly Shade[];
  readonly nights: readonly Shade[];
} {
  const { startWallMs, zone } = props.clock;
  const isSeen = ({ width }: Shade) => width > 1;
  const rests = (props.plan.days?.restDays ?? [])
    .map((day) => shadeOf(props, day, say(day.name)))
    .filter(isSeen);
  const untilMs = startWallMs + props.frame.toS * MS_PER_SECOND;
  // Without a place the plan counts its nights from the start of the work.
  const told = props.plan.days
    ? nightsBetween(startWallMs, untilMs, zone)
    : props.idle.map(({ fromS, toS }) => ({
        fromWallMs: startWallMs + fromS * MS_PER_SECOND,
        toWallMs: startWallMs + toS * MS_PER_SECOND,
      }));
  const nights = told
    .map((night) => shadeOf(props, night, t('plan-page.course.part.night')))
    .filter(isSeen)
    .filter(({ left, width }) => !rests.some((rest) => isIn(left + width / 2, rest)));
  return { rests, nights };
}

/** Mornings, afternoons, evenings, where their names have room beside those of days of rest. */
function partWords({ frame, clock, idle }: Props, rests: readonly Shade[]): readonly Word[] {
  const isIdle = (atS: number) => idle.some(({ fromS, toS }) => fromS <= atS && atS < toS);
  return partsOf(frame, clock, isIdle).flatMap(({ left, right, of }): Word[] => {
    const text = t(`plan-page.course.part.${of}`);
    const hasRoom = of !== 'night' && textPx(text, WORD_PX) + 6 <= right - left;
    const isRest = rests.some((rest) => left < rest.left + rest.width && right > rest.left);
    return hasRoom && !isRest ? [{ x: (left + right) / 2, text }] : [];
  });
}

/** The day's name as long as it has room. */
function dayWords({ frame, clock }: Props): readonly Word[] {
  return daysOf(frame, clock).map(({ left, right, of: wallMs }) => {
    const at = { wallMs, zone: clock.zone };
    const names = [
      t('plan-page.course.day', at),
      t('plan-page.course.weekday', at),
      t('plan-page.course.short-weekday', at),
    ];
    const text = names.find((one) => textPx(one, DAY_PX) + 8 <= right - left) ?? '';
    return { x: left, text };
  });
}

function hourWords({ frame, clock, idle }: Props): readonly Word[] {
  const isIdle = (atS: number) => idle.some(({ fromS, toS }) => fromS <= atS && atS < toS);
  const leastX = frame.isNarrow ? 16 : frame.leftPx;
  return ticksOf(frame, clock, isIdle).map(({ x, wallMs }) => ({
    x,
    text:
      x >= leastX && x + 18 <= frame.widthPx
        ? t('plan-page.course.hour', { wallMs, zone: clock.zone })
        : '',
  }));
}

/** Days, parts of the day and hours over the rows; nights and days of rest behind them, by name. */
export function CourseAxis(props: Props) {
  const shades = createMemo(() => shadesOf(props));
  return (
    <g class="course-axis">
      <For each={shades().nights}>
        {(night) => <Shaded shade={night} look="night" heightPx={props.heightPx} />}
      </For>
      <For each={shades().rests}>
        {(rest) => <Shaded shade={rest} look="rest" heightPx={props.heightPx} />}
      </For>
      <For each={dayWords(props)}>
        {({ x, text }) => (
          <>
            <line class="course-day" x1={x} x2={x} y1="2" y2={props.heightPx} />
            <text class="course-day-name" x={x + 5} y={DAY_Y} transform={upright(x + 5)}>
              {text}
            </text>
          </>
        )}
      </For>
      <For each={partWords(props, shades().rests)}>
        {({ x, text }) => (
          <text class="course-part" x={x} y={PART_Y} transform={upright(x)} text-anchor="middle">
            {text}
          </text>
        )}
      </For>
      <For each={hourWords(props)}>
        {({ x, text }) => (
          <>
            <line class="course-tick" x1={x} x2={x} y1={TICK_Y + 3} y2={props.heightPx} />
            <text class="course-hour" x={x} y={TICK_Y} transform={upright(x)} text-anchor="middle">
              {text}
            </text>
          </>
        )}
      </For>
    </g>
  );
}

/** A night or a day of rest with its name: along it, or upright where it is narrow. */
function Shaded(props: { shade: Shade; look: 'night' | 'rest'; heightPx: number }) {
  const middle = () => props.shade.left + props.shade.width / 2;
  const isWide = () => textPx(props.shade.word, WORD_PX) + 4 <= props.shade.width;
  const turned = () => (isMirrored() ? 'scale(-1 1) rotate(-90)' : 'rotate(90)');
  const isUpright = () => props.look === 'rest' && props.shade.width > UPRIGHT_PX;
  return (
    <>
      <rect
        class={`course-shade--${props.look}`}
        x={props.shade.left}
        y={SHADE_Y}
        width={props.shade.width}
        height={props.heightPx - SHADE_Y}
      />
      <Show when={isWide() || isUpright()}>
        <text
          class={`course-part course-part--${props.look}`}
          transform={
            isWide()
              ? `translate(${middle()} ${PART_Y})${isMirrored() ? ' scale(-1 1)' : ''}`
              : `translate(${middle() - 4} ${TICK_Y + 8}) ${turned()}`
          }
          text-anchor={isWide() ? 'middle' : 'start'}
        >
          {props.shade.word}
        </text>
      </Show>
    </>
  );
}
