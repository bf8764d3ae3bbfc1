import type { Section } from '../../model/message.ts';

/** Before a run and after it; a run in progress needs none of it. */
export const runEnds = {
  'run.start.title': 'Ready to begin',
  'run.start.about': ({ steps, lengthS }: { steps: number; lengthS: number }, f) =>
    `${f.number(steps)} ${f.plural(steps, { one: 'step', other: 'steps' })} over ${f.duration(lengthS)}. Stop and come back whenever you need: clocks go on, and nothing is lost.`,
  'run.start.kept.kept': 'What is written down stays on this tablet until you delete it.',
  'run.start.kept.may-be-deleted':
    'This browser may delete what is stored when room is short or the app is not used for days: add it to the home screen, and save the run as a file when it is over.',
  'run.start.kept.not-supported':
    'This browser does not promise to keep what is stored: save the run as a file.',
  'run.start.kept.unknown':
    'The browser has not said whether it keeps what is stored: save the run as a file.',
  'run.kept.title': 'What this browser may throw away',
  'run.kept.room':
    'When the device is short of room, a browser may delete all that this app stored, at once and without asking.',
  'run.kept.safari':
    'Safari deletes it when this page was not used for seven days, unless the app is on the Home Screen.',
  'run.kept.private': 'What is done in a private window is gone when the window is closed.',
  'run.kept.cleared': 'Whoever clears the browser’s data deletes it too.',
  'run.kept.do':
    'So: add the app to the Home Screen, and save everything to one file under Record, before and after a run.',
  'run.start.awake':
    'The tablet cannot wake itself: keep it plugged in, this page open, and the screen on.',
  'run.start.standing':
    'Follow makers’ manuals and local codes; gas, electrical and plumbing work is for licensed people. The app gives no ruling and no guarantee of safety. In need, call the local emergency number.',
  'run.start.hearing': 'Hearing check',
  'run.start.hearing.ask': 'Can you hear the alarm from where you will work?',
  'run.start.hearing.play': 'Play the alarm',
  'run.start.hearing.again': 'Play it again',
  'run.start.hearing.heard': 'I heard it',
  'run.start.hearing.done': 'Heard.',
  'run.start.hearing.blocked':
    'The browser blocked the sound. Raise the volume, turn off silent mode, and play it again.',
  'run.start.hearing.ready-now': 'Now the sound is ready: play it again.',
  'run.start.hearing.deaf':
    'I cannot hear it; I will watch the screen instead (written into the record)',
  'run.start.hearing.deaf-note': 'Started without a heard sound: alerts are watched on the screen.',
  'run.start.first': 'First',
  'run.start.now': ({ wallMs, zone }: { wallMs: number; zone: string }, f) =>
    `It is ${f.moment(wallMs, zone)}`,
  'run.start.press': 'Start',
  'run.start.hear-first': 'Hear the alarm first',

  'run.closed.completed': 'Done',
  'run.closed.failed': 'Ended by a fault',
  'run.closed.stopped': 'Stopped',
  'run.closed.all-done': ({ of }: { of: number }, f) =>
    `${f.number(of)} of ${f.number(of)} steps were done.`,
  'run.closed.some-done': ({ done, undone, of }: { done: number; undone: number; of: number }, f) =>
    `${f.number(done)} of ${f.number(of)} steps were done, ${f.number(undone)} ${f.plural(undone, { one: 'was', other: 'were' })} not.`,
  'run.closed.mark': 'Mark the treated places now, so that nobody uses them by mistake.',
  'run.closed.record': 'See the record',
} satisfies Section;
