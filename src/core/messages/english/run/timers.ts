import type { Message, Section } from '../../model/message.ts';

/** Timers beside the step in hand. */
export const timers = {
  'run.timers': 'Clocks',
  'run.timers.none': 'No other clock is running.',
  'run.timer.named': ({ name, label }: { name: Message; label: Message }, f) =>
    `${f.say(name)}: ${f.say(label)}`,
  'run.timer.reading': ({ label, left }: { label: Message; left: Message }, f) =>
    `${f.say(label)}: ${f.say(left)}`,
  'run.timer.calls': 'now',
  'run.timer.calls-here': ({ state }: { state: Message }, f) =>
    `${f.say(state)}: touch when you have heard it`,
  'run.timer.frozen': 'paused',
  'run.timer.unproved': 'unproved: answer the question',
  'run.timer.void': 'does not count',
  'run.timer.closed': 'over',
  'run.timer.due': 'now',
  'run.timer.late': ({ ago }: { ago: Message }, f) =>
    `came due ${f.say(ago)} ago, while nobody could be told`,
  'run.timer.due-in-rest-day': ({ day, ago }: { day: Message; ago: Message }, f) =>
    `came due during ${f.say(day)}, ${f.say(ago)} ago`,
} satisfies Section;
