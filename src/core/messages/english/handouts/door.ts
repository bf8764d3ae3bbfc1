import type { Section } from '../../model/message.ts';

/** One page for the door of the kitchen: what to do when something happens later. */
export const door = {
  'handouts.door.title': ({ kitchen }: { kitchen: string }) =>
    `When something happens in the kitchen: ${kitchen}`,
  'handouts.door.about':
    'For everybody who uses the kitchen. It rules nothing: stop, leave it as it is, write it down, ask.',
  'handouts.door.danger': 'Somebody is in danger',
  'handouts.door.call': ({ number }: { number: string }) => `Call ${number}`,
  'handouts.door.call-local': 'Call the local emergency number:',
  'handouts.door.later': 'Something happened to a place or a thing',
  'handouts.door.case.hot': 'Something hot touched it that does not belong there',
  'handouts.door.case.hot.1': 'Stop using it. Nothing hot on it, no hot washing.',
  'handouts.door.case.hot.2': 'Let it cool, take the food away, wipe with cold water.',
  'handouts.door.case.hot.3': 'Put up a sign, write it down below, and ask.',
  'handouts.door.case.cold': 'Something cold touched it',
  'handouts.door.case.cold.1': 'Wipe it up and wash the place with cold water and soap.',
  'handouts.door.case.cold.2':
    'Ask if it was sharp (onion, garlic, pickles), or liquid that stood there a day: that counts as hot.',
  'handouts.door.case.mixed': 'A meat thing was used for dairy, or the other way round',
  'handouts.door.case.mixed.1': 'Set it aside, and what it touched hot. Do not wash them together.',
  'handouts.door.case.mixed.2': 'Keep the food apart and do not eat it yet.',
  'handouts.door.case.mixed.3':
    'Write down what it was, how hot, and when each was last used hot. Ask.',
  'handouts.door.case.resting': 'Something that rests was used hot',
  'handouts.door.case.resting.1':
    'Tell it on the tablet under “Something happened”: its rest begins again.',
  'handouts.door.case.cover': 'A cover is torn, lifted or wet beneath',
  'handouts.door.case.cover.1': 'Put nothing hot there until it is mended or replaced.',
  'handouts.door.case.cover.2': 'If something hot came under it, it is as the first case.',
  'handouts.door.case.crack': 'A crack, a chip or deep scratches show',
  'handouts.door.case.crack.1':
    'Cover the place and keep hot food off it. Ask before it is used again.',
  'handouts.door.case.leaven': 'Leaven is found in Passover',
  'handouts.door.case.leaven.1':
    'Do not eat it and do not touch it. Put a bowl over it and ask at once.',
  'handouts.door.case.leaven.2': 'What it touched is not used until you have an answer.',
  'handouts.door.ask': 'We ask:',
  'handouts.door.phone': 'Telephone:',
  'handouts.door.log.when': 'When',
  'handouts.door.log.where': 'Which place or thing',
  'handouts.door.log.what': 'What, how hot, how long',
  'handouts.door.log.answer': 'Answer, and by whom',
} satisfies Section;
