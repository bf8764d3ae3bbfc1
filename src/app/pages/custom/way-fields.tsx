import { For, Show } from 'solid-js';
import { LIMITS, type MethodId } from '../../../core/kitchen/index.ts';
import { t } from '../../context/language.ts';
import { DayTold } from '../../parts/time/day-told.tsx';
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
        <span>{t('kitchen.custom.way.method')}</span>
        <select
          name="method"
          value={props.way.method}
          onChange={(e) => props.onChange({ method: e.currentTarget.value as MethodId })}
        >
          <For each={props.methods}>
            {(method) => (
              <option value={method} selected={method === props.way.method}>
                {t(`common.method.${method}`)}
              </option>
            )}
          </For>
        </select>
      </label>
      <Show when={takesMinutes(props.way.method)}>
        <label class="field field--short">
          <span>{t('kitchen.custom.way.minutes')}</span>
          <input
            name="minutes"
            type="number"
            inputmode="numeric"
            min={LIMITS.ownRowMin.least}
            max={LIMITS.ownRowMin.most}
            value={props.way.minutes}
            onInput={(e) => props.onChange({ minutes: e.currentTarget.value })}
          />
        </label>
      </Show>
      <Show when={asksCover(props.way.method)}>
        <fieldset class="field way-cover">
          <legend>{t('kitchen.custom.way.cover')}</legend>
          <For each={[true, false]}>
            {(cover) => (
              <label class="way-choice">
                <input
                  type="radio"
                  name="cover"
                  checked={props.way.cover === cover}
                  onChange={() => props.onChange({ cover })}
                />
                {cover ? t('kitchen.custom.way.cover.yes') : t('kitchen.custom.way.cover.no')}
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
        <span>{t('kitchen.custom.way.said-by')}</span>
        <input
          name="saidBy"
          maxLength={LIMITS.nameLetters.most}
          autocomplete="off"
          value={props.way.saidBy}
          onInput={(e) => props.onChange({ saidBy: e.currentTarget.value })}
        />
      </label>
      <label class="field">
        <span>{t('kitchen.custom.way.said-on')}</span>
        <input
          name="saidOn"
          type="date"
          value={props.way.saidOn}
          onInput={(e) => props.onChange({ saidOn: e.currentTarget.value })}
        />
        <DayTold typed={props.way.saidOn} />
      </label>
      <label class="field field--wide">
        <span>{props.wordsLabel}</span>
        <textarea
          name="words"
          rows="2"
          maxLength={LIMITS.textLetters.most}
          value={props.way.words}
          onInput={(e) => props.onChange({ words: e.currentTarget.value })}
        />
      </label>
    </div>
  );
}
