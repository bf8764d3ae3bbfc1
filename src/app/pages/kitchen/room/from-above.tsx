import { For, type JSX, Show } from 'solid-js';
import type { Bowl, Fixture, FixtureKind, Sink } from '../../../../core/kitchen/index.ts';
import { FIGURES } from './figures.ts';
import type { Stance } from './stance.ts';

type Size = Pick<Stance, 'widthCm' | 'depthCm'>;

/** A figure drawn in a square of 24, as large as a box lets it. */
function Figure(props: Size & { d: string; share?: number }) {
  const size = () => Math.min(props.widthCm, props.depthCm) * (props.share ?? 0.5);
  return (
    <path
      class="rm-figure"
      d={props.d}
      transform={`scale(${size() / 24}) translate(-12 -12)`}
      stroke-width={String(2.2)}
    />
  );
}

/** A door along the front, with its handle. */
function FrontDoor(props: Size) {
  return (
    <>
      <path
        class="rm-line"
        d={`M${-props.widthCm / 2} ${props.depthCm / 2 - 6}h${props.widthCm}`}
      />
      <path
        class="rm-handle"
        d={`M${-props.widthCm * 0.22} ${props.depthCm / 2 - 2.5}h${props.widthCm * 0.44}`}
      />
    </>
  );
}

/** Bowls as large as told, side by side; the tap stands behind them. */
function SinkAbove(props: Size & { sink: Sink }) {
  const bowls = () => {
    const { widthCm, depthCm, sink } = props;
    const share = sink.drainboard ? 0.66 : 1;
    const roomCm = widthCm * share;
    const eachCm = roomCm / sink.bowls.length;
    return sink.bowls.map((bowl: Bowl, i) => {
      const sides = [bowl.lengthM, bowl.widthM].map((m) => m * 100);
      const long = Math.max(...sides);
      const short = Math.min(...sides);
      const w = Math.min(eachCm - 5, eachCm > depthCm ? long : short);
      const d = Math.min(depthCm - 13, eachCm > depthCm ? short : long);
      return { x: -widthCm / 2 + eachCm * (i + 0.5), w: Math.max(6, w), d: Math.max(6, d) };
    });
  };
  const back = () => -props.depthCm / 2 + 5;
  const top = () => back() + 5;
  const tapX = () => bowls().reduce((sum, { x }) => sum + x, 0) / bowls().length;
  return (
    <>
      <For each={bowls()}>
        {({ x, w, d }) => (
          <>
            <rect class="kp-bowl" x={x - w / 2} y={top()} width={w} height={d} rx="6" />
            <circle class="kp-drain" cx={x} cy={top() + d / 2} r="3.2" />
          </>
        )}
      </For>
      <Show when={props.sink.drainboard}>
        <For each={[0.1, 0.16, 0.22, 0.28]}>
          {(share) => (
            <path
              class="rm-line"
              d={`M${props.widthCm / 2 - props.widthCm * share} ${top() + 3}v${Math.max(2, props.depthCm - 20)}`}
            />
          )}
        </For>
      </Show>
      <g class="rm-tap" transform={`translate(${tapX()} ${back()})`}>
        <path d="M0 0V15" />
        <circle r="3.4" />
        <Show when={props.sink.tap.handles > 1}>
          <path d="M-8 0h3M5 0h3" />
        </Show>
      </g>
    </>
  );
}

/** Knobs in a row along the front. */
function Knobs(props: Size & { count: number }) {
  const step = () => Math.min(9, (props.widthCm * 0.8) / props.count);
  return (
    <For each={Array.from({ length: props.count }, (_, i) => i - (props.count - 1) / 2)}>
      {(i) => <circle class="rm-knob" cx={i * step()} cy={props.depthCm / 2 - 4.5} r="2.1" />}
    </For>
  );
}

const ABOVE: Readonly<Partial<Record<FixtureKind, (size: Size) => JSX.Element>>> = {
  fridge: (size) => (
    <>
      <FrontDoor {...size} />
      <Figure {...size} d={FIGURES.snow} share={0.4} />
    </>
  ),
  freezer: (size) => (
    <>
      <FrontDoor {...size} />
      <Figure {...size} d={FIGURES.snow} share={0.56} />
      <Figure {...size} d={FIGURES.plate} share={0.74} />
    </>
  ),
  dishwasher: (size) => (
    <>
      <FrontDoor {...size} />
      <Figure {...size} d={FIGURES.plate} share={0.56} />
      <Figure {...size} d={FIGURES.spray} share={0.56} />
    </>
  ),
  microwave: ({ widthCm, depthCm }) => (
    <>
      <rect
        class="rm-pane"
        x={-widthCm * 0.43}
        y={-depthCm * 0.34}
        width={widthCm * 0.6}
        height={depthCm * 0.68}
        rx="2"
      />
      <path class="rm-handle" d={`M${widthCm * 0.23} ${-depthCm * 0.3}v${depthCm * 0.6}`} />
      <For each={[-0.24, -0.04, 0.16]}>
        {(y) => <circle class="rm-knob" cx={widthCm * 0.36} cy={depthCm * y} r="1.9" />}
      </For>
    </>
  ),
  'warming-drawer': (size) => (
    <>
      <FrontDoor {...size} />
      <Figure {...size} d={FIGURES.heat} share={0.4} />
    </>
  ),
  hood: (size) => <Figure {...size} d={FIGURES.fan} share={0.6} />,
  table: ({ widthCm, depthCm }) => (
    <rect
      class="rm-line"
      x={-widthCm / 2 + 4}
      y={-depthCm / 2 + 4}
      width={Math.max(1, widthCm - 8)}
      height={Math.max(1, depthCm - 8)}
      rx="3"
    />
  ),
  cupboard: ({ widthCm, depthCm }) => (
    <>
      <path
        class="rm-line"
        d={`M${-widthCm / 2} ${depthCm / 2 - 4}h${widthCm}M0 ${depthCm / 2 - 4}v4`}
      />
      <path class="rm-handle" d={`M-5 ${depthCm / 2}v3M5 ${depthCm / 2}v3`} />
      <path
        class="rm-line"
        d={`M${-widthCm / 2} ${-depthCm / 2}L${widthCm / 2} ${depthCm / 2 - 4}`}
      />
    </>
  ),
  drawer: (size) => <FrontDoor {...size} />,
};

/** Burners of a hob speak by themselves; what has knobs shows them. */
export function HobFront(props: Size & { count: number; glass: boolean }) {
  return (
    <Show
      when={!props.glass}
      fallback={
        <path
          class="rm-lamp"
          d={`M-12 ${props.depthCm / 2 - 4}h.1M-4 ${props.depthCm / 2 - 4}h.1M4 ${props.depthCm / 2 - 4}h.1M12 ${props.depthCm / 2 - 4}h.1`}
        />
      }
    >
      <Knobs {...props} />
    </Show>
  );
}

/** An oven: under a hob one sees its door handle, alone its window and its heat. */
export function OvenAbove(props: Size & { inRange: boolean }) {
  return (
    <Show
      when={!props.inRange}
      fallback={
        <path
          class="rm-oven-handle"
          d={`M${-props.widthCm * 0.36} ${props.depthCm / 2 + 3}h${props.widthCm * 0.72}`}
        />
      }
    >
      <rect
        class="rm-pane"
        x={-props.widthCm * 0.36}
        y={-props.depthCm * 0.22}
        width={props.widthCm * 0.72}
        height={props.depthCm * 0.44}
        rx="3"
      />
      <Figure {...props} d={FIGURES.heat} share={0.3} />
      <Knobs widthCm={props.widthCm} depthCm={-props.depthCm + 18} count={3} />
      <path
        class="rm-handle"
        d={`M${-props.widthCm * 0.3} ${props.depthCm / 2 - 5}h${props.widthCm * 0.6}`}
      />
    </Show>
  );
}

/** What makes a fixture known from above without its name; in its own axes, about its middle. */
export function FromAbove(props: Size & { fixture: Fixture }) {
  return (
    <g class="rm-symbol" aria-hidden="true">
      <Show when={props.fixture.kind === 'sink' && props.fixture}>
        {(sink) => (
          <SinkAbove widthCm={props.widthCm} depthCm={props.depthCm} sink={sink() as Sink} />
        )}
      </Show>
      {ABOVE[props.fixture.kind]?.({ widthCm: props.widthCm, depthCm: props.depthCm })}
    </g>
  );
}
