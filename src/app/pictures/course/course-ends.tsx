import { For, Show } from 'solid-js';
import type { Course } from '../../../core/plan/index.ts';
import { t } from '../../context/language.ts';
import { drawnDueS, textPx, type Ends } from './frame.ts';
import type { Layout } from './layout.ts';
import { upright } from './mirror.ts';

const WORD_PX = 13;

type Props = { layout: Layout; ends: Ends; cut: Course['cut']; finishS: number };

/** Room under the rows for the end in words, px. */
const FOOT_PX = 20;

/** What runs over the hour it must be done by, behind the bars. */
export function Overrun(props: Props) {
  const over = () => {
    const fromS = drawnDueS(props.ends, props.finishS);
    const toS = props.ends.due?.doneS ?? 0;
    if (fromS === undefined || toS <= fromS) return undefined;
    const [left, right] = [props.layout.frame.x(fromS), props.layout.frame.x(toS)];
    return { left, width: Math.max(2, right - left), lateS: toS - fromS };
  };
  const late = (lateS: number) => t('plan-page.course.late', { lateS });
  return (
    <Show when={over()}>
      {(now) => (
        <>
          <pattern
            id="course-hatch"
            width="7"
            height="7"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <rect class="course-hatch" width="2.5" height="7" />
          </pattern>
          <rect
            class="course-overrun"
            x={now().left}
            y={props.layout.top}
            width={now().width}
            height={props.layout.heightPx - props.layout.top - FOOT_PX}
          />
          <Show when={textPx(late(now().lateS), WORD_PX) + 240 < now().width}>
            <text
              class="course-due-word"
              x={now().left + now().width - 4}
              transform={upright(now().left + now().width - 4)}
              y={props.layout.top - 4}
              text-anchor="end"
            >
              {late(now().lateS)}
            </text>
          </Show>
        </>
      )}
    </Show>
  );
}

/** A pennant on the post of the deadline. */
function flagAt(x: number, y: number): string {
  return `M${x} ${y}l11 5l-11 5z`;
}

/** What is drawn after the hour of the last purging is not possible any more. */
export function PastCut(props: Pick<Props, 'layout' | 'cut'>) {
  const frame = () => props.layout.frame;
  return (
    <Show when={props.cut}>
      {(cut) => {
        const left = () => frame().x(Math.max(0, cut().atS));
        const words = () => [
          t('plan-page.course.cut', { name: cut().name, ...frame().wall(cut().atS) }),
          t('plan-page.course.gone'),
        ];
        const isBehind = () =>
          left() + Math.max(...words().map((one) => textPx(one, WORD_PX))) + 10 <= frame().widthPx;
        return (
          <g class="course-cut">
            <pattern
              id="course-gone"
              width="9"
              height="9"
              patternUnits="userSpaceOnUse"
              patternTransform="rotate(-45)"
            >
              <rect class="course-gone-line" width="1.6" height="9" />
            </pattern>
            <rect
              class="course-gone"
              x={left()}
              y={props.layout.top}
              width={Math.max(2, frame().x(frame().toS) - left())}
              height={props.layout.heightPx - props.layout.top - FOOT_PX}
            />
            <line
              class="course-candles"
              x1={left()}
              x2={left()}
              y1={props.layout.top - 16}
              y2={props.layout.heightPx - 18}
            />
            <For each={words()}>
              {(word, n) => (
                <text
                  class="course-due-word"
                  x={left() + (isBehind() ? 6 : -6)}
                  transform={upright(left() + (isBehind() ? 6 : -6))}
                  y={props.layout.ruleY - 8 + n() * 16}
                  text-anchor={isBehind() ? 'start' : 'end'}
                >
                  {word}
                </text>
              )}
            </For>
          </g>
        );
      }}
    </Show>
  );
}

/** The hour it must be done by, the end, and how sure that is. */
export function CourseEnds(props: Props) {
  const x = (atS: number) => props.layout.frame.x(atS);
  const dueS = () => drawnDueS(props.ends, props.finishS);
  const dueText = (atS: number) =>
    t(
      props.ends.due?.of === 'purge' ? 'plan-page.course.due-purged' : 'plan-page.course.due',
      props.layout.frame.wall(atS),
    );
  /** Its words stand behind its line where they have room, else before it. */
  const isBehind = (atS: number) =>
    x(atS) + textPx(dueText(atS), WORD_PX) + 18 <= props.layout.frame.widthPx;
  /** With how sure it is, where that has room; the lines above the picture say it too. */
  const endText = () => {
    const at = props.layout.frame.wall(props.finishS);
    const sureS = props.ends.nineInTenS;
    const whole =
      sureS === undefined
        ? undefined
        : t('plan-page.course.ends-sure', {
            ...at,
            sureWallMs: props.layout.frame.wall(sureS).wallMs,
          });
    return whole !== undefined && textPx(whole, WORD_PX) <= props.layout.frame.widthPx
      ? whole
      : t('plan-page.course.ends', at);
  };
  const endX = () =>
    Math.min(
      props.layout.frame.widthPx - 2,
      Math.max(x(props.ends.nineInTenS ?? props.finishS), textPx(endText(), WORD_PX)),
    );
  const dueX = (atS: number) => x(atS) + (isBehind(atS) ? 14 : -6);
  return (
    <g class="course-ends">
      <Show when={!props.cut && props.ends.nineInTenS !== undefined}>
        <rect
          class="course-sure"
          x={x(props.finishS)}
          y={props.layout.heightPx - FOOT_PX - 8}
          width={Math.max(3, x(props.ends.nineInTenS ?? 0) - x(props.finishS))}
          height="8"
        />
      </Show>
      <Show when={!props.cut}>
        <line
          class="course-end"
          x1={x(props.finishS)}
          x2={x(props.finishS)}
          y1={props.layout.top}
          y2={props.layout.heightPx - 18}
        />
        <text
          class="course-end-word"
          x={endX()}
          transform={upright(endX())}
          y={props.layout.heightPx - 4}
          text-anchor="end"
        >
          {endText()}
        </text>
      </Show>
      <Show when={dueS()}>
        {(atS) => (
          <>
            <line
              class="course-due"
              x1={x(atS())}
              x2={x(atS())}
              y1={props.layout.top - 16}
              y2={props.layout.heightPx - 18}
            />
            <path class="course-flag" d={flagAt(x(atS()), props.layout.top - 16)} />
            <text
              class="course-due-word"
              x={dueX(atS())}
              transform={upright(dueX(atS()))}
              y={props.layout.top - 4}
              text-anchor={isBehind(atS()) ? 'start' : 'end'}
            >
              {dueText(atS())}
            </text>
          </>
        )}
      </Show>
    </g>
  );
}
