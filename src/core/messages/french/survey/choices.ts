import type { choices as english } from '../../english/survey/choices.ts';
import type { TranslationOf } from '../../model/translation.ts';

/**
 * What a household chooses among, and how to know each by eye, fingernail or
 * magnet; most names are in the common section. Common practice, no published source.
 */
export const choices: TranslationOf<typeof english> = {
  'survey.material.stainless-steel': 'Métal gris dans la masse ; sonne quand on frappe.',
  'survey.material.cast-iron': 'Noire, lourde, rugueuse ; un aimant tient fort.',
  'survey.material.enamelled-steel':
    'Couche vitreuse sur métal ; un aimant tient, les éclats montrent un métal sombre.',
  'survey.material.porcelain': 'Blanche, vitreuse et épaisse ; aucun aimant ne tient.',
  'survey.material.ceramic': 'Terre cuite émaillée ; un éclat montre un intérieur mat.',
  'survey.material.glass': 'Clair ou teinté, froid à la main, tranche verte.',
  'survey.material.glass-ceramic': 'Verre plat et sombre d’une plaque de cuisson.',
  'survey.material.granite':
    'Pierre mouchetée, jamais deux endroits pareils ; une clé ne raye pas.',
  'survey.material.marble': 'Pierre veinée ; ternit où du citron est resté.',
  'survey.material.soapstone': 'Grise et soyeuse ; l’ongle la marque presque.',
  'survey.material.concrete': 'Gris coulé à pores fins ; boit l’eau s’il n’est pas scellé.',
  'survey.material.quartz-composite':
    'Grains réguliers dans la résine ; le dessous est lisse et pareil.',
  'survey.material.acrylic': 'Tiède à la main, sans joint, se ponce comme du plastique dur.',
  'survey.material.laminate': 'Feuille imprimée mince sur panneau ; une ligne brune au bord.',
  'survey.material.wood': 'Verni ou huilé ; une goutte d’eau reste dessus.',
  'survey.material.raw-wood': 'Une goutte d’eau s’enfonce et laisse une tache sombre.',
  'survey.material.tile': 'Carreaux émaillés avec des joints entre eux.',
  'survey.material.plastic': 'Léger, tiède à la main, cède sous l’ongle.',
  'survey.material.silicone': 'Mou et caoutchouteux.',
  'survey.material.unknown': 'Le plan prend la manière la plus stricte et note la question.',

  'survey.condition.smooth': 'L’ongle passé dessus n’accroche jamais.',
  'survey.condition.scratched': 'L’ongle accroche à des lignes que l’on voit.',
  'survey.condition.cracked': 'Une ligne entre profond, ou un éclat manque.',
  'survey.condition.porous': 'Une goutte d’eau laissée une minute l’assombrit.',
  'survey.condition.unknown': 'Regardez avant le plan : cela peut changer la manière.',

  'survey.burner-type.electric-coil': 'Une spirale nue qui devient rouge.',
  'survey.burner-type.solid-plate': 'Un disque de fonte fermé ; ne rougit pas.',
  'survey.burner-type.radiant-glass': 'Rougit à travers un verre sombre.',
  'survey.burner-type.induction':
    'Ne rougit jamais ; ne chauffe qu’une casserole qui tient un aimant.',
  'survey.burner-type.gas-sealed': 'Flamme sur un dessus fermé.',
  'survey.burner-type.gas-open': 'On voit en dessous, à côté du brûleur.',
  'survey.burner-type.gas-wok': 'Un grand anneau, souvent deux flammes l’une dans l’autre.',
  'survey.burner-type.commercial-open': 'Grosses têtes de fonte d’une cuisinière de salle.',
  'survey.burner-type.portable-plate': 'Posée sur le plan de travail, avec sa propre fiche.',

  'survey.cleaning.pyrolytic.name': 'Pyrolyse',
  'survey.cleaning.pyrolytic.tell': (_, f) =>
    `Verrouille sa porte et chauffe des heures ; la notice dit « pyrolyse », environ ${f.measure(450, '°C')} et plus.`,
  'survey.cleaning.steam.name': 'Nettoyage vapeur',
  'survey.cleaning.steam.tell':
    'De l’eau sur la sole, une demi-heure, pas de verrou. Le nettoyage vapeur ne cachérise pas.',
  'survey.cleaning.catalytic.name': 'Parois catalytiques',
  'survey.cleaning.catalytic.tell':
    'Parois grises rugueuses qui « se nettoient » en cuisant. Cela ne cachérise pas non plus.',
  'survey.cleaning.none.name': 'Aucun',
  'survey.cleaning.none.tell': 'Nettoyé à la main seulement.',

  'survey.hood.none.name': 'Pas de hotte',
  'survey.hood.none.tell': 'Rien n’aspire au-dessus des feux.',
  'survey.hood.recirculating.name': 'À recyclage',
  'survey.hood.recirculating.tell':
    'Renvoie l’air dans la pièce par un filtre. Elle n’évacue ni gaz ni chaleur.',
  'survey.hood.vented.name': 'Vers l’extérieur',
  'survey.hood.vented.tell': 'Un conduit mène dehors ; par temps froid on le sent au mur.',

  'survey.vessel-kind.electric-kettle': 'Bouilloire électrique',
  'survey.vessel-kind.stove-kettle': 'Bouilloire à poser sur le feu',
  'survey.vessel-kind.urn': 'Fontaine à eau chaude',
  'survey.vessel-kind.pot': 'Marmite',

  'survey.body.steel': 'Acier',
  'survey.body.plastic': 'Plastique',
  'survey.body.glass': 'Verre',
  'survey.body.double-wall': 'Double paroi',
  'survey.body.enamel': 'Émail',

  'survey.surface.metal': 'Métal',
  'survey.surface.enamel': 'Émail',
  'survey.surface.glass-ceramic': 'Verre',

  'survey.purpose.new-kitchen': 'Elle n’était pas cacher, ou personne ne sait.',
  'survey.purpose.passover': 'Elle est cacher et passe à la fête.',
  'survey.purpose.mix-up':
    'Viande et lait se sont rencontrés, ou quelque chose de douteux a été cuit.',

  'survey.heat.electric': 'Électricité',
  'survey.heat.gas': 'Gaz',
  'survey.racks.out': 'Elles sortent',
  'survey.racks.in': 'Elles peuvent rester',
  'survey.turn.left': 'tourner à gauche',
  'survey.turn.straight': 'tout droit',
  'survey.turn.right': 'tourner à droite',
  'survey.land.israel': 'la terre d’Israël',
  'survey.land.diaspora': 'la diaspora',
  'survey.rest-days.yes': 'Ni travail ni son',
  'survey.rest-days.no': 'Planifier à travers',
  'survey.yes': 'Oui',
  'survey.no': 'Non',
};
