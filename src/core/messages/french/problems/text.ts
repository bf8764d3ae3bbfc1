import type { text as english } from '../../english/problems/text.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** A text that is no kitchen file: another kind of file, or JSON that breaks off. */
export const text: TranslationOf<typeof english> = {
  'problems.file.one-object': 'un seul objet entre { }',
  'problems.file.open': 'Ouvrez un fichier *.kitchen.json.',
  'problems.file.other-kind': 'C’est un autre genre de fichier : ouvrez un fichier *.kitchen.json.',
  'problems.file.versions': ({ version }) => `${version} ou moins`,
  'problems.file.newer-app': ({ version }) =>
    `Une application plus récente a écrit ce fichier : mettez celle-ci à jour, ou enregistrez-y la cuisine en version ${version}.`,
  'problems.file.megabytes': ({ megabytes }, f) => `${f.number(megabytes, 1)} Mo`,
  'problems.file.one-megabyte': 'au plus 1 Mo',
  'problems.file.words-only': 'Un fichier de cuisine ne contient que des mots et des nombres.',
  'problems.file.empty': 'un fichier vide',
  'problems.file.kitchen': 'un fichier de cuisine',
  'problems.file.choose':
    'Choisissez un autre fichier, ou commencez par une cuisine de démonstration.',
  'problems.twice.found': 'ce champ une seconde fois',
  'problems.twice.allowed': 'chaque champ une fois',
  'problems.twice.advice': 'Retirez l’un des deux.',

  'problems.json.end': 'la fin du fichier',
  'problems.json.one-kitchen': 'Une cuisine par fichier : retirez ce qui suit le dernier }.',
  'problems.json.deepest': ({ most }) => `au plus ${most} parenthèses imbriquées`,
  'problems.json.close-brackets': 'Fermez les parenthèses restées ouvertes.',
  'problems.json.number': 'un simple nombre',
  'problems.json.plain-number': 'Écrivez comme 12 ou 0.5, sans unité ni zéro en tête.',
  'problems.json.value': 'une valeur : "texte", un nombre, true, false, [ ou {',
  'problems.json.breaks-off': 'Le fichier s’interrompt : fermez chaque { et [ ouvert.',
  'problems.json.comma-or-value':
    'Retirez la virgule qui précède, ou écrivez la valeur qui manque.',
  'problems.json.notes': 'Les notes vont dans un champ "comment".',
  'problems.json.straight-quotes': 'Utilisez des guillemets droits " autour du texte.',
  'problems.json.zero': 'Écrivez un zéro avant le point : 0.5.',
  'problems.json.plus': 'Omettez le signe plus.',
  'problems.json.quote-text': 'Mettez le texte entre guillemets droits ".',
  'problems.json.name': 'le nom d’un champ entre guillemets',
  'problems.json.colon': 'deux-points :',
  'problems.json.put-colon': ({ name }) => `Mettez deux-points entre "${name}" et sa valeur.`,
  'problems.json.comma': 'Retirez la virgule qui précède.',
  'problems.json.decimals': 'Écrivez les décimales avec un point, pas une virgule : 1.5.',
  'problems.json.quote-name': 'Mettez le nom du champ entre guillemets droits ".',
  'problems.json.comma-or-bracket': ({ bracket }) => `une virgule ou ${bracket}`,
  'problems.json.close-list': 'Le fichier s’interrompt : fermez la liste avec ].',
  'problems.json.close-object': 'Le fichier s’interrompt : fermez l’objet avec }.',
  'problems.json.next-item': 'Mettez une virgule avant, ou fermez la liste avec ].',
  'problems.json.next-field': 'Mettez une virgule avant, ou fermez l’objet avec }.',
  'problems.json.closing-quote': 'le guillemet fermant "',
  'problems.json.close-text': 'Un texte finit sur sa ligne : fermez-le avec ".',
  'problems.json.escape': '\\" \\\\ \\/ \\n \\t ou \\u avec quatre chiffres',
  'problems.json.backslash': 'Écrivez une barre oblique inverse comme \\\\.',
};
