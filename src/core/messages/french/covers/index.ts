import type { covers as english } from '../../english/covers/index.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** What is bought to cover with, and how it is cut. */
export const covers: TranslationOf<typeof english> = {
  'covers.title': ({ kitchen }) => `Couvertures de ${kitchen}`,
  'covers.none': 'Rien dans ce plan n’est couvert ni tapissé depuis un rouleau.',
  'covers.piece': ({ name, number, count }, f) =>
    `${f.say(name)}, ${f.number(number)} sur ${f.number(count)}`,
  'covers.buy.rolls': ({ material, rolls, widthM, lengthM }, f) =>
    `${f.capital(f.say(material))} : ${f.number(rolls)} ${f.plural(rolls, { one: 'rouleau', other: 'rouleaux' })} de ${f.tape(widthM, { decimals: 3, isShort: true, isBought: true, isFirst: true })} × ${f.tape(lengthM, { decimals: 3, isShort: true, isBought: true })}`,
  'covers.buy.metres': ({ material, metres, widthM }, f) =>
    `${f.capital(f.say(material))} : ${f.tape(metres, { isShort: true, isBought: true })} d’un rouleau large de ${f.tape(widthM, { decimals: 3, isShort: true, isBought: true })}`,
  'covers.waste': ({ usedM, wasteShare }, f) =>
    `${f.tape(usedM)} servent, ${f.number(wasteShare * 100)} % en restent.`,
  'covers.roll': ({ number, usedM }, f) =>
    `Rouleau ${f.number(number)} : coupez ${f.tape(usedM)}, puis`,
  'covers.cut.across': ({ number, atM }, f) =>
    `Coupe ${f.number(number)} : en travers, à ${f.tape(atM)} du début.`,
  'covers.cut.along': ({ number, atM, fromM, toM }, f) =>
    `Coupe ${f.number(number)} : en long, à ${f.tape(atM)} du bord gauche, de ${f.tape(fromM, { isFirst: true })} à ${f.tape(toM)}.`,
  'covers.comes-free': ({ name, widthM, lengthM, xM, yM }, f) =>
    `${f.say(name)} : ${f.tape(widthM, { isFirst: true })} × ${f.tape(lengthM)}, à ${f.tape(xM)} en travers et ${f.tape(yM)} en long.`,
  'covers.part': ({ name, part }, f) => `${f.say(name)}, partie ${f.number(part)}`,
  'covers.cut-out': ({ widthM, lengthM }, f) =>
    `Découpez ${f.tape(widthM, { isFirst: true })} × ${f.tape(lengthM)} pour ce qui s’y encastre.`,
  'covers.trimmed': 'Ce n’est pas un rectangle : coupez sur place ce qui dépasse.',
  'covers.too-large': ({ name, widthM, lengthM }, f) =>
    `${f.say(name)} : ${f.tape(widthM, { isFirst: true })} × ${f.tape(lengthM)} ne tiennent sur aucun rouleau usuel.`,
  'covers.unmeasured': ({ name }) => `${name} : mesurez-le ; sa taille n’est pas indiquée.`,
};
