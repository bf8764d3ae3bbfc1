import type { deadlines as english } from '../../english/custom/deadlines.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** By when a kitchen for Passover is purged; an open run says it too. */
export const deadlines: TranslationOf<typeof english> = {
  'custom.deadline.before-eve': 'La cachérisation finit avant la veille de Pessah',
  'custom.deadline.before-leaven': ({ marginH }, f) =>
    `La cachérisation finit, ${f.number(marginH)} h avant la cinquième heure`,
  'custom.deadline.candles': 'allumage des bougies',
  'custom.deadline.asks':
    'La quatrième heure est passée. L’eau cachérise encore jusqu’à l’allumage, avec plus de soin : l’ustensile et la marmite ont reposé 24 heures, la marmite est cachérisée avant et à nouveau après. Demandez à votre rabbin avant de continuer.',
  'custom.deadline.asks-friday':
    'La quatrième heure du vendredi est passée. Le hamets est encore permis aujourd’hui : demandez à votre rabbin si vous continuez comme avant jusqu’à l’allumage.',
};
