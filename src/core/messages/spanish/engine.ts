import type { TranslationOf } from '../model/translation.ts';
import type { engine as english } from '../english/engine.ts';

/** What the run engine says: why something cannot be, and what to do instead. */
export const engine: TranslationOf<typeof english> = {
  'engine.halted.drafting': 'El trabajo no ha empezado.',
  'engine.halted.held': 'El trabajo está en pausa.',
  'engine.halted.suspended': 'El trabajo está suspendido.',
  'engine.halted.reviewing': 'Diga primero qué pasó mientras la aplicación no estaba.',
  'engine.halted.closing': 'El trabajo se está parando.',
  'engine.halted.closed': 'El trabajo está cerrado.',

  'engine.step.ends-by-itself': 'Esta parte termina con su reloj.',
  'engine.step.not-due': 'El tiempo aún no ha terminado.',
  'engine.step.cold-first': 'Aquí se vertió agua hirviendo. Confirme primero el agua fría.',
  'engine.step.hot': 'Está caliente. Pare el paso y déjelo seguro.',
  'engine.step.went-on': ({ step }, f) => `¿Siguió “${f.say(step)}” sin interrupción?`,
  'engine.step.make-safe': ({ step }, f) => `Deje seguro “${f.say(step)}”.`,
  'engine.step.make-safe-cold': ({ makeSafe, cold }, f) => `${f.say(makeSafe)} ${f.say(cold)}`,
  'engine.step.pour-now': 'Vierta ahora: pasado este tiempo el agua ya no está bastante caliente',
  'engine.step.use-within': ({ step }, f) =>
    `Usar dentro de este tiempo después de “${f.say(step)}”`,

  'engine.because.nothing-heated': 'No se calentó nada.',
  'engine.because.heated-again': 'Se calienta de nuevo.',
  'engine.because.all-settled': 'Todos los pasos están resueltos.',
  'engine.because.stopped': 'Parado.',
  'engine.because.paused': 'En pausa.',
  'engine.because.interrupted': 'Se interrumpió y no se puede repetir.',
  'engine.because.broke-off': 'Se cortó.',
  'engine.because.nobody-saw': 'Nadie vio si se cortó.',
  'engine.because.doubt': 'Se usó o se tocó.',
  'engine.because.answer-withdrawn': 'Se retiró una respuesta sobre el reloj.',

  'engine.need.open': ({ step }, f) => `Primero: “${f.say(step).replace(/\.$/, '')}”.`,
  'engine.need.undone': ({ step }, f) =>
    `“${f.say(step)}” no se terminó. Repítalo, u omítalo con un motivo.`,
  'engine.need.left-out': ({ step }, f) =>
    `“${f.say(step)}” se omitió. Repítalo, u omita también este.`,
  'engine.need.late': ({ step }, f) => `Demasiado tiempo desde “${f.say(step)}”. Repítalo primero.`,

  'engine.rest-day.inside': ({ day }, f) =>
    `Es ${f.say(day)}. No se empieza ningún trabajo hasta que termine.`,
  'engine.rest-day.reaches': ({ day }, f) =>
    `No terminaría antes del comienzo de ${f.say(day)}. Empiécelo después de ${f.say(day)}.`,

  'engine.deadline.inside': ({ deadline }, f) =>
    `Ya pasó el plazo: ${f.say(deadline)}. Ya no se kasheriza nada.`,
  'engine.deadline.reaches': ({ deadline }, f) =>
    `No terminaría antes del plazo: ${f.say(deadline)}.`,

  'engine.gate.settling': ({ say, leftMin }, f) =>
    `Espere ${f.number(leftMin)} min para tener certeza: ${f.say(say)}`,
  'engine.gate.answered-no': ({ ask }, f) => `Respuesta: no. ${f.say(ask)}`,
  'engine.gate.confirm-first': ({ ask }, f) => `Confirme primero: ${f.say(ask)}`,
  'engine.gate.danger':
    'Esto protege de la muerte o de lesiones graves. No se puede pasar por alto.',
  'engine.gate.undescribed': ({ id }) => `El plan no describe su pregunta de seguridad “${id}”.`,

  'engine.resource.too-few': ({ name, unit, wanted, capacity }, f) =>
    `Hacen falta ${f.shortNumber(wanted)} ${f.say(unit)} (${f.say(name)}); hay ${f.shortNumber(capacity)}.`,
  'engine.resource.hands': ({ steps }, f) =>
    `Todas las manos están ocupadas con ${f.list(steps.map((step) => `“${f.say(step)}”`))}.`,
  'engine.resource.burners': ({ lit }, f) =>
    `Límite de quemadores alcanzado: ${f.number(lit)} ${f.plural(lit, { one: 'encendido', other: 'encendidos' })}.`,
  'engine.resource.place': ({ name, steps }, f) =>
    `Junto a un vertido no hay nada caliente ni en marcha. En este lugar, ${f.say(name)}, sigue ${f.list(steps.map((step) => `“${f.say(step)}”`))}.`,
  'engine.resource.watch': ({ steps }, f) =>
    `Nadie vierte y vigila un quemador a la vez. Espere a que termine ${f.list(steps.map((step) => `“${f.say(step)}”`))}, o que vigile alguien que no haga nada más.`,
  'engine.resource.in-use': ({ name, steps }, f) =>
    `${f.say(name)}: en uso por ${f.list(steps.map((step) => `“${f.say(step)}”`))}.`,
  'engine.resource.taken': ({ name, unit, used, capacity, steps }, f) =>
    `${f.say(name)}: ${f.shortNumber(used)} de ${f.shortNumber(capacity)} ${f.say(unit)} en uso por ${f.list(steps.map((step) => `“${f.say(step)}”`))}.`,

  'engine.fault.undefined': 'Algo fue mal',
  'engine.fault.undefined.off': 'Apague lo que esté caliente.',
  'engine.fault.undefined.write': 'Anote lo que pasó.',
  'engine.fault.undefined.go-on': 'Continúe cuando esté resuelto.',
  'engine.storage.down': 'Ahora no se puede anotar nada.',
  'engine.storage.no-progress':
    'Ahora no se puede anotar nada, así que nada avanza. Libere espacio o exporte el diario.',
};
