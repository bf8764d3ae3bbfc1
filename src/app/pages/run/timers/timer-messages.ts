import { asWritten, message, type Message } from '../../../../core/messages/index.ts';
import type { RunView, TimerView } from '../../../../core/run/index.ts';
import { countdown } from '../../../parts/time/countdown-digits.ts';
import { fixtureName, labelNow } from '../step/step-text.ts';

/** What a timer counts, and of what: "Rest", of the sink. `name` is absent for what is of no fixture. */
export type TimerTitle = { readonly label: Message; readonly name?: Message };

/** The label of a timer without the name it may hold, and the name to stand beside it. */
export function timerTitle(view: RunView, timer: TimerView): TimerTitle {
  if (timer.of) return { ...timer.of, label: labelNow(timer, timer.of.label) };
  const name = fixtureName(view, timer.fixture);
  return { label: labelNow(timer), ...(name !== undefined && { name: asWritten(name) }) };
}

/** The same in one line: "Sink: Rest". */
export function namedTimer(view: RunView, timer: TimerView): Message {
  const { label, name } = timerTitle(view, timer);
  return name ? message('run.timer.named', { name, label }) : label;
}

/** State of a timer, with how late it is when it could not be told in time; undefined while it just runs. */
export function timerState(timer: TimerView): Message | undefined {
  const ago = countdown(timer.lateByS);
  if (timer.cameDueIn !== undefined)
    return message('run.timer.due-in-rest-day', { day: timer.cameDueIn, ago });
  if (timer.status === 'late') return message('run.timer.late', { ago });
  if (timer.alerting) return message('run.timer.calls');
  return timer.status === 'running' ? undefined : message(`run.timer.${timer.status}`);
}
