import type { fields as english } from '../../english/problems/fields.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Where a problem stands, what a value is and what one field may hold. Numbers are as the file writes them. */
export const fields: TranslationOf<typeof english> = {
  'problems.told': ({ where, found, allowed, advice }, f) =>
    `${f.say(where)} : trouvé ${f.say(found)} ; admis : ${f.say(allowed)}. ${f.say(advice)}`,
  'problems.where.file': 'fichier',
  'problems.where.field': ({ path }) => path,
  'problems.where.line': ({ line, field }, f) => `Ligne ${line}, ${f.say(field)}`,
  'problems.where.letter': ({ line, column }) => `ligne ${line}, colonne ${column}`,

  'problems.value': ({ json }) => json,
  'problems.found.missing': 'rien (absent)',
  'problems.found.none': 'aucun',
  'problems.found.list': ({ count }) => `une liste de ${count}`,
  'problems.found.object': 'un objet entre { }',
  'problems.did-you-mean': ({ name }) => `Vouliez-vous dire "${name}" ?`,

  'problems.number.allowed': ({ least, most }) => `un nombre de ${least} à ${most}`,
  'problems.number.bare':
    'Écrivez le nombre sans guillemets ni unité, avec un point pour les décimales.',
  'problems.number.add': 'Ajoutez ce champ.',
  'problems.number.plain': 'Écrivez un simple nombre.',
  'problems.number.more': ({ least, most }) =>
    `Entrez plus, dans l’unité à la fin du nom (${least} à ${most}).`,
  'problems.number.less': ({ least, most }) =>
    `Entrez moins, dans l’unité à la fin du nom (${least} à ${most}).`,
  'problems.whole.allowed': ({ least, most }) => `un nombre entier de ${least} à ${most}`,
  'problems.whole.round': ({ to }) => `Arrondissez : ${to}.`,
  'problems.text.allowed': ({ least, most }) =>
    `un texte de ${least} à ${most} lettres entre guillemets`,
  'problems.text.seen':
    'un texte sans codes de commande ni signes qui retournent ou empilent les lettres',
  'problems.text.look': 'Il a été lu sans eux : vérifiez qu’il dit ce qu’il faut.',
  'problems.text.write': 'Écrivez quelques mots entre guillemets.',
  'problems.text.shorten': ({ by }, f) =>
    `Raccourcissez de ${by} ${f.plural(by, { one: 'lettre', other: 'lettres' })}.`,
  'problems.text.blank': 'Écrivez quelque chose ici.',
  'problems.choice.advice': 'Choisissez l’un de ceux-ci.',
  'problems.yes-no.allowed': 'true ou false',
  'problems.yes-no.advice': 'Écrivez true ou false, sans guillemets.',
  'problems.unknown-field.found': ({ name }) => `le champ inconnu "${name}"`,
  'problems.unknown-field.more': ({ more }, f) =>
    `${f.number(more)} ${f.plural(more, { one: 'autre champ inconnu', other: 'autres champs inconnus' })}`,
  'problems.unknown-field.allowed': ({ names }) => `les champs ${names}`,
  'problems.unknown-field.advice': 'Retirez-le ; les mots libres vont dans un champ comment.',
  'problems.object.allowed': ({ names }) => `un objet entre { } avec ${names}`,
  'problems.object.advice': 'Écrivez les champs entre { et }.',
  'problems.list.allowed': ({ least, most }) => `une liste entre [ ] de ${least} à ${most}`,
  'problems.list.wrap': 'Mettez [ et ] autour.',
  'problems.list.write': 'Écrivez une liste entre [ ].',
  'problems.list.add': ({ count }) => `Ajoutez-en ${count}.`,
  'problems.list.take-out': 'Retirez-en.',
  'problems.pair.advice': 'Écrivez deux nombres entre crochets : [1, 2].',
  'problems.kind.object': 'un objet entre { } avec un kind',
  'problems.kind.wrap': 'Écrivez-le entre { et }.',
  'problems.kind.advice': 'Dites ce que c’est avec l’un de ces mots.',
  'problems.id.allowed': ({ least, most }) =>
    `${least} à ${most} lettres a à z, chiffres, - ou _, entre guillemets`,
  'problems.id.advice': 'Utilisez un nom court sans espaces, comme "sink-left".',
  'problems.date.allowed': 'une date comme "yyyy-mm-dd"',
  'problems.date.advice': 'Écrivez l’année, le mois et le jour, comme "2026-03-29".',
  'problems.date.days': ({ last }) => `jour 1 à ${last} dans ce mois`,
  'problems.date.look-up': 'Vérifiez la date.',
  'problems.local-time.allowed':
    'un jour et une heure locale comme "yyyy-mm-ddThh:mm", des années 1950 à 2099',
  'problems.local-time.advice':
    'Écrivez le jour et l’heure de l’horloge de la cuisine, comme "2026-03-29T20:00".',
  'problems.point.allowed': 'un coin [x, y] en mètres',
  'problems.edge.allowed': 'deux numéros de coins voisins [from, to], comptés depuis 0',
  'problems.country.allowed': 'un pays en deux majuscules (ISO 3166-1)',
  'problems.country.advice': 'Écrivez le code à deux lettres, comme "FR", "GB" ou "IL".',
  'problems.zone.quoted': 'un nom de fuseau IANA entre guillemets',
  'problems.zone.allowed': 'un nom de fuseau IANA',
  'problems.zone.advice': 'Écrivez comme "Europe/Paris" : région, barre, ville.',
  'problems.format.advice':
    'Ceci marque un fichier de cuisine ; sans cela, c’est un autre genre de fichier.',
  'problems.version.advice': ({ version }) => `Écrivez ${version} : la version de ce format.`,
};
