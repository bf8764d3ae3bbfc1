import { createSignal, For, Show } from 'solid-js';
import type { Fixture, Kitchen } from '../../../core/kitchen/index.ts';
import { message, type Message } from '../../../core/messages/index.ts';
import { say, t } from '../../context/language.ts';
import { Action } from '../../parts/press/action.tsx';
import { KitchenPlan } from '../../pictures/kitchen-plan.tsx';
import { Choices } from './choices.tsx';
import { Hardware } from './hardware.tsx';

/** The open kitchen: from above, and what the predictions stand on. */
export function Overview(props: {
  kitchen: Kitchen;
  isDemo: boolean;
  onChange: (kitchen: Kitchen) => void;
  onSaveFile: () => void;
  onSurvey: () => void;
  onPlan: () => void;
}) {
  const [picked, setPicked] = createSignal<string>();
  return (
    <>
      <header class="plan-head">
        <div>
          <p class="quiet">{props.isDemo ? t('kitchen.yours.demo') : t('kitchen.yours')}</p>
          <h1>{props.kitchen.name}</h1>
        </div>
        <div class="button-row">
          <Action class="button button--plain" onPress={props.onSaveFile}>
            {t('kitchen.save-file')}
          </Action>
          <Action class="button button--plain" onPress={props.onSurvey}>
            {t('kitchen.change')}
          </Action>
          <Action
            class="button button--ember button--big"
            disabled={props.kitchen.fixtures.length === 0}
            onPress={props.onPlan}
          >
            {t('kitchen.see-plan')}
          </Action>
        </div>
      </header>
      <div class="kitchen-columns">
        <div class="kitchen-picture">
          <Show
            when={props.kitchen.fixtures.length > 0}
            fallback={<p class="quiet">{t('kitchen.empty')}</p>}
          >
            <KitchenPlan kitchen={props.kitchen} selected={picked()} onSelect={setPicked} />
          </Show>
        </div>
        <div class="kitchen-facts">
          <Choices kitchen={props.kitchen} onChange={props.onChange} />
          <Hardware kitchen={props.kitchen} />
          <FixtureList kitchen={props.kitchen} picked={picked()} onPick={setPicked} />
        </div>
      </div>
    </>
  );
}

/** What it is made of, or its kind; and where it is to belong. */
function aboutFixture(fixture: Fixture): Message {
  const what =
    'material' in fixture
      ? message(`common.material.${fixture.material}`)
      : message(`common.fixture-kind.${fixture.kind}`);
  if (fixture.designation === 'undecided') return message('kitchen.fixtures.is', { what });
  const to = message(`kitchen.belongs.${fixture.designation}`);
  return message('kitchen.fixtures.belongs', { what, to });
}

function FixtureList(props: {
  kitchen: Kitchen;
  picked: string | undefined;
  onPick: (id: string) => void;
}) {
  return (
    <section aria-label={t('kitchen.fixtures')}>
      <h2>{t('kitchen.fixtures.heading')}</h2>
      <ul class="fixture-list">
        <For each={props.kitchen.fixtures}>
          {(fixture) => (
            <li>
              <button
                type="button"
                class="fixture-row"
                aria-pressed={props.picked === fixture.id}
                onClick={() => props.onPick(fixture.id)}
              >
                <span>{fixture.name}</span>
                <span class="quiet">{say(aboutFixture(fixture))}</span>
              </button>
            </li>
          )}
        </For>
      </ul>
    </section>
  );
}
