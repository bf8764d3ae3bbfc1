import type { Message, Section } from '../../model/message.ts';
import { unended } from '../report/phrases.ts';

/** The current-step panel: sentence, digits, gate, checklist, and the one thing to press. */
export const step = {
  'run.now': 'What to do now',
  'run.whole-kitchen': 'Whole kitchen',
  'run.utensils': 'Utensils',
  'run.step.about': ({ phase }: { phase: Message }, f) => f.say(phase),
  'run.step.about-from': ({ phase, vessel }: { phase: Message; vessel: string }, f) =>
    `${f.say(phase)}, from: ${vessel}`,
  'run.step.attempt': ({ about, attempt }: { about: Message; attempt: number }, f) =>
    `${f.say(about)}, attempt ${f.number(attempt)}`,
  'run.step.cautions': 'Cautions',
  'run.step.more': ({ count }: { count: number }, f) =>
    `${f.number(count)} more ${f.plural(count, { one: 'line', other: 'lines' })}`,
  'run.step.next': ({ step, lengthS }: { step: Message; lengthS: number }, f) =>
    `Next: ${unended(f.say(step))} (${f.about(lengthS)})`,
  'run.step.faults': 'If something goes wrong',
  'run.step.fault': ({ fault }: { fault: Message }, f) => `${f.say(fault)}?`,

  'run.action.looked': 'I looked, all is well',
  'run.action.heard': 'I heard it',
  'run.action.boil-again': 'Boil this kettle again',
  'run.action.boil-again.reason': 'The boiled water waited too long.',
  'run.action.begin': 'Begin',
  'run.action.again': 'Do it again',
  'run.action.again.reason': 'It was stopped or failed before.',
  'run.action.yes': 'Yes, it is so',
  'run.action.no': 'No',
  'run.action.not-yet': 'Not yet',
  'run.action.waiting': 'Waiting',
  'run.action.timer-ends': 'The clock ends this by itself; you will be called.',
  'run.action.meanwhile': 'Meanwhile',
  'run.action.ticks-left': ({ count }: { count: number }, f) => `Done: ${f.number(count)} left`,

  'run.checklist.rest': 'The rest does not exist here',

  'run.gate': 'Before you begin',
  'run.gate.left': ({ count }: { count: number }, f) =>
    `Before you begin: ${f.number(count)} to answer`,
  'run.gate.settles': ({ left }: { left: Message }, f) => `Wait ${f.say(left)} more to be sure.`,
  'run.gate.water-waits': ({ left }: { left: Message }, f) =>
    `The boiled water waits: ${f.say(left)} left, then it boils again.`,
  'run.gate.go-past': 'It is not so, and I go on',

  'run.burners': 'Burners together with this one',
  'run.burners.light': 'to be lit',
  'run.burners.warm-up': 'warms up',
  'run.burners.hold': 'glows, unbroken',
  'run.burners.off': 'to be turned off',
  'run.burners.press': ({ burner, action }: { burner: string; action: Message }, f) =>
    `${burner}: ${f.say(action).toLowerCase()}`,
  'run.kettles': 'Kettles on the fire',
  'run.kettles.to-switch-on': 'to be switched on',
  'run.kettles.should-boil': 'should boil',
} satisfies Section;
