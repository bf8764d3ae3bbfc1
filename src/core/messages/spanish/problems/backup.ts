import type { TranslationOf } from '../../model/translation.ts';
import type { backup as english } from '../../english/problems/backup.ts';

/** A file with everything in it that cannot be read, or not all of it. */
export const backup: TranslationOf<typeof english> = {
  'problems.backup.allowed': ({ format }) =>
    `un archivo en el que esta aplicación guardó todo (“${format}”)`,
  'problems.backup.no-json': ({ why }) => `un texto que se corta (${why})`,
  'problems.backup.cut':
    'El archivo no está entero. Elija otro, o cópielo de nuevo de donde se guardó.',
  'problems.backup.choose': 'Elija otro archivo.',
  'problems.backup.is-kitchen': 'Es una sola cocina: ábrala en Cocina.',
  'problems.backup.is-run': 'Es un solo trabajo: impórtelo con el botón para un trabajo.',
  'problems.backup.newer-app':
    'Este archivo es de una versión más nueva de la aplicación: actualice primero la de esta tableta.',
  'problems.backup.letters': ({ letters }, f) => `${f.number(letters)} letras`,
  'problems.backup.list': 'una lista',
  'problems.backup.most': ({ most }, f) => `como mucho ${f.number(most)}`,
  'problems.backup.object': 'un objeto en { }',
  'problems.backup.text': 'un texto',
  'problems.backup.moment': 'un momento en milisegundos, de 1970 a 9999',
  'problems.backup.choice': 'un texto, un número, verdadero o falso',
  'problems.backup.broken': 'Queda fuera; se recupera todo lo que está entero.',
};
