import { createMemo, createUniqueId, For, Index, Show } from 'solid-js';
import { t } from '../context/language.ts';
import { distanceToEdgeM, edgesOf, type Point } from '../../core/geometry/index.ts';
import type { Picture, Stretch } from '../../core/plan/index.ts';
import { markPlaces } from './mark-places.ts';
import { pouredUpTo } from './pour-progress.ts';
import { CM_PER_M, type Frame, frameOf, pathOf } from './kitchen-frame.ts';
import { roomForFeet, Stands } from './stand.tsx';
import '../styles/pictures.css';

type LanesPicture = Extract<Picture, { kind: 'lanes' }>;

/** A share of the way, and when the stream should be there, s from the start. */
type LaneTick = { readonly share: number; readonly atS: number };

/** A line this near an edge along all its length runs along the edge, m. */
const ON_EDGE_M = 0.001;
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
  /** Feet grow with the surface, so that they are seen beside a long one. */
  const scale = createMemo(() => {
    const { widthCm, heightCm } = frameOf([props.picture.outline], 0);
    return Math.max(0.8, Math.max(widthCm, heightCm) / 200);
  });
  const frame = createMemo(() => {
    const { outline, stretches } = props.picture;
    return frameOf([outline, roomForFeet(stretches, outline, scale())], 8);
  });
  /** Marks keep their size on the screen, whatever the size of the counter. */
  const mark = () =>
    Math.max(frame().widthCm, frame().heightCm) / (marked().length > MANY_KETTLES ? 38 : 24);
  const kettles = () => [...new Set(props.picture.stretches.map((s) => s.kettle))];
  /** While one is poured only it and the next are marked, so that neither is lost among the others. */
  const marked = () => {
    const { kettle } = props.picture;
    return kettle === 0 ? kettles() : kettles().filter((k) => k === kettle || k === kettle + 1);
  };
  const marks = createMemo(() => markPlaces(props.picture.stretches, marked(), mark() / CM_PER_M));
  /** Kettle 0: none is being poured, so every one is drawn, odd and even told apart. */
  const stateOf = (kettle: number): KettleState =>
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
  const now = () => {
    const so = poured();
    const stretch = so && mine()[so.lines.length - 1];
    return so?.at && stretch ? { stretch, at: so.at } : undefined;
  };
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
      <Water
        picture={props.picture}
        frame={frame()}
        stateOf={stateOf}
        poured={poured()?.lines ?? []}
      />
      <Stands
        stretches={props.picture.kettle === 0 ? props.picture.stretches : mine()}
        outline={props.picture.outline}
        frame={frame()}
        scale={scale()}
        now={now()}
        middle={props.picture.kettle === 0}
      />
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
      <For each={marks()}>
        {({ first, last, at }) => (
          <g
            transform={`translate(${frame().at(at).join(' ')})`}
            class={`lanes-mark lanes-mark--${stateOf(first)}`}
          >
            <rect
              x={-mark() * (first === last ? 1 : 1.8)}
              y={-mark()}
              width={mark() * (first === last ? 2 : 3.6)}
              height={mark() * 2}
              rx={mark()}
            />
            <text text-anchor="middle" dominant-baseline="central" font-size={String(mark() * 1.3)}>
              {first === last ? first : `${first}–${last}`}
            </text>
          </g>
        )}
      </For>
    </svg>
  );
}

/** Odd and even are told apart where no kettle is being poured. */
type KettleState = 'odd' | 'even' | 'now' | 'past' | 'next';

/** The surface from above, and on it the water of each kettle as wide as it wets. */
function Water(props: {
  picture: LanesPicture;
  frame: Frame;
  stateOf: (kettle: number) => KettleState;
  poured: readonly (readonly Point[])[];
}) {
  const ids = createUniqueId();
  /** As wide as a pass wets; a line along an edge has its own width. */
  const widthOf = ({ points }: Pick<Stretch, 'points'>): Record<string, string> => {
    const { laneM, outline } = props.picture;
    if (laneM === undefined) return {};
    const edge = edgesOf(outline).some(([a, b]) =>
      points.every((p) => distanceToEdgeM(p, a, b) < ON_EDGE_M),
    );
    return edge ? {} : { 'stroke-width': String(laneM * CM_PER_M) };
  };
  const top = () =>
    pathOf(props.frame, props.picture.outline) +
    props.picture.holes.map((h) => pathOf(props.frame, h)).join('');
  /** What this kettle pours lies over what the others do. */
  const inkOrder = () => {
    const isMine = ({ kettle }: Stretch) => Number(kettle === props.picture.kettle);
    return props.picture.stretches.toSorted((a, b) => isMine(a) - isMine(b));
  };
  const line = (points: readonly Point[]) =>
    points
      .map((p) =>
        props.frame
          .at(p)
          .map((v) => v.toFixed(1))
          .join(','),
      )
      .join(' ');
  return (
    <>
      <defs>
        <clipPath id={`${ids}-top`}>
          <path clip-rule="evenodd" d={top()} />
        </clipPath>
        <pattern
          id={`${ids}-far`}
          width="5"
          height="5"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <path class="lanes-far-line" d="M0 0V5" />
        </pattern>
      </defs>
      <path class="lanes-top" fill-rule="evenodd" d={top()} />
      <g clip-path={props.picture.laneM === undefined ? undefined : `url(#${ids}-top)`}>
        <For each={inkOrder()}>
          {(stretch) => (
            <polyline
              class={`lanes-stretch lanes-stretch--${props.stateOf(stretch.kettle)}`}
              points={line(stretch.points)}
              style={props.stateOf(stretch.kettle) === 'next' ? {} : widthOf(stretch)}
            />
          )}
        </For>
        <Index each={props.poured}>
          {(points) => (
            <polyline
              class="lanes-stretch lanes-stretch--poured"
              points={line(points())}
              style={widthOf({ points: points() })}
            />
          )}
        </Index>
        <For each={props.picture.laneM === undefined ? [] : props.picture.stretches}>
          {(stretch) => <polyline class="lanes-middle" points={line(stretch.points)} />}
        </For>
      </g>
      <path class="lanes-outline" d={top()} />
      <For each={props.picture.unreached ?? []}>
        {({ outline }) => (
          <path class="lanes-far" d={pathOf(props.frame, outline)} fill={`url(#${ids}-far)`} />
        )}
      </For>
    </>
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
