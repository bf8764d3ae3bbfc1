import type { Formatter } from '../model/message.ts';
import type { TranslationOf } from '../model/translation.ts';
import type { recordPage as english } from '../english/record-page.ts';

function from(count: number, f: Formatter): string {
  return `de ${f.number(count)} ${f.plural(count, { one: 'aviso', other: 'avisos' })}`;
}

/** The Record page around the report itself. */
export const recordPage: TranslationOf<typeof english> = {
  'record-page.title': 'Registro',
  'record-page.none': 'Todavía no hay trabajos. Aquí se guarda lo que haga en uno.',
  'record-page.list-zone': ({ zone }) =>
    `Empezados, según el reloj de esta tableta (${(zone.split('/').at(-1) ?? zone).replaceAll('_', ' ')}):`,
  'record-page.run-status': ({ openedWallMs, zone, status }, f) =>
    `${f.shortMoment(openedWallMs, zone)}, ${status}`,
  'record-page.status.open': 'abierto',
  'record-page.status.closed': 'cerrado',
  'record-page.status.completed': 'completado',
  'record-page.status.failed': 'fallido',
  'record-page.status.stopped': 'parado',
  'record-page.region': 'Registro del trabajo',
  'record-page.print': 'Imprimir',
  'record-page.save-text': 'Guardar como texto',
  'record-page.save-calendar': 'Guardar lo que falta para un calendario',
  'record-page.save-run': 'Guardar el trabajo en un archivo',
  'record-page.import': 'Importar un trabajo de un archivo',
  'record-page.history': 'Qué le pasó a un lugar en todos los trabajos',
  'record-page.history.reading': 'Leyendo los trabajos de esta cocina…',
  'record-page.history.place': 'Lugar',
  'record-page.history.nothing': 'Ningún trabajo hizo nada con él.',
  'record-page.history.run': ({ wallMs, zone, purpose, status }, f) =>
    `${f.date(wallMs, zone)}, ${purpose}, ${status}`,
  'record-page.history.rested': ({ rest }, f) => `Reposo: ${f.say(rest)}`,
  'record-page.everything': 'Todo en un archivo',
  'record-page.everything.about':
    'Todas las cocinas, trabajos, marcas y elecciones de esta tableta, para guardarlo en otro sitio. Lo que se recupera se añade: no cambia nada de lo que hay aquí.',
  'record-page.everything.save': 'Guardar todo en un archivo',
  'record-page.everything.bring-back': 'Recuperarlo de un archivo así',
  'record-page.restored': ({ kitchens, runs, same }, f) =>
    `Recuperado: ${f.number(kitchens)} ${f.plural(kitchens, { one: 'cocina', other: 'cocinas' })} y ${f.number(runs)} ${f.plural(runs, { one: 'trabajo', other: 'trabajos' })}.${same > 0 ? ` Ya ${f.plural(same, { one: 'estaba', other: 'estaban' })} aquí: ${f.number(same)}.` : ''}`,
  'record-page.restored.left': ({ count }, f) => `Sin recuperar, ${f.number(count)}:`,
  'record-page.restored.run': ({ path, name, why }, f) => `${path} (${name}): ${f.say(why)}`,

  'record-page.damaged': 'El diario está dañado; lo que sigue en él no se cuenta.',
  'record-page.no-digest': 'Sin huella: este navegador solo la calcula con una conexión segura.',
  'record-page.moments': 'Todo, momento a momento',
  'record-page.picture': ({ places }, f) =>
    `La cocina vista desde arriba. ${places.map((place) => f.say(place)).join('; ')}.`,
  'record-page.picture.place': ({ number, name, state }, f) =>
    `${f.number(number)} ${name}: ${f.say(state)}`,
  'record-page.state.heated': 'kasherizado con calor',
  'record-page.state.poured': 'kasherizado con agua hirviendo',
  'record-page.state.steamed': 'kasherizado con vapor',
  'record-page.state.covered': 'con cubierta o forro',
  'record-page.state.cleaned': 'lavado y limpio',
  'record-page.state.closed-up': 'cerrado, no se usa',
  'record-page.state.not-purged': 'sin kasherizar',
  'record-page.state.not-done': 'sin terminar',
  'record-page.state.not-yet': 'por hacer',
  'record-page.state.untouched': 'nada planificado',
  'record-page.covered-too': 'también con cubierta',
  'record-page.letter.heated': 'F',
  'record-page.letter.poured': 'A',
  'record-page.letter.steamed': 'V',
  'record-page.letter.covered': 'C',
  'record-page.letter.cleaned': 'L',
  'record-page.letter.closed-up': 'D',
  'record-page.letter.not-purged': 'X',
  'record-page.letter.not-done': 'O',
  'record-page.letter.not-yet': '…',
  'record-page.letter.untouched': '–',
  'record-page.mark.meat': 'Ca',
  'record-page.mark.dairy': 'Lá',
  'record-page.mark.pareve': 'Pa',
  'record-page.table': 'Lugar por lugar',
  'record-page.column.place': 'Lugar, y qué es ahora',
  'record-page.column.how': 'Qué se hizo',
  'record-page.column.when': 'Cuándo',
  'record-page.column.rested': 'Reposo',
  'record-page.column.source': 'Según qué fuente, palabra de quién',

  'record-page.recheck.region': 'Pasó algo desde entonces',
  'record-page.recheck.title': '¿Pasó algo desde entonces?',
  'record-page.recheck.about':
    'Diga a qué afecta. Un plan pequeño solo para eso pregunta primero si hay que kasherizarlo de nuevo; hasta entonces, nada caliente ahí.',
  'record-page.recheck.open': 'Pasó algo',
  'record-page.recheck.what': '¿Qué pasó?',
  'record-page.recheck.touches': '¿A qué afecta?',
  'record-page.recheck.make-plan': 'Hacer un plan pequeño para eso',
  'record-page.recheck.back': 'Volver',

  'record-page.calibration.title': 'Lo que enseñó este trabajo',
  'record-page.calibration.used':
    'Según sus avisos. El próximo plan cuenta con ello; los reposos, los tiempos de calor y los límites quedan como están.',
  'record-page.calibration.not-used':
    'Según sus avisos. El próximo plan todavía no lo usa; los reposos, los tiempos de calor y los límites quedan como están.',
  'record-page.calibration.boil': ({ name, takesS, plannedS }, f) =>
    `${name}: hierve en ${f.duration(takesS)} (planificado ${f.duration(plannedS)})`,
  'record-page.calibration.glow': ({ name, takesS, plannedS }, f) =>
    `${name}: al rojo en ${f.duration(takesS)} (planificado ${f.duration(plannedS)})`,
  'record-page.calibration.heat-up': ({ name, takesS, plannedS }, f) =>
    `${name}: al máximo en ${f.duration(takesS)} (planificado ${f.duration(plannedS)})`,
  'record-page.calibration.cool': ({ name, takesS, plannedS }, f) =>
    `${name}: se puede tocar tras ${f.duration(takesS)} (planificado ${f.duration(plannedS)})`,
  'record-page.calibration.pour': ({ flowLMin }, f) =>
    `Usted vierte ${f.measure(flowLMin, 'L', 1)} por minuto`,
  'record-page.calibration.reach': ({ percent }, f) =>
    `Un hervidor alcanza el ${f.number(percent)} % de lo calculado`,
  'record-page.calibration.grounds': ({ count, spreadPercent }, f) =>
    `${from(count, f)}, ±${f.number(spreadPercent)} %`,
  'record-page.calibration.grounds-longest': ({ count }, f) =>
    `${from(count, f)}; cuenta el más largo`,
  'record-page.calibration.set-apart': ({ grounds, count }, f) =>
    `${f.say(grounds)}; ${f.number(count)} ${f.plural(count, { one: 'apartado por alejarse demasiado', other: 'apartados por alejarse demasiado' })}`,
  'record-page.calibration.leave-out': 'No contar el último aviso',
  'record-page.calibration.count': 'Contar el último aviso',
};
