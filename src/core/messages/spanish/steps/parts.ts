import type { TranslationOf } from '../../model/translation.ts';
import type { partNames as english } from '../../english/steps/parts.ts';

/** What the parts of fixtures are called. */
export const partNames: TranslationOf<typeof english> = {
  'steps.part.racks': 'rejillas',
  'steps.part.side-rails': 'guías laterales',
  'steps.part.trays': 'bandejas',
  'steps.part.door-rim': 'borde de la puerta',
  'steps.part.grates': 'parrillas',
  'steps.part.caps': 'tapas de los quemadores',
  'steps.part.drip-bowls': 'bandejas de goteo',
  'steps.part.cooktop-surface': 'superficie alrededor de los quemadores',
  'steps.part.knobs': 'perillas',
  'steps.part.hood-filter': 'filtro',
  'steps.part.strainer': 'rejilla del desagüe',
  'steps.part.aerator': 'aireador del grifo',
  'steps.part.overflow': 'rebosadero',
  'steps.part.sprayer-hose': 'ducha extraíble y su manguera',
  'steps.part.instant-hot-tap': 'grifo de agua caliente',
  'steps.part.disposer': 'goma antisalpicaduras del triturador',
  'steps.part.plate': 'plato de vidrio',
  'steps.part.plate-ring': 'aro bajo el plato',
};
