import { createSignal, For, Show } from 'solid-js';
import type { Kitchen } from '../../../core/kitchen/index.ts';
import { Action } from '../../parts/action.tsx';
import { KitchenPlan } from '../../pictures/kitchen-plan.tsx';
import { DESIGNATION_NAMES } from '../../labels/names.ts';
import { Choices } from './choices.tsx';
import { Hardware } from './hardware.tsx';

/** The kitchen on the desk: from above, and what the predictions stand on. */
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
          <p class="quiet">
            {props.isDemo
              ? 'Your kitchen, as a demo has it; the first change makes it your own copy'
              : 'Your kitchen'}
          </p>
          <h1>{props.kitchen.name}</h1>
        </div>
        <div class="button-row">
          <Action class="button button--plain" onPress={props.onSaveFile}>
            Save as file
          </Action>
          <Action class="button button--plain" onPress={props.onSurvey}>
            Change it
          </Action>
          <Action
            class="button button--ember button--big"
            disabled={props.kitchen.fixtures.length === 0}
            onPress={props.onPlan}
          >
            See the plan
          </Action>
        </div>
      </header>
      <div class="kitchen-columns">
        <div class="kitchen-picture">
          <Show
            when={props.kitchen.fixtures.length > 0}
            fallback={<p class="quiet">Nothing stands in it yet. Change it to tell what does.</p>}
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

function FixtureList(props: {
  kitchen: Kitchen;
  picked: string | undefined;
  onPick: (id: string) => void;
}) {
  return (
    <section aria-label="Fixtures">
      <h2>What is in it</h2>
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
                <span class="quiet">
                  {'material' in fixture
                    ? fixture.material.replaceAll('-', ' ')
                    : fixture.kind.replaceAll('-', ' ')}
                  <Show when={fixture.designation !== 'undecided'}>
                    , {DESIGNATION_NAMES[fixture.designation].toLowerCase()}
                  </Show>
                </span>
              </button>
            </li>
          )}
        </For>
      </ul>
    </section>
  );
}
