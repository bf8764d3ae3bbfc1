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
import { say, t, written } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import { Sheet } from '../../../parts/sheet.tsx';
import type { KitchenController } from '../../../controllers/kitchen/kitchen-opening.ts';
import { formatRoute } from '../../../context/route.ts';
import { takeEditNext } from '../editor/hand/edit-next.ts';
import { historyKey } from '../editor/hand/keys.ts';
import { AirChapter } from './chapters/air-chapter.tsx';
import { chapterOfPath, CHAPTERS, type ChapterId } from './chapters.ts';
import { FixturesChapter } from './chapters/fixtures-chapter.tsx';
import { goToField } from './go-to-field.ts';
import { PeopleChapter } from './chapters/people-chapter.tsx';
import { createSurveyController, type SurveyController } from './controller/survey-controller.ts';
import { WaterChapter } from './chapters/water-chapter.tsx';
import { WhereChapter } from './chapters/where-chapter.tsx';
import '../../../styles/kitchen/survey.css';
import '../../../styles/kitchen/survey-parts.css';
import '../../../styles/kitchen/editor.css';

type SurveyProps = {
  kitchens: KitchenController;
  kitchen: Kitchen;
  chapter: ChapterId;
  onGo: (chapter: ChapterId) => void;
  onPlan: () => void;
};

/** A kitchen described from nothing, or changed: five pages on one line. */
export function Survey(props: SurveyProps) {
  const survey = createSurveyController(props.kitchens, props.kitchen);
  const [selected, setSelected] = createSignal(takeEditNext());
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
          <h1>{written(survey.kitchen().name)}</h1>
          <a class="quiet" href={formatRoute({ page: 'kitchen' })}>
            {t('survey.all-kitchens')}
          </a>
        </div>
        <SurveyTools survey={survey} onTell={() => setTelling(true)} />
      </header>
      <nav class="chapter-line" aria-label={t('survey.title')}>
        <For each={CHAPTERS}>
          {(chapter) => (
            <a
              href={formatRoute({ page: 'kitchen', id: chapter })}
              aria-current={props.chapter === chapter ? 'step' : undefined}
            >
              {t(`survey.chapter.${chapter}`)}
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
        {(why) => (
          <p class="trap" role="alert">
            {say(why())}
          </p>
        )}
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
  const undoName = (): string => {
    const step = survey.undoLabel();
    return step ? t('survey.undo-step', { step }) : t('survey.undo');
  };
  const redoName = (): string => {
    const step = survey.redoLabel();
    return step ? t('survey.redo-step', { step }) : t('survey.redo');
  };
  return (
    <div class="button-row">
      <Action
        class="button button--plain"
        disabled={!survey.undoLabel()}
        label={undoName()}
        onPress={survey.undo}
      >
        {t('survey.undo')}
      </Action>
      <Action
        class="button button--plain"
        disabled={!survey.redoLabel()}
        label={redoName()}
        onPress={survey.redo}
      >
        {t('survey.redo')}
      </Action>
      <Action
        class="button button--plain"
        disabled={survey.stillToTell().length === 0}
        onPress={props.onTell}
      >
        {survey.stillToTell().length > 0
          ? t('survey.still-to-tell.count', { count: survey.stillToTell().length })
          : t('survey.still-to-tell.none')}
      </Action>
    </div>
  );
}

/** Whether it is kept, and the one thing that comes next. */
function Onward(props: SurveyProps & { survey: SurveyController; quiet: boolean }) {
  const next = () => CHAPTERS[CHAPTERS.indexOf(props.chapter) + 1];
  const open = () => props.survey.stillToTell().length;
  const tone = () => (props.quiet ? 'button--plain' : 'button--ember');
  return (
    <footer class="onward">
      <Show
        when={props.kitchens.writing() === 'failed'}
        fallback={
          <p class="quiet">
            {!next() && open() > 0
              ? t('survey.onward.open', { count: open() })
              : t('survey.onward.kept')}
          </p>
        }
      >
        <div class="button-row" role="alert">
          <strong>{t('survey.onward.failed')}</strong>
          <Action class="button" onPress={props.kitchens.keepAgain}>
            {t('survey.onward.keep')}
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
            {t('survey.see-plan')}
          </Action>
        }
      >
        {(chapter) => (
          <Action class={`button button--big ${tone()}`} onPress={() => props.onGo(chapter())}>
            {t(`survey.next.${chapter()}`)}
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
    <Sheet label={t('survey.still-to-tell')} onClose={props.onClose}>
      <header class="sheet-head">
        <h2>{t('survey.still-to-tell')}</h2>
        <Action class="button button--plain" onPress={props.onClose}>
          {t('survey.back')}
        </Action>
      </header>
      <p class="tell">{t('survey.still-to-tell.note')}</p>
      <ul class="missing-list">
        <For each={props.survey.stillToTell()}>
          {(ask) => (
            <li>
              <Action class="missing" onPress={() => props.onTell(ask)}>
                <span class="missing-ask">{say(ask.ask)}</span>
                <span class="quiet">{say(ask.why)}</span>
              </Action>
            </li>
          )}
        </For>
      </ul>
    </Sheet>
  );
}
