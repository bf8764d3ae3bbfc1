import '../../styles/plan/course.css';
import { createMemo, For, Show } from 'solid-js';
import { personName } from '../../../core/kitchen/index.ts';
import { asWritten } from '../../../core/messages/index.ts';
import type { Course, CourseBar, Plan } from '../../../core/plan/index.ts';
import { MS_PER_SECOND } from '../../../core/units/index.ts';
import { say, t } from '../../context/language.ts';
import { createBarKeys } from './bar-keys.ts';
import { labelFor, nameOf, runsOf, type DrawnBar, type LaneBar, type Pressed } from './bars.ts';
import { CourseAxis } from './course-axis.tsx';
import { CourseEnds, Overrun, PastCut } from './course-ends.tsx';
import { CourseKey } from './course-key.tsx';
import type { Ends, Frame, WallClock } from './frame.ts';
import { HeatPattern } from './heat-pattern.tsx';
import { barAt, FOOT_PX, LANE_BAR_PX, layoutOf, ROW_BAR_PX, type Layout } from './layout.ts';
import { isMirrored, mirrored, upright } from './mirror.ts';
import { createWidth } from './picture-width.ts';

const WORD_PX = 12.5;
const LEAST_PX = 280;

/** Until when something is so, from the longest way to say it to the shortest. */
function untilTexts({ happening, toS, fromS }: CourseBar, wall: Frame['wall']): readonly string[] {
  if (happening === 'other') return [];
  const end = wall(toS);
  const { wallMs: fromWallMs } = wall(fromS);
  const longest = t(`plan-page.course.until.${happening}`, { ...end, fromWallMs });
  if (happening !== 'rest') return [longest];
  return [
    longest,
    t('plan-page.course.until', end),
    t('plan-page.course.until.weekday', end),
    t('plan-page.course.until.short', end),
  ];
}

/** The name of what a bar is done on. */
function namesIn(plan: Plan, { steps }: DrawnBar): readonly string[] {
  const name = steps[0] === undefined ? undefined : nameOf(plan, steps[0]);
  if (name === undefined) return [];
  return [typeof name === 'string' ? name : say(name)];
}

/** "You: Clean: Oven, Friday morning 09:15 to 10:15". */
function barName(plan: Plan, { wall }: Frame, { steps, fromS, toS, person }: DrawnBar): string {
  return t('plan-page.course.bar', {
    who: person === undefined ? '' : say(personName(plan.kitchen.household, person)),
    what: plan.steps.find(({ id }) => id === steps[0])?.title ?? asWritten(''),
    more: steps.length - 1,
    ...wall(fromS),
    toWallMs: wall(toS).wallMs,
  });
}

/** The whole job as a picture: who does what over what happens by itself, on one axis of time. */
export function CoursePicture(props: {
  plan: Plan;
  course: Course;
  clock: WallClock;
  ends: Ends;
  onPress: (pressed: Pressed) => void;
}) {
  const [widthPx, measure] = createWidth();
  const layout = createMemo(() =>
    layoutOf(props.plan, props.course, props.clock, props.ends, Math.max(LEAST_PX, widthPx()), {
      person: (at) => say(personName(props.plan.kitchen.household, at)),
      thing: ({ name }) => (name ? say(name) : t('plan-page.steps.whole-kitchen')),
    }),
  );
  const frame = () => layout().frame;
  const ended = () => ({
    layout: layout(),
    ends: props.ends,
    cut: props.course.cut,
    finishS: props.plan.timetable.finishS,
  });
  const keys = createBarKeys(
    () => [...layout().lanes, ...layout().rows].map(({ bars }) => bars),
    props.onPress,
  );
  const press = (event: MouseEvent & { currentTarget: SVGSVGElement }) => {
    const { left, top } = event.currentTarget.getBoundingClientRect();
    const x = event.clientX - left;
    const along = isMirrored() ? frame().widthPx - x : x;
    const bar = barAt(layout(), along, event.clientY - top);
    if (bar) props.onPress(bar);
  };
  const bar = (drawn: DrawnBar, y: number, heightPx: number) => (
    <g
      class={`course-bar course-bar--${drawn.look}`}
      role="button"
      aria-label={barName(props.plan, frame(), drawn)}
      tabindex={keys.isStop(drawn) ? 0 : -1}
      onKeyDown={(event) => keys.onKey(event, drawn)}
      onFocus={() => keys.onFocus(drawn)}
    >
      <rect x={drawn.x} y={y} width={drawn.w} height={heightPx} />
    </g>
  );
  return (
    <figure class="course-picture" ref={measure} data-course>
      <Show when={widthPx() > 0}>
        <svg
          viewBox={`0 0 ${frame().widthPx} ${layout().heightPx}`}
          width={frame().widthPx}
          height={layout().heightPx}
          role="group"
          aria-label={t('plan-page.course.about')}
          onClick={press}
        >
          <g transform={mirrored(frame().widthPx)}>
            <HeatPattern />
            <CourseAxis
              plan={props.plan}
              frame={frame()}
              clock={props.clock}
              idle={props.course.idle}
              heightPx={layout().heightPx - FOOT_PX}
            />
            <Overrun {...ended()} />
            <For each={layout().lanes}>
              {(lane) => (
                <>
                  <For each={lane.watches}>
                    {({ x, w }) => (
                      <rect
                        class="course-watch"
                        x={x}
                        y={lane.barY + LANE_BAR_PX + 1}
                        width={w}
                        height="3.5"
                      />
                    )}
                  </For>
                  <For each={lane.bars}>{(one) => bar(one, lane.barY, LANE_BAR_PX)}</For>
                </>
              )}
            </For>
            <For each={layout().rows}>
              {(row) => (
                <For each={row.bars}>
                  {(one) => (
                    <>
                      <Slack bar={one} frame={frame()} y={row.barY + ROW_BAR_PX / 2} />
                      {bar(one, row.barY, ROW_BAR_PX)}
                    </>
                  )}
                </For>
              )}
            </For>
            <Show when={!props.course.cut}>
              <path class="course-thread" d={layout().thread} />
              <path class="course-thread course-thread--inner" d={layout().thread} />
            </Show>
            <RowNames layout={layout()} />
            <PastCut layout={layout()} cut={props.course.cut} />
            <CourseEnds {...ended()} />
            <Words plan={props.plan} layout={layout()} />
          </g>
        </svg>
        <CourseKey course={props.course} ends={props.ends} finishS={props.plan.timetable.finishS} />
      </Show>
    </figure>
  );
}

/** Names of people and things beside their rows, or over them where it is narrow. */
function RowNames(props: { layout: Layout }) {
  const frame = () => props.layout.frame;
  const nameX = () => (frame().isNarrow ? 2 : frame().leftPx - 8);
  return (
    <>
      <For each={[...props.layout.lanes, ...props.layout.rows]}>
        {(row) => (
          <text
            class="course-name"
            transform={upright(nameX())}
            text-anchor={frame().isNarrow ? 'start' : 'end'}
          >
            <For each={row.lines}>
              {(line, n) => (
                <tspan
                  x={nameX()}
                  y={
                    frame().isNarrow
                      ? row.y + 13
                      : row.barY + ROW_BAR_PX / 2 + 5 + (n() - (row.lines.length - 1) / 2) * 15
                  }
                >
                  {line}
                </tspan>
              )}
            </For>
          </text>
        )}
      </For>
      <line
        class="course-rule"
        x2={frame().widthPx}
        y1={props.layout.ruleY}
        y2={props.layout.ruleY}
      />
    </>
  );
}

/** What is written at bars, over every line that crosses them. */
function Words(props: { plan: Plan; layout: Layout }) {
  const frame = () => props.layout.frame;
  return (
    <>
      <For each={props.layout.lanes}>
        {(lane) => (
          <>
            <LaneWords plan={props.plan} bars={lane.bars} frame={frame()} y={lane.barY - 4} />
            <For each={lane.bars}>
              {(bar) => (
                <InBar bar={bar} nextX={0} texts={namesIn(props.plan, bar)} y={lane.barY + 13} />
              )}
            </For>
          </>
        )}
      </For>
      <For each={props.layout.rows}>
        {(row) => (
          <For each={row.bars}>
            {(bar, n) => (
              <InBar
                bar={bar}
                nextX={row.bars[n() + 1]?.x ?? frame().widthPx}
                texts={untilTexts(bar, frame().wall)}
                y={row.barY + 11.5}
              />
            )}
          </For>
        )}
      </For>
    </>
  );
}

/** What a person is at, over the bars. */
function LaneWords(props: { plan: Plan; bars: readonly LaneBar[]; frame: Frame; y: number }) {
  const restsX = () =>
    (props.plan.days?.restDays ?? []).map(({ fromWallMs }) =>
      props.frame.x((fromWallMs - props.frame.wall(0).wallMs) / MS_PER_SECOND),
    );
  const word = (family: LaneBar['family']) => t(`plan-page.course.does.${family}`);
  return (
    <For each={runsOf(props.bars, props.frame, word, WORD_PX, restsX())}>
      {({ x, family }) => (
        <text class="course-word" x={x} y={props.y} transform={upright(x)}>
          {word(family)}
        </text>
      )}
    </For>
  );
}

/** How much longer it may take before something waits for it. */
function Slack(props: { bar: DrawnBar & CourseBar; frame: Frame; y: number }) {
  return (
    <Show when={props.bar.happening !== 'water' && props.bar.waitedForS}>
      {(waitedForS) => (
        <line
          class="course-slack"
          x1={props.bar.x + props.bar.w}
          x2={props.frame.x(waitedForS())}
          y1={props.y}
          y2={props.y}
        />
      )}
    </Show>
  );
}

/** A text in a bar or behind it, whole or not at all. */
function InBar(props: { bar: DrawnBar; nextX: number; texts: readonly string[]; y: number }) {
  return (
    <Show when={labelFor(props.bar, props.nextX, props.texts, WORD_PX)}>
      {(label) => (
        <text
          class={`course-in course-in--${label().isInside ? props.bar.look : 'behind'}`}
          x={label().x}
          y={props.y}
          transform={upright(label().x)}
        >
          {label().text}
        </text>
      )}
    </Show>
  );
}
