import type { TranslationOf } from '../../model/translation.ts';
import type { covers as english } from '../../english/covers/index.ts';

/** What is bought to cover with, and how it is cut. */
export const covers: TranslationOf<typeof english> = {
  'covers.title': ({ kitchen }) => `Cubiertas de ${kitchen}`,
  'covers.none': 'En este plan no se cubre ni se forra nada con rollo.',
  'covers.piece': ({ name, number, count }, f) =>
    `${f.say(name)}, ${f.number(number)} de ${f.number(count)}`,
  'covers.buy.rolls': ({ material, rolls, widthM, lengthM }, f) =>
    `${f.capital(f.say(material))}: ${f.number(rolls)} ${f.plural(rolls, { one: 'rollo', other: 'rollos' })} de ${f.tape(widthM, { decimals: 3, isShort: true, isBought: true, isFirst: true })} × ${f.tape(lengthM, { decimals: 3, isShort: true, isBought: true })}`,
  'covers.buy.metres': ({ material, metres, widthM }, f) =>
    `${f.capital(f.say(material))}: ${f.tape(metres, { isShort: true, isBought: true })} de un rollo de ${f.tape(widthM, { decimals: 3, isShort: true, isBought: true })} de ancho`,
  'covers.waste': ({ usedM, wasteShare }, f) =>
    `Se usan ${f.tape(usedM)}; sobra un ${f.number(wasteShare * 100)} %.`,
  'covers.roll': ({ number, usedM }, f) =>
    `Rollo ${f.number(number)}: corte ${f.tape(usedM)}, y después`,
  'covers.cut.across': ({ number, atM }, f) =>
    `Corte ${f.number(number)}: a lo ancho, a ${f.tape(atM)} del comienzo.`,
  'covers.cut.along': ({ number, atM, fromM, toM }, f) =>
    `Corte ${f.number(number)}: a lo largo, a ${f.tape(atM)} del borde izquierdo, de ${f.tape(fromM, { isFirst: true })} a ${f.tape(toM)}.`,
  'covers.comes-free': ({ name, widthM, lengthM, xM, yM }, f) =>
    `${f.say(name)}: ${f.tape(widthM, { isFirst: true })} × ${f.tape(lengthM)}, a ${f.tape(xM)} a lo ancho y a ${f.tape(yM)} a lo largo.`,
  'covers.part': ({ name, part }, f) => `${f.say(name)}, parte ${f.number(part)}`,
  'covers.cut-out': ({ widthM, lengthM }, f) =>
    `Recorte ${f.tape(widthM, { isFirst: true })} × ${f.tape(lengthM)} para lo que va dentro.`,
  'covers.trimmed': 'No es un rectángulo: corte en el lugar lo que sobresalga.',
  'covers.too-large': ({ name, widthM, lengthM }, f) =>
    `${f.say(name)}: ${f.tape(widthM, { isFirst: true })} × ${f.tape(lengthM)} no salen de ningún rollo habitual.`,
  'covers.unmeasured': ({ name }) => `${name}: mídalo; no se indicó su tamaño.`,
};
