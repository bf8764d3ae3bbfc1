import type { TranslationOf } from '../../model/translation.ts';
import type { covers as english } from '../../english/covers/index.ts';

/** Metres to the centimetre, as a tape measure is read. */
const CM = 2;

/** What is bought to cover with, and how it is cut. */
export const covers: TranslationOf<typeof english> = {
  'covers.title': ({ kitchen }) => `Cubiertas de ${kitchen}`,
  'covers.none': 'En este plan no se cubre ni se forra nada con rollo.',
  'covers.piece': ({ name, number, count }, f) =>
    `${f.say(name)}, ${f.number(number)} de ${f.number(count)}`,
  'covers.buy.rolls': ({ material, rolls, widthM, lengthM }, f) =>
    `${f.capital(f.say(material))}: ${f.number(rolls)} ${f.plural(rolls, { one: 'rollo', other: 'rollos' })} de ${f.shortNumber(widthM, 3)} × ${f.shortNumber(lengthM, 3)} m`,
  'covers.buy.metres': ({ material, metres, widthM }, f) =>
    `${f.capital(f.say(material))}: ${f.shortNumber(metres, CM)} m de un rollo de ${f.shortNumber(widthM, 3)} m de ancho`,
  'covers.waste': ({ usedM, wasteShare }, f) =>
    `Se usan ${f.number(usedM, CM)} m; sobra un ${f.number(wasteShare * 100)} %.`,
  'covers.roll': ({ number, usedM }, f) =>
    `Rollo ${f.number(number)}: corte ${f.number(usedM, CM)} m, y después`,
  'covers.cut.across': ({ number, atM }, f) =>
    `Corte ${f.number(number)}: a lo ancho, a ${f.number(atM, CM)} m del comienzo.`,
  'covers.cut.along': ({ number, atM, fromM, toM }, f) =>
    `Corte ${f.number(number)}: a lo largo, a ${f.number(atM, CM)} m del borde izquierdo, de ${f.number(fromM, CM)} a ${f.number(toM, CM)} m.`,
  'covers.comes-free': ({ name, widthM, lengthM, xM, yM }, f) =>
    `${f.say(name)}: ${f.number(widthM, CM)} × ${f.number(lengthM, CM)} m, a ${f.number(xM, CM)} m a lo ancho y a ${f.number(yM, CM)} m a lo largo.`,
  'covers.part': ({ name, part }, f) => `${f.say(name)}, parte ${f.number(part)}`,
  'covers.cut-out': ({ widthM, lengthM }, f) =>
    `Recorte ${f.number(widthM, CM)} × ${f.number(lengthM, CM)} m para lo que va dentro.`,
  'covers.trimmed': 'No es un rectángulo: corte en el lugar lo que sobresalga.',
  'covers.too-large': ({ name, widthM, lengthM }, f) =>
    `${f.say(name)}: ${f.number(widthM, CM)} × ${f.number(lengthM, CM)} m no salen de ningún rollo habitual.`,
  'covers.unmeasured': ({ name }) => `${name}: mídalo; no se indicó su tamaño.`,
};
