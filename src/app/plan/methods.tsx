import { For, Show } from 'solid-js';
import type { FixtureMethod, Plan } from '../../core/plan/index.ts';
import { METHOD_NAMES } from '../words/names.ts';

function lowerFirst(sentence: string): string {
  return sentence.charAt(0).toLowerCase() + sentence.slice(1);
}

/** For every fixture: what is done, why, by which source, and what would change it. */
export function Methods(props: { plan: Plan }) {
  const name = (method: FixtureMethod) =>
    props.plan.kitchen.fixtures.find((f) => f.id === method.fixture)?.name ?? method.fixture;
  const question = (method: FixtureMethod) =>
    props.plan.questions.find((q) => q.id === method.question);
  return (
    <ul class="methods">
      <For each={props.plan.methods}>
        {(method) => (
          <li class="method">
            <h3>{name(method)}</h3>
            <p class="method-what">
              {METHOD_NAMES[method.method]}
              <Show when={method.minutes}>{(m) => <>, {m()} min</>}</Show>
              <Show when={method.cover && method.method !== 'cover'}>, then cover</Show>{' '}
              <Show when={method.term}>
                <span class="term">({method.term})</span>
              </Show>
            </p>
            <div class="method-why">
              <p>{method.reason}</p>
              <Show when={question(method)}>
                {(q) => (
                  <p class="method-ask">
                    <strong>To ask:</strong> {q().ask} <span class="quiet">{q().untilThen}</span>
                  </p>
                )}
              </Show>
              <p class="quiet">
                {method.source}
                <Show when={!method.checked}> (cited from memory, not yet checked)</Show>. What
                would change it: {lowerFirst(method.wouldChange)}
                <Show when={method.overriddenBy}> Your answer: {method.overriddenBy}.</Show>
              </p>
            </div>
          </li>
        )}
      </For>
    </ul>
  );
}
