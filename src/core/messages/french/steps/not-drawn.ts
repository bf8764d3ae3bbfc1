import type { notDrawn as english } from '../../english/steps/not-drawn.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Why the lanes of a pour cannot be drawn: seldom, and so not among the first sentences of a run. */
export const notDrawn: TranslationOf<typeof english> = {
  'steps.pour.not-drawn.too-few-points': 'son contour a trop peu de coins',
  'steps.pour.not-drawn.not-a-number': 'un coin de son contour n’est pas un lieu',
  'steps.pour.not-drawn.too-large': 'il est plus grand qu’une pièce',
  'steps.pour.not-drawn.too-many-points': 'son contour a trop de coins',
  'steps.pour.not-drawn.too-fine': 'il est trop long pour des bandes si étroites',
  'steps.pour.not-drawn.no-area': 'son contour n’enferme rien',
  'steps.pour.not-drawn.all-cut-away': 'ses découpes n’en laissent rien',
  'steps.pour.not-drawn.no-such-edge': 'un bord arrière n’est aucun de ses bords',
  'steps.pour.not-drawn.swath-out-of-range': 'le jet est trop étroit ou trop large pour lui',
  'steps.pour.not-drawn.volume-out-of-range': 'il y faut trop peu d’eau, ou trop de bouilloires',
  'steps.pour.not-drawn.speed-out-of-range': 'la main serait trop lente ou trop rapide',
  'steps.pour.not-drawn.size-out-of-range': 'une cuve n’a pas une taille usuelle',
  'steps.pour.not-drawn.place-out-of-range': 'un emplacement dessus est en dehors',
  'steps.pour.not-drawn.arm-out-of-range':
    'la longueur de bras donnée est trop courte ou trop longue',
  'steps.pour.not-drawn.nowhere-to-stand': 'aucun côté n’est libre pour s’y tenir',
};
