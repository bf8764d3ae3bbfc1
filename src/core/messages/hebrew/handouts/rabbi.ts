import type { TranslationOf } from '../../model/translation.ts';
import type { rabbi as english } from '../../english/handouts/rabbi.ts';

/** One page for the rabbi: what is known of each thing he is asked about. */
export const rabbi: TranslationOf<typeof english> = {
  'handouts.rabbi.about':
    'כל שאלה פתוחה ומה שמסרתם על הדבר. כתבו בן כמה הוא; מה שהרב אומר נכנס לתוכנית תחת "לשאול".',
  'handouts.rabbi.facts': ({ facts }, f) => `${f.capital(facts.map(f.say).join('; '))}.`,
  'handouts.rabbi.age': 'גיל:',
  'handouts.rabbi.trying': 'מחשבים מה משנה כל תשובה…',
  'handouts.fact.part': ({ part }, f) => `על: ${f.say(part)}`,
  'handouts.fact.material-unknown': 'חומר לא ידוע',
  'handouts.fact.condition.smooth': 'חלק',
  'handouts.fact.condition.scratched': 'שרוט',
  'handouts.fact.condition.cracked': 'סדוק',
  'handouts.fact.condition.porous': 'נקבובי',
  'handouts.fact.condition.unknown': 'השטח לא נבדק',
  'handouts.fact.top.metal': 'משטח מתכת',
  'handouts.fact.top.enamel': 'משטח אמייל',
  'handouts.fact.top.glass-ceramic': 'משטח זכוכית קרמית',
  'handouts.fact.cleaning.pyrolytic': 'ניקוי עצמי ששורף',
  'handouts.fact.cleaning.steam': 'ניקוי בקיטור',
  'handouts.fact.cleaning.catalytic': 'ציפוי קטליטי',
  'handouts.fact.cleaning.none': 'בלי ניקוי עצמי',
  'handouts.fact.varnished.yes': 'מצופה לכה',
  'handouts.fact.varnished.no': 'לא מצופה לכה',
  'handouts.fact.kneaded.yes': 'לשו עליו בצק ישירות',
  'handouts.fact.kneaded.no': 'לא לשו עליו בצק',
  'handouts.fact.hotFood.yes': 'הונח עליו אוכל חם ישירות',
  'handouts.fact.hotFood.no': 'לא הונח עליו אוכל חם',
  'handouts.fact.belongs': ({ to }, f) => `מיועד: ${f.say(to)}`,
  'handouts.fact.last-hot': ({ at }, f) => `שימוש חם אחרון: ${f.say(at)}`,
};
