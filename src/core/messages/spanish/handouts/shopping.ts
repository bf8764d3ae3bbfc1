import type { TranslationOf } from '../../model/translation.ts';
import type { shopping as english } from '../../english/handouts/shopping.ts';

/** What to buy and gather, product by product. */
export const shopping: TranslationOf<typeof english> = {
  'handouts.shopping.title': ({ kitchen }) => `Para comprar y reunir: ${kitchen}`,
  'handouts.shopping.about':
    'Una línea por producto, con todo aquello para lo que sirve. Las marcas se guardan para esta cocina; al enviar se omite lo marcado.',
  'handouts.shopping.item': ({ name, amount }, f) => `${f.say(name)}: ${f.say(amount)}`,
  'handouts.shopping.borrow': 'se puede pedir prestado',
  'handouts.shopping.wait': 'pregunte antes: una respuesta puede hacerlo innecesario',
  'handouts.shopping.only-if-said': 'solo si lo dice su rabino',
  'handouts.shopping.group.water': 'Para el agua',
  'handouts.shopping.group.hands': 'Para las manos',
  'handouts.shopping.group.room': 'Para el local',
  'handouts.shopping.group.cleaning': 'Para limpiar',
  'handouts.shopping.group.covers': 'Cubiertas y forros',
  'handouts.shopping.group.parts': 'Piezas nuevas',
  'handouts.shopping.group.marks': 'Para marcar',
  'handouts.shopping.sets': ({ sets }, f) =>
    `${f.number(sets)} ${f.plural(sets, { one: 'juego', other: 'juegos' })}`,
  'handouts.shopping.part-why': ({ fixtures }, f) =>
    `Para ${f.list(fixtures)}: las piezas viejas no se kasherizan. Mídalas antes.`,
  'handouts.shopping.pot': 'Olla solo para kasherizar',
  'handouts.shopping.pot-size': ({ leastPotL }, f) =>
    `de al menos ${f.measure(leastPotL, 'L', 0, 'up')}`,
  'handouts.shopping.left': ({ left, all }, f) =>
    f.plural(left, {
      one: `Falta 1 de ${f.number(all)}`,
      other: `Faltan ${f.number(left)} de ${f.number(all)}`,
    }),
  'handouts.shopping.all-there': 'Está todo.',
};
