import type { TranslationOf } from '../model/translation.ts';
import type { rehearse as english } from '../english/rehearse.ts';

/** The band over a run that is rehearsed. */
export const rehearse: TranslationOf<typeof english> = {
  'rehearse.title': 'Ensayo',
  'rehearse.about': 'No hay nada caliente, no se anota nada.',
  'rehearse.band': 'Ensayo: qué viene después, y cómo se reproduce',
  'rehearse.ahead.start-run': 'Siguiente toque: empieza el trabajo',
  'rehearse.ahead.start-step': ({ step }) => `Siguiente toque: empezar “${step}”`,
  'rehearse.ahead.confirm': ({ step }) => `Siguiente toque: hecho, “${step}”`,
  'rehearse.ahead.answer-gate': ({ step }) =>
    `Siguiente toque: sí a la pregunta antes de “${step}”`,
  'rehearse.ahead.acknowledge-timer': ({ step }) =>
    `Siguiente toque: se responde la alarma de “${step}”`,
  'rehearse.ahead.other': 'Siguiente toque: lo que pide la pantalla',
  'rehearse.ahead.wait': ({ wallMs, zone }, f) =>
    `Nada que tocar; el reloj corre hasta ${f.shortMoment(wallMs, zone)}`,
  'rehearse.ahead.still': 'Por sí solo ya no pasa nada más: toque lo que pide la pantalla.',
  'rehearse.ahead.over': 'Eso fue todo el trabajo. No se guarda nada.',
  'rehearse.pause': 'Pausa',
  'rehearse.play': 'Continuar',
  'rehearse.step': 'Siguiente',
  'rehearse.slower': 'Más lento',
  'rehearse.faster': 'Más rápido',
  'rehearse.speed': ({ speed }, f) =>
    `${f.number(speed, Number.isInteger(speed) ? 0 : Number.isInteger(speed * 2) ? 1 : 2)}×`,
  'rehearse.sound-on': 'Con sonido',
  'rehearse.sound-off': 'Sin sonido',
  'rehearse.leave': 'Salir',
};
