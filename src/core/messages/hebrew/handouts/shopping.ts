import type { TranslationOf } from '../../model/translation.ts';
import type { shopping as english } from '../../english/handouts/shopping.ts';

/** What to buy and gather, product by product. */
export const shopping: TranslationOf<typeof english> = {
  'handouts.shopping.title': ({ kitchen }) => `לקנות ולאסוף: ${kitchen}`,
  'handouts.shopping.about':
    'שורה אחת למוצר, עם כל מה שהוא נועד לו. הסימונים נשמרים למטבח הזה; מה שנשלח משמיט את המסומן.',
  'handouts.shopping.item': ({ name, amount }, f) => `${f.say(name)}, ${f.say(amount)}`,
  'handouts.shopping.borrow': 'אפשר לקבל בהשאלה',
  'handouts.shopping.wait': 'שאלו קודם: ייתכן שאין צורך לקנות',
  'handouts.shopping.only-if-said': 'רק אם הרב אומר',
  'handouts.shopping.group.water': 'למים',
  'handouts.shopping.group.hands': 'לידיים',
  'handouts.shopping.group.room': 'לחדר',
  'handouts.shopping.group.cleaning': 'לניקוי',
  'handouts.shopping.group.covers': 'כיסויים וריפודים',
  'handouts.shopping.group.parts': 'חלקים חדשים',
  'handouts.shopping.group.marks': 'לסימון',
  'handouts.shopping.sets': ({ sets }, f) =>
    f.plural(sets, { one: 'ערכה אחת', two: 'שתי ערכות', other: `${f.number(sets)} ערכות` }),
  'handouts.shopping.part-why': ({ fixtures }, f) =>
    `עבור ${f.list(fixtures)}: הישנים לא מוכשרים. מדדו אותם קודם.`,
  'handouts.shopping.pot': 'סיר להכשרה בלבד',
  'handouts.shopping.pot-size': ({ leastPotL }, f) => `לפחות ${f.measure(leastPotL, 'L', 0, 'up')}`,
  'handouts.shopping.left': ({ left, all }, f) =>
    `${f.number(left)} מתוך ${f.number(all)} עוד חסרים`,
  'handouts.shopping.all-there': 'הכול כאן.',
};
