import { say } from '../../context/language.ts';
import { createSignal, For, lazy, Show, Suspense } from 'solid-js';
import { customName, forLooking, questionList, withoutAnswer } from '../../../core/custom/index.ts';
import type { Fixture, Kitchen } from '../../../core/kitchen/index.ts';
import type { FixtureMethod, Plan } from '../../../core/plan/index.ts';
import { Action } from '../../parts/action.tsx';
import { METHOD_NAMES } from '../../labels/names.ts';
import { AnswerSheet } from './answer-sheet.tsx';

const OwnCustomSheet = lazy(async () => ({
  default: (await import('../custom/index.ts')).OwnCustomSheet,
}));

function lowerFirst(sentence: string): string {
  return sentence.charAt(0).toLowerCase() + sentence.slice(1);
}

type OnKitchen = ((kitchen: Kitchen) => void) | undefined;

/** For every fixture: what is done, why, by which source, and what would change it. */
export function Methods(props: { plan: Plan; kitchen: Kitchen; onKitchen?: OnKitchen }) {
  const [said, setSaid] = createSignal<string>();
  const [ownOpen, setOwnOpen] = createSignal(false);
  const fixture = (id: string | undefined) => props.kitchen.fixtures.find((one) => one.id === id);
  return (
    <>
      <div class="methods-head">
        <p>
          By the custom: <strong>{customName(props.kitchen.household)}</strong>
        </p>
        <Show when={props.onKitchen}>
          <Action class="button button--plain" onPress={() => setOwnOpen(true)}>
            {props.kitchen.household.ownCustom ? 'Your own custom' : 'Make a custom of our own'}
          </Action>
        </Show>
      </div>
      <ul class="methods">
        <For each={props.plan.methods}>
          {(method) => (
            <MethodRow
              plan={props.plan}
              kitchen={props.kitchen}
              method={method}
              onKitchen={props.onKitchen}
              onSay={() => setSaid(method.fixture)}
            />
          )}
        </For>
      </ul>
      <Show when={props.onKitchen && fixture(said())}>
        {(one) => (
          <AnswerSheet
            kitchen={props.kitchen}
            fixture={one()}
            question={questionOf(props.kitchen, one())}
            onKitchen={(kitchen) => props.onKitchen?.(kitchen)}
            onClose={() => setSaid(undefined)}
          />
        )}
      </Show>
      <Show when={ownOpen()}>
        <Suspense>
          <OwnCustomSheet
            kitchen={props.kitchen}
            onKitchen={(kitchen) => props.onKitchen?.(kitchen)}
            onClose={() => setOwnOpen(false)}
          />
        </Suspense>
      </Show>
    </>
  );
}

/** The first question of a fixture that is the rabbi's, open or answered. */
function questionOf(kitchen: Kitchen, { id }: Fixture) {
  const { toAsk, answered } = questionList(kitchen);
  return [...toAsk, ...answered].find((one) => one.fixture === id && !forLooking(one));
}

function MethodRow(props: {
  plan: Plan;
  kitchen: Kitchen;
  method: FixtureMethod;
  onKitchen: OnKitchen;
  onSay: () => void;
}) {
  const name = () =>
    props.kitchen.fixtures.find((f) => f.id === props.method.fixture)?.name ?? props.method.fixture;
  const questions = () => props.plan.questions.filter((q) => q.fixture === props.method.fixture);
  const answered = () =>
    props.kitchen.household.overrides.some((one) => one.fixture === props.method.fixture);
  return (
    <li class="method" data-fixture={props.method.fixture}>
      <h3>{name()}</h3>
      <div class="method-what">
        <p>
          {METHOD_NAMES[props.method.method]}
          <Show when={props.method.minutes}>{(m) => <>, {m()} min</>}</Show>
          <Show when={props.method.cover && !['cover', 'line'].includes(props.method.method)}>
            , then cover
          </Show>{' '}
          <Show when={props.method.term}>
            <span class="term">({props.method.term})</span>
          </Show>
        </p>
        <Show when={questions().length > 0}>
          <p class="method-provisional">The stricter way, until it is answered</p>
        </Show>
        <Show when={props.method.ownRow}>
          <p class="method-own">Your own custom</p>
        </Show>
        <Show when={answered()}>
          <p class="method-own">Your rabbi’s answer</p>
        </Show>
      </div>
      <div class="method-why">
        <p>{props.method.reason}</p>
        <For each={questions()}>
          {(q) => (
            <p class="method-ask">
              <strong>To ask:</strong> {say(q.ask)}{' '}
              <span class="quiet">Until then: {say(q.untilThen)}</span>
            </p>
          )}
        </For>
        <p class="quiet">
          {props.method.source}
          <Show when={!props.method.checked}> (cited from memory, not yet checked)</Show>. What
          would change it: {lowerFirst(props.method.wouldChange)}
          <Show when={props.method.overriddenBy}>
            {(by) => <> In place of the custom’s row: {by()}.</>}
          </Show>
        </p>
        <Show when={props.onKitchen}>
          {(onKitchen) => (
            <div class="button-row method-actions">
              <Action class="button button--plain" onPress={props.onSay}>
                {answered() ? 'Change the answer' : 'Our rabbi said otherwise'}
              </Action>
              <Show when={answered()}>
                <Action
                  class="button button--plain"
                  onPress={() => onKitchen()(withoutAnswer(props.kitchen, props.method.fixture))}
                >
                  Take it back
                </Action>
              </Show>
            </div>
          )}
        </Show>
      </div>
    </li>
  );
}
