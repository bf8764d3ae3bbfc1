import type { TranslationOf } from '../../model/translation.ts';
import type { words as english } from '../../english/utensils/words.ts';

/** Kinds of utensils, and what is done with them. */
export const words: TranslationOf<typeof english> = {
  'utensils.kind-for': ({ kind, designation }, f) => `${f.say(kind)} (${f.say(designation)})`,
  'utensils.kind.pot': 'Ollas',
  'utensils.kind.lid': 'Tapas',
  'utensils.kind.pan': 'Sartenes',
  'utensils.kind.tray': 'Bandejas de horno',
  'utensils.kind.rack': 'Rejillas y parrillas',
  'utensils.kind.cutlery': 'Cubiertos',
  'utensils.kind.knife': 'Cuchillos',
  'utensils.kind.ladle': 'Cucharones y espátulas',
  'utensils.kind.wooden-spoon': 'Cucharas de madera',
  'utensils.kind.board': 'Tablas',
  'utensils.kind.plate': 'Platos y cuencos',
  'utensils.kind.mug': 'Tazas',
  'utensils.kind.glass': 'Vasos',
  'utensils.kind.silver': 'Plata',
  'utensils.kind.sieve': 'Coladores y ralladores',
  'utensils.kind.gadget': 'Utensilios con mecanismo',

  'utensils.method.heat':
    'Calentar hasta que esté al rojo, o con un ciclo completo de autolimpieza',
  'utensils.method.light-heat': 'Calentar hasta que la paja se chamusque por el otro lado',
  'utensils.method.immerse': 'Sumergir en agua hirviendo',
  'utensils.method.soak': 'Remojar en agua fría',
  'utensils.method.clean': 'Frotar y enjuagar',
  'utensils.method.put-away': 'Apartar o reemplazar',

  'utensils.answer.heat': 'Solo con calor, al rojo.',
  'utensils.answer.light-heat': 'Con calor ligero.',
  'utensils.answer.immerse': 'En agua hirviendo.',
  'utensils.answer.soak': 'Remojando tres días.',
  'utensils.answer.clean': 'Basta lavar.',
  'utensils.answer.put-away': 'No se kasheriza.',

  'utensils.rule.rest':
    'Lávelo, y después no lo use para nada caliente durante 24 horas. Lo que no está limpio no se kasheriza.',
  'utensils.rule.light-heat-test':
    'El calor ligero basta cuando se chamusca paja o papel puesto por el otro lado. Manténgalo lejos de mangos de plástico.',
  'utensils.rule.soak':
    'Remójelo bajo agua fría 24 horas, tire el agua y llene otra vez: tres veces.',
  'utensils.rule.plain-water':
    'Agua sola, sin añadir nada. Cámbiela cuando se ponga espesa o turbia.',
  'utensils.rule.pot-first':
    'La olla se kasheriza antes de kasherizar nada, y otra vez después de la última tanda.',
  'utensils.rule.boil-over':
    'Una olla queda kasherizada cuando, llena hasta el borde, rebosa hirviendo: con el quemador apagado, baje despacio un acero limpio y caliente para que suba el agua. Ninguna piedra: puede estallar.',
  'utensils.rule.bubbling':
    'Sumerja solo mientras el agua hierve a borbotones. Se para cuando entra algo frío: déjelo dentro hasta que hierva de nuevo.',
  'utensils.rule.tongs':
    'Donde sujetan las pinzas no llega el agua: suéltelo bajo el agua, o gírelo y sumérjalo otra vez.',
  'utensils.rule.parts':
    'Lo demasiado largo entra una mitad tras otra, la segunda hasta pasar un poco el centro.',
  'utensils.rule.apart': 'Cosas de carne y de lácteo nunca en la misma agua.',
  'utensils.rule.cold-rinse': 'Al agua fría en cuanto sale.',
  'utensils.rule.mikveh':
    'Después de kasherizar, los utensilios de comida de metal y vidrio que vienen de no judíos se sumergen en una mikve.',
};
