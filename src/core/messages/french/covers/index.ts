import type { covers as english } from '../../english/covers/index.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Metres to the centimetre, as a tape measure is read. */
const CM = 2;

/** What is bought to cover with, and how it is cut. */
export const covers: TranslationOf<typeof english> = {
  'covers.title': ({ kitchen }) => `Couvertures de ${kitchen}`,
  'covers.none': 'Rien dans ce plan n’est couvert ni tapissé depuis un rouleau.',
  'covers.piece': ({ name, number, count }, f) =>
    `${f.say(name)}, ${f.number(number)} sur ${f.number(count)}`,
  'covers.buy.rolls': ({ material, rolls, widthM, lengthM }, f) =>
    `${f.capital(f.say(material))} : ${f.number(rolls)} ${f.plural(rolls, { one: 'rouleau', other: 'rouleaux' })} de ${f.shortNumber(widthM, 3)} × ${f.shortNumber(lengthM, 3)} m`,
  'covers.buy.metres': ({ material, metres, widthM }, f) =>
    `${f.capital(f.say(material))} : ${f.shortNumber(metres, CM)} m d’un rouleau large de ${f.shortNumber(widthM, 3)} m`,
  'covers.waste': ({ usedM, wasteShare }, f) =>
    `${f.number(usedM, CM)} m servent, ${f.number(wasteShare * 100)} % en restent.`,
  'covers.roll': ({ number, usedM }, f) =>
    `Rouleau ${f.number(number)} : coupez ${f.number(usedM, CM)} m, puis`,
  'covers.cut.across': ({ number, atM }, f) =>
    `Coupe ${f.number(number)} : en travers, à ${f.number(atM, CM)} m du début.`,
  'covers.cut.along': ({ number, atM, fromM, toM }, f) =>
    `Coupe ${f.number(number)} : en long, à ${f.number(atM, CM)} m du bord gauche, de ${f.number(fromM, CM)} à ${f.number(toM, CM)} m.`,
  'covers.comes-free': ({ name, widthM, lengthM, xM, yM }, f) =>
    `${f.say(name)} : ${f.number(widthM, CM)} × ${f.number(lengthM, CM)} m, à ${f.number(xM, CM)} m en travers et ${f.number(yM, CM)} m en long.`,
  'covers.part': ({ name, part }, f) => `${f.say(name)}, partie ${f.number(part)}`,
  'covers.cut-out': ({ widthM, lengthM }, f) =>
    `Découpez ${f.number(widthM, CM)} × ${f.number(lengthM, CM)} m pour ce qui s’y encastre.`,
  'covers.trimmed': 'Ce n’est pas un rectangle : coupez sur place ce qui dépasse.',
  'covers.too-large': ({ name, widthM, lengthM }, f) =>
    `${f.say(name)} : ${f.number(widthM, CM)} × ${f.number(lengthM, CM)} m ne tiennent sur aucun rouleau usuel.`,
  'covers.unmeasured': ({ name }) => `${name} : mesurez-le ; sa taille n’est pas indiquée.`,
};
