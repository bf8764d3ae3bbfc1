import type { partNames as english } from '../../english/steps/parts.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** What the parts of fixtures are called. */
export const partNames: TranslationOf<typeof english> = {
  'steps.part.racks': 'grilles',
  'steps.part.side-rails': 'supports latéraux',
  'steps.part.trays': 'plaques de four',
  'steps.part.door-rim': 'bord de la porte',
  'steps.part.grates': 'supports de casseroles',
  'steps.part.caps': 'chapeaux de brûleurs',
  'steps.part.drip-bowls': 'coupelles',
  'steps.part.cooktop-surface': 'surface autour des foyers',
  'steps.part.knobs': 'manettes',
  'steps.part.hood-filter': 'filtre',
  'steps.part.strainer': 'panier de bonde',
  'steps.part.aerator': 'mousseur du robinet',
  'steps.part.overflow': 'trop-plein',
  'steps.part.sprayer-hose': 'douchette et son flexible',
  'steps.part.instant-hot-tap': 'robinet d’eau bouillante',
  'steps.part.disposer': 'collerette du broyeur',
  'steps.part.plate': 'plateau de verre',
  'steps.part.plate-ring': 'anneau sous le plateau',
};
