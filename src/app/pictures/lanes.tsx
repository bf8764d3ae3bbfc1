import { createMemo, For, Show } from 'solid-js';
import type { Picture } from '../../core/plan/index.ts';
import { frameOf, pathOf } from './kitchen-frame.ts';

type LanesPicture = Extract<Picture, { kind: 'lanes' }>;

/** Where each kettle goes: this one's stretch in full water, those done in pale, those to come as a thin line. */
export function Lanes(props: { picture: LanesPicture; all?: boolean }) {
  const frame = createMemo(() => frameOf([props.picture.outline], 8));
  /** Marks keep their size on the screen, whatever the size of the counter. */
  const mark = () => Math.max(frame().widthCm, frame().heightCm) / 24;
  const kettles = () => [...new Set(props.picture.stretches.map((s) => s.kettle))];
  const stateOf = (kettle: number) =>
    props.all
      ? 'now'
      : kettle === props.picture.kettle
        ? 'now'
        : kettle < props.picture.kettle
          ? 'past'
          : 'next';
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
