import type { Section } from '../../model/message.ts';

/** One page for the door of the kitchen: what to do when something happens later. */
export const door = {
  'sheets.door.title': ({ kitchen }: { kitchen: string }) =>
    `When something happens in the kitchen: ${kitchen}`,
  'sheets.door.about':
    'For everybody who uses the kitchen. It rules nothing: stop, leave it as it is, write it down, ask.',
  'sheets.door.danger': 'Somebody is in danger',
  'sheets.door.call': ({ number }: { number: string }) => `Call ${number}`,
  'sheets.door.call-local': 'Call the local emergency number:',
  'sheets.door.later': 'Something happened to a place or a thing',
  'sheets.door.case.hot': 'Something hot touched it that does not belong there',
  'sheets.door.case.hot.1': 'Stop using it. Nothing hot on it, no hot washing.',
  'sheets.door.case.hot.2': 'Let it cool, take the food away, wipe with cold water.',
  'sheets.door.case.hot.3': 'Put up a sign, write it down below, and ask.',
  'sheets.door.case.cold': 'Something cold touched it',
  'sheets.door.case.cold.1': 'Wipe it up and wash the place with cold water and soap.',
  'sheets.door.case.cold.2':
    'Ask if it was sharp (onion, garlic, pickles), or liquid that stood there a day: that counts as hot.',
  'sheets.door.case.mixed': 'A meat thing was used for dairy, or the other way round',
  'sheets.door.case.mixed.1': 'Set it aside, and what it touched hot. Do not wash them together.',
  'sheets.door.case.mixed.2': 'Keep the food apart and do not eat it yet.',
  'sheets.door.case.mixed.3':
    'Write down what it was, how hot, and when each was last used hot. Ask.',
  'sheets.door.case.resting': 'Something that rests was used hot',
  'sheets.door.case.resting.1':
    'Tell it on the tablet under “Something happened”: its rest begins again.',
  'sheets.door.case.cover': 'A cover is torn, lifted or wet beneath',
  'sheets.door.case.cover.1': 'Put nothing hot there until it is mended or replaced.',
  'sheets.door.case.cover.2': 'If something hot came under it, it is as the first case.',
  'sheets.door.case.crack': 'A crack, a chip or deep scratches show',
  'sheets.door.case.crack.1':
    'Cover the place and keep hot food off it. Ask before it is used again.',
  'sheets.door.case.leaven': 'Leaven is found in Passover',
  'sheets.door.case.leaven.1':
    'Do not eat it and do not touch it. Put a bowl over it and ask at once.',
  'sheets.door.case.leaven.2': 'What it touched is not used until you have an answer.',
  'sheets.door.ask': 'We ask:',
  'sheets.door.phone': 'Telephone:',
  'sheets.door.log.when': 'When',
  'sheets.door.log.where': 'Which place or thing',
  'sheets.door.log.what': 'What, how hot, how long',
  'sheets.door.log.answer': 'Answer, and by whom',
} satisfies Section;
