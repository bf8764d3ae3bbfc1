import type { filled as english } from '../../english/problems/filled.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Why a field that the file left out was filled as it was. */
export const filled: TranslationOf<typeof english> = {
  'problems.filled.not-told': 'non indiqué',
  'problems.filled.plan-asks': 'non indiqué : le plan demande',
  'problems.filled.designation': 'personne n’a dit à quoi il est destiné',
  'problems.filled.holes': 'aucune découpe n’a été dessinée',
  'problems.filled.back-edges': 'aucun bord ne touche un mur',
  'problems.filled.backsplash': 'aucune crédence n’a été indiquée',
  'problems.filled.tap': 'une poignée sans douchette est usuelle',
  'problems.filled.drainboard': 'aucun égouttoir n’a été indiqué',
  'problems.filled.racks': 'les grilles sortent, sauf si le fabricant les admet dedans',
  'problems.filled.shelves': 'aucune étagère n’a été mesurée',
  'problems.filled.own-rows': 'aucune ligne n’a été changée',
  'problems.filled.people': 'une personne travaille, sauf indication contraire',
  'problems.filled.rest-days': 'rien n’est prévu à Chabbat ni aux fêtes, sauf indication contraire',
  'problems.filled.overrides': 'aucune réponse d’un rabbin n’a été entrée',
  'problems.filled.ceiling': 'une hauteur de plafond usuelle',
  'problems.filled.hood': 'aucune hotte indiquée : compte comme aucune d’ici là',
  'problems.filled.kitchen-mains': 'la tension du secteur de la cuisine',
  'problems.filled.country-mains': 'la tension du secteur du pays',
  'problems.filled.vessel-power':
    'usuel pour une bouilloire électrique de ce pays ; 0 pour ce qui va sur le feu',
  'problems.filled.utensil-count': 'un, sauf indication contraire',
  'problems.filled.vessel-count': 'un, sauf indication contraire',
  'problems.filled.altitude': 'niveau de la mer : en montagne l’eau bout moins chaud',
  'problems.filled.tap-cold': 'usuel pour l’eau du réseau et les essais de bouilloires',
  'problems.filled.circuits': 'aucun circuit n’a été indiqué',
  'problems.filled.vessels': 'aucune bouilloire n’a été indiquée',
};
