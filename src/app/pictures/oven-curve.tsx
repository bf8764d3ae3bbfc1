import { createMemo, For, Show } from 'solid-js';
import type { Picture } from '../../core/plan/index.ts';
import { message } from '../../core/messages/index.ts';
import { say, t } from '../context/language.ts';
import '../styles/pictures.css';

type OvenPicture = Extract<Picture, { kind: 'oven' }>;
const WIDTH = 360;
const HEIGHT = 210;
const TOP_C = 550;

function anchorOf(index: number, of: number): 'start' | 'middle' | 'end' {
  return index === 0 ? 'start' : index === of - 1 ? 'end' : 'middle';
}

/** The cycle's stages as one line: heat, hold, cool until the lock opens. */
export function OvenCurve(props: { picture: OvenPicture; atS?: number | undefined }) {
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
  const atS = () => Math.min(props.atS ?? 0, total());
  /** The outer words keep to the edges of the picture, where their stretch may be short. */
  const wordX = (m: { from: { s: number }; to: { s: number } }, i: number, of: number) =>
    i === 0 ? x(m.from.s) : i === of - 1 ? x(m.to.s) : x((m.from.s + m.to.s) / 2);
  const line = () => [`0,${y(20)}`, ...marks().map((m) => `${x(m.to.s)},${y(m.to.c)}`)].join(' ');
  return (
    <svg
      class="oven-curve"
      viewBox={`-4 -34 ${WIDTH + 8} ${HEIGHT + 64}`}
      role="img"
      aria-label={t('run.picture.oven', {
        stages: props.picture.stages.map(({ name, lengthS }) =>
          message('run.picture.oven.stage', { name, lengthS }),
        ),
      })}
    >
      <path
        class="oven-area"
        d={`M0,${HEIGHT} L${line().replaceAll(' ', ' L')} L${WIDTH},${HEIGHT}Z`}
      />
      <polyline class="oven-line" points={line()} />
      <line class="oven-base" x1="0" y1={HEIGHT} x2={WIDTH} y2={HEIGHT} />
      <For each={marks()}>
        {(m, i) => (
          <text
            class="oven-word"
            x={wordX(m, i(), marks().length)}
            y={HEIGHT + 22}
            text-anchor={anchorOf(i(), marks().length)}
          >
            {say(m.stage.name)}
          </text>
        )}
      </For>
      <Show when={props.atS !== undefined}>
        <line class="oven-now" x1={x(atS())} x2={x(atS())} y1="-8" y2={HEIGHT} />
        <text
          class="oven-word oven-word--now"
          x={x(atS())}
          y="-16"
          text-anchor={atS() > total() * 0.9 ? 'end' : atS() < total() * 0.1 ? 'start' : 'middle'}
        >
          {t('run.picture.oven.now')}
        </text>
      </Show>
    </svg>
  );
}
