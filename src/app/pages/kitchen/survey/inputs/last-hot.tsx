import { createUniqueId, Show } from 'solid-js';
import { t } from '../../../../context/language.ts';
import { Action } from '../../../../parts/press/action.tsx';
import { DayTold } from '../../../../parts/time/day-told.tsx';

/** Day and time of a last hot use, on the wall of the kitchen; empty: not told. */
export function LastHot(props: {
  label: string;
  value: string | undefined;
  /** Path in the kitchen, so that "still to tell" finds it. */
  path: string;
  hint?: string;
  onValue: (at: string | undefined) => void;
}) {
  const id = createUniqueId();
  return (
    <div class="typed">
      <label for={id}>{props.label}</label>
      <input
        id={id}
        type="datetime-local"
        name="last-hot"
        data-path={props.path}
        value={props.value ?? ''}
        // Half a date reads as none, and must not take away what stands there.
        onChange={({ currentTarget: { value } }) => value !== '' && props.onValue(value)}
      />
      <DayTold typed={props.value} />
      <Show when={props.hint}>{(hint) => <p class="tell">{hint()}</p>}</Show>
      <Show when={props.value !== undefined}>
        <Action class="word-button" name="forget-last-hot" onPress={() => props.onValue(undefined)}>
          {t('survey.last-hot.forget')}
        </Action>
      </Show>
    </div>
  );
}
