import { createMemo, For, Show } from 'solid-js';
import { message, type Message } from '../../../../../core/messages/index.ts';
import type { RunView, StepView } from '../../../../../core/run/index.ts';
import { say, t, translator } from '../../../../context/language.ts';
import '../../../../styles/run/prepare.css';

/** What the list of a prepare step names: what to gather, or what is still to be asked. */
function linesOf({ plan }: RunView, { step }: StepView): readonly Message[] {
  if (step.id === 'prepare-gather')
    return plan.shopping.map(({ name, amount }) => message('run.prepare.item', { name, amount }));
  return step.id === 'prepare-ask' ? plan.questions.map(({ ask }) => ask) : [];
}

/** Of which fixtures each question is, the same question told once. */
function askedOf(view: RunView): ReadonlyMap<string, readonly string[]> {
  const { kitchen, questions } = view.plan;
  const named = new Map(kitchen.fixtures.map(({ id, name }) => [id, name]));
  const names = new Map<string, string[]>();
  for (const { ask, fixture } of questions) {
    const key = JSON.stringify(ask);
    names.set(key, [...(names.get(key) ?? []), named.get(fixture) ?? '']);
  }
  return names;
}

/** The list itself, so that nobody has to look for it in the plan. */
export function PrepareList(props: { view: RunView; step: StepView }) {
  const lines = createMemo(() => [
    ...new Map(linesOf(props.view, props.step).map((line) => [JSON.stringify(line), line])),
  ]);
  const asked = createMemo(() => askedOf(props.view));
  return (
    <Show when={lines().length > 0}>
      <ul class="prepare-list" aria-label={t('run.prepare.list')}>
        <For each={lines()}>
          {([key, line]) => (
            <li>
              {say(line)}
              <Show when={props.step.step.id === 'prepare-ask' && asked().get(key)}>
                {(names) => (
                  <span class="quiet prepare-of">{translator().format.list(names())}</span>
                )}
              </Show>
            </li>
          )}
        </For>
      </ul>
    </Show>
  );
}
