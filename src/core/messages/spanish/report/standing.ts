import type { TranslationOf } from '../../model/translation.ts';
import type { standing as english } from '../../english/report/standing.ts';

/** What holds whatever was done, and the entries of a calendar. */
export const standing: TranslationOf<typeof english> = {
  'report.standing.customs':
    'Las costumbres difieren. Este plan sigue la costumbre que usted eligió; la palabra de su rabino la reemplaza.',
  'report.standing.no-ruling':
    'Este registro cuenta lo que se planificó y lo que las personas confirmaron. No dicta normas religiosas: pregunte a su rabino si es suficiente.',
  'report.standing.clock':
    'Las horas son las del reloj de la tableta. Donde el tiempo se apoya en la palabra de una persona, el registro lo dice.',
  'report.standing.manuals':
    'El manual del fabricante y las normas locales van antes que este plan.',
  'report.standing.trades':
    'Gas, electricidad y fontanería (plomería) son para profesionales autorizados.',
  'report.standing.no-guarantee':
    'No se garantiza la seguridad. En caso de necesidad, llame al número local de emergencias.',

  'report.calibration.burner': ({ burner }) => `Quemador ${burner}`,

  'report.event.rest-over': ({ name }, f) => `Fin del reposo: ${f.say(name)}`,
  'report.event.rest-text':
    'Hasta entonces no lo use en caliente; una duda empieza el reposo de nuevo. Decide el reloj del trabajo, no esta anotación.',
  'report.event.purge': 'Kasherizar',
  'report.event.purge-of': ({ names }) => `Kasherizar: ${names.join(', ')}`,
  'report.event.purge-of-more': ({ names, more }, f) =>
    `Kasherizar: ${names.join(', ')} y ${f.number(more)} más`,
  'report.event.method': ({ name, method }, f) => `${name}: ${f.say(method)}`,
  'report.event.stay': 'Horas previstas. Alguien se queda al lado todo el tiempo.',
};
