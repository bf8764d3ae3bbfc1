import { createMemo, createUniqueId, For, Show } from 'solid-js';
import type { Cooktop, Fixture, Kitchen } from '../../../../core/kitchen/index.ts';
import { message } from '../../../../core/messages/index.ts';
import type { PlaceNow, PlaceState } from '../../../../core/report/index.ts';
import { t } from '../../../context/language.ts';
import { kitchenFrame, outlineOf, pathOf } from '../../../pictures/kitchen-frame.ts';
import {
  Burners,
  FixtureShape,
  inDrawOrder,
  Word,
  wordsOf,
} from '../../../pictures/kitchen-plan.tsx';
import { STATE_MOTIFS } from '../../../pictures/motifs/motifs.ts';
import { Patterns } from '../../../pictures/motifs/patterns.tsx';

const STATES: readonly PlaceState[] = [
  'not-purged',
  'not-done',
  'heated',
  'poured',
  'steamed',
  'covered',
  'cleaned',
  'closed-up',
  'not-yet',
  'untouched',
];
const MARKS = ['meat', 'dairy', 'pareve'] as const;
/** Height of the letters, its share of the width of the drawing. */
const LETTER_SHARE = 1 / 26;

/** "B", "BC" where it is covered as well, "BC·M" where it is for meat. */
export function lettersOf({ state, isCoveredToo, designation }: PlaceNow): string {
  const too = isCoveredToo ? t('record-page.letter.covered') : '';
  const mark = designation === 'undecided' ? '' : `·${t(`record-page.mark.${designation}`)}`;
  return `${t(`record-page.letter.${state}`)}${too}${mark}`;
}

/** The kitchen from above as the run left it: a number, letters and a pattern a place, and what they mean. */
export function RecordPicture(props: { kitchen: Kitchen; places: readonly PlaceNow[] }) {
  const prefix = createUniqueId();
  const frame = createMemo(() => kitchenFrame(props.kitchen));
  const drawn = createMemo(() => inDrawOrder(props.kitchen.fixtures));
  const placeOf = (fixture: Fixture) => props.places.find((one) => one.fixture === fixture.id);
  const textOf = (fixture: Fixture): string => {
    const place = placeOf(fixture);
    return place ? `${place.number} ${lettersOf(place)}` : '';
  };
  const words = createMemo(() => wordsOf(drawn(), textOf, frame().widthCm * LETTER_SHARE, frame()));
  return (
    <figure class="record-picture">
      <svg
        class="kitchen-plan"
        viewBox={frame().viewBox}
        role="img"
        aria-label={t('record-page.picture', {
          places: props.places.map(({ name, number, state }) =>
            message('record-page.picture.place', {
              name,
              number,
              state: message(`record-page.state.${state}`),
            }),
          ),
        })}
      >
        <Patterns prefix={prefix} motifs={STATE_MOTIFS} />
        <For each={drawn()}>
          {(fixture) => (
            <g data-state={placeOf(fixture)?.state}>
              <FixtureShape frame={frame()} fixture={fixture} phase="untouched" prefix={prefix} />
              <Show when={fixture.kind === 'cooktop' && fixture}>
                {(top) => <Burners frame={frame()} cooktop={top() as Cooktop} lit={[]} />}
              </Show>
              <path
                d={[outlineOf(fixture) ?? [], ...holesOf(fixture)]
                  .map((polygon) => pathOf(frame(), polygon))
                  .join('')}
                fill-rule="evenodd"
                fill={`url(#${prefix}-${placeOf(fixture)?.state ?? 'untouched'})`}
              />
            </g>
          )}
        </For>
        <For each={drawn()}>
          {(fixture) => <Word frame={frame()} word={words()[fixture.id]} text={textOf(fixture)} />}
        </For>
      </svg>
      <Legend places={props.places} prefix={prefix} />
    </figure>
  );
}

function holesOf(fixture: Fixture) {
  return fixture.kind === 'counter' ? fixture.holes : [];
}

/** What the patterns and letters of this picture mean; of those that are in it. */
function Legend(props: { places: readonly PlaceNow[]; prefix: string }) {
  const states = () =>
    STATES.filter((state) => props.places.some((place) => place.state === state));
  const marks = () =>
    MARKS.filter((mark) => props.places.some(({ designation }) => designation === mark));
  return (
    <figcaption>
      <ul class="record-legend">
        <For each={states()}>
          {(state) => (
            <li>
              <svg viewBox="0 0 34 22" aria-hidden="true">
                <rect
                  x="1"
                  y="1"
                  width="32"
                  height="20"
                  class="rp-swatch"
                  fill={`url(#${props.prefix}-${state})`}
                />
              </svg>
              <b>{t(`record-page.letter.${state}`)}</b>
              <span>{t(`record-page.state.${state}`)}</span>
            </li>
          )}
        </For>
        <Show when={props.places.some(({ isCoveredToo }) => isCoveredToo)}>
          <li>
            <b>+{t('record-page.letter.covered')}</b>
            <span>{t('record-page.covered-too')}</span>
          </li>
        </Show>
        <For each={marks()}>
          {(mark) => (
            <li>
              <b>·{t(`record-page.mark.${mark}`)}</b>
              <span>{t(`common.designation.${mark}`)}</span>
            </li>
          )}
        </For>
      </ul>
    </figcaption>
  );
}
