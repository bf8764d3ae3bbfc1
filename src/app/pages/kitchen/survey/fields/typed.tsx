import { createEffect, createSignal, createUniqueId, on, Show } from 'solid-js';
import { quantityText, readQuantity, type Allowed, type QuantityId } from './quantities.ts';

/**
 * A number with its unit. What is typed is taken on Enter or on leaving; what
 * cannot be taken leaves the old value standing and says what is allowed.
 */
export function Typed(props: {
  label: string;
  quantity: QuantityId;
  value: number | undefined;
  allowed: Allowed;
  /** Path in the kitchen, so that "still to tell" finds it. */
  path?: string;
  hint?: string;
  /** Shown when there is no value. */
  empty?: string;
  /** Says why the value is not taken, or takes it. */
  onValue: (value: number) => string | void;
  /** Given when the field may be emptied. */
  onEmpty?: () => void;
}) {
  const id = createUniqueId();
  const shown = () => (props.value === undefined ? '' : quantityText(props.quantity, props.value));
  const [text, setText] = createSignal(shown());
  const [problem, setProblem] = createSignal<string>();
  createEffect(on(shown, (next) => setText(next), { defer: true }));

  const take = (): void => {
    if (text().trim() === shown()) {
      setText(shown());
      return;
    }
    if (text().trim() === '' && props.onEmpty) {
      setProblem(undefined);
      props.onEmpty();
      return;
    }
    const typed = readQuantity(props.quantity, text(), props.allowed);
    const why = 'problem' in typed ? typed.problem : props.onValue(typed.value) || undefined;
    setProblem(why ? `${why} ${shown() ? `It stays ${shown()}.` : ''}`.trim() : undefined);
    setText(shown());
  };
  return (
    <div class="typed">
      <label for={id}>{props.label}</label>
      <input
        id={id}
        type="text"
        autocomplete="off"
        spellcheck={false}
        value={text()}
        placeholder={props.empty}
        data-path={props.path}
        aria-invalid={problem() ? 'true' : undefined}
        aria-describedby={problem() ? `${id}-problem` : props.hint ? `${id}-hint` : undefined}
        onInput={(e) => setText(e.currentTarget.value)}
        onFocus={(e) => e.currentTarget.select()}
        onChange={take}
        onKeyDown={(e) => {
          if (e.key === 'Enter') take();
        }}
      />
      <Show when={props.hint && !problem()}>
        <small id={`${id}-hint`}>{props.hint}</small>
      </Show>
      <Show when={problem()}>
        <small id={`${id}-problem`} class="typed-problem" role="alert">
          {problem()}
        </small>
      </Show>
    </div>
  );
}

/** A name or other words. Empty or too long keeps the old ones. */
export function TypedWords(props: {
  label: string;
  value: string;
  longest?: number;
  path?: string;
  onValue: (value: string) => void;
}) {
  const id = createUniqueId();
  const longest = () => props.longest ?? 80;
  const [problem, setProblem] = createSignal<string>();
  let input: HTMLInputElement | undefined;
  const take = (): void => {
    const text = (input?.value ?? '').trim();
    if (text === props.value) return;
    if (text === '' || text.length > longest()) {
      setProblem(
        `${text === '' ? 'Nothing was typed' : `${text.length} letters are too many`}; allowed: 1 to ${longest()} letters.`,
      );
      if (input) input.value = props.value;
      return;
    }
    setProblem(undefined);
    props.onValue(text);
  };
  return (
    <div class="typed typed--words">
      <label for={id}>{props.label}</label>
      <input
        ref={(element) => (input = element)}
        id={id}
        type="text"
        autocomplete="off"
        value={props.value}
        data-path={props.path}
        aria-invalid={problem() ? 'true' : undefined}
        aria-describedby={problem() ? `${id}-problem` : undefined}
        onChange={take}
      />
      <Show when={problem()}>
        <small id={`${id}-problem`} class="typed-problem" role="alert">
          {problem()}
        </small>
      </Show>
    </div>
  );
}
