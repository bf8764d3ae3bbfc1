import { Index, Show } from 'solid-js';
import { say, t } from '../context/language.ts';
import { message, type Message } from '../../core/messages/index.ts';
import { countdown, countdownDigits } from './time/countdown-digits.ts';

type Part = { readonly digits: string; readonly unit?: 'hours' | 'minutes' };

function partsOf(leftS: number): readonly Part[] {
  const digits = countdownDigits(leftS);
  const last = (n: number): string => String(n).padStart(2, '0');
  if ('seconds' in digits) return [{ digits: `${digits.minutes}:${last(digits.seconds)}` }];
  return [
    { digits: String(digits.hours), unit: 'hours' },
    { digits: last(digits.minutes), unit: 'minutes' },
  ];
}

/**
 * Digits readable from two metres. The face has tabular figures, so the
 * number does not walk as it counts. Screen readers get it on demand, not
 * each second: the parent names the timer, and nothing here is a live region.
 */
export function Countdown(props: { leftS: number; label: Message; over?: boolean }) {
  return (
    <div class="countdown" classList={{ 'countdown--over': props.over ?? false }}>
      <div
        class="countdown-digits"
        role="timer"
        aria-live="off"
        aria-label={say(
          message('run.timer.reading', { label: props.label, left: countdown(props.leftS) }),
        )}
      >
        <Index each={partsOf(props.leftS)}>
          {(part) => (
            <span class="countdown-part">
              {part().digits}
              <span class="countdown-unit">
                <Show when={part().unit}>
                  {(unit) => <>{t(`common.countdown.unit.${unit()}`)}</>}
                </Show>
              </span>
            </span>
          )}
        </Index>
      </div>
      <div class="countdown-label">{say(props.label)}</div>
    </div>
  );
}
