import { For, Show } from 'solid-js';
import type { MethodId } from '../../../core/kitchen/index.ts';
import { METHOD_NAMES } from '../../labels/names.ts';
import { asksCover, takesMinutes, type SaidWay } from './way.ts';

/** Method, minutes, cover: only what makes sense for what is asked about. */
export function MethodFields(props: {
  way: SaidWay;
  methods: readonly MethodId[];
  onChange: (change: Partial<SaidWay>) => void;
}) {
  return (
    <div class="way-fields">
      <label class="field">
        <span>What is done</span>
        <select
          name="method"
          value={props.way.method}
          onChange={(e) => props.onChange({ method: e.currentTarget.value as MethodId })}
        >
          <For each={props.methods}>
            {(method) => (
              <option value={method} selected={method === props.way.method}>
                {METHOD_NAMES[method]}
              </option>
            )}
          </For>
        </select>
      </label>
      <Show when={takesMinutes(props.way.method)}>
        <label class="field field--short">
          <span>Minutes</span>
          <input
            name="minutes"
            type="number"
            inputmode="numeric"
            min="1"
            max="600"
            value={props.way.minutes}
            onInput={(e) => props.onChange({ minutes: e.currentTarget.value })}
          />
        </label>
      </Show>
      <Show when={asksCover(props.way.method)}>
        <fieldset class="field way-cover">
          <legend>Covered after it?</legend>
          <For each={[true, false]}>
            {(cover) => (
              <label class="way-choice">
                <input
                  type="radio"
                  name="cover"
                  checked={props.way.cover === cover}
                  onChange={() => props.onChange({ cover })}
                />
                {cover ? 'Yes' : 'No'}
              </label>
            )}
          </For>
        </fieldset>
      </Show>
    </div>
  );
}

/** Whose word it is, when, and in which words. */
export function SaidFields(props: {
  way: SaidWay;
  wordsLabel: string;
  onChange: (change: Partial<SaidWay>) => void;
}) {
  return (
    <div class="way-fields">
      <label class="field">
        <span>Who said it</span>
        <input
          name="saidBy"
          maxLength={80}
          autocomplete="off"
          value={props.way.saidBy}
          onInput={(e) => props.onChange({ saidBy: e.currentTarget.value })}
        />
      </label>
      <label class="field">
        <span>On which day</span>
        <input
          name="saidOn"
          type="date"
          value={props.way.saidOn}
          onInput={(e) => props.onChange({ saidOn: e.currentTarget.value })}
        />
      </label>
      <label class="field field--wide">
        <span>{props.wordsLabel}</span>
        <textarea
          name="words"
          rows="2"
          maxLength={2000}
          value={props.way.words}
          onInput={(e) => props.onChange({ words: e.currentTarget.value })}
        />
      </label>
    </div>
  );
}
