import type { TranslationOf } from '../../model/translation.ts';
import type { deadlines as english } from '../../english/custom/deadlines.ts';

/** By when a kitchen for Passover is purged; an open run says it too. */
export const deadlines: TranslationOf<typeof english> = {
  'custom.deadline.before-eve': 'Fin de la kasherización antes de la víspera de Pésaj',
  'custom.deadline.before-leaven': ({ marginH }, f) =>
    `Fin de la kasherización, ${f.number(marginH)} h antes de la quinta hora`,
  'custom.deadline.candles': 'encendido de velas',
  'custom.deadline.asks':
    'Ya pasó la cuarta hora. El agua todavía kasheriza hasta el encendido de velas, con más cuidado: lo que se kasheriza y la olla reposaron 24 horas, y la olla se kasheriza antes y otra vez después. Pregunte a su rabino antes de seguir.',
  'custom.deadline.asks-friday':
    'Ya pasó la cuarta hora del viernes. Hoy el jametz todavía está permitido: pregunte a su rabino si sigue como antes hasta el encendido de velas.',
};
