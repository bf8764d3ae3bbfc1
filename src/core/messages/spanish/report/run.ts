import type { TranslationOf } from '../../model/translation.ts';
import type { run as english } from '../../english/report/run.ts';
import { ended } from './phrases.ts';

/** The head of a record: whose kitchen, how the run stands, what its parts are called. */
export const run: TranslationOf<typeof english> = {
  'report.title': ({ kitchen }) => `Registro: ${kitchen}`,
  'report.purpose': ({ purpose }, f) => `Finalidad: ${f.say(purpose)}`,
  'report.custom': ({ custom }, f) => `Costumbre: ${f.say(custom)}`,
  'report.planned': ({ wallMs, zone }, f) =>
    `Planificado: ${f.dateTime(wallMs, zone)}. Sin empezar.`,
  'report.started': ({ wallMs, zone }, f) => `Empezado: ${f.dateTime(wallMs, zone)}`,
  'report.stands': ({ wallMs, zone, outcome }, f) =>
    `Estado: ${f.dateTime(wallMs, zone)}, ${f.say(outcome)}.`,
  'report.closed': ({ wallMs, zone, outcome }, f) =>
    `Cerrado: ${f.dateTime(wallMs, zone)}, ${f.say(outcome)}.`,
  'report.reason': ({ reason }, f) => `Motivo: ${ended(f.say(reason))}`,
  'report.run.completed': 'completado',
  'report.run.failed': 'fallido',
  'report.run.stopped': 'parado antes de su final',
  'report.run.open': 'todavía en marcha',

  'report.section.general': 'Sin lugar propio',
  'report.section.not-done': 'Sin hacer',
  'report.section.not-done-yet': 'Sin hacer todavía',
  'report.section.overridden': 'Confirmaciones pasadas por alto en todo el trabajo',
  'report.section.faults': 'Fallos sin lugar propio',
  'report.section.gaps': 'Tiempos que faltan',
  'report.section.asked': 'Preguntado después de ellos',
  'report.section.late': 'Avisado tarde',
  'report.section.silent': 'Alarmas que no pudieron sonar',
  'report.section.paused': 'En pausa',
  'report.section.storage': 'No se podía anotar nada',
  'report.section.notes': 'Notas',
  'report.section.questions': 'Sin respuesta al hacer el plan',
  'report.section.assumed': 'Tomado como habitual, porque nadie lo indicó',
  'report.section.standing': 'Lo que vale se haya hecho lo que se haya hecho',
};
