import { createEffect, createMemo, createSignal, For, on, Show } from 'solid-js';
import {
  fixtureOf,
  outlineOf,
  type Fixture,
  type OpeningKind,
} from '../../../../../core/kitchen/index.ts';
import {
  addFixture,
  addOpening,
  hangFixture,
  offerName,
  openingOf,
  roomOutline,
  wallAt,
  type Offer,
} from '../../../../../core/editing/index.ts';
import { message, type Message } from '../../../../../core/messages/index.ts';
import { say, t, translator, written } from '../../../../context/language.ts';
import { Action } from '../../../../parts/press/action.tsx';
import { edgeOf, type Face } from '../../editor/hand/faces.ts';
import { PlanEditor } from '../../editor/plan-editor.tsx';
import type { SurveyController } from '../controller/survey-controller.ts';
import { FixtureSheet } from '../fixture/fixture-sheet.tsx';
import { OpeningSheet } from '../fixture/opening-sheet.tsx';
import { Offers } from './offers.tsx';
import { RunForm } from './run-form.tsx';

/** The plan on one side; on the other what can be added, or the sheet of what is chosen. */
export function FixturesChapter(props: {
  survey: SurveyController;
  selected: string | undefined;
  onSelect: (id: string | undefined) => void;
}) {
  const { survey } = props;
  const [shape, setShape] = createSignal(false);
  const [walking, setWalking] = createSignal(false);
  const [face, setFace] = createSignal<Face>('above');
  let panel: HTMLDivElement | undefined;
  const chosen = createMemo(() =>
    survey.kitchen().fixtures.find((fixture) => fixture.id === props.selected),
  );
  // Another sheet is read from its top, as another page is.
  createEffect(
    on(
      () => props.selected,
      () => {
        setShape(false);
        if ((panel?.getBoundingClientRect().top ?? 0) < 0)
          panel?.scrollIntoView({ block: 'start' });
      },
      { defer: true },
    ),
  );
  /** Another page of the panel: whoever works by keyboard or ear begins at its heading. */
  const turnTo = (id: string | undefined): void => {
    props.onSelect(id);
    queueMicrotask(() => panel?.querySelector('h2')?.focus({ preventScroll: true }));
  };
  const { add, addInWall } = createAdding(survey, face, setFace, turnTo);
  const chosenOpening = createMemo(() =>
    props.selected === undefined ? undefined : openingOf(survey.kitchen(), props.selected),
  );
  return (
    <div class="survey-fixtures">
      <div class="survey-plan">
        <PlanEditor
          survey={survey}
          selected={props.selected}
          shape={shape()}
          face={face()}
          onFace={setFace}
          onSelect={(id) => {
            setWalking(false);
            props.onSelect(id);
          }}
          onOpen={() => panel?.querySelector<HTMLElement>('input, select')?.focus()}
        />
        <Show when={survey.refusal()}>
          {(why) => (
            <p class="trap" role="alert">
              {say(why())}
            </p>
          )}
        </Show>
      </div>
      <div class="survey-panel" ref={(element) => (panel = element)}>
        <Show
          when={chosen()?.id ?? chosenOpening()?.id}
          keyed
          fallback={
            <Show
              when={walking()}
              fallback={
                <Adding
                  survey={survey}
                  onAdd={add}
                  onAddInWall={addInWall}
                  onWalk={() => setWalking(true)}
                  onSelect={turnTo}
                />
              }
            >
              <RunForm
                survey={survey}
                onDone={(id) => {
                  setWalking(false);
                  turnTo(id);
                }}
              />
            </Show>
          }
        >
          {(_id) => (
            <Show
              when={chosen()}
              fallback={
                <Show when={chosenOpening()}>
                  {(opening) => (
                    <OpeningSheet survey={survey} opening={opening()} onSelect={turnTo} />
                  )}
                </Show>
              }
            >
              {(fixture) => (
                <FixtureSheet
                  survey={survey}
                  fixture={fixture()}
                  shape={shape()}
                  onShape={setShape}
                  onSelect={turnTo}
                />
              )}
            </Show>
          )}
        </Show>
      </div>
    </div>
  );
}

/** Puts something new where it is likely to be, in view of whoever looks at one wall. */
function createAdding(
  survey: SurveyController,
  face: () => Face,
  setFace: (face: Face) => void,
  turnTo: (id: string) => void,
) {
  return {
    add(offer: Offer): void {
      const added = addFixture(survey.kitchen(), offer.id, translator());
      const label = message('survey.done.added', { what: offerName(offer.id) });
      const fixture = fixtureOf(added.kitchen, added.id);
      const wall = face();
      // What is not drawn from above is put at the wall that one looks at.
      const next =
        wall !== 'above' && fixture && !outlineOf(fixture)
          ? hangFixture(added.kitchen, added.id, edgeOf(roomOutline(added.kitchen), wall))
          : added.kitchen;
      if (!survey.change(next, label)) turnTo(added.id);
    },
    addInWall(kind: OpeningKind): void {
      const added = addOpening(survey.kitchen(), kind);
      const label = message('survey.done.added', { what: message(`survey.opening.${kind}`) });
      if (survey.change(added.kitchen, label) || added.id === '') return;
      const wall = openingOf(added.kitchen, added.id)?.wall;
      if (face() !== 'above' && wall) setFace(wallAt(added.kitchen, wall));
      turnTo(added.id);
    },
  };
}

/** What a fixture is made of, or its kind. */
function whatItIs(fixture: Fixture): Message {
  return 'material' in fixture
    ? message(`common.material.${fixture.material}`)
    : message(`common.fixture-kind.${fixture.kind}`);
}

function Adding(props: {
  survey: SurveyController;
  onAdd: (offer: Offer) => void;
  onAddInWall: (kind: OpeningKind) => void;
  onWalk: () => void;
  onSelect: (id: string) => void;
}) {
  const fixtures = () => props.survey.kitchen().fixtures;
  return (
    <>
      <h2 tabindex={-1}>
        {fixtures().length === 0 ? t('survey.fixtures.first') : t('survey.fixtures.next')}
      </h2>
      <p class="tell">{t('survey.fixtures.note')}</p>
      <Offers onAdd={props.onAdd} onAddInWall={props.onAddInWall} />
      <Action class="button button--plain" onPress={props.onWalk}>
        {t('survey.fixtures.run')}
      </Action>
      <Show when={fixtures().length > 0}>
        <section aria-label={t('survey.fixtures.here')}>
          <h3>{t('survey.fixtures.here')}</h3>
          <ul class="fixture-list">
            <For each={fixtures()}>
              {(fixture) => (
                <li>
                  <Action class="fixture-row" onPress={() => props.onSelect(fixture.id)}>
                    <span>{written(fixture.name)}</span>
                    <span class="quiet">
                      {outlineOf(fixture)
                        ? t('survey.fixtures.drawn', { what: whatItIs(fixture) })
                        : t('survey.fixtures.not-drawn', { what: whatItIs(fixture) })}
                    </span>
                  </Action>
                </li>
              )}
            </For>
          </ul>
        </section>
      </Show>
    </>
  );
}
