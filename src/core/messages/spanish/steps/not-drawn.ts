import type { TranslationOf } from '../../model/translation.ts';
import type { notDrawn as english } from '../../english/steps/not-drawn.ts';

/** Why the lanes of a pour cannot be drawn: seldom, and so not among the first sentences of a run. */
export const notDrawn: TranslationOf<typeof english> = {
  'steps.pour.not-drawn.too-few-points': 'su contorno tiene muy pocas esquinas',
  'steps.pour.not-drawn.not-a-number': 'una esquina de su contorno no está en ningún lugar',
  'steps.pour.not-drawn.too-large': 'es más grande que una habitación',
  'steps.pour.not-drawn.too-many-points': 'su contorno tiene demasiadas esquinas',
  'steps.pour.not-drawn.too-fine': 'es demasiado largo para franjas tan estrechas',
  'steps.pour.not-drawn.no-area': 'su contorno no encierra nada',
  'steps.pour.not-drawn.all-cut-away': 'sus huecos no dejan nada',
  'steps.pour.not-drawn.no-such-edge': 'un borde trasero no es ninguno de sus bordes',
  'steps.pour.not-drawn.swath-out-of-range': 'el chorro es demasiado estrecho o ancho',
  'steps.pour.not-drawn.volume-out-of-range': 'lleva muy poca agua, o demasiados hervidores',
  'steps.pour.not-drawn.speed-out-of-range': 'la mano iría demasiado lenta o rápida',
  'steps.pour.not-drawn.size-out-of-range': 'un seno no tiene un tamaño habitual',
  'steps.pour.not-drawn.place-out-of-range': 'un lugar indicado queda fuera',
  'steps.pour.not-drawn.arm-out-of-range': 'el brazo indicado es demasiado corto o largo',
  'steps.pour.not-drawn.nowhere-to-stand': 'ningún lado está libre para ponerse',
};
