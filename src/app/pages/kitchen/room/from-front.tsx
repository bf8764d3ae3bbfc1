import { For, type JSX, Show } from 'solid-js';
import type { Fixture, FixtureKind, OpeningKind, Sink } from '../../../../core/kitchen/index.ts';
import { FIGURES } from './figures.ts';
import { paintOf } from './materials.tsx';

/** A box seen from the front: its left upper corner at the origin, cm. */
type Box = { readonly w: number; readonly h: number };

const worktopCm = 4;

function Bar(props: { x: number; y: number; w: number }) {
  return <path class="rm-handle" d={`M${props.x} ${props.y}h${props.w}`} />;
}

function Figure(props: { name: keyof typeof FIGURES; x: number; y: number; size: number }) {
  return (
    <path
      class="rm-figure"
      stroke-width="2.2"
      d={FIGURES[props.name]}
      transform={`translate(${props.x} ${props.y}) scale(${props.size / 24}) translate(-12 -12)`}
    />
  );
}

function Knobs(props: { x: number; y: number; count: number; gap: number }) {
  return (
    <For each={Array.from({ length: props.count }, (_, i) => i - (props.count - 1) / 2)}>
      {(i) => <circle class="rm-knob" cx={props.x + i * props.gap} cy={props.y} r="2" />}
    </For>
  );
}

/** Doors side by side, as wide as doors are, each with its handle. */
function Doors(props: Box) {
  const count = () => Math.max(1, Math.round(props.w / 50));
  return (
    <For each={Array.from({ length: count() }, (_, i) => i)}>
      {(i) => {
        const each = () => props.w / count();
        const hand = () => each() * (i + (i % 2 === 0 ? 1 : 0)) + (i % 2 === 0 ? -5 : 5);
        return (
          <>
            <Show when={i > 0}>
              <path class="rm-line" d={`M${each() * i} 0v${props.h}`} />
            </Show>
            <path
              class="rm-handle"
              d={`M${count() === 1 ? props.w - 6 : hand()} ${props.h * 0.42}v${Math.min(14, props.h * 0.2)}`}
            />
          </>
        );
      }}
    </For>
  );
}

/** Fronts of drawers, as many as their height has room for. */
function Drawers(props: Box) {
  const count = () => Math.max(1, Math.round(props.h / 22));
  return (
    <For each={Array.from({ length: count() }, (_, i) => i)}>
      {(i) => {
        const each = () => props.h / count();
        return (
          <>
            <Show when={i > 0}>
              <path class="rm-line" d={`M0 ${each() * i}h${props.w}`} />
            </Show>
            <Bar x={props.w * 0.33} y={each() * i + each() * 0.3} w={props.w * 0.34} />
          </>
        );
      }}
    </For>
  );
}

const FRONTS: Readonly<Record<FixtureKind, (box: Box & { fixture: Fixture }) => JSX.Element>> = {
  counter: ({ w }) => <path class="rm-line" d={`M0 ${worktopCm}h${w}`} />,
  table: ({ w, h }) => (
    <path
      class="rm-line"
      d={`M0 ${worktopCm}h${w}M6 ${worktopCm}v${h - worktopCm}M${w - 6} ${worktopCm}v${h - worktopCm}`}
    />
  ),
  sink: ({ w, h, fixture }) => (
    <>
      <path
        class="rm-tap-front"
        d={`M${w / 2} ${h * 0.68}V${h * 0.2}q0 ${-h * 0.18} ${w * 0.09} ${-h * 0.18}t${w * 0.09} ${h * 0.2}`}
      />
      <For each={(fixture as Sink).bowls}>
        {(_, i) => {
          const each = () => w / (fixture as Sink).bowls.length;
          return (
            <path
              class="rm-bowl-front"
              d={`M${each() * i() + 4} ${h * 0.68}v${h * 0.2}q0 ${h * 0.1} 6 ${h * 0.1}h${Math.max(1, each() - 20)}q6 0 6 ${-h * 0.1}v${-h * 0.2}`}
            />
          );
        }}
      </For>
      <path class="rm-handle" d={`M0 ${h * 0.68}h${w}`} />
    </>
  ),
  cooktop: ({ w, h, fixture }) => (
    <For each={fixture.kind === 'cooktop' ? fixture.burners.slice(0, 8) : []}>
      {(burner, i) => {
        const count = fixture.kind === 'cooktop' ? Math.min(4, fixture.burners.length) : 1;
        const x = () => (w / count) * ((i() % count) + 0.5);
        return (
          <path
            class="rm-oven-handle"
            d={`M${x() - burner.diameterM * 40} ${h * 0.15}h${burner.diameterM * 80}`}
          />
        );
      }}
    </For>
  ),
  oven: ({ w, h }) => (
    <>
      <path class="rm-line" d={`M0 ${h * 0.2}h${w}`} />
      <Knobs x={w / 2} y={h * 0.1} count={5} gap={Math.min(11, w / 7)} />
      <Bar x={w * 0.15} y={h * 0.28} w={w * 0.7} />
      <rect class="rm-pane" x={w * 0.16} y={h * 0.38} width={w * 0.68} height={h * 0.42} rx="3" />
      <path
        class="rm-lamp"
        d={`M${w * 0.24} ${h * 0.52}h${w * 0.52}M${w * 0.24} ${h * 0.66}h${w * 0.52}`}
      />
    </>
  ),
  fridge: ({ w, h }) => (
    <>
      <path class="rm-line" d={`M0 ${h * 0.32}h${w}`} />
      <path class="rm-handle" d={`M7 ${h * 0.2}v${h * 0.08}M7 ${h * 0.37}v${h * 0.16}`} />
      <Figure name="snow" x={w * 0.55} y={h * 0.16} size={Math.min(w, h) * 0.26} />
    </>
  ),
  freezer: ({ w, h }) => (
    <>
      <path class="rm-handle" d={`M7 ${h * 0.3}v${h * 0.18}`} />
      <Figure name="snow" x={w * 0.55} y={h * 0.3} size={Math.min(w, h) * 0.5} />
    </>
  ),
  microwave: ({ w, h }) => (
    <>
      <rect class="rm-pane" x={w * 0.07} y={h * 0.16} width={w * 0.58} height={h * 0.66} rx="2" />
      <path class="rm-handle" d={`M${w * 0.7} ${h * 0.2}v${h * 0.58}`} />
      <For each={[0.28, 0.5, 0.72]}>
        {(y) => <circle class="rm-knob" cx={w * 0.85} cy={h * y} r="1.9" />}
      </For>
    </>
  ),
  dishwasher: ({ w, h }) => (
    <>
      <path class="rm-line" d={`M0 ${h * 0.16}h${w}`} />
      <Bar x={w * 0.25} y={h * 0.24} w={w * 0.5} />
      <Figure name="plate" x={w / 2} y={h * 0.58} size={Math.min(w, h) * 0.46} />
    </>
  ),
  'warming-drawer': ({ w, h }) => (
    <>
      <Bar x={w * 0.3} y={h * 0.25} w={w * 0.4} />
      <Figure name="heat" x={w / 2} y={h * 0.65} size={Math.min(w, h) * 0.5} />
    </>
  ),
  hood: () => null,
  cupboard: (box) => <Doors {...box} />,
  drawer: (box) => <Drawers {...box} />,
};

/** The silhouette: a hood narrows upwards, all else is a box. */
function silhouette({ w, h }: Box, kind: FixtureKind): string {
  if (kind === 'hood') {
    const lip = Math.min(8, h * 0.3);
    return `M0 ${h}v${-lip}L${w * 0.3} 0h${w * 0.4}L${w} ${h - lip}v${lip}z`;
  }
  return `M0 0h${w}v${h}h${-w}z`;
}

/** A fixture as one sees it standing before its wall, in a box with its left upper corner at the origin. */
export function FromFront(props: {
  fixture: Fixture;
  widthCm: number;
  heightCm: number;
  /** False: its heights are the usual ones, which a broken line says. */
  told: boolean;
  patterns: string;
}) {
  const box = () => ({ w: props.widthCm, h: props.heightCm });
  const bare = () => props.fixture.kind === 'sink';
  const isTop = () => props.fixture.kind === 'counter' || props.fixture.kind === 'table';
  const style = () => {
    const paint = paintOf(props.fixture, props.patterns);
    return paint ? { fill: paint } : undefined;
  };
  return (
    <>
      <path
        class="kp-shape"
        classList={{ 'rm-untold': !props.told, 'rm-bare': bare() }}
        d={silhouette(box(), props.fixture.kind)}
        style={isTop() || bare() ? undefined : style()}
      />
      <Show when={isTop()}>
        <rect class="rm-worktop" width={props.widthCm} height={worktopCm} style={style()} />
      </Show>
      <g class="rm-symbol" aria-hidden="true">
        {FRONTS[props.fixture.kind]({ ...box(), fixture: props.fixture })}
      </g>
    </>
  );
}

/** A door, window or passage from inside the room, its left upper corner at the origin. */
export function OpeningFromFront(props: {
  kind: OpeningKind;
  hinge: 'left' | 'right' | undefined;
  widthCm: number;
  heightCm: number;
  told: boolean;
}) {
  const { w, h } = { w: () => props.widthCm, h: () => props.heightCm };
  const handX = () => (props.hinge === 'right' ? w() * 0.12 : w() * 0.88);
  return (
    <>
      <rect
        class={`kp-shape rm-opening rm-opening--${props.kind}`}
        classList={{ 'rm-untold': !props.told }}
        width={w()}
        height={h()}
      />
      <Show when={props.kind === 'window'}>
        <path class="rm-line" d={`M${w() / 2} 0v${h()}M0 ${h() * 0.4}h${w()}`} />
        <path class="rm-handle" d={`M-4 ${h()}h${w() + 8}`} />
      </Show>
      <Show when={props.kind === 'door'}>
        <path
          class="rm-line"
          d={`M${w() * 0.16} ${h() * 0.08}h${w() * 0.68}v${h() * 0.32}h${-w() * 0.68}zM${w() * 0.16} ${h() * 0.56}h${w() * 0.68}v${h() * 0.36}h${-w() * 0.68}z`}
        />
        <Show when={props.hinge}>
          <circle class="rm-knob" cx={handX()} cy={h() * 0.5} r="3" />
        </Show>
      </Show>
    </>
  );
}
