import { createEffect, createSignal, type JSX, on, onCleanup, Show } from 'solid-js';
import type { Message } from '../../../../core/messages/index.ts';
import { t } from '../../../context/language.ts';
import { planner } from '../../../controllers/planner/planner.ts';
import { reasonOf } from '../../../controllers/failures/reason.ts';
import type { InputOf, JobName, OutputOf } from '../../../controllers/planner/jobs.ts';

type Worked<T> = { readonly found: T } | { readonly why: Message };

/** What the planner makes of a plan, worked out anew when the plan changes; nothing until it is there. */
export function createWorked<K extends JobName>(name: K, input: () => InputOf<K>) {
  const [worked, setWorked] = createSignal<Worked<OutputOf<K>>>();
  createEffect(
    on(input, (of) => {
      const search = new AbortController();
      onCleanup(() => search.abort());
      setWorked(undefined);
      const { signal } = search;
      planner.ask(name, of, { signal }).then(
        (found) => setWorked({ found }),
        (error: unknown) => signal.aborted || setWorked({ why: reasonOf(error) }),
      );
    }),
  );
  return worked;
}

/** What was worked out, if it was. */
export function foundOf<T>(worked: Worked<T> | undefined): T | undefined {
  return worked && 'found' in worked ? worked.found : undefined;
}

/** What was worked out, or that it is being worked out, or why it cannot be. */
export function WhenWorked<T>(props: {
  worked: Worked<T> | undefined;
  children: (found: () => T) => JSX.Element;
}) {
  const found = () => {
    const worked = props.worked;
    return worked && 'found' in worked ? { value: worked.found } : undefined;
  };
  const why = () => {
    const worked = props.worked;
    return worked && 'why' in worked ? worked.why : undefined;
  };
  return (
    <Show
      when={found()}
      fallback={
        <p role="status">
          <Show when={why()} fallback={t('handouts.working')}>
            {(told) => t('handouts.failed', { why: told() })}
          </Show>
        </p>
      }
    >
      {(one) => props.children(() => one().value)}
    </Show>
  );
}
