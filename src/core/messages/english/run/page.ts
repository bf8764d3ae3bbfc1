import type { Message, Section } from '../../model/message.ts';

type Progress = { done: number; of: number };

/** Round the step: what the device promises, and what else can be pressed. */
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
} satisfies Section;
