import { Show } from 'solid-js';
import { t } from '../../context/language.ts';
import { momentIn } from './local-date-time.ts';

/** A wall that keeps no summer time: what was typed is told back as it was typed. */
const AS_TYPED = 'UTC';

/**
 * What a field of date and time means, in words of the page: a browser writes it in its own
 * language's order, in which 3 February may look like 2 March. Half a date tells nothing.
 */
export function DayTold(props: {
  /** "2027-03-01T21:40", or the day alone. */
  typed: string | undefined;
}) {
  const wallMs = () =>
    props.typed === undefined
      ? undefined
      : momentIn(props.typed.includes('T') ? props.typed : `${props.typed}T12:00`, AS_TYPED);
  return (
    <Show when={wallMs()}>
      {(ms) => (
        <small class="day-told">
          {t(props.typed?.includes('T') ? 'common.moment' : 'common.day', {
            wallMs: ms(),
            zone: AS_TYPED,
          })}
        </small>
      )}
    </Show>
  );
}
