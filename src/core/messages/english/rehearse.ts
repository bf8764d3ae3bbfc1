import type { Section } from '../model/message.ts';

/** The band over a run that is rehearsed. */
export const rehearse = {
  'rehearse.title': 'Rehearsal',
  'rehearse.about': 'Nothing is hot, nothing is written down.',
  'rehearse.band': 'Rehearsal: what comes next, and how it is played',
  'rehearse.ahead.start-run': 'Next press: the run begins',
  'rehearse.ahead.start-step': ({ step }: { step: string }) => `Next press: begin “${step}”`,
  'rehearse.ahead.confirm': ({ step }: { step: string }) => `Next press: done, “${step}”`,
  'rehearse.ahead.answer-gate': ({ step }: { step: string }) =>
    `Next press: yes to the question before “${step}”`,
  'rehearse.ahead.acknowledge-timer': ({ step }: { step: string }) =>
    `Next press: the alarm of “${step}” is answered`,
  'rehearse.ahead.other': 'Next press: what the screen asks for',
  'rehearse.ahead.wait': ({ wallMs, zone }: { wallMs: number; zone: string }, f) =>
    `Nothing to press; the clock runs to ${f.shortMoment(wallMs, zone)}`,
  'rehearse.ahead.still': 'Nothing more happens by itself: press what the screen asks for.',
  'rehearse.ahead.over': 'That was the whole run. Nothing of it is kept.',
  'rehearse.pause': 'Pause',
  'rehearse.play': 'Go on',
  'rehearse.step': 'Next',
  'rehearse.slower': 'Slower',
  'rehearse.faster': 'Faster',
  'rehearse.speed': ({ speed }: { speed: number }, f) =>
    `${f.number(speed, Number.isInteger(speed) ? 0 : Number.isInteger(speed * 2) ? 1 : 2)}×`,
  'rehearse.sound-on': 'Sound on',
  'rehearse.sound-off': 'Sound off',
  'rehearse.leave': 'Leave',
} satisfies Section;
