import { createEffect, createSignal, createUniqueId, on, Show } from 'solid-js';
import { LIMITS, type Range } from '../../../../../core/kitchen/index.ts';
import { message, type Message } from '../../../../../core/messages/index.ts';
import { say, translator } from '../../../../context/language.ts';
import { quantity, readQuantity } from './quantities.ts';
import type { QuantityId } from './unit-table.ts';

/**
 * A number with its unit. What is typed is taken on Enter or on leaving; what
 * cannot be taken leaves the old value standing and says what is allowed.
 */
export function Typed(props: {
  label: string;
  quantity: QuantityId;
  value: number | undefined;
  allowed: Range;
  /** Path in the kitchen, so that "still to tell" finds it. */
  path?: string;
  hint?: string;
  /** Shown when there is no value. */
  empty?: string;
  /** Says why the value is not taken, or takes it. */
  onValue: (value: number) => Message | void;
  /** Given when the field may be emptied. */
  onEmpty?: () => void;
}) {
  const id = createUniqueId();
  const old = () => (props.value === undefined ? undefined : quantity(props.quantity, props.value));
  const shown = () => {
    const now = old();
    return now ? say(now) : '';
  };
  const [text, setText] = createSignal(shown());
  const [problem, setProblem] = createSignal<Message>();
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
    const typed = readQuantity(props.quantity, text(), props.allowed, translator());
    const wrong = 'problem' in typed ? typed.problem : (props.onValue(typed.value) ?? undefined);
    const why = wrong && message('survey.typed.at', { field: props.label, why: wrong });
    const stays = old();
    setProblem(why && stays ? message('survey.typed.stays', { why, old: stays }) : why);
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
      <Problem id={id} problem={problem()} />
    </div>
  );
}

function Problem(props: { id: string; problem: Message | undefined }) {
  return (
    <Show when={props.problem}>
      {(problem) => (
        <small id={`${props.id}-problem`} class="typed-problem" role="alert">
          {say(problem())}
        </small>
      )}
    </Show>
  );
}

/** A name. Too long keeps the old one, and so does empty, unless it may be. */
export function TypedName(props: {
  label: string;
  value: string;
  path?: string;
  hint?: string;
  /** Longest text, letters; that of a name where it is left out. */
  most?: number;
  mayBeEmpty?: boolean;
  onValue: (value: string) => void;
}) {
  const id = createUniqueId();
  const most = () => props.most ?? LIMITS.nameLetters.most;
  const [problem, setProblem] = createSignal<Message>();
  let input: HTMLInputElement | undefined;
  const take = (): void => {
    const text = (input?.value ?? '').trim();
    if (text === props.value) return;
    if ((text === '' && !props.mayBeEmpty) || text.length > most()) {
      setProblem(
        text === ''
          ? message('survey.typed.no-words', { most: most() })
          : message('survey.typed.too-long', { letters: text.length, most: most() }),
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
        aria-describedby={problem() ? `${id}-problem` : props.hint ? `${id}-hint` : undefined}
        onChange={take}
      />
      <Show when={props.hint && !problem()}>
        <small id={`${id}-hint`}>{props.hint}</small>
      </Show>
      <Problem id={id} problem={problem()} />
    </div>
  );
}
