import { Show } from 'solid-js';
import { message } from '../../../../core/messages/index.ts';
import type { RunView, TimerView } from '../../../../core/run/index.ts';
import { MS_PER_SECOND } from '../../../../core/units/index.ts';
import { t } from '../../../context/language.ts';
import { Countdown } from '../../../parts/countdown.tsx';
import { scrolls } from '../../../parts/scrolls.ts';
import { when } from '../../../parts/time/when.ts';
import { DaysView } from '../timers/days-view.tsx';

/** Nothing for hands: the timer that ends first, then what runs until when and what can be done when. */
export function Quiet(props: { view: RunView; nowMs: number }) {
  const first = () => props.view.timers.find((timer) => timer.leftS > 0);
  const over = ({ label, leftS }: TimerView) =>
    message('run.timer.over-at', {
      label,
      when: when(props.nowMs + leftS * MS_PER_SECOND, props.nowMs),
    });
  return (
    <section class="stage stage--quiet" aria-label={t('run.now')}>
      <h1 class="stage-sentence" aria-live="polite">
        {t('run.quiet')}
      </h1>
      <Show when={first()} fallback={<p>{t('run.quiet.none')}</p>}>
        {(timer) => <Countdown leftS={timer().leftS} label={over(timer())} />}
      </Show>
      <div class="quiet-days" ref={scrolls}>
        <DaysView view={props.view} nowMs={props.nowMs} />
      </div>
      <p class="stage-next">{t('run.quiet.about')}</p>
    </section>
  );
}
