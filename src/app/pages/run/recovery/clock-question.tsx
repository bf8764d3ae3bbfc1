import { createSignal, Show } from 'solid-js';
import type { Request } from '../../../../core/run/index.ts';
import { t } from '../../../context/language.ts';
import { readerZone } from '../../../context/zone.ts';
import { Action } from '../../../parts/action.tsx';
import { localDateTime } from '../../../parts/local-date-time.ts';

/** "Is 21:40 the right time now?": the one question that narrows what a sleep left open. */
export function ClockQuestion(props: { nowMs: number; send: (request: Request) => void }) {
  const [wrong, setWrong] = createSignal(false);
  const now = () => ({ wallMs: props.nowMs, zone: readerZone() });
  return (
    <div class="review-question clock-question" role="group" aria-label={t('run.clock')}>
      <Show when={!wrong()} fallback={<RightTime {...props} onBack={() => setWrong(false)} />}>
        <p class="review-ask">{t('run.clock.ask', now())}</p>
        <div class="button-row">
          <Action
            class="button button--ember"
            name="clock-right"
            onPress={() => props.send({ kind: 'answer-clock', right: true })}
          >
            {t('run.clock.yes', now())}
          </Action>
          <Action class="button" name="clock-wrong" onPress={() => setWrong(true)}>
            {t('run.clock.no')}
          </Action>
        </div>
        <p class="quiet">{t('run.clock.about')}</p>
      </Show>
    </div>
  );
}

function RightTime(props: { nowMs: number; send: (request: Request) => void; onBack: () => void }) {
  const [actual, setActual] = createSignal(localDateTime(props.nowMs));
  const correct = () => {
    const actualWallMs = new Date(actual()).getTime();
    if (Number.isFinite(actualWallMs))
      props.send({ kind: 'answer-clock', right: false, actualWallMs });
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
      </label>
      <div class="button-row">
        <Action class="button button--ember" name="clock-actual" onPress={correct}>
          {t('run.clock.right')}
        </Action>
        <Action class="button button--plain" name="back" onPress={props.onBack}>
          {t('run.back')}
        </Action>
      </div>
    </>
  );
}
