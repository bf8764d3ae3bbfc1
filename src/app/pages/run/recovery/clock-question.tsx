import { createSignal, Show } from 'solid-js';
import type { ClockQuestion as Question, Request } from '../../../../core/run/index.ts';
import { MS_PER_SECOND } from '../../../../core/units/index.ts';
import { t } from '../../../context/language.ts';
import { wallZone } from '../../../context/zone.ts';
import { Action } from '../../../parts/press/action.tsx';
import { DayTold } from '../../../parts/time/day-told.tsx';
import { localDateTime, momentIn } from '../../../parts/time/local-date-time.ts';

type QuestionProps = { question: Question; send: (request: Request) => void };

/** "Is Tuesday 24 November 21:40 right now?": the one question that narrows what a sleep left open. */
export function ClockQuestion(props: QuestionProps) {
  const [wrong, setWrong] = createSignal(false);
  const shown = () => ({ wallMs: props.question.shownWallMs, zone: wallZone() });
  return (
    <div class="review-question clock-question" role="group" aria-label={t('run.clock')}>
      <Show when={!wrong()} fallback={<RightTime {...props} onBack={() => setWrong(false)} />}>
        <p class="review-ask">{t('run.clock.ask', shown())}</p>
        <div class="button-row">
          <Show
            when={props.question.needsPassed}
            fallback={
              <Action
                class="button button--ember"
                name="clock-right"
                onPress={() => props.send({ kind: 'answer-clock', right: true })}
              >
                {t('run.clock.yes', shown())}
              </Action>
            }
          >
            <Action
              class="button button--ember"
              name="clock-passed"
              onPress={() => props.send({ kind: 'answer-clock', right: true, passed: true })}
            >
              {t('run.clock.yes-passed', { missingS: props.question.missingS })}
            </Action>
            <Action
              class="button"
              name="clock-set"
              onPress={() => props.send({ kind: 'answer-clock', right: true, passed: false })}
            >
              {t('run.clock.yes-set')}
            </Action>
          </Show>
          <Action class="button" name="clock-wrong" onPress={() => setWrong(true)}>
            {t('run.clock.no')}
          </Action>
          <Action
            class="button button--plain"
            name="clock-unknown"
            onPress={() => props.send({ kind: 'answer-clock', right: false })}
          >
            {t('run.clock.unknown')}
          </Action>
        </div>
        <p class="quiet">{t('run.clock.about')}</p>
      </Show>
    </div>
  );
}

/** The time as a person knows it; and where time is missing by it, whether that passed. */
function RightTime(props: QuestionProps & { onBack: () => void }) {
  const [actual, setActual] = createSignal(localDateTime(props.question.shownWallMs, wallZone()));
  const actualWallMs = () => momentIn(actual(), wallZone());
  const missingS = () => {
    const { shownWallMs, missingS: ofShownS } = props.question;
    return ofShownS + ((actualWallMs() ?? shownWallMs) - shownWallMs) / MS_PER_SECOND;
  };
  const answer = (passed?: boolean) => {
    const atMs = actualWallMs();
    if (atMs === undefined) return;
    props.send({
      kind: 'answer-clock',
      right: false,
      actualWallMs: atMs,
      ...(passed !== undefined && { passed }),
    });
  };
  return (
    <>
      <label class="field">
        <span>{t('run.clock.really')}</span>
        <input
          type="datetime-local"
          name="actual"
          value={actual()}
          onInput={(event) => setActual(event.currentTarget.value)}
        />
        <DayTold typed={actual()} />
      </label>
      <div class="button-row">
        <Show
          when={missingS() > 0}
          fallback={
            <Action class="button button--ember" name="clock-actual" onPress={() => answer()}>
              {t('run.clock.right')}
            </Action>
          }
        >
          <Action
            class="button button--ember"
            name="clock-actual-passed"
            onPress={() => answer(true)}
          >
            {t('run.clock.right-passed', { missingS: missingS() })}
          </Action>
          <Action class="button" name="clock-actual-set" onPress={() => answer(false)}>
            {t('run.clock.right-set')}
          </Action>
        </Show>
        <Action class="button button--plain" name="back" onPress={props.onBack}>
          {t('run.back')}
        </Action>
      </div>
    </>
  );
}
