import { For, Show } from 'solid-js';
import type { Plan } from '../../core/plan/index.ts';

/** Open questions to take to the rabbi; until answered the stricter way is planned. */
export function Questions(props: { plan: Plan }) {
  const name = (id: string) => props.plan.kitchen.fixtures.find((f) => f.id === id)?.name ?? id;
  return (
    <section class="list" aria-label="Questions">
      <h2>Questions to ask</h2>
      <Show
        when={props.plan.questions.length > 0}
        fallback={<p class="quiet">No open question.</p>}
      >
        <ol class="question-list">
          <For each={props.plan.questions}>
            {(question) => (
              <li>
                <h3>{name(question.fixture)}</h3>
                <p>{question.ask}</p>
                <p class="quiet">
                  {question.why} {question.untilThen}
                </p>
                <div class="answer-line" aria-hidden="true">
                  Answer:
                </div>
              </li>
            )}
          </For>
        </ol>
      </Show>
    </section>
  );
}

/** What to buy and gather before the first day. */
export function Shopping(props: { plan: Plan }) {
  return (
    <section class="list" aria-label="To buy and gather">
      <h2>To buy and gather</h2>
      <ul class="shopping-list">
        <For each={props.plan.shopping}>
          {(item) => (
            <li>
              <span class="tick-box" aria-hidden="true" />
              <span>
                <strong>{item.name}</strong> {item.amount}
                <span class="quiet shopping-why">{item.why}</span>
              </span>
            </li>
          )}
        </For>
      </ul>
    </section>
  );
}
