import type { backup as english } from '../../english/problems/backup.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** A file with everything in it that cannot be read, or not all of it. */
export const backup: TranslationOf<typeof english> = {
  'problems.backup.allowed': ({ format }) =>
    `un fichier où cette application a tout enregistré (« ${format} »)`,
  'problems.backup.no-json': ({ why }) => `un texte interrompu (${why})`,
  'problems.backup.cut':
    'Le fichier n’est pas entier. Choisissez-en un autre, ou copiez-le à nouveau depuis l’original.',
  'problems.backup.choose': 'Choisissez un autre fichier.',
  'problems.backup.is-kitchen': 'C’est une seule cuisine : ouvrez-la sous Cuisine.',
  'problems.backup.is-run': 'C’est un seul chantier : reprenez-le avec le bouton pour un chantier.',
  'problems.backup.newer-app':
    'Une application plus récente a écrit ce fichier : mettez d’abord celle-ci à jour.',
  'problems.backup.letters': ({ letters }, f) =>
    `${f.number(letters)} ${f.plural(letters, { one: 'lettre', other: 'lettres' })}`,
  'problems.backup.list': 'une liste',
  'problems.backup.most': ({ most }, f) => `au plus ${f.number(most)}`,
  'problems.backup.object': 'un objet entre { }',
  'problems.backup.text': 'un texte',
  'problems.backup.moment': 'un moment en millisecondes, de 1970 à 9999',
  'problems.backup.choice': 'un texte, un nombre, vrai ou faux',
  'problems.backup.broken': 'Il reste dehors ; tout ce qui est entier est repris.',
};
