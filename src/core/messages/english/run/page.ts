import type { Message, Section } from '../../model/message.ts';

type Progress = { done: number; of: number };

/** Round the step: what the device promises, what else can be pressed, before and after the run. */
export const page = {
  'run.light.sound.armed': 'Sound ready',
  'run.light.sound.touch-to-arm': 'Touch to arm the sound',
  'run.light.sound.blocked': 'Sound is blocked',
  'run.light.sound.unknown': 'Sound not known',
  'run.light.sound.elsewhere': 'Sound comes from the other page',
  'run.light.wake.held': 'Screen stays on',
  'run.light.wake.lost': 'Screen may sleep',
  'run.light.wake.not-supported': 'Set Auto-Lock to Never while you work',
  'run.light.other-lead': 'Another page leads this run',
  'run.arm': 'Touch to arm the sound',
  'run.arm.region': 'Sound',
  'run.arm.about': 'After a restart the tablet makes no sound until it is touched once.',
  'run.arm.calling': ({ timer, state }: { timer: Message; state: Message }, f) =>
    `${f.say(timer)}, ${f.say(state)}`,

  'run.side': 'Beside the stage',
  'run.pause': 'Pause',
  'run.resume': 'Go on',
  'run.ran-out': 'I ran out here',
  'run.happened': 'Something happened',
  'run.steps': ({ done, of }: Progress) => `Steps ${done}/${of}`,
  'run.settings': 'Settings',
  'run.until-when': 'Until when',
  'run.back': 'Back',
  'run.alarm-failed': ({ timer }: { timer: Message }, f) =>
    `The alarm of “${f.say(timer)}” could not be made to sound: watch the screen.`,

  'run.alarm-failed.no-audio': 'This browser has no audio clock.',
  'run.alarm-failed.no-gesture':
    'Nobody had touched the page since it was opened, so the browser allows no sound.',
  'run.alarm-failed.no-sounds': 'The sound files could not be loaded.',
  'run.alarm-failed.interrupted': 'A call or another app has the speaker.',
  'run.alarm-failed.suspended': 'The device stopped the sound.',
  'run.alarm-failed.stuck': 'The audio clock stands still.',
  'run.alarm-failed.other': 'The sound could not be made.',
  'run.written-anew':
    'The stored journal was deleted from outside during the run. This page wrote it down again, whole, from what it had in memory.',

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
  'run.closed.some-done': ({ done, undone, of }: Progress & { undone: number }, f) =>
    `${f.number(done)} of ${f.number(of)} steps were done, ${f.number(undone)} ${f.plural(undone, { one: 'was', other: 'were' })} not.`,
  'run.closed.mark': 'Mark the treated places now, so that nobody uses them by mistake.',
  'run.closed.record': 'See the record',
} satisfies Section;
