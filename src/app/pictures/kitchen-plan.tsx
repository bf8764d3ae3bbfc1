import { createMemo, createUniqueId, For, Show } from 'solid-js';
import type { Cooktop, Fixture, Kitchen } from '../../core/kitchen/index.ts';
import type { FixturePhase } from '../../core/run/index.ts';
import { asWritten, message, type Message } from '../../core/messages/index.ts';
import { say, t } from '../context/language.ts';
import { BurnerShape } from './burner.tsx';
import {
  CM_PER_M,
  kitchenFrame,
  outlineOf,
  pathOf,
  placeWords,
  type Frame,
  type PlacedWord,
} from './kitchen-frame.ts';
import { Mark, PhasePatterns } from './phase-patterns.tsx';
import '../styles/pictures.css';

/** Drawn bottom up: counters and tables first, what is set into them on top. */
const DRAW_ORDER: Readonly<Record<string, number>> = {
  counter: 0,
  table: 0,
  cupboard: 1,
  drawer: 1,
  oven: 2,
};

export function inDrawOrder(fixtures: readonly Fixture[]): readonly Fixture[] {
  return fixtures
    .filter(outlineOf)
    .toSorted((a, b) => (DRAW_ORDER[a.kind] ?? 3) - (DRAW_ORDER[b.kind] ?? 3));
}

/** Words about fixtures, each clear of the others and of whatever is drawn on top of its fixture. */
export function wordsOf(
  drawn: readonly Fixture[],
  textOf: (fixture: Fixture, at: number) => string,
  sizeCm: number,
  frame: Frame,
): Readonly<Record<string, PlacedWord>> {
  const words = drawn.map((fixture, i) => ({
    id: fixture.id,
    text: textOf(fixture, i),
    polygon: outlineOf(fixture) ?? [],
    onTop: drawn.slice(i + 1).map((other) => outlineOf(other) ?? []),
  }));
  return placeWords(words, sizeCm / CM_PER_M, frame);
}

/** The kitchen from above. Phase is a fill pattern and a figure, which a legend names; colour only helps. */
export function KitchenPlan(props: {
  kitchen: Kitchen;
  phases?: Readonly<Record<string, FixturePhase>>;
  lit?: readonly string[];
  selected?: string | undefined;
  /** Where the next work is. */
  next?: string | undefined;
  /** Fixtures by their number in a list beside the picture. */
  numbers?: Readonly<Record<string, number>>;
  /** Small pictures have larger figures for their size. */
  size?: 'full' | 'small';
  onSelect?: (id: string) => void;
}) {
  const ids = createUniqueId();
  // The same one with each moment of a run: what hangs on it alone is reckoned once.
  const kitchen = createMemo(() => props.kitchen);
  const frame = createMemo(() => kitchenFrame(kitchen()));
  const drawn = createMemo(() => inDrawOrder(kitchen().fixtures));
  const phaseOf = (id: string): FixturePhase => props.phases?.[id] ?? 'untouched';
  const numberOf = (id: string): number | undefined => props.numbers?.[id];
  const textOf = (fixture: Fixture): string => {
    if (props.numbers) return String(numberOf(fixture.id) ?? '');
    const word = kindWord(fixture);
    return word ? say(word) : '';
  };
  /** Letters that take the room of what is drawn at a fixture: a figure is two wide, beside it stands its number. */
  const roomOf = (fixture: Fixture): string => {
    const figure = props.phases && phaseOf(fixture.id) !== 'untouched' ? 'mm' : '';
    return props.phases || props.numbers
      ? figure + (props.numbers ? `m${numberOf(fixture.id) ?? ''}` : '')
      : textOf(fixture);
  };
  const shape = () => (props.phases || props.numbers ? 'figure' : 'word');
  const rooms = createMemo(() => drawn().map(roomOf), undefined, {
    equals: (before, now) => before.join('\n') === now.join('\n'),
  });
  const words = createMemo(() =>
    wordsOf(
      drawn(),
      (_, at) => rooms()[at] ?? '',
      frame().widthCm * SHARE_OF_WIDTH[shape()][props.size ?? 'full'],
      frame(),
    ),
  );
  const inWords = (fixture: Fixture): Message => {
    const phase = phaseWord(phaseOf(fixture.id));
    return phase
      ? message('run.picture.fixture', { name: fixture.name, phase })
      : asWritten(fixture.name);
  };
  return (
    <svg
      class="kitchen-plan"
      viewBox={frame().viewBox}
      role="img"
      aria-label={t('run.picture.kitchen', { fixtures: drawn().map(inWords) })}
    >
      <PhasePatterns prefix={ids} />
      <For each={drawn()}>
        {(fixture) => (
          <g
            class="kp-fixture"
            data-fixture={fixture.id}
            classList={{
              'kp-fixture--selected': props.selected === fixture.id,
              'kp-fixture--next': props.next === fixture.id,
            }}
            onClick={() => props.onSelect?.(fixture.id)}
          >
            <FixtureShape
              frame={frame()}
              fixture={fixture}
              phase={phaseOf(fixture.id)}
              prefix={ids}
            />
            <Show when={fixture.kind === 'cooktop' && fixture}>
              {(top) => (
                <Burners frame={frame()} cooktop={top() as Cooktop} lit={props.lit ?? []} />
              )}
            </Show>
          </g>
        )}
      </For>
      <For each={drawn()}>
        {(fixture) => (
          <Show
            when={shape() === 'figure'}
            fallback={<Word frame={frame()} word={words()[fixture.id]} text={textOf(fixture)} />}
          >
            <Mark
              frame={frame()}
              word={words()[fixture.id]}
              phase={phaseOf(fixture.id)}
              number={numberOf(fixture.id)}
              onPress={props.onSelect && (() => props.onSelect?.(fixture.id))}
            />
          </Show>
        )}
      </For>
    </svg>
  );
}

export function FixtureShape(props: {
  frame: Frame;
  fixture: Fixture;
  phase: FixturePhase;
  prefix: string;
}) {
  const outline = () => pathOf(props.frame, outlineOf(props.fixture) ?? []);
  const holes = () =>
    props.fixture.kind === 'counter'
      ? props.fixture.holes.map((h) => pathOf(props.frame, h)).join('')
      : '';
  return (
    <>
      <path
        class={`kp-shape kp-shape--${props.fixture.kind}`}
        d={outline() + holes()}
        fill-rule="evenodd"
      />
      <path
        d={outline() + holes()}
        fill-rule="evenodd"
        fill={`url(#${props.prefix}-${props.phase})`}
      />
      <Show when={props.fixture.kind === 'sink' && props.fixture}>
        {(sink) => (
          <Bowls frame={props.frame} sink={sink() as Extract<Fixture, { kind: 'sink' }>} />
        )}
      </Show>
    </>
  );
}

/** Bowls stand side by side along the longer side of the sink. */
function Bowls(props: { frame: Frame; sink: Extract<Fixture, { kind: 'sink' }> }) {
  const box = createMemo(() => {
    const points = props.sink.outline.map((p) => props.frame.at(p));
    const xs = points.map((p) => p[0]);
    const ys = points.map((p) => p[1]);
    const x = Math.min(...xs);
    const y = Math.min(...ys);
    return { x, y, w: Math.max(...xs) - x, h: Math.max(...ys) - y };
  });
  const cells = () => {
    const n = props.sink.bowls.length;
    const b = box();
    const along = b.w >= b.h;
    return props.sink.bowls.map((_, i) => ({
      x: b.x + (along ? (b.w * i) / n : 0) + 4,
      y: b.y + (along ? 0 : (b.h * i) / n) + 4,
      w: (along ? b.w / n : b.w) - 8,
      h: (along ? b.h : b.h / n) - 8,
    }));
  };
  return (
    <For each={cells()}>
      {(c) => (
        <>
          <rect
            class="kp-bowl"
            x={c.x}
            y={c.y}
            width={Math.max(c.w, 4)}
            height={Math.max(c.h, 4)}
            rx="5"
          />
          <circle class="kp-drain" cx={c.x + c.w / 2} cy={c.y + c.h / 2} r="3" />
        </>
      )}
    </For>
  );
}

export function Burners(props: { frame: Frame; cooktop: Cooktop; lit: readonly string[] }) {
  return (
    <For each={props.cooktop.burners}>
      {(burner) => (
        <BurnerShape
          burner={burner}
          at={props.frame.at(burner.at)}
          lit={props.lit.includes(burner.id)}
        />
      )}
    </For>
  );
}

/** What it is, for a picture that shows no phases; burners and bowls speak for themselves. */
export function kindWord({ kind }: Fixture): Message | undefined {
  return kind === 'cooktop' || kind === 'sink' ? undefined : message(`common.fixture-kind.${kind}`);
}

function phaseWord(phase: FixturePhase): Message | undefined {
  return phase === 'untouched' ? undefined : message(`common.fixture-phase.${phase}`);
}

/** Words and figures grow with the drawing, so that a hall reads as well as a flat. */
const SHARE_OF_WIDTH = {
  word: { full: 1 / 34, small: 1 / 19 },
  figure: { full: 1 / 26, small: 1 / 15 },
} as const;

/** One word of the picture, where it has a place. */
export function Word(props: { frame: Frame; word: PlacedWord | undefined; text: string }) {
  return (
    <Show when={props.word}>
      {(word) => (
        <text
          class="kp-word"
          aria-hidden="true"
          x={props.frame.at(word().at)[0]}
          y={props.frame.at(word().at)[1]}
          text-anchor="middle"
          dominant-baseline="central"
          font-size={String(word().sizeM * CM_PER_M)}
        >
          {props.text}
        </text>
      )}
    </Show>
  );
}
