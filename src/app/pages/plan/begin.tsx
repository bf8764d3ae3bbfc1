import '../../styles/plan/plan-days.css';
import { For, Show } from 'solid-js';
import { parseMoment, wallTime } from '../../../core/calendar/index.ts';
import { clockText, momentInZone, type PlanDays } from '../../../core/plan/index.ts';

const MS_H = 3_600_000;
const DAY_H = 24;
/** Rest days that are told; later ones come when the work is further. */
const TOLD = 3;

/** What the control of date and time shows: the wall clock of the kitchen, not of the tablet. */
function localText(atWallMs: number, zone: string): string {
  const { year, month, day, hour, minute } = wallTime(atWallMs, zone);
  const two = (value: number) => String(value).padStart(2, '0');
  return `${year}-${two(month)}-${two(day)}T${two(hour)}:${two(minute)}`;
}

/** "2 days 5 h", "5 h", "40 min" */
function leftInWords(leftMs: number): string {
  const hours = Math.floor(leftMs / MS_H);
  if (hours < 1) return `${Math.max(0, Math.floor(leftMs / 60_000))} min`;
  const days = Math.floor(hours / DAY_H);
  const rest = hours % DAY_H;
  if (days === 0) return `${hours} h`;
  return `${days} ${days === 1 ? 'day' : 'days'}${rest === 0 ? '' : ` ${rest} h`}`;
}

/** When the work begins, the days of rest it goes round, and the hour it must be done by. */
export function Begin(props: {
  startWallMs: number;
  zone: string;
  /** Absent: the kitchen's place is not told. */
  days?: PlanDays;
  onChange: (startWallMs: number) => void;
}) {
  const change = (text: string) => {
    try {
      props.onChange(parseMoment('start', text, props.zone));
    } catch {
      // Half a date is no news: the control shows what is missing, and the plan stays.
    }
  };
  const ahead = () => props.days?.restDays.slice(0, TOLD) ?? [];
  const inside = () =>
    props.days?.restDays.find(
      (day) => day.fromWallMs <= props.startWallMs && props.startWallMs < day.toWallMs,
    );
  return (
    <section class="begin" aria-label="When the work begins">
      <label class="field begin-when">
        <span>Begin</span>
        <input
          type="datetime-local"
          value={localText(props.startWallMs, props.zone)}
          onChange={(event) => change(event.currentTarget.value)}
        />
        <small class="quiet">By the clock in {props.zone.replaceAll('_', ' ')}</small>
      </label>
      <div class="begin-days">
        <Show
          when={props.days}
          fallback={
            <p>
              Tell under <b>Kitchen</b> where it is, and the plan goes round Sabbaths and festivals.
            </p>
          }
        >
          {(days) => (
            <>
              <Show when={inside()}>
                {(day) => (
                  <p class="begin-inside">
                    This lies in {day().name}: nothing begins before it is out at{' '}
                    {momentInZone(day().toWallMs, props.zone)}.
                  </p>
                )}
              </Show>
              <Show when={ahead().length > 0}>
                <p class="quiet">Nothing is planned in</p>
                <ul class="begin-rests">
                  <For each={ahead()}>
                    {(day) => (
                      <li>
                        <b>{day.name}</b>, {momentInZone(day.fromWallMs, props.zone)} to{' '}
                        {momentInZone(day.toWallMs, props.zone)}
                      </li>
                    )}
                  </For>
                </ul>
              </Show>
              <Show when={days().deadline}>
                {(deadline) => (
                  <p class="begin-deadline">
                    <b>{deadline().name}</b>: {momentInZone(deadline().atWallMs, props.zone)}
                    {deadline().atWallMs > props.startWallMs
                      ? `, ${leftInWords(deadline().atWallMs - props.startWallMs)} after you begin`
                      : `. At ${clockText(props.startWallMs, props.zone)} it has passed`}
                    .
                  </p>
                )}
              </Show>
            </>
          )}
        </Show>
      </div>
    </section>
  );
}
