import { For, Show, Suspense } from 'solid-js';
import type { Fixture, Kitchen } from '../../../core/kitchen/index.ts';
import { asWritten, message, type Message } from '../../../core/messages/index.ts';
import { lazyPage, say, t, written } from '../../context/language.ts';
import { Action } from '../../parts/press/action.tsx';
import { Choices } from './choices.tsx';
import { Hardware } from './hardware.tsx';

const RoomPicture = lazyPage(
  ['pictures'],
  async () => (await import('./room/room-picture.tsx')).RoomPicture,
);

/** The open kitchen: from above, and what the predictions stand on. */
export function Overview(props: {
  kitchen: Kitchen;
  isDemo: boolean;
  onChange: (kitchen: Kitchen) => void;
  onSaveFile: () => void;
  /** To the editor, with what was pressed when something was. */
  onSurvey: (id?: string) => void;
  onPlan: () => void;
}) {
  return (
    <>
      <header class="plan-head">
        <div>
          <p class="quiet">{props.isDemo ? t('kitchen.yours.demo') : t('kitchen.yours')}</p>
          <h1>{written(props.kitchen.name)}</h1>
        </div>
        <div class="button-row">
          <Action class="button button--plain" onPress={props.onSaveFile}>
            {t('kitchen.save-file')}
          </Action>
          <Action class="button button--plain" onPress={() => props.onSurvey()}>
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
            <Suspense>
              <RoomPicture
                kitchen={props.kitchen}
                label={t('run.picture.kitchen', {
                  fixtures: props.kitchen.fixtures.map(({ name }) => asWritten(name)),
                })}
                onSelect={props.onSurvey}
              />
            </Suspense>
            <p class="quiet kitchen-press">{t('kitchen.press-to-change')}</p>
          </Show>
        </div>
        <div class="kitchen-facts">
          <Choices kitchen={props.kitchen} onChange={props.onChange} />
          <Hardware kitchen={props.kitchen} />
          <FixtureList kitchen={props.kitchen} onPick={props.onSurvey} />
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

function FixtureList(props: { kitchen: Kitchen; onPick: (id: string) => void }) {
  return (
    <section aria-label={t('kitchen.fixtures')}>
      <h2>{t('kitchen.fixtures.heading')}</h2>
      <ul class="fixture-list">
        <For each={props.kitchen.fixtures}>
          {(fixture) => (
            <li>
              <button type="button" class="fixture-row" onClick={() => props.onPick(fixture.id)}>
                <span>{written(fixture.name)}</span>
                <span class="quiet">{say(aboutFixture(fixture))}</span>
              </button>
            </li>
          )}
        </For>
      </ul>
    </section>
  );
}
