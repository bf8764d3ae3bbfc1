import type { Section } from '../../model/message.ts';

/** By when a kitchen for Passover is purged; an open run says it too. */
export const deadlines = {
  'custom.deadline.before-eve': 'Purging ends before the eve of Passover',
  'custom.deadline.before-leaven': ({ marginH }: { marginH: number }, f) =>
    `Purging ends, ${f.number(marginH)} h before the fifth hour`,
  'custom.deadline.candles': 'candle lighting',
  'custom.deadline.asks':
    'It is past the fourth hour. Water still purges until candle lighting, with more care: what is purged and the pot both rested 24 hours, the pot purged first and again after. Ask your rabbi before you go on.',
  'custom.deadline.asks-friday':
    'It is past the fourth hour of the Friday. Leaven is still allowed today: ask your rabbi whether you go on as before until candle lighting.',
} satisfies Section;
