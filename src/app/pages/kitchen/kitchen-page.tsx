import { For, lazy, Show } from 'solid-js';
import { Action } from '../../parts/action.tsx';
import type { KitchenController } from '../../controllers/kitchen/kitchen-opening.ts';
import { DEMOS } from './demos.ts';
import { KitchensList } from './kitchens-list.tsx';
import { Overview } from './overview.tsx';
import { Problems } from './problems.tsx';
import { chapterOf } from './survey/chapters.ts';
import '../../styles/kitchen/kitchen.css';

// Only who describes a kitchen needs these.
const Survey = lazy(async () => ({ default: (await import('./survey/survey.tsx')).Survey }));

async function begin(props: KitchenPlaceProps): Promise<void> {
  const { beginKitchen } = await import('./survey/begin.ts');
  const name = props.desk.shelf.freeName('My kitchen');
  props.desk.lay(beginKitchen(name, navigator.language), { kind: 'begun' });
  await props.desk.settle();
  props.onGo('where');
}

type KitchenPlaceProps = {
  desk: KitchenController;
  /** What is open in this place: a chapter of the survey, or nothing. */
  at: string | undefined;
  onGo: (at?: string) => void;
  onDemo: (id: string) => void;
  onOpenFile: () => void;
  onSaveFile: () => void;
  onPlan: () => void;
};

/** Describe: the kitchens of this tablet, the one on the desk, and its survey. */
export function KitchenPage(props: KitchenPlaceProps) {
  const chapter = () => chapterOf(props.at);
  const surveyed = () => (chapter() ? props.desk.kitchen() : undefined);
  return (
    <Show when={surveyed()} fallback={<Home {...props} />}>
      {(kitchen) => (
        <Survey
          desk={props.desk}
          kitchen={kitchen()}
          chapter={chapter() ?? 'where'}
          onGo={props.onGo}
          onPlan={props.onPlan}
        />
      )}
    </Show>
  );
}

function Home(props: KitchenPlaceProps) {
  const trouble = () => {
    const one = props.desk.planTrouble();
    return one ? [one] : [];
  };
  return (
    <main class="place kitchen-place">
      <Show when={props.desk.kitchen()} fallback={<Welcome onNew={() => void begin(props)} />}>
        {(kitchen) => (
          <Overview
            kitchen={kitchen()}
            isDemo={props.desk.onDesk()?.kind === 'demo'}
            onChange={(next) => void props.desk.put(next)}
            onSaveFile={props.onSaveFile}
            onSurvey={() => props.onGo('fixtures')}
            onPlan={props.onPlan}
          />
        )}
      </Show>
      <Problems
        title="This file could not be read"
        note="Nothing you had was changed."
        problems={props.desk.problems()}
      />
      <Problems
        title="There is no plan for this kitchen yet"
        note="The kitchen itself is kept. Change it to put this right."
        problems={trouble()}
      />
      <KitchensList desk={props.desk} onOpened={() => window.scrollTo({ top: 0 })} />
      <section class="demos" aria-label="Start from a kitchen">
        <h2>{props.desk.kitchen() ? 'Another kitchen' : 'Start from a kitchen like yours'}</h2>
        <ul class="demo-list">
          <For each={DEMOS}>
            {(demo) => (
              <li>
                <button type="button" class="demo" onClick={() => props.onDemo(demo.id)}>
                  <span class="demo-name">{demo.name}</span>
                  <span class="quiet">{demo.tells}</span>
                </button>
              </li>
            )}
          </For>
        </ul>
        <div class="button-row">
          <Show when={props.desk.kitchen()}>
            <Action class="button" onPress={() => void begin(props)}>
              Describe a new kitchen
            </Action>
          </Show>
          <Action class="button" onPress={props.onOpenFile}>
            Open a kitchen file
          </Action>
        </div>
      </section>
    </main>
  );
}

function Welcome(props: { onNew: () => void }) {
  return (
    <div class="welcome">
      <h1>Purge a kitchen, step by step, without losing a clock.</h1>
      <p>
        Glowpour plans the cleaning, the 24-hour rests, the boiling-water pours and the burners
        brought to glow, for the kitchen in front of you, and leads you through them on this tablet.
      </p>
      <p class="quiet">
        It gives no ruling: your rabbi decides. Makers’ manuals, local codes and licensed trades
        come first.
      </p>
      <p>
        <Action class="button button--ember button--big" onPress={props.onNew}>
          Describe your kitchen
        </Action>
      </p>
    </div>
  );
}
