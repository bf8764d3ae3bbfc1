import { Show } from 'solid-js';
import type { Request, RunView } from '../../../../core/run/index.ts';
import { t } from '../../../context/language.ts';
import { wallZone } from '../../../context/zone.ts';
import { Action } from '../../../parts/press/action.tsx';
import { timerTitle } from '../timers/timer-messages.ts';

/** "Was it last hot on Sunday 29 March 20:00, or before?": only with a yes the rest counts from then. */
export function LastHotQuestion(props: {
  view: RunView;
  nowMs: number;
  send: (request: Request) => void;
}) {
  const asked = () =>
    props.view.timers.flatMap((timer) => {
      const { name, label } = timerTitle(props.view, timer);
      return timer.lastHot ? [{ id: timer.id, ...timer.lastHot, name: name ?? label }] : [];
    })[0];
  return (
    <Show when={asked()}>
      {(one) => {
        const told = () => ({ name: one().name, wallMs: one().wallMs, zone: wallZone() });
        return (
          <div
            class="review-question last-hot-question"
            role="group"
            aria-label={t('run.last-hot.ask', told())}
          >
            <p class="review-ask">{t('run.last-hot.ask', told())}</p>
            <p class="quiet">{t('run.last-hot.about')}</p>
            <div class="button-row">
              <Action
                class="button button--ember"
                name="last-hot-yes"
                onPress={() =>
                  props.send({
                    kind: 'correct-time',
                    timer: one().id,
                    sinceWallMs: one().wallMs,
                    reason: t('run.last-hot.reason'),
                    // The question says day and time: a person who presses has read them.
                    clockRight: true,
                  })
                }
              >
                {t('run.last-hot.yes', { wallMs: props.nowMs, zone: wallZone() })}
              </Action>
              <Action
                class="button"
                name="last-hot-no"
                onPress={() =>
                  props.send({
                    kind: 'report-recheck',
                    fixture: one().about,
                    text: t('run.last-hot.no-reason'),
                  })
                }
              >
                {t('run.last-hot.no')}
              </Action>
            </div>
          </div>
        );
      }}
    </Show>
  );
}
