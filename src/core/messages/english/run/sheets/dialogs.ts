import type { Message, Section } from '../../../model/message.ts';

/** What lies over the run while a person answers, looks up, or tells something. */
export const dialogs = {
  'run.prepare.list': 'The list',
  'run.prepare.item': ({ name, amount }: { name: Message; amount: Message }, f) =>
    `${f.say(name)}: ${f.say(amount)}`,

  'run.glance.open': 'The kitchen, large',
  'run.glance.hot': ({ names }: { names: readonly Message[] }, f) =>
    `Hot: ${names.map((one) => f.say(one)).join(', ')}`,
  'run.glance.nothing-hot': 'Nothing is hot',
  'run.glance.rests-one': ({ name, until }: { name: Message; until: Message }, f) =>
    `${f.say(name)} rests until ${f.say(until)}`,
  'run.glance.rests': ({ count, until }: { count: number; until: Message }, f) =>
    `${f.number(count)} rest until ${f.say(until)}`,
  'run.glance.next': ({ step, from }: { step: Message; from: Message }, f) =>
    `Next, ${f.say(from)}: ${f.say(step)}`,
  'run.glance.next-now': ({ step }: { step: Message }, f) => `Next: ${f.say(step)}`,
  'run.glance.here': 'here',
  'run.glance.then': 'next',

  'run.fault.first': ({ fault }: { fault: Message }, f) => `${f.say(fault)}: do this first`,
  'run.fault.oven-shut': 'Keep the oven door shut: air feeds the fire.',
  'run.fault.policy.stop-run':
    'Telling it stops the run and leads you through making everything safe.',
  'run.fault.policy.suspend': 'Telling it halts the run until you say that it is put right.',
  'run.fault.policy.note': 'Telling it writes it down; the run goes on.',
  'run.fault.tell': ({ fault }: { fault: Message }, f) => `Tell it: ${f.say(fault).toLowerCase()}`,
  'run.fault.well': 'All is well',

  'run.happened.danger': 'Somebody is in danger',
  'run.happened.burned.about': '20 minutes of cooling start at once',
  'run.happened.here': 'At this step',
  'run.happened.other': 'Other',
  'run.happened.used': 'A fixture was used or touched',
  'run.happened.broke-off': ({ step }: { step: Message }, f) =>
    `It did not go on, after all: ${f.say(step)}`,
  'run.happened.skip': 'Skip this step',
  'run.happened.note': 'Write a note',
  'run.happened.what': 'What happened?',
  'run.happened.words-first': 'Write it in the field first: the record keeps it.',
  'run.happened.skip.why': 'Why is this step skipped? It goes into the record.',
  'run.happened.skip.press': 'Skip it',
  'run.happened.note.press': 'Keep the note',

  'run.used.which': 'Which one? Press it on the picture, or its name.',
  'run.used.words': 'In your own words, if you like: the record keeps them',
  'run.used.press': ({ name }: { name: Message }, f) => `Tell it: used – ${f.say(name)}`,
  'run.used.will-rest': ({ name, ready }: { name: Message; ready: Message }, f) =>
    `${f.say(name)}: its rest will begin again, ready ${f.say(ready)}.`,
  'run.used.rests': ({ name, ready }: { name: Message; ready: Message }, f) =>
    `${f.say(name)}: rests again, ready ${f.say(ready)}.`,
  'run.used.not-begun': ({ name }: { name: Message }, f) =>
    `${f.say(name)}: its rest has not begun yet, so nothing is lost. It is written down.`,
  'run.used.no-rest': ({ name }: { name: Message }, f) =>
    `${f.say(name)}: it has no rest; the record keeps that it was used.`,
  'run.used.put-away': ({ name }: { name: Message }, f) =>
    `${f.say(name)}: the plan does not purge it. The run halts until another is in its place, or it is said to be fit.`,
  'run.used.take-back': 'Undo: it was not used',
  'run.used.taken-back': ({ name }: { name: Message }, f) =>
    `${f.say(name)}: all stands as before. The record keeps both words.`,
  'run.used.done-again': ({ steps }: { steps: number }, f) =>
    `${f.number(steps)} ${f.plural(steps, { one: 'step that was done is', other: 'steps that were done are' })} done again.`,

  'run.gate.go-past.title': 'Go on without it',
  'run.gate.go-past.why': 'Why do you go on without it? It goes into the record.',
  'run.gate.go-past.press': 'Go on',
  'run.gate.no': 'Then it waits. See to it first; when it is so, press yes.',

  'run.ran-out.where': 'Where did the water run out?',
  'run.ran-out.one-more': 'One more kettle finishes these parts; the later ones move up.',
  'run.ran-out.back': 'Further back',
  'run.ran-out.on': 'Further on',
  'run.ran-out.share': ({ percent }: { percent: number }, f) =>
    `${f.number(percent)} % of this kettle’s lane`,
  'run.ran-out.about':
    'What is left is shared out anew by how far this kettle reached. Cold water over what was poured comes first, as always.',
  'run.ran-out.press': 'It ran out here',

  'run.all-steps': 'All steps',
  'run.all-steps.show': 'Show',
  'run.all-steps.blocked': ({ state, why }: { state: Message; why: Message }, f) =>
    `${f.say(state)}: ${f.say(why)}`,
  'run.step-state.waiting': 'waits',
  'run.step-state.ready': 'can begin',
  'run.step-state.active': 'in work',
  'run.step-state.checking': 'your word is needed',
  'run.step-state.stalled': 'stuck',
  'run.step-state.unwinding': 'being made safe',
  'run.step-state.settled': 'over',
  'run.outcome.done': 'done',
  'run.outcome.skipped': 'skipped',
  'run.outcome.failed': 'failed',
  'run.outcome.stopped': 'stopped',
  'run.outcome.not-run': 'not run',

  'run.choices.title': 'Pedal, voice and sounds',
  'run.choices.pedalActs': 'The pedal presses the main action',
  'run.choices.pedalActs.about':
    'Page down or right arrow; else it moves the stage to the next step. A pedal never answers a question that guards a step.',
  'run.choices.spoken': 'Prompts are spoken',
  'run.choices.spoken.about': 'By a voice that lives on this device; nothing is sent away.',
  'run.choices.soonSounds': 'Sound for “about now”',
  'run.choices.soonSounds.about': 'Kettles that should boil, burners that should glow.',
  'run.choices.doneSounds': 'Sound for a wait that is over',
  'run.choices.doneSounds.about': 'Rests, cool-downs, cycles.',
  'run.settings.version': ({ version }: { version: string }) => `Version of this app: ${version}`,
  'run.choices.always': 'What must be answered, and what is a hazard, sounds always.',
  'run.choices.say-again': 'Say the last prompt again',
  'run.choices.language': 'Language',
  'run.choices.voice.asking': 'Looking for a voice…',
  'run.choices.voice.ready': 'A voice of this device speaks.',
  'run.choices.voice.no-voice':
    'This device has no English voice that works without a network: nothing is spoken. One can be added in the device’s settings for speech.',
  'run.choices.voice.failed': ({ why }: { why: string }) =>
    `The voice could not be started: nothing is spoken. Reload the page when nothing is hot. (${why})`,
  'run.keys': 'Keys',
  'run.keys.main': 'Space, Enter',
  'run.keys.main.does': 'main action',
  'run.keys.forward': 'Page down, right arrow',
  'run.keys.forward.does': 'next step on the stage (or main action, as set above)',
  'run.keys.back': 'Page up, left arrow',
  'run.keys.back.does': 'step before',
  'run.keys.tab': 'Tab, then Enter',
  'run.keys.tab.does': 'every other button, and every question that guards a step',
  'run.keys.stop': 'S, or Escape when nothing lies on top',
  'run.keys.stop.does': 'Stop – make safe',
  'run.keys.repeat': 'R',
  'run.keys.repeat.does': 'say the last prompt again',
  'run.keys.escape': 'Escape',
  'run.keys.escape.does': 'close what lies on top',
} satisfies Section;
