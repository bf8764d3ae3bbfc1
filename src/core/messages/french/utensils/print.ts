import type { print as english } from '../../english/utensils/print.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** How the utensils are told in print. */
export const print: TranslationOf<typeof english> = {
  'utensils.title': ({ kitchen }) => `Ustensiles de ${kitchen}`,
  'utensils.none': 'Aucun ustensile n’est indiqué dans cette cuisine.',
  'utensils.section.methods': 'Ce qui est fait de chacun',
  'utensils.section.questions': 'À demander ou à regarder',
  'utensils.section.rules': 'Comment faire',
  'utensils.section.batches': 'Dans la marmite',
  'utensils.section.put-away': 'À ranger ou remplacer',
  'utensils.section.mikveh': 'Ensuite au mikvé',

  'utensils.count': ({ count, name }, f) => `${f.number(count)} × ${f.say(name)}`,
  'utensils.line': ({ what, method, term }, f) =>
    `${f.say(what)} : ${f.say(method)}${term === '' ? '' : ` (${term})`}.`,
  'utensils.why': ({ reason, source, state }, f) =>
    `${f.say(reason)} [${f.say(source)} ; ${f.say(state)}]`,
  'utensils.use-assumed': 'Usage non indiqué : pris comme l’usage habituel.',
  'utensils.question': ({ what, ask }, f) => `${f.say(what)} : ${f.say(ask)}`,
  'utensils.answers': ({ answers }, f) => answers.map((answer) => f.say(answer)).join(' / '),
  'utensils.rule': ({ text, source }, f) => `${f.say(text)} [${f.say(source)}]`,

  'utensils.pot': ({ name, volumeL, boilingC, firstS }, f) =>
    `${f.say(name)}, ${f.shortMeasure(volumeL, 'L')} ; ici l’eau bout à ${f.measure(boilingC, '°C', 1)}, après ${f.about(firstS.typical)}.`,
  'utensils.no-pot':
    'Aucune marmite sur un foyer n’est indiquée qui fasse bouillir l’eau pour cela : empruntez ou achetez-en une réservée à la cachérisation.',
  'utensils.unfit': ({ what, leastPotL }, f) =>
    `${f.say(what)} : n’y tient pas sous l’eau, même par moitiés. Il faut une marmite d’environ ${f.measure(leastPotL, 'L', 0, 'up')}.`,
  'utensils.pot-needed': ({ what, leastPotL }, f) =>
    `${f.say(what)} : une marmite d’au moins ${f.measure(leastPotL, 'L', 0, 'up')}.`,
  'utensils.boil-over': ({ what, leastPotL }, f) =>
    `${f.say(what)} : n’y tient pas sous l’eau. Remplissez à ras bord, faites bouillir et déborder. Si l’extérieur a touché des aliments chauds, il faut une marmite d’environ ${f.measure(leastPotL, 'L', 0, 'up')}.`,
  'utensils.fresh-water':
    'Jetez l’eau, cachérisez à nouveau la marmite, faites bouillir de l’eau neuve.',
  'utensils.batch': ({ number, group, items, fillL }, f) =>
    `Lot ${f.number(number)}, ${f.say(group)} : ${f.list(items.map((item) => f.say(item)))}. Remplissez à ${f.fill(fillL)}.`,
  'utensils.batch.tongs': ({ dips }, f) =>
    `Un par un à la pince : dessous, dehors, tourné, dessous encore (${f.number(dips)} trempages).`,
  'utensils.batch.net': 'En vrac dans un filet, secoué sous l’eau pour qu’elle aille partout.',
  'utensils.batch.halves': ({ dips }, f) =>
    `Un par un, tenu par un bout : une moitié un peu au-delà du milieu, puis l’autre (${f.number(dips)} trempages).`,
  'utensils.batch.wait': ({ mixedC, recoverS }, f) =>
    `L’eau tombe à environ ${f.measure(mixedC.typical, '°C', 1)} ; elle bout de nouveau après ${f.about(recoverS.typical)}. Attendez-le, les objets sous l’eau.`,
};
