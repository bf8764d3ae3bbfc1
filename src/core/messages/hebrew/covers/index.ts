import type { TranslationOf } from '../../model/translation.ts';
import type { covers as english } from '../../english/covers/index.ts';

/** Metres to the centimetre, as a tape measure is read. */
const CM = 2;

/** What is bought to cover with, and how it is cut. */
export const covers: TranslationOf<typeof english> = {
  'covers.title': ({ kitchen }) => `כיסויים: ${kitchen}`,
  'covers.none': 'שום דבר בתוכנית לא מכוסה או מרופד מגליל.',
  'covers.piece': ({ name, number, count }, f) =>
    `${f.say(name)}, ${f.number(number)} מתוך ${f.number(count)}`,
  'covers.buy.rolls': ({ material, rolls, widthM, lengthM }, f) =>
    `${f.say(material)}: ${f.plural(rolls, { one: 'גליל אחד', two: 'שני גלילים', other: `${f.number(rolls)} גלילים` })} של ${f.shortNumber(widthM, 3)} על ${f.shortNumber(lengthM, 3)} מ׳`,
  'covers.buy.metres': ({ material, metres, widthM }, f) =>
    `${f.say(material)}: ${f.shortNumber(metres, CM)} מ׳ מגליל ברוחב ${f.shortNumber(widthM, 3)} מ׳`,
  'covers.waste': ({ usedM, wasteShare }, f) =>
    `נדרשים ${f.number(usedM, CM)} מ׳, ${f.number(wasteShare * 100)}% מהם נשארים.`,
  'covers.roll': ({ number, usedM }, f) =>
    `גליל ${f.number(number)}: חתכו ${f.number(usedM, CM)} מ׳, ואז`,
  'covers.cut.across': ({ number, atM }, f) =>
    `חיתוך ${f.number(number)}: לרוחב, ${f.number(atM, CM)} מ׳ מההתחלה.`,
  'covers.cut.along': ({ number, atM, fromM, toM }, f) =>
    `חיתוך ${f.number(number)}: לאורך, ${f.number(atM, CM)} מ׳ מהשוליים השמאליים, מ־${f.number(fromM, CM)} עד ${f.number(toM, CM)} מ׳.`,
  'covers.comes-free': ({ name, widthM, lengthM, xM, yM }, f) =>
    `${f.say(name)}: ${f.number(widthM, CM)} על ${f.number(lengthM, CM)} מ׳, במרחק ${f.number(xM, CM)} מ׳ לרוחב ו־${f.number(yM, CM)} מ׳ לאורך.`,
  'covers.part': ({ name, part }, f) => `${f.say(name)}, חלק ${f.number(part)}`,
  'covers.cut-out': ({ widthM, lengthM }, f) =>
    `גזרו פתח ${f.number(widthM, CM)} על ${f.number(lengthM, CM)} מ׳ למה שעומד בו.`,
  'covers.trimmed': 'אין זה מלבן: גזרו במקום את מה שבולט.',
  'covers.too-large': ({ name, widthM, lengthM }, f) =>
    `${f.say(name)}: ${f.number(widthM, CM)} על ${f.number(lengthM, CM)} מ׳ לא נכנסים בגליל מקובל.`,
  'covers.unmeasured': ({ name }) => `${name}: מדדו אותו; מידותיו לא נמסרו.`,
};
