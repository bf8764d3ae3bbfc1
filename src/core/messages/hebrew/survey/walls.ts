import type { TranslationOf } from '../../model/translation.ts';
import type { walls as english } from '../../english/survey/walls.ts';

/** Walls, doors and windows, and one wall seen from the front. */
export const walls: TranslationOf<typeof english> = {
  'survey.face': 'מבט',
  'survey.face.above': 'מלמעלה',
  'survey.face.far': 'הקיר הרחוק',
  'survey.face.near': 'הקיר הקרוב',
  'survey.face.left': 'הקיר השמאלי',
  'survey.face.right': 'הקיר הימני',
  'survey.face.numbered': ({ wall, number }, f) => `${f.say(wall)} ${f.number(number)}`,
  'survey.face.push': ({ wall, length }, f) =>
    `להזיז את הקיר: ${f.say(wall)}, אורך ${f.say(length)}`,

  'survey.editor.keys': (_, f) =>
    `החיצים מזיזים ב־${f.measure(5, 'cm')}, ועם Shift משנים גודל. T מסובב, Delete מוציא, Enter עובר לשדות, Escape יוצא.`,
  'survey.editor.lengths': 'מידות',
  'survey.editor.names': 'שמות',
  'survey.editor.walls': 'קירות',

  'survey.front.label': ({ wall }, f) => `${f.say(wall)} במבט מלפנים`,
  'survey.front.spoken': ({ name, left, from, to }, f) =>
    `${name}, ${f.say(left)} מהקצה השמאלי, בגובה ${f.say(from)} עד ${f.say(to)} מעל הרצפה`,
  'survey.front.heights': ({ from, to }, f) => `${f.say(from)} עד ${f.say(to)}`,
  'survey.front.untold': 'קו מקווקו: לא נמסר הגובה, ולכן מצויר הגובה הרגיל.',
  'survey.front.unhung': 'עוד לא מצויר. לחצו כדי לשים על הקיר הזה:',

  'survey.opening.door': 'דלת',
  'survey.opening.door.tells': 'עם כיוון הפתיחה שלה',
  'survey.opening.window': 'חלון',
  'survey.opening.window.tells': 'מעל משטח או לא',
  'survey.opening.passage': 'מעבר',
  'survey.opening.passage.tells': 'פתח בלי דלת',
  'survey.opening.spoken': ({ name, wall, left, width }, f) =>
    `${f.say(name)}, ${f.say(wall)}, ${f.say(left)} מהקצה השמאלי שלו, רוחב ${f.say(width)}`,
  'survey.opening.width': 'רוחב',
  'survey.opening.from-left': 'מהקצה השמאלי של הקיר',
  'survey.opening.turn': 'לסובב את הדלת',
  'survey.offers.openings': 'בקירות',
  'survey.wall-place': 'על הקיר',
  'survey.heights.from': 'הקצה התחתון מעל הרצפה',
  'survey.heights.to': 'הקצה העליון מעל הרצפה',
  'survey.heights.hint': 'רק בשביל הציור.',

  'survey.done.walls': 'הקירות הוזזו',
  'survey.done.hung': ({ fixture }) => `הושם על הקיר: ${fixture}`,
  'survey.what.heights': 'גבהים',
  'survey.what.wall-place': 'מקום על הקיר',
};
