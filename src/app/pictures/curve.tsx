import { createMemo, createUniqueId, For } from 'solid-js';
import type { CurveLine, HeatChart } from '../../core/plan/index.ts';
import { message, type Message } from '../../core/messages/index.ts';
import { say, t, translator } from '../context/language.ts';
import { ticks, timeTicks } from './curve-scale.ts';

const WIDTH = 560;
const HEIGHT = 250;
const LEFT = 52;
const RIGHT = 12;
const TOP = 26;
const BOTTOM = 30;
const DASHES = ['', '9 6', '2 6', '14 4 2 4'];

type Scale = { readonly toS: number; readonly low: number; readonly high: number };

function scaleOf(picture: HeatChart): Scale {
  const ys = picture.lines.flatMap((line) => line.points.map((p) => p.y));
  const limits = picture.limits.map((limit) => limit.y);
  const times = picture.lines.flatMap((line) => line.points.map((p) => p.timeS));
  const low = Math.min(...ys, ...limits);
  const high = Math.min(picture.top ?? Infinity, Math.max(...ys, ...limits));
  const room = (high - low) * 0.06;
  return {
    toS: Math.max(...times, ...picture.moments.map((m) => m.timeS), 1),
    low: low < room * 4 && low >= 0 ? 0 : low - room,
    high: high + room,
  };
}

/** The same in the unit that the household reads. */
function asRead(picture: HeatChart): HeatChart {
  const { counts } = picture;
  if (counts === undefined) return picture;
  const { figure } = translator().format;
  return {
    ...picture,
    lines: picture.lines.map((line) => ({
      ...line,
      points: line.points.map(({ timeS, y }) => ({ timeS, y: figure(y, counts) })),
    })),
    limits: picture.limits.map(({ name, y }) => ({ name, y: figure(y, counts) })),
    ...(picture.top !== undefined && { top: figure(picture.top, counts) }),
  };
}

/** A word over a moment stands within the picture, clear of the unit at its corner. */
function sideOf(share: number): 'start' | 'middle' | 'end' {
  if (share < 0.15) return 'start';
  return share > 0.85 ? 'end' : 'middle';
}

/** A course over time: lines told apart by dashes and words, limits across, moments along. */
export function Curve(props: { picture: HeatChart }) {
  const clip = createUniqueId();
  const picture = createMemo(() => asRead(props.picture));
  const scale = createMemo(() => scaleOf(picture()));
  const x = (timeS: number) => LEFT + (timeS / scale().toS) * (WIDTH - LEFT - RIGHT);
  const y = (value: number) =>
    HEIGHT -
    BOTTOM -
    ((value - scale().low) / (scale().high - scale().low)) * (HEIGHT - TOP - BOTTOM);
  const path = (line: CurveLine) =>
    line.points.map((p) => `${x(p.timeS).toFixed(1)},${y(p.y).toFixed(1)}`).join(' ');
  const dash = (index: number) => DASHES[index % DASHES.length];
  return (
    <figure class="curve">
      <figcaption>
        <h3>{say(picture().title)}</h3>
        <p class="quiet">{say(picture().says)}</p>
      </figcaption>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={say(inWords(picture()))}>
        <clipPath id={clip}>
          <rect x={LEFT} y={TOP} width={WIDTH - LEFT - RIGHT} height={HEIGHT - TOP - BOTTOM} />
        </clipPath>
        <For each={ticks(scale().low, scale().high, 5)}>
          {(value) => (
            <>
              <line class="curve-grid" x1={LEFT} x2={WIDTH - RIGHT} y1={y(value)} y2={y(value)} />
              <text class="curve-word" x={LEFT - 8} y={y(value) + 4} text-anchor="end">
                {t('plan-page.curve.value', { value })}
              </text>
            </>
          )}
        </For>
        <text class="curve-word" x={LEFT - 8} y="14" text-anchor="end">
          {say(picture().unit)}
        </text>
        <For each={timeTicks(scale().toS, 6)}>
          {(timeS) => (
            <text class="curve-word" x={x(timeS)} y={HEIGHT - 8} text-anchor="middle">
              {t('run.picture.time', { lengthS: timeS })}
            </text>
          )}
        </For>
        <For each={picture().limits}>
          {(limit) => (
            <line
              class="curve-limit"
              x1={LEFT}
              x2={WIDTH - RIGHT}
              y1={y(limit.y)}
              y2={y(limit.y)}
            />
          )}
        </For>
        <For each={picture().moments}>
          {(moment, i) => (
            <>
              <line
                class="curve-moment"
                x1={x(moment.timeS)}
                x2={x(moment.timeS)}
                y1={TOP}
                y2={HEIGHT - BOTTOM}
              />
              <text
                class="curve-word"
                x={x(moment.timeS)}
                y={TOP - 10}
                text-anchor={sideOf(moment.timeS / scale().toS)}
              >
                {picture().moments.length > 2 && i() !== 1 ? '' : say(moment.name)}
              </text>
            </>
          )}
        </For>
        <For each={picture().lines}>
          {(line, i) => (
            <polyline
              clip-path={`url(#${clip})`}
              class={`curve-line curve-line--${line.weight}`}
              stroke-dasharray={dash(i())}
              points={path(line)}
            />
          )}
        </For>
        {/* Over the curves, which would strike them through. */}
        <For each={picture().limits}>
          {(limit) => (
            <text class="curve-limit-word" x={WIDTH - RIGHT} y={y(limit.y) - 5} text-anchor="end">
              {say(limit.name)}
            </text>
          )}
        </For>
      </svg>
      <ul class="curve-key">
        <For each={picture().lines}>
          {(line, i) => (
            <li>
              <svg viewBox="0 0 40 10" aria-hidden="true">
                <line
                  class={`curve-line curve-line--${line.weight}`}
                  stroke-dasharray={dash(i())}
                  x1="1"
                  x2="39"
                  y1="5"
                  y2="5"
                />
              </svg>
              {say(line.name)}
            </li>
          )}
        </For>
      </ul>
    </figure>
  );
}

/** The picture for those who do not see it: highest value of each line, limits, moments. */
function inWords({ title, unit, lines, limits }: HeatChart): Message {
  return message('plan-page.curve', {
    title,
    lines: lines.map(({ name, points }) =>
      message('plan-page.curve.line', {
        name,
        most: Math.max(...points.map((p) => p.y)),
        unit,
      }),
    ),
    limits: limits.map(({ name, y }) => message('plan-page.curve.limit', { name, value: y, unit })),
  });
}
