import { createMemo, For } from 'solid-js';
import type { Picture } from '../../core/plan/index.ts';
import { lengthInWords } from '../words/time.ts';

type OvenPicture = Extract<Picture, { kind: 'oven' }>;
const WIDTH = 360;
const HEIGHT = 150;
const TOP_C = 550;

/** The cycle's stages as one line: heat, hold, cool until the lock opens. */
export function OvenCurve(props: { picture: OvenPicture; atS?: number }) {
  const total = () => props.picture.stages.reduce((sum, stage) => sum + stage.lengthS, 0) || 1;
  const x = (s: number) => (s / total()) * WIDTH;
  const y = (c: number) => HEIGHT - (Math.min(c, TOP_C) / TOP_C) * HEIGHT;
  const marks = createMemo(() => {
    let s = 0;
    let c = 20;
    return props.picture.stages.map((stage) => {
      const from = { s, c };
      s += stage.lengthS;
      c = stage.tempC;
      return { stage, from, to: { s, c } };
    });
  });
  const line = () => [`0,${y(20)}`, ...marks().map((m) => `${x(m.to.s)},${y(m.to.c)}`)].join(' ');
  return (
    <svg
      class="oven-curve"
      viewBox={`-4 -14 ${WIDTH + 8} ${HEIGHT + 44}`}
      role="img"
      aria-label={props.picture.stages
        .map((s) => `${s.name} ${lengthInWords(s.lengthS)}`)
        .join(', ')}
    >
      <path
        class="oven-area"
        d={`M0,${HEIGHT} L${line().replaceAll(' ', ' L')} L${WIDTH},${HEIGHT}Z`}
      />
      <polyline class="oven-line" points={line()} />
      <line class="oven-base" x1="0" y1={HEIGHT} x2={WIDTH} y2={HEIGHT} />
      <For each={marks()}>
        {(m) => (
          <text
            class="oven-word"
            x={x((m.from.s + m.to.s) / 2)}
            y={HEIGHT + 20}
            text-anchor="middle"
          >
            {m.stage.name}
          </text>
        )}
      </For>
      {props.atS !== undefined && (
        <line class="oven-now" x1={x(props.atS)} x2={x(props.atS)} y1="-8" y2={HEIGHT} />
      )}
    </svg>
  );
}
