import type { fixture as english } from '../../english/survey/fixture.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** The plan that is shaped by finger, and the sheet of one fixture. */
export const fixture: TranslationOf<typeof english> = {
  'survey.editor.plan':
    'Plan de la cuisine. Les flèches déplacent l’élément choisi d’un centimètre, avec Maj de dix ; Suppr le retire ; Entrée va à sa fiche.',
  'survey.editor.sized': ({ name, length, depth }, f) =>
    `${name}, ${f.say(length)} sur ${f.say(depth)}`,
  'survey.editor.whereabouts': ({ left, front }, f) =>
    `à ${f.say(left)} de la gauche, ${f.say(front)} de l’avant`,
  'survey.editor.look': 'Vue',
  'survey.editor.nearer': 'Plus près',
  'survey.editor.farther': 'Plus loin',
  'survey.editor.whole-room': 'Toute la pièce',

  'survey.chosen': '(choisi)',
  'survey.sheet.next': 'Ajouter le suivant',
  'survey.sheet.name': 'Nom',
  'survey.sheet.belongs': 'Destiné à',
  'survey.sheet.off-plan': 'Hors du plan',
  'survey.sheet.onto-plan': 'Sur le plan',
  'survey.sheet.turn': 'Tourner',
  'survey.sheet.copy': 'Copier',

  'survey.size.length': 'Longueur',
  'survey.size.depth': 'Profondeur',
  'survey.size.from-left': 'Depuis la gauche',
  'survey.size.from-front': 'Depuis l’avant',
  'survey.size.corners': ({ count }, f) =>
    `Il a ${f.number(count)} coins : longueur et profondeur sont celles du cadre autour.`,

  'survey.shape': 'Forme',
  'survey.shape.walls': 'Quels bords touchent un mur ?',
  'survey.shape.stand': 'De quels côtés pouvez-vous vous tenir ?',
  'survey.shape.stand-at': ({ side, length }, f) => `Au ${f.say(side)}, ${f.say(length)}`,
  'survey.shape.edge': ({ side, length }, f) => `${f.say(side)}, ${f.say(length)}`,
  'survey.shape.numbered-edge': ({ from, to, side, length }, f) =>
    `${f.number(from)}–${f.number(to)}, ${f.say(side)}, ${f.say(length)}`,
  'survey.shape.side.far': 'côté opposé',
  'survey.shape.side.near': 'côté proche',
  'survey.shape.side.left': 'côté gauche',
  'survey.shape.side.right': 'côté droit',
  'survey.shape.open': 'Les coins un à un',
  'survey.shape.close': 'Coins terminés',
  'survey.shape.crosses': 'Le contour se croiserait alors lui-même.',
  'survey.shape.corner-left': ({ number }, f) => `${f.number(number)} depuis la gauche`,
  'survey.shape.corner-front': ({ number }, f) => `${f.number(number)} depuis l’avant`,
  'survey.shape.add-after': 'Ajouter après',
  'survey.shape.add-after-corner': ({ number }, f) => `Ajouter après le coin ${f.number(number)}`,
  'survey.shape.take-out-corner': ({ number }, f) => `Retirer le coin ${f.number(number)}`,
  'survey.shape.backsplash': 'Crédence, hauteur',

  'survey.surface.heading': 'En quelle matière ?',
  'survey.surface.another': 'Une autre matière',
  'survey.surface.fingernail': 'Passez l’ongle dessus',

  'survey.sink.bowl-length': 'Cuve, longueur',
  'survey.sink.bowl-width': 'Cuve, largeur',
  'survey.sink.bowl-depth': 'Cuve, profondeur',
  'survey.sink.bowl-n-length': ({ number }, f) => `Cuve ${f.number(number)}, longueur`,
  'survey.sink.bowl-n-width': ({ number }, f) => `Cuve ${f.number(number)}, largeur`,
  'survey.sink.bowl-n-depth': ({ number }, f) => `Cuve ${f.number(number)}, profondeur`,
  'survey.sink.rim': 'Rebord',
  'survey.sink.handles': 'Poignées du robinet',
  'survey.sink.sprayer': 'Douchette extractible',
  'survey.sink.drainboard': 'Égouttoir',

  'survey.parts': 'Lesquels a-t-il ?',
  'survey.fact.varnished': 'Le bois est-il verni ou laqué ?',
  'survey.fact.kneaded': 'A-t-on pétri de la pâte directement dessus ?',
  'survey.fact.hotFood': 'A-t-on posé des aliments chauds directement dessus, sans plat ?',
  'survey.last-hot.own': 'Son propre dernier usage à chaud, s’il est autre',
  'survey.last-hot.all': 'Quand quelque chose a-t-il servi à chaud ici pour la dernière fois ?',
  'survey.last-hot.all.hint':
    'Feux, four, évier, plans, bouilloire ; un nettoyage à chaud compte. Les repos comptent alors depuis ce moment, et tout se nettoie à l’eau froide seulement. Ce sera redemandé pendant le chantier.',
  'survey.last-hot.forget': 'Non indiqué',
  'survey.cupboard.place': 'Où est-il ?',
  'survey.cupboard.over-counter': 'Au-dessus du plan de travail',
  'survey.cupboard.under-counter': 'Sous le plan de travail',

  'survey.shelves': 'Étagères',
  'survey.shelves.drawer': 'Fonds à tapisser',
  'survey.shelves.cupboard': 'Étagères à tapisser',
  'survey.shelves.length': ({ number }, f) => `Étagère ${f.number(number)}, longueur`,
  'survey.shelves.depth': ({ number }, f) => `Étagère ${f.number(number)}, profondeur`,
  'survey.shelves.take-out': ({ number }, f) => `Retirer l’étagère ${f.number(number)}`,
  'survey.shelves.one-more': 'Une de plus comme la dernière',
  'survey.shelves.add': 'Ajouter une étagère',

  'survey.appliance.power': 'Puissance',
  'survey.appliance.power.empty': 'sur sa plaque',

  'survey.cooktop.kind': 'Genre de foyers',
  'survey.cooktop.several': 'De plusieurs genres',
  'survey.cooktop.between': 'Qu’y a-t-il entre les foyers ?',
  'survey.cooktop.each': 'Chaque foyer',
  'survey.cooktop.add': 'Ajouter un foyer',
  'survey.cooktop.called': 'Nom',
  'survey.cooktop.power': ({ name }) => `Puissance, ${name}`,
  'survey.cooktop.across': ({ name }) => `Diamètre, ${name}`,
  'survey.cooktop.lamp': 'Un témoin montre-t-il qu’il est encore chaud ?',
  'survey.cooktop.volts': ({ name }) => `Volts sur sa plaque, ${name}`,
  'survey.cooktop.volts.empty': 'comme son circuit',
  'survey.cooktop.senses': ({ name }) => `Détecte la casserole, ${name}`,
  'survey.lamp.lamp': 'Un témoin de chaleur résiduelle',
  'survey.lamp.none': 'Pas de témoin',
  'survey.senses.no': 'Non, ou inconnu',
  'survey.senses.yes': 'Oui : il se limite, et peut ne pas rougir à vide',
  'survey.cooktop.burner-kind': 'Genre',
  'survey.cooktop.take-out': ({ name }) => `Retirer le foyer ${name}`,

  'survey.oven.cleaning': 'Comment se nettoie-t-il ?',
  'survey.oven.steam-trap':
    'Le nettoyage vapeur ne cachérise pas. Le plan traite ce four comme un four sans pyrolyse.',
  'survey.oven.catalytic-trap':
    'Des parois catalytiques ne cachérisent pas. Le plan traite ce four comme un four sans pyrolyse.',
  'survey.oven.cycle': 'Durée du cycle',
  'survey.oven.cycle.empty': 'selon la notice',
  'survey.oven.racks': 'Que dit la notice des grilles ?',
  'survey.oven.heated-by': 'Chauffé par',
  'survey.oven.range': 'En un seul appareil avec',
  'survey.oven.no-cooktop': 'Aucune plaque de cuisson',
};
