import type { TranslationOf } from '../../../model/translation.ts';
import type { damagedJournal as english } from '../../../english/run/sheets/journal.ts';

/** What is wrong with a journal, in the browser or in a file: said after the page has come. */
export const damagedJournal: TranslationOf<typeof english> = {
  'engine.journal.empty': 'El diario no tiene ninguna entrada entera.',
  'engine.journal.corrupt': ({ seq }) =>
    `La entrada ${seq} no se puede leer, y le siguen otras. Exporte el diario; se abre solo para leer.`,
  'engine.journal.altered': ({ seq }) =>
    `La entrada ${seq} se cambió después de escribirla: su suma no coincide. Se abre solo para leer.`,
  'engine.journal.broken-chain': ({ found, seq }) =>
    `La entrada ${found} está donde a la anterior debería seguirle la ${seq}. Falta una o está repetida.`,
  'engine.journal.newer-version': ({ seq, version, newest }) =>
    `La entrada ${seq} es de la versión ${version}; esta aplicación lee hasta la ${newest}. Ábralo con la aplicación más nueva.`,
  'engine.journal.unknown-fact': ({ seq, kind }) =>
    `La entrada ${seq} cuenta “${kind}”, que esta aplicación no conoce. Ábralo con la aplicación más nueva.`,
  'engine.journal.does-not-fold': ({ why }) =>
    `Cada entrada está bien, pero juntas no pueden haber ocurrido: ${why}`,
  'engine.journal.file.long': ({ found, most }) =>
    `El archivo tiene ${found} caracteres; permitido: hasta ${most}. Elija un archivo de diario.`,
  'engine.journal.file.not-json': ({ why }) =>
    `El archivo no es JSON (${why}). Elija un archivo de diario.`,
  'engine.journal.file.format': ({ found, allowed }) =>
    `format es ${found}; permitido: "${allowed}". Elija un archivo de diario.`,
  'engine.journal.file.version': ({ found }) =>
    `version es ${found}; permitido: 1 o 2. Ábralo con la aplicación que lo escribió.`,
  'engine.journal.file.entries': ({ field }) =>
    `${field} no es una lista; permitido: una lista de entradas. Elija un archivo de diario.`,
};
