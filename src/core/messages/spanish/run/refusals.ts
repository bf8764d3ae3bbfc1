import type { TranslationOf } from '../../model/translation.ts';
import type { refusals as english } from '../../english/run/refusals.ts';

/**
 * Why the engine refuses what no screen offers, what was told already, and
 * changes of a running plan. It comes after the run's page: nobody asks for
 * any of it in its first moment.
 */
export const refusals: TranslationOf<typeof english> = {
  'engine.unknown.step': ({ id }) => `El paso es “${id}”; permitido: un paso del plan.`,
  'engine.unknown.stage': 'Esa parte ya terminó. Mire lo que pide ahora el paso.',
  'engine.unknown.fault': ({ id }) => `El fallo es “${id}”; permitido: uno del que se avisó.`,
  'engine.unknown.gate': ({ id }) =>
    `La pregunta de seguridad es “${id}”; permitido: una del plan.`,
  'engine.unknown.scope': ({ id, allowed }, f) =>
    `El alcance es “${id}”; permitido: ${f.list(allowed)}.`,
  'engine.unknown.question': ({ id }) => `La pregunta es “${id}”; permitido: una abierta.`,
  'engine.unknown.fixture': ({ id }) =>
    `El elemento es “${id}”; permitido: uno en el que trabaja el plan, o un recipiente que kasheriza. Elíjalo en el dibujo; un recipiente que no kasheriza se aparta y el plan se hace de nuevo.`,

  'engine.clock.below-build': ({ shownWallMs, fromWallMs }) =>
    `El reloj muestra ${shownWallMs}; permitido: ${fromWallMs} o más, cuando se hizo esta aplicación. Ponga bien el día y la hora de la tableta.`,
  'engine.clock.passed-missing': ({ missingS }, f) =>
    `Falta este tiempo: ${f.duration(missingS)}. Diga si pasó, o si se cambió la hora del reloj.`,
  'engine.clock.nothing-answered': 'En este trabajo no se respondió nada sobre el reloj.',

  'engine.reason.skip': 'Diga por qué omite este paso; queda en el registro.',
  'engine.reason.repeat': 'Diga por qué repite este paso; queda en el registro.',
  'engine.reason.override': 'Escriba por qué se puede pasar por alto; queda en el registro.',
  'engine.reason.amend': 'Diga por qué se cambia el plan; queda en el registro.',
  'engine.reason.correct': 'Escriba cómo lo sabe; queda en el registro.',
  'engine.reason.note': 'La nota está vacía. Escriba algo.',

  'engine.cooling.first': 'Diga primero cómo terminó el enfriamiento de la quemadura.',
  'engine.cooling.short': 'Todavía no se ha enfriado 20 minutos: mantenga el agua corriendo.',
  'engine.fault.already-cleared': 'Ya se resolvió.',

  'engine.session.open': 'Esta página ya ha abierto el trabajo.',
  'engine.session.not-open':
    'Esta página no ha abierto el trabajo. Ábralo primero, para que se vea el tiempo que falta.',
  'engine.storage.down-already': 'El almacenamiento ya no funcionaba.',
  'engine.storage.up-already': 'El almacenamiento ya funciona.',
  'engine.recheck.stands':
    'Ya no se puede retirar: desde entonces ha pasado algo. Su reposo sigue desde que se dijo.',
  'engine.timer.ended': 'Este reloj ya ha terminado; no queda nada que responder.',
  'engine.timer.cause': ({ found, most }) =>
    `cause es ${found}; permitido: de 1 a ${most}, como muestra el reloj.`,
  'engine.timer.told': 'Esto ya se dijo; basta una vez por cada causa.',
  'engine.timer.does-not-call': 'Este reloj no pide respuesta.',
  'engine.timer.cannot-extend': 'Una alarma no se puede aplazar. Respóndala cuando suene.',
  'engine.timer.extend-range': ({ byS, mostS }) =>
    `byS es ${byS}; permitido: más de 0, como mucho ${mostS}. Indique el tiempo que se añade.`,
  'engine.timer.cannot-correct': 'Solo se puede fechar una espera, como un reposo.',
  'engine.timer.correct-range': ({ sinceWallMs, mostS }) =>
    `sinceWallMs es ${sinceWallMs}; permitido: desde hace ${mostS} s hasta ahora, según el registro. Indique cuándo estuvo caliente por última vez.`,

  'engine.clock.not-asked': 'Nadie preguntó la hora.',
  'engine.clock.range': ({ actualWallMs, fromWallMs, toWallMs }) =>
    `actualWallMs es ${actualWallMs}; permitido: desde ${fromWallMs}, cuando se hizo esta aplicación, hasta ${toWallMs}, un día después de la última hora que mostró un reloj. Ponga bien el reloj de la tableta, o indique la hora correcta.`,

  'engine.amend.begun': ({ step }, f) =>
    `“${f.say(step)}” ya empezó; solo puede cambiar lo que no ha empezado.`,
  'engine.amend.bad-number': ({ id, found, field }) =>
    `El paso "${id}" tiene ${found} en ${field}; permitido: un número finito mayor que 0.`,
  'engine.amend.need-twice': ({ id, need }) =>
    `El paso "${id}" necesita "${need}" dos veces; permitido: una.`,
  'engine.amend.no-stage': ({ id }) => `El paso "${id}" no tiene etapas; permitido: una o más.`,
  'engine.amend.stage-twice': ({ id, stage }) =>
    `El paso "${id}" tiene dos veces la etapa "${stage}"; permitido: una.`,
  'engine.amend.timer-twice': ({ id, timer }) =>
    `El paso "${id}" tiene dos veces el reloj "${timer}" en una etapa; permitido: una.`,
  'engine.amend.start-of-none': ({ id }) => `startS nombra "${id}", que no es un paso.`,
  'engine.amend.start-range': ({ id, found }) =>
    `startS de "${id}" es ${found}; permitido: un número finito, 0 o más.`,
  'engine.amend.empty': 'El cambio no tiene pasos; permitido: uno o más.',
  'engine.amend.twice': 'El cambio nombra un paso dos veces; permitido: una.',
  'engine.amend.cycle': ({ id }) =>
    `El paso "${id}" se necesitaría a sí mismo; no queda ningún orden.`,
  'engine.amend.no-need': ({ id, need }) =>
    `El paso "${id}" necesita "${need}", que no es un paso.`,
  'engine.amend.no-resource': ({ id, resource }) =>
    `El paso "${id}" pide "${resource}", que no es un recurso.`,
  'engine.amend.no-gate': ({ id, gate }) =>
    `El paso "${id}" nombra la pregunta de seguridad "${gate}", que no existe.`,
  'engine.amend.lacks-gate': ({ id, gate }) =>
    `Al paso "${id}" le falta la pregunta de seguridad "${gate}".`,
  'engine.amend.lacks-caution': ({ id, caution }) =>
    `Al paso "${id}" le falta la precaución "${caution}".`,
  'engine.amend.stages': ({ id, found, allowed }, f) =>
    `El paso "${id}" tiene las etapas ${f.list(found)}; permitido: con ${f.list(allowed)} en este orden.`,
  'engine.amend.demands-less': ({ id, resource, wanted }) =>
    `El paso "${id}" pide menos de ${wanted} de "${resource}".`,
  'engine.amend.guards-less': ({ id, step }, f) =>
    `El paso "${id}" protege menos que “${f.say(step)}”: un peligro, un reloj o el dejarlo seguro.`,
  'engine.amend.other-work': ({ id, step }, f) =>
    `El paso "${id}" es otro trabajo que “${f.say(step)}”; permitido: el mismo elemento y la misma clase.`,
  'engine.amend.drops-need': ({ id, need, step }, f) =>
    `El paso "${id}" ya no necesita "${need}" como “${f.say(step)}”.`,
  'engine.amend.no-sibling': ({ id, kind, fixture, means, allowed }) =>
    `El paso "${id}" es ${kind} de ${fixture} con ${means}; permitido: un trabajo que el plan ya tiene ahí${allowed.map((one) => `, con ${one}`).join('')}.`,
  'engine.amend.not-fresh': ({ id, step }, f) =>
    `El paso "${id}" no necesita agua recién hervida como “${f.say(step)}”.`,
  'engine.amend.not-begun-so': ({ id, step }, f) =>
    `El paso "${id}" no se empieza como “${f.say(step)}”.`,

  'engine.step.over': ({ step }, f) => `“${f.say(step)}” ha terminado.`,
  'engine.step.over-repeat': ({ step }, f) =>
    `“${f.say(step)}” ha terminado. Repítalo para hacerlo de nuevo.`,
  'engine.step.begun': ({ step }, f) => `“${f.say(step)}” ya empezó.`,
  'engine.step.not-begun': ({ step }, f) => `“${f.say(step)}” no ha empezado.`,
  'engine.step.stopped': ({ step }, f) => `“${f.say(step)}” se paró. Déjelo seguro.`,
  'engine.step.not-over': ({ step }, f) => `“${f.say(step)}” no ha terminado. Párelo primero.`,
  'engine.step.cannot-repeat': ({ step }, f) => `“${f.say(step)}” no se puede repetir.`,
  'engine.step.fault-open': 'Resuelva primero lo que se avisó sobre este paso.',
  'engine.step.not-stopped': 'Este paso no se paró, así que no hay nada que dejar seguro.',
  'engine.resume.review-gap': 'Responda primero qué pasó en el tiempo que falta.',
  'engine.resume.review-clock': 'Diga primero si la hora que se muestra es correcta.',
  'engine.resume.storage': 'Todavía no se puede anotar nada.',
  'engine.resume.hot': 'Deje seguro primero lo que sigue caliente.',
  'engine.resume.fault': ({ fault }, f) => `Sin resolver todavía: ${f.say(fault)}.`,
  'engine.resume.gate-settling': ({ ask }, f) => `Espere para tener certeza: ${f.say(ask)}`,
  'engine.resume.gate-asked': ({ ask }, f) => `Responda primero: ${f.say(ask)}`,

  'engine.status.drafting': 'El trabajo no ha empezado. Inícielo primero.',
  'engine.status.running': 'El trabajo ya está en marcha.',
  'engine.status.held': 'El trabajo está en pausa. Reanúdelo primero.',
  'engine.status.suspended':
    'El trabajo está suspendido. Resuelva lo que lo detuvo y después reanúdelo.',
  'engine.status.reviewing': 'Responda primero qué pasó mientras la aplicación no estaba.',
  'engine.status.closing': 'El trabajo se está parando. Solo queda dejarlo todo seguro.',
  'engine.status.closed': 'El trabajo está cerrado.',
};
