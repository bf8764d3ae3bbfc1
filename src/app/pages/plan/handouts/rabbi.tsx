import { createEffect, createMemo, createSignal, For, onCleanup, Show } from 'solid-js';
import { customName } from '../../../../core/custom/index.ts';
import {
  answerMessages,
  rabbiHandout,
  rabbiHandoutText,
  type ChangesByQuestion,
  type HandoutQuestion,
} from '../../../../core/handouts/index.ts';
import { planQuestions } from '../../../../core/plan/index.ts';
import { say, t, translator, written } from '../../../context/language.ts';
import { FixturePicture } from './fixture-picture.tsx';
import { HandoutFrame } from './frame/handout-frame.tsx';
import type { HandoutProps } from './frame/handout-props.ts';

/** What each answer to each question changes, one question after the other while the handout is looked at. */
function createChanges(props: HandoutProps, handout: () => readonly HandoutQuestion[]) {
  const [changes, setChanges] = createSignal<ChangesByQuestion>({});
  const [isTrying, setTrying] = createSignal(false);
  createEffect(() => {
    const { changes: ask } = props;
    const questions = handout().map(({ question }) => question);
    let isOld = false;
    onCleanup(() => (isOld = true));
    const work = async (): Promise<void> => {
      setChanges({});
      setTrying(true);
      for (const question of questions.filter(({ answers = [] }) => answers.length > 0)) {
        const found = await ask(question);
        if (isOld) return;
        setChanges((now) => ({ ...now, [question.id]: found }));
      }
      setTrying(false);
    };
    // An answer that cannot be tried is told without what it changes.
    void work().catch(() => isOld || setTrying(false));
  });
  return { changes, isTrying };
}

/** The open questions on one page, each with the thing it is about and room for the answer. */
export function RabbiHandout(props: HandoutProps) {
  const more = createMemo(() => planQuestions(props.plan, props.kitchen));
  const handout = createMemo(() => rabbiHandout(props.kitchen, more()));
  const { changes, isTrying } = createChanges(props, handout);
  return (
    <HandoutFrame
      title={t('plan-page.questions')}
      about={isTrying() ? t('handouts.rabbi.trying') : t('handouts.rabbi.about')}
      text={() => rabbiHandoutText(props.kitchen, changes(), translator(), more())}
      class="rabbi"
    >
      <p class="rabbi-of">
        {t('plan-page.questions.of', {
          kitchen: props.kitchen.name,
          custom: say(customName(props.kitchen.household)),
        })}{' '}
        {t('custom.questions.standing')}
      </p>
      <ol class="rabbi-list">
        <For each={handout()} fallback={<li>{t('plan-page.questions.none')}</li>}>
          {(asked) => <Asked asked={asked} changes={changes()} />}
        </For>
      </ol>
      <p class="rabbi-said">
        <span>{t('plan-page.questions.line.said-by')}</span>
        <span>{t('plan-page.questions.line.on')}</span>
      </p>
    </HandoutFrame>
  );
}

function Asked(props: { asked: HandoutQuestion; changes: ChangesByQuestion }) {
  const question = () => props.asked.question;
  return (
    <li class="rabbi-question">
      <Show when={props.asked.fixture}>{(fixture) => <FixturePicture fixture={fixture()} />}</Show>
      <div>
        <h3>{written(props.asked.name)}</h3>
        <p class="rabbi-facts">
          <Show when={props.asked.facts.length > 0}>
            {t('handouts.rabbi.facts', { facts: props.asked.facts })}{' '}
          </Show>
          <span class="rabbi-age">
            {t('handouts.rabbi.age')}
            <i class="write-in" />
          </span>
        </p>
        <p class="rabbi-ask">{say(question().ask)}</p>
        <p>{say(question().why)}</p>
        <p>
          <strong>{t('plan-page.questions.until-then')}</strong> {say(question().untilThen)}
        </p>
        <ul class="rabbi-answers">
          <For each={answerMessages(question(), props.changes)}>
            {(answer) => (
              <li>
                <span class="tick-box" aria-hidden="true" />
                <span>{say(answer)}</span>
              </li>
            )}
          </For>
        </ul>
        <p class="rabbi-line">
          {t('plan-page.questions.line.answer')}
          <i class="write-in" />
        </p>
      </div>
    </li>
  );
}
