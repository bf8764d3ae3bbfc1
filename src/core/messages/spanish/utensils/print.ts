import type { TranslationOf } from '../../model/translation.ts';
import type { print as english } from '../../english/utensils/print.ts';

/** How the utensils are told in print. */
export const print: TranslationOf<typeof english> = {
  'utensils.title': ({ kitchen }) => `Utensilios de ${kitchen}`,
  'utensils.none': 'En esta cocina no hay utensilios indicados.',
  'utensils.section.methods': 'Qué se hace con cada uno',
  'utensils.section.questions': 'Por preguntar o por mirar',
  'utensils.section.rules': 'Cómo se hace',
  'utensils.section.batches': 'En la olla',
  'utensils.section.put-away': 'Apartar o reemplazar',
  'utensils.section.mikveh': 'Después, a la mikve',

  'utensils.count': ({ count, name }, f) => `${f.number(count)} × ${f.say(name)}`,
  'utensils.line': ({ what, method, term }, f) =>
    `${f.say(what)}: ${f.say(method)}${term === '' ? '' : ` (${term})`}.`,
  'utensils.why': ({ reason, source, state }, f) =>
    `${f.say(reason)} [${f.say(source)}; ${f.say(state)}]`,
  'utensils.use-assumed': 'No se indicó cómo se usó: se toma el uso habitual.',
  'utensils.question': ({ what, ask }, f) => `${f.say(what)}: ${f.say(ask)}`,
  'utensils.answers': ({ answers }, f) => answers.map((answer) => f.say(answer)).join(' / '),
  'utensils.rule': ({ text, source }, f) => `${f.say(text)} [${f.say(source)}]`,

  'utensils.pot': ({ name, volumeL, boilingC, firstS }, f) =>
    `${f.say(name)}, ${f.shortMeasure(volumeL, 'L')}; aquí el agua hierve a ${f.measure(boilingC, '°C', 1)}, en ${f.about(firstS.typical)}.`,
  'utensils.no-pot':
    'No hay indicada ninguna olla sobre un quemador que hierva agua para esto: pida prestada o compre una solo para kasherizar.',
  'utensils.unfit': ({ what, leastPotL }, f) =>
    `${f.say(what)}: no cabe bajo el agua, ni por mitades. Necesita una olla de unos ${f.measure(leastPotL, 'L', 0, 'up')}.`,
  'utensils.pot-needed': ({ what, leastPotL }, f) =>
    `${f.say(what)}: una olla de al menos ${f.measure(leastPotL, 'L', 0, 'up')}.`,
  'utensils.boil-over': ({ what, leastPotL }, f) =>
    `${f.say(what)}: no cabe bajo el agua. Llénelo hasta el borde, hiérvalo y deje que rebose; donde su exterior tocó comida caliente necesita una olla de unos ${f.measure(leastPotL, 'L', 0, 'up')}.`,
  'utensils.fresh-water': 'Tire el agua, kasherice otra vez la olla, hierva agua nueva.',
  'utensils.batch': ({ number, group, items, fillL }, f) =>
    `Tanda ${f.number(number)}, ${f.say(group)}: ${f.list(items.map((item) => f.say(item)))}. Llene ${f.fill(fillL)}.`,
  'utensils.batch.tongs': ({ dips }, f) =>
    `Uno por uno con pinzas: dentro, fuera, girar, dentro otra vez (${f.number(dips)} inmersiones).`,
  'utensils.batch.net': 'Sueltos en una red, agitada bajo el agua para que llegue a todas partes.',
  'utensils.batch.halves': ({ dips }, f) =>
    `Uno por uno, sujeto por un extremo: una mitad hasta pasar un poco el centro, después la otra (${f.number(dips)} inmersiones).`,
  'utensils.batch.wait': ({ mixedC, recoverS }, f) =>
    `El agua baja a unos ${f.measure(mixedC.typical, '°C', 1)}; vuelve a hervir en ${f.about(recoverS.typical)}. Espere hasta entonces con las cosas bajo el agua.`,
};
