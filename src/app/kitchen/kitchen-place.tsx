import { createSignal, For, Show } from 'solid-js';
import type {
  CustomId,
  Kitchen,
  KitchenProblem,
  LaneDirection,
  Purpose,
} from '../../core/kitchen/index.ts';
import { Action } from '../parts/action.tsx';
import { KitchenPlan } from '../pictures/kitchen-plan.tsx';
import { CUSTOM_NAMES, DESIGNATION_NAMES, PURPOSE_NAMES } from '../words/names.ts';
import { Hardware } from './hardware.tsx';

export type DemoChoice = { readonly id: string; readonly name: string; readonly tells: string };

/** Describe: pick a demo or a file, see the kitchen from above, choose purpose and custom. */
export function KitchenPlace(props: {
  kitchen: Kitchen | undefined;
  demos: readonly DemoChoice[];
  problems: readonly KitchenProblem[];
  onDemo: (id: string) => void;
  onOpenFile: () => void;
  onSaveFile: () => void;
  onChange: (kitchen: Kitchen) => void;
  onPlan: () => void;
}) {
  const [picked, setPicked] = createSignal<string>();
  return (
    <main class="place kitchen-place">
      <Show when={props.kitchen} fallback={<Welcome />}>
        {(kitchen) => (
          <>
            <header class="plan-head">
              <div>
                <p class="quiet">Your kitchen</p>
                <h1>{kitchen().name}</h1>
              </div>
              <div class="button-row">
                <Action class="button button--plain" onPress={props.onSaveFile}>
                  Save as file
                </Action>
                <Action class="button button--ember button--big" onPress={props.onPlan}>
                  See the plan
                </Action>
              </div>
            </header>
            <div class="kitchen-columns">
              <div class="kitchen-picture">
                <KitchenPlan kitchen={kitchen()} selected={picked()} onSelect={setPicked} />
              </div>
              <div class="kitchen-facts">
                <Choices kitchen={kitchen()} onChange={props.onChange} />
                <Hardware kitchen={kitchen()} />
                <FixtureList kitchen={kitchen()} picked={picked()} onPick={setPicked} />
              </div>
            </div>
          </>
        )}
      </Show>
      <Show when={props.problems.length > 0}>
        <div class="problems" role="alert">
          <h2>This file could not be read</h2>
          <ul>
            <For each={props.problems}>{(problem) => <li>{problem.message}</li>}</For>
          </ul>
          <p class="quiet">Nothing you had was changed.</p>
        </div>
      </Show>
      <section class="demos" aria-label="Start from a kitchen">
        <h2>{props.kitchen ? 'Another kitchen' : 'Start from a kitchen like yours'}</h2>
        <ul class="demo-list">
          <For each={props.demos}>
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
        <Action class="button" onPress={props.onOpenFile}>
          Open a kitchen file
        </Action>
      </section>
    </main>
  );
}

function Welcome() {
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
    </div>
  );
}

function Choices(props: { kitchen: Kitchen; onChange: (kitchen: Kitchen) => void }) {
  const set = (change: Partial<Kitchen['household']>) =>
    props.onChange({ ...props.kitchen, household: { ...props.kitchen.household, ...change } });
  return (
    <div class="choices">
      <label class="field">
        <span>Why</span>
        <select
          value={props.kitchen.household.purpose}
          onChange={(e) => set({ purpose: e.currentTarget.value as Purpose })}
        >
          <For each={Object.entries(PURPOSE_NAMES)}>
            {([id, name]) => <option value={id}>{name}</option>}
          </For>
        </select>
      </label>
      <label class="field">
        <span>Custom</span>
        <select
          value={props.kitchen.household.custom}
          onChange={(e) => set({ custom: e.currentTarget.value as CustomId })}
        >
          <For each={Object.entries(CUSTOM_NAMES)}>
            {([id, name]) => <option value={id}>{name}</option>}
          </For>
        </select>
      </label>
      <label class="field">
        <span>Lanes of a pour</span>
        <select
          value={props.kitchen.household.laneDirection ?? 'back-to-front'}
          onChange={(e) => set({ laneDirection: e.currentTarget.value as LaneDirection })}
        >
          <option value="back-to-front">Back to front (custom)</option>
          <option value="shortest">The shortest way</option>
        </select>
      </label>
      <label class="field">
        <span>People working</span>
        <select
          value={String(props.kitchen.household.people)}
          onChange={(e) => set({ people: Number(e.currentTarget.value) })}
        >
          <For each={[1, 2, 3, 4, 5, 6, 7, 8]}>{(n) => <option value={String(n)}>{n}</option>}</For>
        </select>
      </label>
    </div>
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
