import '../../styles/plan/course.css';
import { createMemo, createSignal, For, type JSX, onCleanup, onMount, Show } from 'solid-js';
import { asWritten } from '../../../core/messages/index.ts';
import type { Course, CourseBar, Plan } from '../../../core/plan/index.ts';
import { say, t } from '../../context/language.ts';
import {
  labelFor,
  laneBars,
  nameOf,
  rowBars,
  runsOf,
  type DrawnBar,
  type LaneBar,
  type Pressed,
} from './bars.ts';
import { AXIS_PX, CourseAxis } from './course-axis.tsx';
import { CourseEnds, Overrun } from './course-ends.tsx';
import { CourseKey } from './course-key.tsx';
import {
  drawnDueS,
  frameOf,
  inLines,
  NAME_PX,
  rowPx,
  type Ends,
  type Frame,
  type WallClock,
} from './frame.ts';
import { threadOf } from './thread.ts';

const WORD_PX = 12.5;
const DUE_PX = 18;
const GAP_PX = 12;
const FOOT_PX = 26;
const LANE_BAR_PX = 17;
const ROW_BAR_PX = 14;
/** A press this far beside a bar still means it, px. */
const NEAR_PX = 26;
/** Width of a printed page less its margins, CSS px. */
const PRINT_PX = 690;

type Placed<B extends DrawnBar> = {
  readonly name: string;
  readonly lines: readonly string[];
  readonly y: number;
  readonly heightPx: number;
  readonly barY: number;
  readonly bars: readonly B[];
};

/** Width of an element as it is laid out, px; of the page while it is printed. */
function createWidth(): readonly [width: () => number, ref: (element: HTMLElement) => void] {
  const [width, setWidth] = createSignal(0);
  const [printing, setPrinting] = createSignal(false);
  const media = matchMedia('print');
  const onPrint = () => setPrinting(media.matches);
  media.addEventListener('change', onPrint);
  onCleanup(() => media.removeEventListener('change', onPrint));
  const ref = (element: HTMLElement) => {
    const watch = new ResizeObserver(() => {
      if (!media.matches) setWidth(element.clientWidth);
    });
    onMount(() => {
      setWidth(element.clientWidth);
      watch.observe(element);
    });
    onCleanup(() => watch.disconnect());
  };
  return [() => (printing() ? PRINT_PX : width()), ref];
}

/** Until when something is so, from the longest way to say it to the shortest. */
function untilTexts({ happening, toS, fromS }: CourseBar, wall: Frame['wall']): readonly string[] {
  if (happening === 'other') return [];
  const end = wall(toS);
  const longest = t(`plan-page.course.until.${happening}`, {
    ...end,
    fromWallMs: wall(fromS).wallMs,
  });
  return happening === 'rest'
    ? [longest, t('plan-page.course.until', end), t('plan-page.course.until.weekday', end)]
    : [longest];
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
  const person = (at: number) =>
    at === 0 ? t('plan-page.course.you') : t('plan-page.course.helper', { number: at });
  const rowName = (name: Course['rows'][number]['name']) =>
    name ? say(name) : t('plan-page.steps.whole-kitchen');
  const frame = createMemo(() =>
    frameOf(props.plan, props.course, props.clock, props.ends, {
      widthPx: Math.max(280, widthPx()),
      names: [
        ...props.course.lanes.map((_, at) => person(at)),
        ...props.course.rows.map(({ name }) => rowName(name)),
      ],
    }),
  );
  const top = () =>
    AXIS_PX + (drawnDueS(props.ends, props.plan.timetable.finishS) === undefined ? 0 : DUE_PX);
  const lanes = createMemo(() => {
    const heightPx = frame().isNarrow ? 50 : 38;
    return props.course.lanes.map((lane, at): Placed<LaneBar> & { watches: DrawnBar[] } => {
      const y = top() + at * heightPx;
      const watches = lane.watches.map(({ step, fromS, toS }) => {
        const x = frame().x(fromS);
        return { steps: [step], fromS, toS, person: at, x, w: frame().x(toS) - x, look: 'watch' };
      });
      return {
        name: person(at),
        lines: [person(at)],
        y,
        heightPx,
        barY: y + heightPx - LANE_BAR_PX - 5,
        bars: laneBars(props.plan, lane, at, frame()),
        watches,
      };
    });
  });
  const lanesEndPx = () => {
    const last = lanes().at(-1);
    return last ? last.y + last.heightPx : top();
  };
  const rows = createMemo(() => {
    let y = lanesEndPx() + GAP_PX;
    return props.course.rows.map((row): Placed<DrawnBar & CourseBar> => {
      const name = rowName(row.name);
      const lines = frame().isNarrow ? [name] : inLines(name, NAME_PX, frame().leftPx - 12);
      const heightPx = rowPx(frame(), lines.length);
      const placed = {
        name,
        lines,
        y,
        heightPx,
        barY: frame().isNarrow ? y + 17 : y + (heightPx - ROW_BAR_PX) / 2,
        bars: rowBars(row.bars, frame()),
      };
      y += heightPx;
      return placed;
    });
  });
  const heightPx = () => {
    const last = rows().at(-1);
    return (last ? last.y + last.heightPx : lanesEndPx()) + FOOT_PX;
  };
  const chained = createMemo(
    () => new Set(props.course.chain.flatMap((link) => (link.kind === 'step' ? [link.step] : []))),
  );
  const thread = createMemo(() =>
    threadOf(
      props.course.chain,
      [
        ...lanes().flatMap(({ bars, barY }) =>
          bars.map(({ steps }) => ({ steps, y: barY + LANE_BAR_PX })),
        ),
        ...rows().flatMap(({ bars, barY }) =>
          bars.map(({ steps }) => ({ steps, y: barY + ROW_BAR_PX })),
        ),
      ],
      frame().x,
    ),
  );
  const keys = createKeys(
    () => [...lanes(), ...rows()].map(({ bars }) => bars),
    (bar) => props.onPress(bar),
  );
  const nearest = (event: MouseEvent & { currentTarget: SVGSVGElement }) => {
    const box = event.currentTarget.getBoundingClientRect();
    const [x, y] = [event.clientX - box.left, event.clientY - box.top];
    const row = [...lanes(), ...rows()].find((one) => y >= one.y && y < one.y + one.heightPx);
    const away = ({ x: left, w }: DrawnBar) => Math.max(left - x, x - left - w, 0);
    const bar = row?.bars.toSorted((a, b) => away(a) - away(b))[0];
    if (bar && away(bar) <= NEAR_PX) props.onPress(bar);
  };
  const word = (family: LaneBar['family']) => t(`plan-page.course.does.${family}`);
  const barLabel = (name: string, { steps, fromS, toS }: DrawnBar) =>
    t('plan-page.course.bar', {
      who: name,
      what: props.plan.steps.find(({ id }) => id === steps[0])?.title ?? asWritten(''),
      more: steps.length - 1,
      ...frame().wall(fromS),
      toWallMs: frame().wall(toS).wallMs,
    });
  const bar = (name: string, drawn: DrawnBar, y: number, high: number, inner?: JSX.Element) => (
    <g
      class={`course-bar course-bar--${drawn.look}`}
      classList={{ 'course-bar--chain': drawn.steps.some((id) => chained().has(id)) }}
      role="button"
      aria-label={barLabel(name, drawn)}
      tabindex={keys.isStop(drawn) ? 0 : -1}
      onKeyDown={(event) => keys.go(event, drawn)}
      onFocus={() => keys.stopAt(drawn)}
    >
      <rect x={drawn.x} y={y} width={drawn.w} height={high} />
      {inner}
    </g>
  );
  return (
    <figure class="course-picture" ref={measure} data-course>
      <Show when={widthPx() > 0}>
        <svg
          viewBox={`0 0 ${frame().widthPx} ${heightPx()}`}
          width={frame().widthPx}
          height={heightPx()}
          role="group"
          aria-label={t('plan-page.course.about')}
          onClick={nearest}
        >
          <defs>
            <pattern
              id="course-hatch"
              width="7"
              height="7"
              patternUnits="userSpaceOnUse"
              patternTransform="rotate(45)"
            >
              <rect class="course-hatch" width="2.5" height="7" />
            </pattern>
          </defs>
          <CourseAxis
            plan={props.plan}
            frame={frame()}
            clock={props.clock}
            idle={props.course.idle}
            heightPx={heightPx() - FOOT_PX}
          />
          <Overrun
            frame={frame()}
            ends={props.ends}
            finishS={props.plan.timetable.finishS}
            top={top()}
            heightPx={heightPx()}
          />
          <For each={[...lanes(), ...rows()]}>
            {(row) => (
              <For each={row.lines}>
                {(line, n) => (
                  <text
                    class="course-name"
                    x={frame().isNarrow ? 2 : frame().leftPx - 8}
                    y={
                      frame().isNarrow
                        ? row.y + 13
                        : row.barY + ROW_BAR_PX / 2 + 5 + (n() - (row.lines.length - 1) / 2) * 15
                    }
                    text-anchor={frame().isNarrow ? 'start' : 'end'}
                  >
                    {line}
                  </text>
                )}
              </For>
            )}
          </For>
          <line
            class="course-rule"
            x1="0"
            x2={frame().widthPx}
            y1={lanesEndPx() + GAP_PX / 2}
            y2={lanesEndPx() + GAP_PX / 2}
          />
          <For each={lanes()}>
            {(lane) => (
              <>
                <For each={runsOf(lane.bars, frame(), word, WORD_PX)}>
                  {(run) => (
                    <text class="course-word" x={run.x} y={lane.barY - 4}>
                      {word(run.family)}
                    </text>
                  )}
                </For>
                <For each={lane.watches}>
                  {(watch) => (
                    <rect
                      class="course-watch"
                      x={watch.x}
                      y={lane.barY + LANE_BAR_PX + 1}
                      width={watch.w}
                      height="3.5"
                    />
                  )}
                </For>
                <For each={lane.bars}>
                  {(one, n) =>
                    bar(
                      lane.name,
                      one,
                      lane.barY,
                      LANE_BAR_PX,
                      <InBar
                        bar={one}
                        nextX={lane.bars[n() + 1]?.x ?? frame().widthPx}
                        texts={namesIn(props.plan, one)}
                        y={lane.barY + 13}
                        insideOnly
                      />,
                    )
                  }
                </For>
              </>
            )}
          </For>
          <For each={rows()}>
            {(row) => (
              <For each={row.bars}>
                {(one, n) => (
                  <>
                    <Show when={one.waitedForS !== undefined && one.happening !== 'water'}>
                      <line
                        class="course-slack"
                        x1={one.x + one.w}
                        x2={frame().x(one.waitedForS ?? 0)}
                        y1={row.barY + ROW_BAR_PX / 2}
                        y2={row.barY + ROW_BAR_PX / 2}
                      />
                    </Show>
                    {bar(
                      row.name,
                      one,
                      row.barY,
                      ROW_BAR_PX,
                      <InBar
                        bar={one}
                        nextX={row.bars[n() + 1]?.x ?? frame().widthPx}
                        texts={untilTexts(one, frame().wall)}
                        y={row.barY + 11.5}
                      />,
                    )}
                  </>
                )}
              </For>
            )}
          </For>
          <path class="course-thread" d={thread()} />
          <CourseEnds
            frame={frame()}
            ends={props.ends}
            finishS={props.plan.timetable.finishS}
            top={top()}
            heightPx={heightPx()}
          />
        </svg>
        <CourseKey plan={props.plan} course={props.course} />
      </Show>
    </figure>
  );
}

/** The name of what a bar is done on. */
function namesIn(plan: Plan, { steps }: DrawnBar): readonly string[] {
  const name = steps[0] === undefined ? undefined : nameOf(plan, steps[0]);
  if (name === undefined) return [];
  return [typeof name === 'string' ? name : say(name)];
}

/** A text in a bar or behind it, whole or not at all. */
function InBar(props: {
  bar: DrawnBar;
  nextX: number;
  texts: readonly string[];
  y: number;
  insideOnly?: boolean;
}) {
  const label = () => {
    const found = labelFor(props.bar, props.nextX, props.texts, WORD_PX);
    return found && (found.isInside || !props.insideOnly) ? found : undefined;
  };
  return (
    <Show when={label()}>
      {(now) => (
        <text
          class="course-in"
          classList={{ 'course-in--behind': !now().isInside }}
          x={now().x}
          y={props.y}
        >
          {now().text}
        </text>
      )}
    </Show>
  );
}

/** One stop of the tab key for all bars; arrows go from bar to bar, Enter and Space press. */
function createKeys(
  rows: () => readonly (readonly DrawnBar[])[],
  onPress: (bar: DrawnBar) => void,
) {
  const idOf = ({ steps, person }: DrawnBar) => `${person ?? 'row'} ${steps[0]}`;
  const [at, setAt] = createSignal<string>();
  const first = () => rows().find((bars) => bars.length > 0)?.[0];
  const isStop = (bar: DrawnBar) => {
    const now = rows()
      .flat()
      .some((one) => idOf(one) === at())
      ? at()
      : first() && idOf(first()!);
    return now === idOf(bar);
  };
  const go = (event: KeyboardEvent, bar: DrawnBar) => {
    const all = rows().filter((bars) => bars.length > 0);
    const row = all.findIndex((bars) => bars.includes(bar));
    const flat = all.flat();
    const n = flat.indexOf(bar);
    const near = (bars: readonly DrawnBar[] | undefined) =>
      bars?.toSorted((a, b) => Math.abs(a.x - bar.x) - Math.abs(b.x - bar.x))[0];
    const to: Readonly<Record<string, DrawnBar | undefined>> = {
      ArrowRight: flat[n + 1],
      ArrowLeft: flat[n - 1],
      ArrowDown: near(all[row + 1]),
      ArrowUp: near(all[row - 1]),
      Home: flat[0],
      End: flat.at(-1),
    };
    const next = to[event.key];
    if (next) {
      setAt(idOf(next));
      const svg = (event.currentTarget as Element).closest('svg');
      svg?.querySelector<SVGElement>('.course-bar[tabindex="0"]')?.focus();
    } else if (event.key === 'Enter' || event.key === ' ') onPress(bar);
    else return;
    event.preventDefault();
  };
  return { isStop, go, stopAt: (bar: DrawnBar) => setAt(idOf(bar)) };
}
