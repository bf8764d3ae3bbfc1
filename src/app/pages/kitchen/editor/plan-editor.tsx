import { createMemo, createSignal, createUniqueId, For, Show } from 'solid-js';
import type { Cooktop, Fixture, Kitchen, Polygon } from '../../../../core/kitchen/index.ts';
import { moveFixture, removeFixture } from '../../../../core/editing/index.ts';
import { Action } from '../../../parts/action.tsx';
import { outlineOf, pathOf, type Frame } from '../../../pictures/kitchen-frame.ts';
import {
  Burners,
  FixtureShape,
  inDrawOrder,
  kindWord,
  wordPointsOf,
} from '../../../pictures/kitchen-plan.tsx';
import { PhasePatterns } from '../../../pictures/phase-patterns.tsx';
import { quantityText } from '../survey/fields/quantities.ts';
import type { SurveyController } from '../survey/survey-controller.ts';
import { PointerController, type Guides } from './pointer-controller.ts';
import { GuideLines, Handles, WallEdges } from './handles.tsx';
import { deedOfKey } from './keys.ts';
import { fixtureOutline, lowerLeft, sizeOf } from './outline.ts';
import { roomOf } from './view.ts';
import { createViewport } from './viewport.ts';

type EditorProps = {
  survey: SurveyController;
  selected: string | undefined;
  /** Corners one by one instead of length and depth. */
  shape: boolean;
  onSelect: (id: string | undefined) => void;
  /** To the sheet of what is selected, by keyboard. */
  onOpen: () => void;
};

/** What a screen reader says of a fixture in the plan. */
function spoken(fixture: Fixture): string {
  const outline = outlineOf(fixture);
  if (!outline) return fixture.name;
  const { lengthM, depthM } = sizeOf(outline);
  return `${fixture.name}, ${quantityText('length', lengthM)} by ${quantityText('length', depthM)}`;
}

/** What an arrow key has done, for those who do not see it. */
function whereabouts(outline: Polygon): string {
  const [x, y] = lowerLeft(outline);
  return `${quantityText('length', x)} from the left, ${quantityText('length', y)} from the front`;
}

const FONT_PX = 15;

/** The kitchen from above, to be shaped by finger, mouse or keyboard. */
export function PlanEditor(props: EditorProps) {
  const patterns = createUniqueId();
  const kitchen = () => props.survey.kitchen();
  const [guides, setGuides] = createSignal<Guides>([]);
  let svg: SVGSVGElement | undefined;
  const eye = createViewport(kitchen, () => svg);
  const drawn = createMemo(() => inDrawOrder(kitchen().fixtures));
  const ids = createMemo(() => drawn().map((f) => f.id), [], {
    equals: (a, b) => a.length === b.length && a.every((id, i) => id === b[i]),
  });
  const byId = (id: string) => kitchen().fixtures.find((f) => f.id === id);
  const chosen = () => (props.selected ? byId(props.selected) : undefined);
  const chosenOutline = () =>
    props.selected ? fixtureOutline(kitchen(), props.selected) : undefined;

  const hand = new PointerController({
    survey: props.survey,
    selected: () => props.selected,
    select: (id) => {
      props.onSelect(id);
      if (id) svg?.querySelector<SVGGElement>(`g[data-id="${id}"]`)?.focus();
    },
    shape: () => props.shape,
    pan: eye.pan,
    pxPerCm: eye.pxPerCm,
    showGuides: setGuides,
  });
  return (
    <div class="editor">
      <svg
        ref={(element) => (svg = element)}
        class="editor-plan"
        viewBox={eye.frame().viewBox}
        role="group"
        aria-label="Plan of the kitchen. Arrow keys move what is chosen by a centimetre, with Shift by ten; Delete takes it out; Enter goes to its sheet."
        onPointerDown={(e) => {
          eye.hold(true);
          hand.down(e, gripUnder(e));
        }}
        onPointerMove={(e) => hand.move(e)}
        onPointerUp={(e) => {
          hand.up(e);
          eye.hold(false);
        }}
        onPointerCancel={(e) => {
          hand.cancel(e);
          eye.hold(false);
        }}
        onMouseDown={(e) => e.preventDefault()}
      >
        <PhasePatterns prefix={patterns} />
        <Floor kitchen={kitchen()} frame={eye.frame()} />
        <For each={ids()}>
          {(id) => (
            <Show when={byId(id)}>
              {(fixture) => (
                <Piece
                  fixture={fixture()}
                  frame={eye.frame()}
                  patterns={patterns}
                  selected={props.selected === id}
                  onFocus={() => props.onSelect(id)}
                  onKey={(e) => onKey(e, fixture(), props)}
                />
              )}
            </Show>
          )}
        </For>
        <Words
          drawn={drawn()}
          but={props.selected}
          frame={eye.frame()}
          fontCm={FONT_PX / eye.pxPerCm()}
        />
        <Show when={chosenOutline() && chosen()}>
          {(fixture) => (
            <Handles
              fixture={fixture()}
              frame={eye.frame()}
              pxPerCm={eye.pxPerCm()}
              shape={props.shape}
            />
          )}
        </Show>
        <GuideLines guides={guides()} frame={eye.frame()} />
      </svg>
      <p class="visually-hidden" role="status">
        {chosenOutline() ? whereabouts(chosenOutline() ?? []) : ''}
      </p>
      <div class="editor-tools" role="group" aria-label="Look">
        <Action class="tool" label="Nearer" onPress={() => eye.zoom(1.4, chosenOutline())}>
          +
        </Action>
        <Action class="tool" label="Farther" onPress={() => eye.zoom(1 / 1.4, chosenOutline())}>
          −
        </Action>
        <Action class="tool tool--word" onPress={eye.seeAll}>
          Whole room
        </Action>
      </div>
    </div>
  );
}

/** What each is; burners and bowls speak for themselves, and the chosen one has its sizes. */
function Words(props: {
  drawn: readonly Fixture[];
  but: string | undefined;
  frame: Frame;
  fontCm: number;
}) {
  const points = createMemo(() => wordPointsOf(props.drawn));
  return (
    <For each={props.drawn}>
      {(fixture) => {
        const at = () => props.frame.at(points()[fixture.id] ?? [0, 0]);
        return (
          <text
            class="kp-word"
            aria-hidden="true"
            x={at()[0]}
            y={at()[1]}
            text-anchor="middle"
            dominant-baseline="central"
            font-size={String(props.fontCm)}
          >
            {fixture.id === props.but ? '' : kindWord(fixture)}
          </text>
        );
      }}
    </For>
  );
}

/** The grip written on what lies under the finger, or the floor. */
function gripUnder(event: PointerEvent) {
  const at = (event.target as Element).closest<SVGElement>('[data-grip]');
  const id = at?.dataset['id'] ?? '';
  const n = Number(at?.dataset['n'] ?? 0);
  const kind = at?.dataset['grip'];
  if (kind === 'corner') return { kind, id, corner: n } as const;
  if (kind === 'edge') return { kind, id, edge: n } as const;
  if (kind === 'fixture') return { kind, id } as const;
  return { kind: 'floor' } as const;
}

function onKey(event: KeyboardEvent, fixture: Fixture, props: EditorProps): void {
  const deed = deedOfKey({
    key: event.key,
    shift: event.shiftKey,
    ctrl: event.ctrlKey || event.metaKey,
  });
  if (!deed) return;
  event.preventDefault();
  const { survey } = props;
  const { id, name } = fixture;
  const outline = fixtureOutline(survey.kitchen(), id);
  if (deed.do === 'leave') props.onSelect(undefined);
  else if (deed.do === 'open') props.onOpen();
  else if (deed.do === 'remove') {
    const row = (event.currentTarget as Element).nextElementSibling;
    if (survey.change(removeFixture(survey.kitchen(), id), `${name} taken out`)) return;
    props.onSelect(undefined);
    if (row instanceof SVGElement && row.tabIndex === 0) row.focus();
  } else if (deed.do === 'move' && outline) {
    const [x, y] = lowerLeft(outline);
    const to = [x + deed.dxM, y + deed.dyM] as const;
    survey.change(moveFixture(survey.kitchen(), id, to), `${name} moved`, `keys-${id}`);
  }
}

function Piece(props: {
  fixture: Fixture;
  frame: Frame;
  patterns: string;
  selected: boolean;
  onFocus: () => void;
  onKey: (event: KeyboardEvent) => void;
}) {
  return (
    <g
      class="kp-fixture ed-piece"
      classList={{ 'kp-fixture--selected': props.selected }}
      role="button"
      tabindex={0}
      aria-pressed={props.selected}
      aria-label={spoken(props.fixture)}
      data-grip="fixture"
      data-id={props.fixture.id}
      onFocus={() => props.onFocus()}
      onKeyDown={(e) => props.onKey(e)}
    >
      <FixtureShape
        frame={props.frame}
        fixture={props.fixture}
        phase="untouched"
        prefix={props.patterns}
      />
      <Show when={props.fixture.kind === 'cooktop' && props.fixture}>
        {(top) => <Burners frame={props.frame} cooktop={top() as Cooktop} lit={[]} />}
      </Show>
      <WallEdges fixture={props.fixture} frame={props.frame} />
    </g>
  );
}

/** Walls as far as they are known, and a quiet mesh of half metres to judge lengths by. */
function Floor(props: { kitchen: Kitchen; frame: Frame }) {
  const mesh = createUniqueId();
  const walls = () => pathOf(props.frame, roomOf(props.kitchen));
  const corner = () => props.frame.at(roomOf(props.kitchen)[3] ?? [0, 0]);
  return (
    <g aria-hidden="true">
      <defs>
        <pattern
          id={mesh}
          width="50"
          height="50"
          patternUnits="userSpaceOnUse"
          x={corner()[0]}
          y={corner()[1]}
        >
          <path class="ed-mesh" d="M50 0H0V50" />
        </pattern>
      </defs>
      <path class="ed-floor" d={walls()} />
      <path d={walls()} fill={`url(#${mesh})`} />
      <path class="ed-walls" d={walls()} />
    </g>
  );
}
