import type { TranslationOf } from '../../model/translation.ts';
import type { covers as english } from '../../english/covers/index.ts';

/** What is bought to cover with, and how it is cut. */
export const covers: TranslationOf<typeof english> = {
  'covers.title': ({ kitchen }) => `כיסויים: ${kitchen}`,
  'covers.none': 'שום דבר בתוכנית לא מכוסה או מרופד מגליל.',
  'covers.piece': ({ name, number, count }, f) =>
    `${f.say(name)}, ${f.number(number)} מתוך ${f.number(count)}`,
  'covers.buy.rolls': ({ material, rolls, widthM, lengthM }, f) =>
    `${f.say(material)}: ${f.plural(rolls, { one: 'גליל אחד', two: 'שני גלילים', other: `${f.number(rolls)} גלילים` })} של ${f.tape(widthM, { decimals: 3, isShort: true, isBought: true, isFirst: true })} על ${f.tape(lengthM, { decimals: 3, isShort: true, isBought: true })}`,
  'covers.buy.metres': ({ material, metres, widthM }, f) =>
    `${f.say(material)}: ${f.tape(metres, { isShort: true, isBought: true })} מגליל ברוחב ${f.tape(widthM, { decimals: 3, isShort: true, isBought: true })}`,
  'covers.waste': ({ usedM, wasteShare }, f) =>
    `נדרשים ${f.tape(usedM)}, ${f.number(wasteShare * 100)}% מהם פחת.`,
  'covers.roll': ({ number, usedM }, f) => `גליל ${f.number(number)}: חתכו ${f.tape(usedM)}, ואז`,
  'covers.cut.across': ({ number, atM }, f) =>
    `חיתוך ${f.number(number)}: לרוחב, ${f.tape(atM)} מתחילת הגליל.`,
  'covers.cut.along': ({ number, atM, fromM, toM }, f) =>
    `חיתוך ${f.number(number)}: לאורך, ${f.tape(atM)} מהשוליים השמאליים (העליונים בציור), מ־${f.tape(fromM, { isFirst: true })} עד ${f.tape(toM)}.`,
  'covers.comes-free': ({ name, widthM, lengthM, xM, yM }, f) =>
    `${f.say(name)}: ${f.tape(widthM, { isFirst: true })} על ${f.tape(lengthM)}, במרחק ${f.tape(xM)} לרוחב ו־${f.tape(yM)} לאורך.`,
  'covers.part': ({ name, part }, f) => `${f.say(name)}, חלק ${f.number(part)}`,
  'covers.cut-out': ({ widthM, lengthM }, f) =>
    `גזרו פתח ${f.tape(widthM, { isFirst: true })} על ${f.tape(lengthM)} למה שעומד בו.`,
  'covers.trimmed': 'אין זה מלבן: גזרו במקום את מה שבולט.',
  'covers.too-large': ({ name, widthM, lengthM }, f) =>
    `${f.say(name)}: ${f.tape(widthM, { isFirst: true })} על ${f.tape(lengthM)} לא נכנסים בגליל מקובל.`,
  'covers.unmeasured': ({ name }) => `${name}: מדדו אותו; מידותיו לא נמסרו.`,
};
