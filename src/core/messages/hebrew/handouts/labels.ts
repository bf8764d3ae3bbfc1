import type { TranslationOf } from '../../model/translation.ts';
import type { labels as english } from '../../english/handouts/labels.ts';

/** Labels to cut out, and what they cannot settle. */
export const labels: TranslationOf<typeof english> = {
  'handouts.labels.about':
    'גזרו לאורך הקווים המקווקווים. אות, מילה ודוגמה אומרות כל אחת מה זה: כל מדפסת מתאימה.',
  'handouts.labels.paper': 'נייר',
  'handouts.labels.paper.a4': 'A4',
  'handouts.labels.paper.letter': 'Letter',
  'handouts.labels.head': ({ kitchen, page, pages }, f) =>
    `${kitchen}: תוויות, דף ${f.number(page)} מתוך ${f.number(pages)}`,
  'handouts.labels.letter.meat': 'ב',
  'handouts.labels.letter.dairy': 'ח',
  'handouts.labels.letter.pareve': 'פ',
  'handouts.labels.resting': 'לא בשימוש',
  'handouts.labels.do-not-heat': 'אין לחמם עד',
  'handouts.labels.planned': ({ wallMs, zone }, f) =>
    `מתוכנן: ${f.shortMoment(wallMs, zone)}. כתבו את השעה שבמסך.`,
  'handouts.labels.write': 'כתבו את השעה שבמסך.',
  'handouts.labels.none': 'עוד אין מה לסמן.',
  'handouts.labels.undecided': ({ names }, f) =>
    `אין תווית, כי לא נאמר למה זה מיועד: ${f.list(names)}. אמרו זאת תחת "מטבח".`,
  'handouts.labels.clashes': 'מה שתוויות לא פותרות',
  'handouts.clash.only-one': ({ kind, name, marking }, f) =>
    `${f.say(kind)}, יחיד לבשרי ולחלבי: ${name} (${f.say(marking)}). שאלו את הרב איך שניהם משתמשים בו.`,
  'handouts.clash.none-for': ({ kind, names, marking }, f) =>
    `${f.say(kind)}: שום דבר לא סומן ${f.say(marking)}: ${f.list(names)}.`,
  'handouts.clash.one-range': ({ oven, cooktop }) =>
    `${oven} ו־${cooktop} הם מכשיר אחד, האחד לבשרי והאחר לחלבי: שאלו את הרב מה זה מצריך.`,
};
