import type { custom as english } from '../../english/kitchen/custom.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** A custom of the household's own, and what a person fills in about one answer. */
export const custom: TranslationOf<typeof english> = {
  'kitchen.custom.title': 'Une coutume à vous',
  'kitchen.custom.first-name': 'Notre coutume',
  'kitchen.custom.make': 'Créer notre propre coutume',
  'kitchen.custom.about': ({ custom }, f) =>
    `Elle part d’une copie : ${f.say(custom)}. Vous changez les lignes qui diffèrent chez vous, chacune avec qui l’a dit, quand et pourquoi. Elle est gardée dans le fichier de la cuisine et le suit.`,
  'kitchen.custom.resting': ({ name, custom }, f) =>
    `« ${name} », copie de : ${f.say(custom)}, est gardée et n’est pas utilisée. Une nouvelle copie la remplace.`,
  'kitchen.custom.called': 'Comment vous l’appelez',
  'kitchen.custom.copy': ({ custom }, f) => `Copier : ${f.say(custom)}`,
  'kitchen.custom.back': 'Retour',
  'kitchen.custom.copied': ({ custom: base, changed, rows }, f) =>
    `Copie de : ${f.say(base)} ; ${changed === 0 ? 'aucune ligne changée pour l’instant' : `${f.number(changed)} ${f.plural(changed, { one: 'ligne changée', other: 'lignes changées' })} sur ${f.number(rows)}`}. Une réponse sur un seul élément passe avant. Ce que changent fentes et rayures reste tel quel.`,
  'kitchen.custom.done': 'Terminé',
  'kitchen.custom.delete': 'Supprimer cette coutume',
  'kitchen.custom.delete-sure': ({ name }) => `Oui, supprimer « ${name} »`,
  'kitchen.custom.keep': 'La garder',
  'kitchen.custom.change': 'Changer',
  'kitchen.custom.back-to-row': 'Revenir à la ligne de la coutume',
  'kitchen.custom.own-way': ({ way }, f) => `${f.say(way)}.`,
  'kitchen.custom.said': ({ why, saidBy, saidOn }) => `${why} (${saidBy}, ${saidOn})`,
  'kitchen.custom.change-row': ({ row }, f) => `Changer la ligne : ${f.say(row)}`,
  'kitchen.custom.base-has': ({ way, reason }, f) =>
    `La coutume a : ${f.say(way)}. ${f.say(reason)}`,
  'kitchen.custom.follows': 'Tous les éléments que vise cette ligne la suivent.',
  'kitchen.custom.keep-row': 'Garder la ligne',

  /** What a row is about: "Évier en acier inoxydable, fonte, à Pessah". */
  'kitchen.custom.row': ({ kinds, materials, anyMaterial, burners, cleaning, purposes }, f) => {
    const what = [
      kinds.map(f.say).join(', '),
      ...(anyMaterial ? ['en matière inconnue'] : []),
      ...(!anyMaterial && materials.length > 0 ? [`en ${materials.map(f.say).join(', ')}`] : []),
      ...(burners.length > 0 ? [`avec ${burners.map(f.say).join(', ')}`] : []),
      ...(cleaning === 'does-not' ? ['sans pyrolyse'] : []),
      ...(cleaning === 'burns-out' ? ['à pyrolyse'] : []),
    ].join(' ');
    const when = purposes.length > 0 ? `, ${purposes.map(f.say).join(' ou ')}` : '';
    return f.capital(what) + when;
  },
  // As they stand inside the sentence about a row.
  'kitchen.custom.material.stainless-steel': 'acier inoxydable',
  'kitchen.custom.material.cast-iron': 'fonte',
  'kitchen.custom.material.enamelled-steel': 'acier émaillé',
  'kitchen.custom.material.porcelain': 'porcelaine',
  'kitchen.custom.material.ceramic': 'céramique',
  'kitchen.custom.material.glass': 'verre',
  'kitchen.custom.material.glass-ceramic': 'vitrocéramique',
  'kitchen.custom.material.granite': 'granit',
  'kitchen.custom.material.marble': 'marbre',
  'kitchen.custom.material.soapstone': 'stéatite',
  'kitchen.custom.material.concrete': 'béton',
  'kitchen.custom.material.quartz-composite': 'composite de quartz',
  'kitchen.custom.material.acrylic': 'acrylique',
  'kitchen.custom.material.laminate': 'stratifié',
  'kitchen.custom.material.wood': 'bois',
  'kitchen.custom.material.raw-wood': 'bois brut',
  'kitchen.custom.material.tile': 'carrelage',
  'kitchen.custom.material.plastic': 'plastique',
  'kitchen.custom.material.silicone': 'silicone',
  'kitchen.custom.material.unknown': 'matière inconnue',
  'kitchen.custom.burner.electric-coil': 'spirale électrique',
  'kitchen.custom.burner.solid-plate': 'plaque de fonte',
  'kitchen.custom.burner.radiant-glass': 'radiant sous verre',
  'kitchen.custom.burner.induction': 'induction',
  'kitchen.custom.burner.gas-sealed': 'gaz, fermé',
  'kitchen.custom.burner.gas-open': 'gaz, ouvert',
  'kitchen.custom.burner.gas-wok': 'gaz, wok',
  'kitchen.custom.burner.commercial-open': 'professionnel ouvert',
  'kitchen.custom.burner.portable-plate': 'plaque portable',
  'kitchen.custom.purpose.new-kitchen': 'dans une cuisine reprise',
  'kitchen.custom.purpose.passover': 'à Pessah',
  'kitchen.custom.purpose.mix-up': 'après un mélange',
  /** What is done: "Verser de l'eau bouillante, puis couvrir", "Chauffer au rouge, 30 min". */
  'kitchen.custom.way': ({ method, thenCover }, f) =>
    `${f.say(method)}${thenCover ? ', puis couvrir' : ''}`,
  'kitchen.custom.timed-way': ({ method, minutes, thenCover }, f) =>
    `${f.say(method)}, ${f.shortNumber(minutes)} min${thenCover ? ', puis couvrir' : ''}`,

  'kitchen.custom.way.method': 'Ce qui est fait',
  'kitchen.custom.way.minutes': 'Minutes',
  'kitchen.custom.way.cover': 'Couvert ensuite ?',
  'kitchen.custom.way.cover.yes': 'Oui',
  'kitchen.custom.way.cover.no': 'Non',
  'kitchen.custom.way.said-by': 'Qui l’a dit',
  'kitchen.custom.way.said-on': 'Quel jour',
  'kitchen.custom.way.why': 'Pourquoi',
  'kitchen.custom.missing.minutes': ({ least, most }, f) =>
    `Minutes : de ${f.number(least)} à ${f.number(most)}.`,
  'kitchen.custom.missing.said-by': 'Écrivez qui l’a dit.',
  'kitchen.custom.missing.said-on': 'Choisissez le jour où cela a été dit.',
  'kitchen.custom.missing.why': 'Écrivez pourquoi.',
};
