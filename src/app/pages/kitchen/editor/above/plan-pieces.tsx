import { createMemo, createUniqueId, For, Show } from 'solid-js';
import { boundingBox, sizeOf } from '../../../../../core/geometry/index.ts';
import {
  drawnOutlines,
  outlineOf,
  type Fixture,
  type Kitchen,
} from '../../../../../core/kitchen/index.ts';
import { roomOutline } from '../../../../../core/editing/index.ts';
import { say, t } from '../../../../context/language.ts';
import { pathOf, type Frame } from '../../../../pictures/kitchen-frame.ts';
import { kindWord, Word, wordsOf } from '../../../../pictures/kitchen-plan.tsx';
import { FixtureAbove, HangingAbove } from '../../room/fixture-above.tsx';
import { Walls } from '../../room/shell.tsx';
import { quantity } from '../../survey/inputs/quantities.ts';

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

/** One fixture from above, to be pressed, pulled and gone to by Tab. */
export function Piece(props: {
  fixture: Fixture;
  kitchen: Kitchen;
  frame: Frame;
  patterns: string;
  inRange: boolean;
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
      aria-describedby="editor-keys"
      data-grip="fixture"
      data-id={props.fixture.id}
      onFocus={() => props.onFocus()}
      onKeyDown={(e) => props.onKey(e)}
    >
      <FixtureAbove
        fixture={props.fixture}
        room={roomOutline(props.kitchen)}
        frame={props.frame}
        patterns={props.patterns}
        others={drawnOutlines(props.kitchen)}
        inRange={props.inRange}
      />
    </g>
  );
}

/** Walls as far as they are known, and a quiet mesh of half metres to judge lengths by. */
export function Floor(props: { kitchen: Kitchen; frame: Frame }) {
  const mesh = createUniqueId();
  const outline = () => roomOutline(props.kitchen);
  const corner = () => {
    const { xMinM, yMaxM } = boundingBox(outline());
    return props.frame.at([xMinM, yMaxM]);
  };
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
      <Walls outline={outline()} told={!!props.kitchen.room.outline} frame={props.frame} />
      <path d={pathOf(props.frame, outline())} fill={`url(#${mesh})`} />
    </g>
  );
}

/** What hangs over things, or is built in below, as broken lines that are in nobody's way. */
export function Hanging(props: { kitchen: Kitchen; frame: Frame }) {
  return (
    <g class="ed-hanging" aria-hidden="true">
      <For each={props.kitchen.fixtures}>
        {(fixture) => (
          <Show when={'wallPlace' in fixture && !outlineOf(fixture) && fixture.wallPlace}>
            {(place) => (
              <HangingAbove
                fixture={fixture}
                place={place()}
                room={roomOutline(props.kitchen)}
                frame={props.frame}
              />
            )}
          </Show>
        )}
      </For>
    </g>
  );
}
