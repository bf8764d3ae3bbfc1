import type { TranslationOf } from '../../model/translation.ts';
import type { step as english } from '../../english/run/step.ts';
import { unended } from '../report/phrases.ts';

/** The current-step panel: sentence, digits, gate, checklist, and the one thing to press. */
export const step: TranslationOf<typeof english> = {
  'run.now': 'Qué hacer ahora',
  'run.whole-kitchen': 'Toda la cocina',
  'run.utensils': 'Utensilios',
  'run.step.about': ({ phase }, f) => f.say(phase),
  'run.step.about-from': ({ phase, vessel }, f) => `${f.say(phase)}, con: ${vessel}`,
  'run.step.attempt': ({ about, attempt }, f) => `${f.say(about)}, intento ${f.number(attempt)}`,
  'run.step.cautions': 'Precauciones',
  'run.step.more': ({ count }, f) =>
    `${f.number(count)} ${f.plural(count, { one: 'línea más', other: 'líneas más' })}`,
  'run.step.next': ({ step, lengthS }, f) =>
    `Después: ${unended(f.say(step))} (${f.about(lengthS)})`,
  'run.step.faults': 'Si algo va mal',
  'run.step.fault': ({ fault }, f) => `¿${f.say(fault)}?`,

  'run.action.looked': 'He mirado, todo va bien',
  'run.action.heard': 'Lo he oído',
  'run.action.boil-again': 'Hervir de nuevo este hervidor',
  'run.action.boil-again.reason': 'El agua hervida esperó demasiado.',
  'run.action.begin': 'Empezar',
  'run.action.again': 'Hacerlo de nuevo',
  'run.action.again.reason': 'Antes se detuvo o falló.',
  'run.action.yes': 'Sí, así es',
  'run.action.no': 'No',
  'run.action.not-yet': 'Todavía no',
  'run.action.waiting': 'Esperando',
  'run.action.timer-ends': 'El reloj lo termina solo; se le avisará.',
  'run.action.meanwhile': 'Mientras tanto',
  'run.action.ticks-left': ({ count }, f) =>
    `Hecho: ${f.plural(count, { one: 'falta', other: 'faltan' })} ${f.number(count)}`,

  'run.checklist.rest': 'El resto no existe aquí',

  'run.gate': 'Antes de empezar',
  'run.gate.left': ({ count }, f) => `Antes de empezar: ${f.number(count)} por responder`,
  'run.gate.settles': ({ left }, f) => `Espere ${f.say(left)} más para tener certeza.`,
  'run.gate.water-waits': ({ left }, f) =>
    `El agua hervida espera: quedan ${f.say(left)}, después se hierve de nuevo.`,
  'run.gate.go-past': 'No es así, y sigo adelante',

  'run.burners': 'Quemadores junto con este',
  'run.burners.light': 'por encender',
  'run.burners.warm-up': 'se calienta',
  'run.burners.hold': 'al rojo, sin interrupción',
  'run.burners.off': 'por apagar',
  'run.burners.press': ({ burner, action }, f) => `${burner}: ${f.say(action).toLowerCase()}`,
  'run.kettles': 'Hervidores al fuego',
  'run.kettles.to-switch-on': 'por encender',
  'run.kettles.should-boil': 'debería hervir',
};
