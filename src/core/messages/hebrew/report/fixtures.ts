import type { TranslationOf } from '../../model/translation.ts';
import type { fixtures as english } from '../../english/report/fixtures.ts';

import { after, ended, unended } from '../../english/report/phrases.ts';
import { attempt, range } from './phrases.ts';

/** What was done at each fixture, kettle by kettle. */
export const fixtures: TranslationOf<typeof english> = {
  'report.fixture': ({ name, designation }, f) => `${name} (${f.say(designation)})`,
  'report.method.none': 'שיטה: אין בתוכנית הזאת.',
  'report.method': ({ method, minutes, cover, term, reason }, f) =>
    `שיטה: ${f.say(method)}${minutes > 0 ? `, ${f.number(minutes)} דק׳` : ''}${cover ? ', ואחר כך כיסוי' : ''}${term ? ` (${f.say(term)})` : ''}. ${ended(f.say(reason))}`,
  'report.source': ({ source, state }, f) => `מקור: ${f.say(source)} (${f.say(state)}).`,
  'report.replaces-row': ({ by }, f) => `במקום שורת המנהג, לפי דברי: ${ended(f.say(by))}`,
  'report.open-when-planned': ({ ask, untilThen }, f) =>
    `פתוח בזמן התכנון: ${f.say(ask)} עד אז: ${ended(f.say(untilThen))}`,
  'report.said': ({ saidBy, saidOn, method, minutes, cover, text }, f) =>
    `תשובה של ${saidBy}, ${saidOn}: ${f.say(method)}${minutes > 0 ? `, ${f.number(minutes)} דק׳` : ''}${{ with: ', ואז לכסות', without: ', בלי כיסוי אחר כך', unsaid: '' }[cover]}. ${ended(text)}`.trim(),
  'report.result.all': 'תוצאה: כל השלבים שתוכננו בוצעו.',
  'report.result.part': 'תוצאה: רק חלק מהשלבים שתוכננו בוצעו.',
  'report.result.none': 'תוצאה: דבר ממה שתוכנן לא בוצע.',
  'report.result.nothing': 'תוצאה: דבר לא תוכנן.',
  'report.rest': 'השבתה',
  'report.hold': ({ name, fromWallMs, toWallMs, zone, provedS, neededS, addedS, onWordS }, f) => {
    const over = toWallMs > 0 ? `עד ${f.dateTime(toWallMs, zone)}` : 'לא נגמר';
    const added = addedS > 0 ? `, מהם ${f.duration(addedS, 'down')} נוספו ביד` : '';
    const word = onWordS > 0 ? `; מהם ${f.duration(onWordS, 'down')} לפי דברי אדם` : '';
    return `${f.say(name)}: ${f.dateTime(fromWallMs, zone)} ${over}, מוכח ${f.duration(provedS, 'down')} (נדרש ${f.duration(neededS, 'down')}${added}${word}).`;
  },
  'report.hold.short': 'קצר מהנדרש.',
  'report.hold.unproved': 'בספק: איש לא ראה מה קרה בפער.',
  'report.hold.dated': ({ text }) => `תוארך ביד: ${ended(text)}`,
  'report.kettles': ({ poured, planned, cold, voided }, f) => {
    const colds =
      poured === 0
        ? ''
        : cold === poured
          ? ', מים קרים אחרי כל אחד'
          : `, מים קרים אחרי ${f.number(cold)}`;
    const lost =
      voided === 0
        ? ''
        : f.plural(voided, {
            one: ' אחד שנשפך קודם לא נחשב.',
            other: ` ${f.number(voided)} שנשפכו קודם לא נחשבים.`,
          });
    return `קומקומים שנשפכו: ${f.number(poured)} מתוך ${f.number(planned)}${colds}.${lost}`;
  },
  'report.recheck': ({ wallMs, zone, text }, f) =>
    `ספק, ${f.dateTime(wallMs, zone)}: ${ended(text)}`,
  'report.recheck.withdrawn': ({ wallMs, zone }, f) =>
    `בוטל כטעות, ${f.dateTime(wallMs, zone)}; דבר אחר לא קרה מאז.`,
  'report.override': ({ wallMs, zone, ask, reason }, f) =>
    `אישור נעקף, ${f.dateTime(wallMs, zone)}: "${f.say(ask)}" נימוק: ${ended(reason)}`,
  'report.override-run': ({ wallMs, zone, ask, reason }, f) =>
    `${f.dateTime(wallMs, zone)}: "${f.say(ask)}" נימוק: ${ended(reason)}`,
  'report.fault': ({ wallMs, zone, name, text }, f) =>
    `תקלה, ${f.dateTime(wallMs, zone)}: ${f.say(name)}${after(f.say(text))}.`,
  'report.fault-at': ({ wallMs, zone, name, step, text }, f) =>
    `תקלה, ${f.dateTime(wallMs, zone)}: ${f.say(name)}, בשלב "${f.say(step)}"${after(f.say(text))}.`,
  'report.fault.not-cleared': 'לא דווח שתוקן.',
  'report.fault.cleared': ({ wallMs, zone }, f) => `תוקן ב${f.dateTime(wallMs, zone)}.`,
  'report.cooling.open': 'עוד לא נאמר איך הסתיים הקירור.',
  'report.cooling.clock': 'שעון הקירור',
  'report.cooling.cooled': ({ wallMs, zone, cooledS }, f) =>
    `קורר וכוסה, לפי דברי אדם ב${f.dateTime(wallMs, zone)}: נראו ${f.duration(cooledS, 'down')} של קירור.`,
  'report.cooling.taken-over': ({ wallMs, zone, cooledS }, f) =>
    `רופא או אמבולנס קיבל את הטיפול ב${f.dateTime(wallMs, zone)}, אחרי שנראו ${f.duration(cooledS, 'down')} של קירור.`,
  'report.cooling.mistake': ({ wallMs, zone, cooledS }, f) =>
    `הופעל בטעות, איש לא נכווה: נאמר ב${f.dateTime(wallMs, zone)}, אחרי ${f.duration(cooledS, 'down')}.`,
  'report.steps': 'שלבים:',
  'report.step': ({ step, attempt, by }, f) =>
    `${unended(f.say(step))}: ${f.say(attempt)}${by.length === 0 ? '' : ` בידי ${f.list(by.map((one) => f.say(one)))}.`}`,
  'report.step.void': ({ attempt, because }, f) =>
    `לא נחשב: ${f.say(attempt)} נעשה שוב כי: ${ended(f.say(because))}`,
  'report.step.tried': ({ wallMs, zone, said }, f) =>
    `נוסה ביד, ${f.dateTime(wallMs, zone)}: ${ended(f.say(said))}`,
  'report.step.broke-off': ({ wallMs, zone, stage, because }, f) =>
    `נפסק, ${f.dateTime(wallMs, zone)}: "${f.say(stage)}" ${ended(f.say(because))}`,
  'report.step.proved': ({ provedS, neededS }, f) =>
    `מוכח ${f.duration(provedS, 'down')} מתוך ${f.duration(neededS, 'down')}.`,
  'report.attempt': ({ outcome, reason, safe }, f) =>
    attempt(f.say(outcome), '', f.say(reason), safe),
  'report.attempt.since': ({ outcome, wallMs, zone, reason, safe }, f) =>
    attempt(f.say(outcome), `, מאז ${f.dateTime(wallMs, zone)}`, f.say(reason), safe),
  'report.attempt.from-to': ({ outcome, reason, safe, ...times }, f) =>
    attempt(f.say(outcome), `, ${range(times, f)}`, f.say(reason), safe),
  'report.outcome.done': 'בוצע',
  'report.outcome.skipped': 'הושמט',
  'report.outcome.failed': 'נכשל',
  'report.outcome.stopped': 'נעצר',
  'report.outcome.not-run': 'לא התחיל',
  'report.outcome.open': 'התחיל, לא נגמר',
  'report.outcome.waiting': 'לא התחיל',
  'report.outcome.void': 'נקטע',
  'report.not-done': ({ step, outcome }, f) => `${unended(f.say(step))}: ${f.say(outcome)}.`,
  'report.not-done-at': ({ fixture, step, outcome }, f) =>
    `${fixture}: ${unended(f.say(step))}: ${f.say(outcome)}.`,

  'report.missing.not-purged': ({ step }, f) => `לא הוכשר: ${unended(f.say(step))}.`,
  'report.missing.left-out': ({ step }, f) => `הושמט: ${unended(f.say(step))}.`,
};
