import { createMemo, For, Index, Show } from 'solid-js';
import type { Picture } from '../../core/plan/index.ts';
import { pouredUpTo } from './along-lanes.ts';
import { frameOf, pathOf } from './kitchen-frame.ts';

type LanesPicture = Extract<Picture, { kind: 'lanes' }>;

/** Where each kettle goes: this one's stretch in full water, those done in pale, those to come as a thin line. */
export function Lanes(props: {
  picture: LanesPicture;
  /** How much of this kettle is poured by now, 0 to 1; absent while nothing is poured. */
  poured?: number | undefined;
}) {
  const frame = createMemo(() => frameOf([props.picture.outline], 8));
  /** Marks keep their size on the screen, whatever the size of the counter. */
  const mark = () => Math.max(frame().widthCm, frame().heightCm) / 24;
  const kettles = () => [...new Set(props.picture.stretches.map((s) => s.kettle))];
  const stateOf = (kettle: number) =>
    kettle === props.picture.kettle ? 'now' : kettle < props.picture.kettle ? 'past' : 'next';
  const poured = createMemo(() => {
    const share = props.poured;
    if (share === undefined) return undefined;
    const own = props.picture.stretches.filter((s) => s.kettle === props.picture.kettle);
    return pouredUpTo(own, share);
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
      aria-label={`Pouring lanes from back to front in ${kettles().length} kettles; kettle ${props.picture.kettle} is marked.`}
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
      <For each={kettles()}>
        {(kettle) => {
          const first = () => props.picture.stretches.find((s) => s.kettle === kettle)?.points[0];
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
