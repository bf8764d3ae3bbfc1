import { Show } from 'solid-js';
import { lazyPage, say, t, translator } from '../../context/language.ts';
import type { KitchenController } from '../../controllers/kitchen/kitchen-opening.ts';
import { Action } from '../../parts/press/action.tsx';
import { DemoList } from './demo-list.tsx';
import { editNext } from './editor/hand/edit-next.ts';
import { KitchensList } from './kitchens-list.tsx';
import { Overview } from './overview.tsx';
import { FileProblems, PlanTrouble } from './problems.tsx';
import { chapterOf } from './survey/chapters.ts';
import '../../styles/kitchen/kitchen.css';

// Only who describes a kitchen needs these.
const Survey = lazyPage(
  ['kitchen', 'survey', 'problems', 'pictures'],
  async () => (await import('./survey/survey.tsx')).Survey,
);

async function begin(props: KitchenPageProps): Promise<void> {
  const { beginKitchen } = await import('./survey/begin.ts');
  const name = props.kitchens.library.freeName(t('kitchen.new-name'));
  props.kitchens.show(beginKitchen(name, navigator.language, translator()), { kind: 'begun' });
  await props.kitchens.settle();
  props.onGo('where');
}

type KitchenPageProps = {
  kitchens: KitchenController;
  /** What is open on this page: a chapter of the survey, or nothing. */
  at: string | undefined;
  onGo: (at?: string) => void;
  onDemo: (id: string) => void;
  onOpenFile: () => void;
  onSaveFile: () => void;
  onPlan: () => void;
};

/** Describe: the kitchens of this tablet, the open one, and its survey. */
export function KitchenPage(props: KitchenPageProps) {
  const chapter = () => chapterOf(props.at);
  const surveyed = () => (chapter() ? props.kitchens.kitchen() : undefined);
  return (
    <Show when={surveyed()} fallback={<Home {...props} />}>
      {(kitchen) => (
        <Survey
          kitchens={props.kitchens}
          kitchen={kitchen()}
          chapter={chapter() ?? 'where'}
          onGo={props.onGo}
          onPlan={props.onPlan}
        />
      )}
    </Show>
  );
}

function Home(props: KitchenPageProps) {
  return (
    <main class="place kitchen-place">
      <Show
        when={props.kitchens.kitchen()}
        fallback={
          <Welcome
            onNew={() => void begin(props)}
            onDemo={props.onDemo}
            onOpenFile={props.onOpenFile}
          />
        }
      >
        {(kitchen) => (
          <Overview
            kitchen={kitchen()}
            isDemo={props.kitchens.opened()?.kind === 'demo'}
            onChange={(next) => void props.kitchens.put(next)}
            onSaveFile={props.onSaveFile}
            onSurvey={(id) => {
              editNext(id);
              props.onGo('fixtures');
            }}
            onPlan={props.onPlan}
          />
        )}
      </Show>
      <FileProblems problems={props.kitchens.problems()} />
      <Show when={props.kitchens.planTrouble()}>{(why) => <PlanTrouble why={say(why())} />}</Show>
      <KitchensList kitchens={props.kitchens} onOpened={() => window.scrollTo({ top: 0 })} />
      <Show when={props.kitchens.kitchen()}>
        <section class="demos" aria-label={t('kitchen.demos')}>
          <h2>{t('kitchen.demos.another')}</h2>
          <DemoList onDemo={props.onDemo} />
          <div class="button-row">
            <Action class="button" onPress={() => void begin(props)}>
              {t('kitchen.describe-new')}
            </Action>
            <Action class="button" onPress={props.onOpenFile}>
              {t('kitchen.open-file')}
            </Action>
          </div>
        </section>
      </Show>
    </main>
  );
}

/** The first screen: what it is for, one thing to do, and four kitchens to look at. */
function Welcome(props: {
  onNew: () => void;
  onDemo: (id: string) => void;
  onOpenFile: () => void;
}) {
  return (
    <div class="welcome">
      <div class="welcome-words">
        <h1>{t('kitchen.welcome')}</h1>
        <p>{t('kitchen.welcome.about')}</p>
        <div class="button-row">
          <Action class="button button--ember button--big" onPress={props.onNew}>
            {t('kitchen.welcome.begin')}
          </Action>
          <Action class="button button--plain" onPress={props.onOpenFile}>
            {t('kitchen.open-file')}
          </Action>
        </div>
        <p class="welcome-ruling quiet">{t('kitchen.welcome.no-ruling')}</p>
      </div>
      <section class="welcome-demos" aria-label={t('kitchen.demos')}>
        <h2>{t('kitchen.demos.first')}</h2>
        <DemoList onDemo={props.onDemo} />
      </section>
    </div>
  );
}
