import {
  createEffect,
  createSignal,
  For,
  Match,
  on,
  onCleanup,
  onMount,
  Show,
  Switch,
} from 'solid-js';
import type { Kitchen } from '../../../../core/kitchen/index.ts';
import type { MissingAnswer } from '../../../../core/editing/index.ts';
import { Action } from '../../../parts/action.tsx';
import { Sheet } from '../../../parts/sheet.tsx';
import type { KitchenController } from '../../../controllers/kitchen/kitchen-opening.ts';
import { formatRoute } from '../../../context/route.ts';
import { historyKey } from '../editor/keys.ts';
import { AirChapter } from './chapters/air-chapter.tsx';
import { chapterOfPath, CHAPTERS, type ChapterId } from './chapters.ts';
import { FixturesChapter } from './chapters/fixtures-chapter.tsx';
import { goToField } from './fields/go-to-field.ts';
import { PeopleChapter } from './chapters/people-chapter.tsx';
import { createSurveyController, type SurveyController } from './survey-controller.ts';
import { WaterChapter } from './chapters/water-chapter.tsx';
import { WhereChapter } from './chapters/where-chapter.tsx';
import '../../../styles/kitchen/survey.css';
import '../../../styles/kitchen/survey-parts.css';
import '../../../styles/kitchen/editor.css';

type SurveyProps = {
  desk: KitchenController;
  kitchen: Kitchen;
  chapter: ChapterId;
  onGo: (chapter: ChapterId) => void;
  onPlan: () => void;
};

/** A kitchen described from nothing, or changed: five pages on one line. */
export function Survey(props: SurveyProps) {
  const survey = createSurveyController(props.desk, props.kitchen);
  const [selected, setSelected] = createSignal<string>();
  const [telling, setTelling] = createSignal(false);

  const onKey = (event: KeyboardEvent): void => {
    if (event.target instanceof HTMLInputElement) return;
    const ctrl = event.ctrlKey || event.metaKey;
    const what = historyKey({ key: event.key, shift: event.shiftKey, ctrl });
    if (!what) return;
    event.preventDefault();
    if (what === 'undo' && survey.undoLabel()) survey.undo();
    if (what === 'redo' && survey.redoLabel()) survey.redo();
  };
  // A page is read from its top.
  createEffect(
    on(
      () => props.chapter,
      () => window.scrollTo({ top: 0 }),
    ),
  );
  onMount(() => document.addEventListener('keydown', onKey));
  onCleanup(() => document.removeEventListener('keydown', onKey));

  const goTo = (ask: MissingAnswer): void => {
    setTelling(false);
    if (ask.fixture !== undefined) setSelected(ask.fixture);
    props.onGo(chapterOfPath(ask.path));
    goToField(ask.path);
  };
  return (
    <main class="place survey">
      <header class="survey-head">
        <div class="survey-title">
          <h1>{survey.kitchen().name}</h1>
          <a class="quiet" href={formatRoute({ page: 'kitchen' })}>
            All kitchens
          </a>
        </div>
        <SurveyTools survey={survey} onTell={() => setTelling(true)} />
      </header>
      <nav class="chapter-line" aria-label="Survey">
        <For each={CHAPTERS}>
          {(chapter) => (
            <a
              href={formatRoute({ page: 'kitchen', id: chapter.id })}
              aria-current={props.chapter === chapter.id ? 'step' : undefined}
            >
              {chapter.name}
            </a>
          )}
        </For>
      </nav>
      <Switch>
        <Match when={props.chapter === 'where'}>
          <WhereChapter survey={survey} />
        </Match>
        <Match when={props.chapter === 'fixtures'}>
          <FixturesChapter survey={survey} selected={selected()} onSelect={setSelected} />
        </Match>
        <Match when={props.chapter === 'water'}>
          <WaterChapter survey={survey} />
        </Match>
        <Match when={props.chapter === 'air'}>
          <AirChapter survey={survey} />
        </Match>
        <Match when={props.chapter === 'people'}>
          <PeopleChapter survey={survey} />
        </Match>
      </Switch>
      <Show when={props.chapter !== 'fixtures' && survey.refusal()}>
        <p class="trap" role="alert">
          {survey.refusal()}
        </p>
      </Show>
      <Onward
        {...props}
        survey={survey}
        quiet={
          props.chapter === 'fixtures' &&
          (selected() !== undefined || survey.kitchen().fixtures.length === 0)
        }
      />
      <Show when={telling()}>
        <StillToTell survey={survey} onClose={() => setTelling(false)} onTell={goTo} />
      </Show>
    </main>
  );
}

function SurveyTools(props: { survey: SurveyController; onTell: () => void }) {
  const { survey } = props;
  return (
    <div class="button-row">
      <Action
        class="button button--plain"
        disabled={!survey.undoLabel()}
        label={survey.undoLabel() ? `Undo: ${survey.undoLabel()}` : 'Undo'}
        onPress={survey.undo}
      >
        Undo
      </Action>
      <Action
        class="button button--plain"
        disabled={!survey.redoLabel()}
        label={survey.redoLabel() ? `Redo: ${survey.redoLabel()}` : 'Redo'}
        onPress={survey.redo}
      >
        Redo
      </Action>
      <Action
        class="button button--plain"
        disabled={survey.stillToTell().length === 0}
        onPress={props.onTell}
      >
        <Show when={survey.stillToTell().length > 0} fallback="All is told">
          Still to tell: {survey.stillToTell().length}
        </Show>
      </Action>
    </div>
  );
}

/** Whether it is kept, and the one thing that comes next. */
function Onward(props: SurveyProps & { survey: SurveyController; quiet: boolean }) {
  const next = () => CHAPTERS[CHAPTERS.findIndex((c) => c.id === props.chapter) + 1];
  const open = () => props.survey.stillToTell().length;
  const tone = () => (props.quiet ? 'button--plain' : 'button--ember');
  return (
    <footer class="onward">
      <Show
        when={props.desk.writing() === 'failed'}
        fallback={
          <p class="quiet">
            {!next() && open() > 0
              ? `${open() === 1 ? 'One thing is' : `${open()} things are`} still to tell; until then the plan takes the careful side.`
              : 'Kept on this tablet as you go.'}
          </p>
        }
      >
        <div class="button-row" role="alert">
          <strong>The last change could not be kept on this tablet.</strong>
          <Action class="button" onPress={props.desk.keepAgain}>
            Keep it now
          </Action>
        </div>
      </Show>
      <Show
        when={next()}
        fallback={
          <Action
            class="button button--ember button--big"
            disabled={props.survey.kitchen().fixtures.length === 0}
            onPress={props.onPlan}
          >
            See the plan
          </Action>
        }
      >
        {(chapter) => (
          <Action class={`button button--big ${tone()}`} onPress={() => props.onGo(chapter().id)}>
            Next: {chapter().next}
          </Action>
        )}
      </Show>
    </footer>
  );
}

function StillToTell(props: {
  survey: SurveyController;
  onClose: () => void;
  onTell: (ask: MissingAnswer) => void;
}) {
  return (
    <Sheet label="Still to tell" onClose={props.onClose}>
      <header class="sheet-head">
        <h2>Still to tell</h2>
        <Action class="button button--plain" onPress={props.onClose}>
          Back
        </Action>
      </header>
      <p class="tell">Until it is told the plan takes the careful side and says so.</p>
      <ul class="untold-list">
        <For each={props.survey.stillToTell()}>
          {(ask) => (
            <li>
              <Action class="untold" onPress={() => props.onTell(ask)}>
                <span class="untold-ask">{ask.ask}</span>
                <span class="quiet">{ask.why}</span>
              </Action>
            </li>
          )}
        </For>
      </ul>
    </Sheet>
  );
}
