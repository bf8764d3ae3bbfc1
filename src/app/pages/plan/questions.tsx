import { createMemo, createSignal, For, Show } from 'solid-js';
import {
  customName,
  questionList,
  questionListText,
  withoutAnswer,
  type AnsweredQuestion,
  type ChosenQuestion,
} from '../../../core/custom/index.ts';
import type { Fixture, Kitchen } from '../../../core/kitchen/index.ts';
import { downloadText, shareText } from '../../../host/files/index.ts';
import { Action } from '../../parts/action.tsx';
import { AnswerSheet } from './answer-sheet.tsx';
import { FoundSheet } from './found-sheet.tsx';
import { printOnly } from './print-only.ts';

type Asked = { readonly fixture: Fixture; readonly question: ChosenQuestion };

async function share(kitchen: Kitchen): Promise<void> {
  const file = { name: 'questions.txt', text: questionListText(kitchen), type: 'text/plain' };
  const shared = await shareText(file, `Questions for our rabbi: ${kitchen.name}`);
  if (shared === 'not-supported' || shared === 'failed') downloadText(file);
}

/** What to take to the rabbi, what to look at oneself, and what has been answered. */
export function Questions(props: {
  kitchen: Kitchen;
  onKitchen?: ((kitchen: Kitchen) => void) | undefined;
}) {
  const list = createMemo(() => questionList(props.kitchen));
  const [asked, setAsked] = createSignal<Asked>();
  const fixtureOf = (id: string) => props.kitchen.fixtures.find((one) => one.id === id);
  const answer = (question: ChosenQuestion) => {
    const fixture = fixtureOf(question.fixture);
    if (fixture) setAsked({ fixture, question });
  };
  return (
    <section class="list questions" aria-label="Questions" data-print="questions">
      <header class="questions-head">
        <div>
          <h2>Questions for your rabbi</h2>
          <p class="questions-of">
            {props.kitchen.name}. Custom: {customName(props.kitchen.household)}.
          </p>
        </div>
        <div class="button-row">
          <Action class="button button--plain" onPress={() => printOnly('questions')}>
            Print the questions
          </Action>
          <Action class="button button--plain" onPress={() => void share(props.kitchen)}>
            Share them
          </Action>
        </div>
      </header>
      <p class="quiet">
        Customs differ. Until a question is answered, the stricter way is planned, and the plan says
        so; the answer replaces the row of the custom.
      </p>
      <Open
        list={list().toAsk}
        none="Nothing is left to ask."
        nameOf={(id) => fixtureOf(id)?.name ?? id}
        button="Enter the answer"
        onAnswer={props.onKitchen && answer}
      />
      <Show when={list().toFind.length > 0}>
        <h3 class="questions-part">To look at yourselves</h3>
        <Open
          list={list().toFind}
          none=""
          nameOf={(id) => fixtureOf(id)?.name ?? id}
          button="Say what it is"
          onAnswer={props.onKitchen && answer}
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
  const looking = () =>
    props.asked.question.about === 'material' || props.asked.question.about === 'condition';
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
}) {
  return (
    <Show when={props.list.length > 0} fallback={<p class="quiet">{props.none}</p>}>
      <ol class="question-list">
        <For each={props.list}>
          {(question) => (
            <li>
              <div class="question-words">
                <h3>{props.nameOf(question.fixture)}</h3>
                <p class="question-ask">{question.ask}</p>
                <p class="quiet">{question.why}</p>
                <p class="question-until">
                  <strong>Until then:</strong> {question.untilThen}
                </p>
              </div>
              <div class="answer-line" aria-hidden="true">
                <span>Answer</span>
                <span>Said by</span>
                <span>On</span>
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
      <h3 class="questions-part">Answered</h3>
      <ul class="question-list answered-list">
        <For each={props.list}>
          {(one) => (
            <li>
              <div class="question-words">
                <h3>{name(one.fixture)}</h3>
                <p class="question-ask">{one.ask}</p>
                <p>
                  {one.answer || 'Answered.'}{' '}
                  <span class="quiet">
                    {one.saidBy}, {one.saidOn}
                    {one.by === 'own-row' ? ' (a row of your own custom)' : ''}
                  </span>
                </p>
              </div>
              <Show when={one.by === 'override' && props.onKitchen}>
                {(onKitchen) => (
                  <Action
                    class="button button--plain"
                    onPress={() => onKitchen()(withoutAnswer(props.kitchen, one.fixture))}
                  >
                    Take the answer back
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
