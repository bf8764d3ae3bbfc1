import { Index, Show } from 'solid-js';
import type { Request, ReviewQuestion, RunView } from '../../../../core/run/index.ts';
import { say, t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import { KitchenGlance } from '../kitchen/kitchen-glance.tsx';
import { ClockQuestion } from './clock-question.tsx';

const ANSWERS = ['went-on', 'broke-off', 'unknown'] as const;
const LOOKS: Readonly<Record<(typeof ANSWERS)[number], string>> = {
  'went-on': 'button button--ember',
  'broke-off': 'button',
  unknown: 'button button--plain',
};

/** After an interruption: plain questions, answered by the person; nothing resumes by itself. The kitchen beside them shows where it was, what is hot and what comes next. */
export function Review(props: { view: RunView; nowMs: number; send: (request: Request) => void }) {
  /** Marked in the picture: where the first question is about. */
  const asked = () => props.view.review[0]?.step;
  return (
    <section class="stage review" aria-label={t('run.review')}>
      <h1 class="stage-sentence">{t('run.review.title')}</h1>
      <div class="review-place">
        <KitchenGlance view={props.view} nowMs={props.nowMs} current={asked()} tellsNext />
      </div>
      <Show when={props.view.clockQuestion}>
        {(question) => <ClockQuestion question={question()} send={props.send} />}
      </Show>
      <div class="review-asks">
        <Index each={props.view.review}>
          {(question) => <Question {...props} question={question()} />}
        </Index>
      </div>
      <Show when={!props.view.askClock && props.view.review.length === 0}>
        <div class="main-bar">
          <Action class="main-action" name="resume" onPress={() => props.send({ kind: 'resume' })}>
            {t('run.resume')}
          </Action>
        </div>
      </Show>
    </section>
  );
}

function Question(props: {
  view: RunView;
  question: ReviewQuestion;
  send: (request: Request) => void;
}) {
  const away = () => {
    const { step: id, gapS } = props.question;
    const step = props.view.steps.find((one) => one.step.id === id)?.step.title;
    return step ? t('run.review.away', { step, gapS }) : t('run.review.away-only', { gapS });
  };
  return (
    <div class="review-question" data-question={props.question.id}>
      <p class="quiet">{away()}</p>
      <p class="review-ask">{say(props.question.ask)}</p>
      <div class="button-row">
        <Index each={ANSWERS}>
          {(answer) => (
            <Action
              class={LOOKS[answer()]}
              name={answer()}
              onPress={() =>
                props.send({
                  kind: 'answer-review',
                  question: props.question.id,
                  answer: answer(),
                })
              }
            >
              {t(`run.review.${answer()}`)}
            </Action>
          )}
        </Index>
      </div>
    </div>
  );
}
