import { say, t, written } from '../../context/language.ts';
import { createSignal, For, lazy, Show, Suspense } from 'solid-js';
import {
  customName,
  forLooking,
  questionList,
  stateOfMethod,
  withoutAnswer,
} from '../../../core/custom/index.ts';
import type { Fixture, Kitchen } from '../../../core/kitchen/index.ts';
import type { FixtureMethod, Plan } from '../../../core/plan/index.ts';
import { Action } from '../../parts/press/action.tsx';
import { AnswerSheet } from './answers/answer-sheet.tsx';

const OwnCustomSheet = lazy(async () => ({
  default: (await import('../custom/index.ts')).OwnCustomSheet,
}));

type OnKitchen = ((kitchen: Kitchen) => void) | undefined;

/** For every fixture: what is done, why, and what would change it; each source once, under the table. */
export function Methods(props: { plan: Plan; kitchen: Kitchen; onKitchen?: OnKitchen }) {
  const [said, setSaid] = createSignal<string>();
  const [ownOpen, setOwnOpen] = createSignal(false);
  const fixture = (id: string | undefined) => props.kitchen.fixtures.find((one) => one.id === id);
  const notes = () => [...new Set(props.plan.methods.map(noteOf))];
  return (
    <>
      <div class="methods-head">
        <p>
          {t('plan-page.methods.by-custom')}{' '}
          <strong>{say(customName(props.kitchen.household))}</strong>
        </p>
        <Show when={props.onKitchen}>
          <Action class="button button--plain" name="own-custom" onPress={() => setOwnOpen(true)}>
            {props.kitchen.household.ownCustom
              ? t('plan-page.methods.own-custom')
              : t('plan-page.methods.make-own-custom')}
          </Action>
        </Show>
      </div>
      <table class="methods">
        <thead>
          <tr>
            <th scope="col">{t('plan-page.methods.head.fixture')}</th>
            <th scope="col">{t('plan-page.methods.head.what')}</th>
            <th scope="col">{t('plan-page.methods.head.why')}</th>
            <Show when={props.onKitchen}>
              <th scope="col" class="method-actions">
                <span class="visually-hidden">{t('plan-page.methods.head.answer')}</span>
              </th>
            </Show>
          </tr>
        </thead>
        <tbody>
          <For each={props.plan.methods}>
            {(method) => (
              <MethodRow
                plan={props.plan}
                kitchen={props.kitchen}
                method={method}
                note={notes().findIndex((one) => one === noteOf(method))}
                onKitchen={props.onKitchen}
                onSay={() => setSaid(method.fixture)}
              />
            )}
          </For>
        </tbody>
      </table>
      <ol class="method-notes">
        <For each={notes()}>{(note) => <li>{note}</li>}</For>
      </ol>
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

/** "Heat to glow, 15 min, then cover". */
function methodText({ method, minutes, cover }: FixtureMethod): string {
  const name = t(`common.method.${method}`);
  const timed =
    minutes === undefined ? name : t('plan-page.methods.minutes', { method: name, minutes });
  return cover && method !== 'cover' && method !== 'line'
    ? t('plan-page.methods.then-cover', { method: timed })
    : timed;
}

/** "Shulchan Aruch … (read in the text)." */
function noteOf(method: FixtureMethod): string {
  return t('plan-page.methods.source', {
    source: say(method.source),
    state: t(`custom.state.${stateOfMethod(method)}`),
  });
}

/** What a note is found by, as its list counts: a, b … */
function signOf(note: number): string {
  return t('plan-page.methods.note-signs').split(' ')[note] ?? String(note + 1);
}

function MethodRow(props: {
  plan: Plan;
  kitchen: Kitchen;
  method: FixtureMethod;
  /** Number of its source among the notes. */
  note: number;
  onKitchen: OnKitchen;
  onSay: () => void;
}) {
  const name = () =>
    props.kitchen.fixtures.find((f) => f.id === props.method.fixture)?.name ?? props.method.fixture;
  const questions = () => props.plan.questions.filter((q) => q.fixture === props.method.fixture);
  const answered = () =>
    props.kitchen.household.overrides.some((one) => one.fixture === props.method.fixture);
  return (
    <tr class="method" data-fixture={props.method.fixture}>
      <th scope="row">{written(name())}</th>
      <td class="method-what">
        {methodText(props.method)}{' '}
        <Show when={props.method.term}>
          {(term) => <span class="term">{t('plan-page.methods.term', { term: say(term()) })}</span>}
        </Show>
        <sup>{signOf(props.note)}</sup>{' '}
        <Show when={questions().length > 0}>
          <span class="method-provisional">{t('plan-page.methods.provisional')}</span>
        </Show>
        <Show when={props.method.ownRow}>
          <span class="method-own">{t('plan-page.methods.own-custom')}</span>
        </Show>
        <Show when={answered()}>
          <span class="method-own">{t('plan-page.methods.answered')}</span>
        </Show>
      </td>
      <td class="method-why">
        <details>
          <summary>{t('plan-page.methods.more')}</summary>
          <p>{say(props.method.reason)}</p>
          <For each={questions()}>
            {(q) => (
              <p class="method-ask">
                <strong>{t('plan-page.to-ask')}</strong> {say(q.ask)}{' '}
                <span class="quiet">
                  {t('plan-page.until-then', { untilThen: say(q.untilThen) })}
                </span>
              </p>
            )}
          </For>
          <p class="quiet">
            {say(props.method.wouldChange)}{' '}
            <Show when={props.method.overriddenBy}>
              {(by) => <>{t('plan-page.methods.instead-of-row', { by: say(by()) })}</>}
            </Show>
          </p>
        </details>
      </td>
      <Show when={props.onKitchen}>
        {(onKitchen) => (
          <td class="method-actions">
            <Action class="button button--plain" onPress={props.onSay}>
              {answered()
                ? t('plan-page.methods.change-answer')
                : t('plan-page.methods.said-otherwise')}
            </Action>
            <Show when={answered()}>
              <Action
                class="button button--plain"
                onPress={() => onKitchen()(withoutAnswer(props.kitchen, props.method.fixture))}
              >
                {t('plan-page.methods.take-back')}
              </Action>
            </Show>
          </td>
        )}
      </Show>
    </tr>
  );
}
