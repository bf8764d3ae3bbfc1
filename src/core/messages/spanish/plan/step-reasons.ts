import type { Formatter } from '../../model/message.ts';
import type { TranslationOf } from '../../model/translation.ts';
import type { stepReasons as english } from '../../english/plan/step-reasons.ts';

function reportsText(reports: number, f: Formatter): string {
  return f.plural(reports, { one: 'un aviso', other: `${f.number(reports)} avisos` });
}

/** Why each step is done, and what earlier runs showed about it: told with the plan, not at the work. */
export const stepReasons: TranslationOf<typeof english> = {
  'steps.prepare.ask.reason': 'Lo que no tiene respuesta se hace del modo más estricto.',
  'steps.prepare.gather.reason':
    'Con un hervidor hirviendo en la mano no se puede ir a buscar nada.',
  'steps.prepare.alarms.reason': 'Vigilan lo que nadie puede oler.',
  'steps.prepare.clear.reason': 'Para limpiar y verter, las superficies deben estar despejadas.',
  'steps.clean.reason': 'La limpieza es lo que este elemento necesita.',
  'steps.clean.reason-before-rest':
    'Lo que queda pegado lo protegería de la kasherización, y la limpieza caliente cuenta como uso: va antes del reposo.',
  'steps.clean.reason-resting':
    'Lo que queda pegado lo protegería de la kasherización. Ya está en reposo, y la limpieza caliente lo empezaría de nuevo.',
  'steps.clean.reason-vessel': 'La cal y la grasa protegerían sus paredes.',
  'steps.unplug.reason': 'Agua y corriente no se juntan: se desenchufa antes de lavarlo.',
  'steps.thaw.reason': 'Lo que está congelado no se puede limpiar.',
  'steps.switch-on.reason': 'La comida aguanta en una nevera portátil solo unas horas.',
  'steps.rest.reason': ({ restHours }, f) =>
    `No debe haberse usado en caliente en las ${f.shortNumber(restHours)} horas anteriores a su kasherización (einó ben yomó).`,
  'steps.parts.reason': 'Lo que no se kasheriza se reemplaza o se cubre.',
  'steps.mark.reason': 'Para que nadie deshaga el trabajo por error.',
  'steps.boil.reason':
    'Se vierte del recipiente que estuvo al fuego (kli rishón), hirviendo a borbotones.',
  'steps.boil-over.reason':
    'Lo que kasheriza debe ser kosher: el agua hirviendo dentro y por encima del borde lo kasheriza (hagalá).',
  'steps.glow.cool-reason': 'Quema la mano mucho después de perder el rojo.',
  'steps.oven.cool-reason': 'Quema la mano mucho después de apagarlo.',
  'steps.experience.boil': ({ lengthS, reports }, f) =>
    `De su último trabajo: hierve en ${f.about(lengthS)} (${reportsText(reports, f)}).`,
  'steps.experience.glow': ({ lengthS, reports }, f) =>
    `De su último trabajo: está al rojo en ${f.about(lengthS)} (${reportsText(reports, f)}).`,
  'steps.experience.heat-up': ({ lengthS, reports }, f) =>
    `De su último trabajo: está al máximo en ${f.about(lengthS)} (${reportsText(reports, f)}).`,
  'steps.experience.pour': ({ lengthS, reports }, f) =>
    `De su último trabajo: este hervidor se vacía en ${f.about(lengthS)} (${reportsText(reports, f)}).`,
  'steps.reason-and-experience': ({ reason, experience }, f) =>
    `${f.say(reason)} ${f.say(experience)}`,
};
