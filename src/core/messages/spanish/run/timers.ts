import type { TranslationOf } from '../../model/translation.ts';
import type { timers as english } from '../../english/run/timers.ts';

/** Timers beside the step in hand. */
export const timers: TranslationOf<typeof english> = {
  'run.timers': 'Relojes',
  'run.timers.none': 'No hay ningún otro reloj en marcha.',
  'run.timer.named': ({ name, label }, f) => `${f.say(name)}: ${f.say(label)}`,
  'run.timer.reading': ({ label, left }, f) => `${f.say(label)}: ${f.say(left)}`,
  'run.timer.calls': 'ahora',
  'run.timer.calls-here': ({ state }, f) => `${f.say(state)}: toque cuando lo haya oído`,
  'run.timer.frozen': 'en pausa',
  'run.timer.unproved': 'sin confirmar: responda la pregunta',
  'run.timer.void': 'no cuenta',
  'run.timer.closed': 'terminado',
  'run.timer.due': 'ahora',
  'run.timer.late': ({ ago }, f) => `venció hace ${f.say(ago)}, cuando no se podía avisar a nadie`,
  'run.timer.due-in-rest-day': ({ day, ago }, f) =>
    `venció durante ${f.say(day)}, hace ${f.say(ago)}`,
};
