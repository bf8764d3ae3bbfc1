import { createMemo, For, Index, Show } from 'solid-js';
import { t } from '../context/language.ts';
import type { Picture } from '../../core/plan/index.ts';
import { pouredUpTo } from './pour-progress.ts';
import { type Frame, frameOf, pathOf } from './kitchen-frame.ts';

type LanesPicture = Extract<Picture, { kind: 'lanes' }>;

/** A share of the way, and when the stream should be there, s from the start. */
type LaneTick = { readonly share: number; readonly atS: number };

/** From here on the marks are smaller, to stand beside each other. */
const MANY_KETTLES = 7;

/** Where each kettle goes: this one's stretch in full water, those done in pale, those to come as a thin line. */
export function Lanes(props: {
  picture: LanesPicture;
  /** How much of this kettle is poured by now, 0 to 1; absent while nothing is poured. */
  poured?: number | undefined;
  /** A still picture instead of a moving one: ticks at these shares of the way, with their times. */
  ticks?: readonly LaneTick[] | undefined;
}) {
  const frame = createMemo(() => frameOf([props.picture.outline], 8));
  /** Marks keep their size on the screen, whatever the size of the counter. */
  const mark = () =>
    Math.max(frame().widthCm, frame().heightCm) / (kettles().length > MANY_KETTLES ? 38 : 24);
  const kettles = () => [...new Set(props.picture.stretches.map((s) => s.kettle))];
  /** Kettle 0: none is being poured, so every one is drawn, odd and even told apart. */
  const stateOf = (kettle: number) =>
    props.picture.kettle === 0
      ? kettle % 2 === 1
        ? 'odd'
        : 'even'
      : kettle === props.picture.kettle
        ? 'now'
        : kettle < props.picture.kettle
          ? 'past'
          : 'next';
  const mine = () => props.picture.stretches.filter((s) => s.kettle === props.picture.kettle);
  const poured = createMemo(() => {
    const share = props.poured;
    return share === undefined ? undefined : pouredUpTo(mine(), share);
  });
  const line = (points: readonly (readonly [number, number])[]) =>
    points
      .map((p) =>
        frame()
          .at(p)
          .map((v) => v.toFixed(1))
          .join(','),
      )
      .join(' ');
  return (
    <svg
      class="lanes"
      viewBox={frame().viewBox}
      role="img"
      aria-label={
        props.picture.kettle > 0
          ? t('run.picture.lanes-of', { kettles: kettles().length, kettle: props.picture.kettle })
          : t('run.picture.lanes', { kettles: kettles().length })
      }
    >
      <path
        class="lanes-top"
        fill-rule="evenodd"
        d={
          pathOf(frame(), props.picture.outline) +
          props.picture.holes.map((h) => pathOf(frame(), h)).join('')
        }
      />
      <For each={props.picture.stretches}>
        {(stretch) => (
          <polyline
            class={`lanes-stretch lanes-stretch--${stateOf(stretch.kettle)}`}
            points={line(stretch.points)}
          />
        )}
      </For>
      <Index each={poured()?.lines ?? []}>
        {(points) => (
          <polyline class="lanes-stretch lanes-stretch--poured" points={line(points())} />
        )}
      </Index>
      <Show when={poured()?.at}>
        {(p) => (
          <circle
            class="lanes-stream"
            r={mark() * 0.75}
            cx={frame().at(p())[0]}
            cy={frame().at(p())[1]}
          />
        )}
      </Show>
      <Ticks ticks={props.ticks ?? []} frame={frame()} mine={mine()} mark={mark()} />
      <For each={kettles()}>
        {(kettle) => {
          // A little way along, so that kettles that begin in the same corner keep their numbers apart.
          const own = () => props.picture.stretches.filter((s) => s.kettle === kettle);
          const ownM = () => own().reduce((sum, s) => sum + s.lengthM, 0);
          const first = () =>
            pouredUpTo(own(), Math.min(0.4, ((mark() / 100) * (1 + (kettle % 3))) / ownM())).at;
          return (
            <Show when={first()}>
              {(p) => (
                <g
                  transform={`translate(${frame().at(p()).join(' ')})`}
                  class={`lanes-mark lanes-mark--${stateOf(kettle)}`}
                >
                  <circle r={mark()} />
                  <text
                    text-anchor="middle"
                    dominant-baseline="central"
                    font-size={String(mark() * 1.3)}
                  >
                    {kettle}
                  </text>
                </g>
              )}
            </Show>
          );
        }}
      </For>
    </svg>
  );
}

/** Where the stream should be at some moments of the pour. */
function Ticks(props: {
  ticks: readonly LaneTick[];
  frame: Frame;
  mine: LanesPicture['stretches'];
  mark: number;
}) {
  return (
    <For each={props.ticks}>
      {(tick) => (
        <Show when={pouredUpTo(props.mine, tick.share).at}>
          {(p) => (
            <g transform={`translate(${props.frame.at(p()).join(' ')})`} class="lanes-tick">
              <circle r={props.mark * 0.32} />
              <text
                y={-props.mark * 0.9}
                text-anchor="middle"
                dominant-baseline="central"
                font-size={String(props.mark)}
              >
                {t('run.picture.time', { lengthS: tick.atS })}
              </text>
            </g>
          )}
        </Show>
      )}
    </For>
  );
}
