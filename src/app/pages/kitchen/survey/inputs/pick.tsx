import { createUniqueId, For, type JSX, Show } from 'solid-js';
import { t } from '../../../../context/language.ts';
import { Action } from '../../../../parts/press/action.tsx';

type Choice<T extends string> = {
  readonly id: T;
  readonly name: string;
  readonly tell?: string;
  readonly picture?: () => JSX.Element;
};

/** One of a few, each with how to tell it; pressed by a finger, guarded against drops. */
export function Pick<T extends string>(props: {
  label: string;
  choices: readonly Choice<T>[];
  value: T | undefined;
  path?: string;
  /** Wide ones carry a sentence; narrow ones are words in a row. */
  wide?: boolean;
  onPick: (id: T) => void;
}) {
  return (
    <div
      class="pick"
      classList={{ 'pick--wide': props.wide ?? false }}
      role="group"
      aria-label={props.label}
      tabindex={-1}
      data-path={props.path}
    >
      <p class="pick-label">{props.label}</p>
      <div class="pick-row">
        <For each={props.choices}>
          {(choice) => (
            <Toggle pressed={props.value === choice.id} onPress={() => props.onPick(choice.id)}>
              <Show when={choice.picture}>{(picture) => picture()()}</Show>
              <span class="pick-words">
                <span class="pick-name">{choice.name}</span>
                <Show when={props.wide && choice.tell}>
                  <span class="pick-tell">{choice.tell}</span>
                </Show>
              </span>
            </Toggle>
          )}
        </For>
      </div>
    </div>
  );
}

/** A button that stays pressed. */
export function Toggle(props: { pressed: boolean; onPress: () => void; children: JSX.Element }) {
  return (
    <span class="toggle" classList={{ 'toggle--on': props.pressed }}>
      <Action class="toggle-button" onPress={props.onPress}>
        {props.children}
        <span class="visually-hidden">{props.pressed ? ` ${t('survey.chosen')}` : ''}</span>
      </Action>
    </span>
  );
}

/** A list to choose from when there are many. */
export function Select<T extends string>(props: {
  label: string;
  value: T;
  choices: readonly (readonly [T, string])[];
  path?: string;
  onPick: (id: T) => void;
}) {
  const id = createUniqueId();
  return (
    <div class="field">
      <label for={id}>{props.label}</label>
      <select
        id={id}
        data-path={props.path}
        onChange={(e) => props.onPick(e.currentTarget.value as T)}
      >
        <For each={props.choices}>
          {([id, name]) => (
            <option value={id} selected={id === props.value}>
              {name}
            </option>
          )}
        </For>
      </select>
    </div>
  );
}
