import { createMemo, createSignal, For, Show } from 'solid-js';
import { say, t, translator } from '../../context/language.ts';
import {
  customName,
  forLooking,
  questionList,
  questionListText,
  withoutAnswer,
  type AnsweredQuestion,
  type ChosenQuestion,
} from '../../../core/custom/index.ts';
import type { Fixture, Kitchen } from '../../../core/kitchen/index.ts';
import { planQuestions, type AnswerChange, type Plan } from '../../../core/plan/index.ts';
import { downloadText, shareText } from '../../../host/files/index.ts';
import { Action } from '../../parts/press/action.tsx';
import { fileName } from '../../parts/file-name.ts';
import { AnswerChanges } from './answers/answer-changes.tsx';
import { AnswerSheet } from './answers/answer-sheet.tsx';
import { FoundSheet } from './answers/found-sheet.tsx';
import { printOnly } from '../../parts/print-only.ts';

type Asked = { readonly fixture: Fixture; readonly question: ChosenQuestion };

async function share(kitchen: Kitchen, more: readonly ChosenQuestion[]): Promise<void> {
  const title = t('plan-page.questions.shared-title', { kitchen: kitchen.name });
  const file = {
    name: fileName({ called: title, atWallMs: Date.now(), ending: '.txt' }),
    text: questionListText(kitchen, translator(), more),
    type: 'text/plain',
  };
  const shared = await shareText(file, title);
  if (shared === 'not-supported' || shared === 'failed') downloadText(file);
}

/** What to take to the rabbi, what to look at oneself, and what has been answered. */
export function Questions(props: {
  plan: Plan;
  kitchen: Kitchen;
  onKitchen?: ((kitchen: Kitchen) => void) | undefined;
  changes: (question: ChosenQuestion) => Promise<readonly AnswerChange[]>;
}) {
  const list = createMemo(() => questionList(props.kitchen));
  const more = createMemo(() => planQuestions(props.plan, props.kitchen));
  const [asked, setAsked] = createSignal<Asked>();
  const fixtureOf = (id: string) => props.kitchen.fixtures.find((one) => one.id === id);
  const answer = (question: ChosenQuestion) => {
    const fixture = fixtureOf(question.fixture);
    if (fixture) setAsked({ fixture, question });
  };
  return (
    <section
      class="list questions"
      aria-label={t('plan-page.questions.region')}
      data-print="questions"
    >
      <header class="questions-head">
        <div>
          <h2>{t('plan-page.questions')}</h2>
          <p class="questions-of">
            {t('plan-page.questions.of', {
              kitchen: props.kitchen.name,
              custom: say(customName(props.kitchen.household)),
            })}
          </p>
        </div>
        <div class="button-row">
          <Action class="button button--plain" onPress={() => printOnly('questions')}>
            {t('plan-page.questions.print')}
          </Action>
          <Action class="button button--plain" onPress={() => void share(props.kitchen, more())}>
            {t('plan-page.questions.share')}
          </Action>
        </div>
      </header>
      <p class="quiet">{t('plan-page.questions.about')}</p>
      <Open
        list={[...list().toAsk, ...more()]}
        none={t('plan-page.questions.none')}
        nameOf={(id) => fixtureOf(id)?.name ?? id}
        button={t('plan-page.questions.enter')}
        onAnswer={props.onKitchen && answer}
        changes={props.changes}
      />
      <Show when={list().toFind.length > 0}>
        <h3 class="questions-part">{t('plan-page.questions.to-look')}</h3>
        <Open
          list={list().toFind}
          none=""
          nameOf={(id) => fixtureOf(id)?.name ?? id}
          button={t('plan-page.questions.say-what')}
          onAnswer={props.onKitchen && answer}
          changes={props.changes}
        />
      </Show>
      <Answered kitchen={props.kitchen} list={list().answered} onKitchen={props.onKitchen} />
      <Show when={props.onKitchen && asked()}>
        {(now) => (
          <AskedSheet
            asked={now()}
            kitchen={props.kitchen}
            onKitchen={(kitchen) => props.onKitchen?.(kitchen)}
            onClose={() => setAsked(undefined)}
          />
        )}
      </Show>
    </section>
  );
}

/** The sheet that fits the question: a ruling, or what was found by looking. */
function AskedSheet(props: {
  asked: Asked;
  kitchen: Kitchen;
  onKitchen: (kitchen: Kitchen) => void;
  onClose: () => void;
}) {
  const looking = () => forLooking(props.asked.question);
  return (
    <Show
      when={looking()}
      fallback={
        <AnswerSheet
          kitchen={props.kitchen}
          fixture={props.asked.fixture}
          question={props.asked.question}
          onKitchen={props.onKitchen}
          onClose={props.onClose}
        />
      }
    >
      <FoundSheet
        kitchen={props.kitchen}
        fixture={props.asked.fixture}
        question={props.asked.question}
        onKitchen={props.onKitchen}
        onClose={props.onClose}
      />
    </Show>
  );
}

function Open(props: {
  list: readonly ChosenQuestion[];
  none: string;
  nameOf: (fixture: string) => string;
  button: string;
  onAnswer: ((question: ChosenQuestion) => void) | undefined;
  changes: (question: ChosenQuestion) => Promise<readonly AnswerChange[]>;
}) {
  return (
    <Show when={props.list.length > 0} fallback={<p class="quiet">{props.none}</p>}>
      <ol class="question-list">
        <For each={props.list}>
          {(question) => (
            <li>
              <div class="question-words">
                <h3>{props.nameOf(question.fixture)}</h3>
                <p class="question-ask">{say(question.ask)}</p>
                <p class="quiet">{say(question.why)}</p>
                <p class="question-until">
                  <strong>{t('plan-page.questions.until-then')}</strong> {say(question.untilThen)}
                </p>
                <Show when={(question.answers ?? []).length > 0}>
                  <AnswerChanges question={question} changes={props.changes} />
                </Show>
              </div>
              <div class="answer-line" aria-hidden="true">
                <span>{t('plan-page.questions.line.answer')}</span>
                <span>{t('plan-page.questions.line.said-by')}</span>
                <span>{t('plan-page.questions.line.on')}</span>
              </div>
              <Show when={props.onAnswer}>
                {(onAnswer) => (
                  <Action class="button" onPress={() => onAnswer()(question)}>
                    {props.button}
                  </Action>
                )}
              </Show>
            </li>
          )}
        </For>
      </ol>
    </Show>
  );
}

function Answered(props: {
  kitchen: Kitchen;
  list: readonly AnsweredQuestion[];
  onKitchen: ((kitchen: Kitchen) => void) | undefined;
}) {
  const name = (id: string) => props.kitchen.fixtures.find((one) => one.id === id)?.name ?? id;
  return (
    <Show when={props.list.length > 0}>
      <h3 class="questions-part">{t('plan-page.questions.answered')}</h3>
      <ul class="question-list answered-list">
        <For each={props.list}>
          {(one) => (
            <li>
              <div class="question-words">
                <h3>{name(one.fixture)}</h3>
                <p class="question-ask">{say(one.ask)}</p>
                <p>
                  {one.answer || t('plan-page.questions.answered-bare')}{' '}
                  <span class="quiet">
                    {t(
                      one.by === 'own-row'
                        ? 'plan-page.questions.said-own-row'
                        : 'plan-page.questions.said',
                      { saidBy: one.saidBy, saidOn: one.saidOn },
                    )}
                  </span>
                </p>
              </div>
              <Show when={one.by === 'override' && props.onKitchen}>
                {(onKitchen) => (
                  <Action
                    class="button button--plain"
                    onPress={() => onKitchen()(withoutAnswer(props.kitchen, one.fixture, one))}
                  >
                    {t('plan-page.questions.take-back')}
                  </Action>
                )}
              </Show>
            </li>
          )}
        </For>
      </ul>
    </Show>
  );
}
