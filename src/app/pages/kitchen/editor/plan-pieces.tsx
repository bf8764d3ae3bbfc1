import { createMemo, createUniqueId, For, Show } from 'solid-js';
import { sizeOf } from '../../../../core/geometry/index.ts';
import {
  outlineOf,
  type Cooktop,
  type Fixture,
  type Kitchen,
} from '../../../../core/kitchen/index.ts';
import { say, t } from '../../../context/language.ts';
import { pathOf, type Frame } from '../../../pictures/kitchen-frame.ts';
import { Burners, FixtureShape, kindWord, Word, wordsOf } from '../../../pictures/kitchen-plan.tsx';
import { quantity } from '../survey/inputs/quantities.ts';
import { WallEdges } from './handles.tsx';
import { roomOf } from './view.ts';

/** What a screen reader says of a fixture in the plan. */
function spoken(fixture: Fixture): string {
  const outline = outlineOf(fixture);
  if (!outline) return fixture.name;
  const { lengthM, depthM } = sizeOf(outline);
  return t('survey.editor.sized', {
    name: fixture.name,
    length: quantity('length', lengthM),
    depth: quantity('length', depthM),
  });
}

/** The word for a kind of fixture, where it has one. */
function wordOf(fixture: Fixture): string {
  const word = kindWord(fixture);
  return word ? say(word) : '';
}

/** What each is; burners and bowls speak for themselves, and the chosen one has its sizes. */
export function Words(props: {
  drawn: readonly Fixture[];
  but: string | undefined;
  frame: Frame;
  fontCm: number;
}) {
  const text = (fixture: Fixture) => (fixture.id === props.but ? '' : wordOf(fixture));
  const words = createMemo(() => wordsOf(props.drawn, text, props.fontCm, props.frame));
  return (
    <For each={props.drawn}>
      {(fixture) => <Word frame={props.frame} word={words()[fixture.id]} text={text(fixture)} />}
    </For>
  );
}

export function Piece(props: {
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
export function Floor(props: { kitchen: Kitchen; frame: Frame }) {
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
