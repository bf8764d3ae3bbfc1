import { Index } from 'solid-js';
import type { RunView } from '../../../../core/run/index.ts';
import { t } from '../../../context/language.ts';
import { countdown } from '../../../parts/time/countdown-digits.ts';

/** The clocks as lines of words: where the part that shows them well has failed. */
export function PlainTimers(props: { view: RunView }) {
  return (
    <ul class="plain-timers" data-list="timers">
      <Index each={props.view.timers}>
        {(timer) => (
          <li data-timer={timer().id}>
            {t('run.timer.reading', { label: timer().label, left: countdown(timer().leftS) })}
          </li>
        )}
      </Index>
    </ul>
  );
}
