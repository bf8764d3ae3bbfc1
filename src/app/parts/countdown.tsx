import { Index } from 'solid-js';
import { countdownParts, countdownText } from '../labels/time.ts';

/**
 * Digits readable from two metres. The face has tabular figures, so the
 * number does not walk as it counts. Screen readers get it on demand, not
 * each second: the parent names the clock, and nothing here is a live region.
 */
export function Countdown(props: { leftS: number; label: string; over?: boolean }) {
  return (
    <div class="countdown" classList={{ 'countdown--over': props.over ?? false }}>
      <div
        class="countdown-digits"
        role="timer"
        aria-live="off"
        aria-label={`${props.label}: ${countdownText(props.leftS)}`}
      >
        <Index each={countdownParts(props.leftS)}>
          {(part) => (
            <span class="countdown-part">
              {part().digits}
              <span class="countdown-unit">{part().unit}</span>
            </span>
          )}
        </Index>
      </div>
      <div class="countdown-label">{props.label}</div>
    </div>
  );
}
