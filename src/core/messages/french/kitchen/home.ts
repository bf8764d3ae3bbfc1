import type { home as english } from '../../english/kitchen/home.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** The kitchens of this tablet, and the one that is open from above. */
export const home: TranslationOf<typeof english> = {
  'kitchen.welcome': 'Rendez votre cuisine cacher, ou prête pour Pessah',
  'kitchen.welcome.about':
    'Dites ce qui s’y trouve. Recevez un plan heure par heure. Laissez-vous guider, étape par étape.',
  'kitchen.welcome.no-ruling':
    'Rien n’est tranché ici : votre rabbin décide. Notices des fabricants, règles locales et métiers agréés passent d’abord.',
  'kitchen.welcome.begin': 'Décrire votre cuisine',
  'kitchen.new-name': 'Ma cuisine',

  'kitchen.demos': 'Partir d’une cuisine',
  'kitchen.demos.first': 'Ou en regarder une comme la vôtre',
  'kitchen.demos.another': 'Une autre cuisine',
  'kitchen.describe-new': 'Décrire une nouvelle cuisine',
  'kitchen.open-file': 'Ouvrir un fichier de cuisine',
  'kitchen.demo.flat-coils.name': 'Appartement à spirales',
  'kitchen.demo.flat-coils.tells': 'Spirales électriques, un évier inox, 120 V',
  'kitchen.demo.mountain-gas.name': 'Maison de montagne',
  'kitchen.demo.mountain-gas.tells': (_, f) => `Gaz à ${f.measure(2100, 'm')}, pour Pessah`,
  'kitchen.demo.flat-glass-230.name': 'Appartement, plaque vitrocéramique',
  'kitchen.demo.flat-glass-230.tells': 'Vitrocéramique, four en colonne, 230 V',
  'kitchen.demo.hall.name': 'Cuisine d’une salle de réception',
  'kitchen.demo.hall.tells': 'Huit foyers, deux fours, une équipe de trois',

  'kitchen.problems.file': 'Ce fichier n’a pas pu être lu',
  'kitchen.problems.file.note': 'Rien de ce que vous aviez n’a changé.',
  'kitchen.problems.plan': 'Pas encore de plan pour cette cuisine',
  'kitchen.problems.plan.note': 'La cuisine elle-même est gardée. Modifiez-la pour corriger cela.',
  'kitchen.problem.at': ({ path, line }) => `${path}, ligne ${line}`,
  'kitchen.problem': ({ found, allowed, advice }, f) =>
    `Trouvé : ${f.say(found)}. Admis : ${f.say(allowed)}. ${f.say(advice)}`,

  'kitchen.yours': 'Votre cuisine',
  'kitchen.yours.demo':
    'Votre cuisine, telle qu’en démonstration ; le premier changement en fait votre copie',
  'kitchen.save-file': 'Enregistrer dans un fichier',
  'kitchen.change': 'La modifier',
  'kitchen.press-to-change': 'Appuyez sur un élément de l’image pour le déplacer ou le changer.',
  'kitchen.see-plan': 'Voir le plan',
  'kitchen.empty': 'Rien n’y est encore. Modifiez-la pour dire ce qui s’y trouve.',
  'kitchen.fixtures': 'Éléments',
  'kitchen.fixtures.heading': 'Ce qui s’y trouve',
  'kitchen.fixtures.is': ({ what }, f) => f.capital(f.say(what)),
  'kitchen.fixtures.belongs': ({ what, to }, f) => `${f.capital(f.say(what))}, ${f.say(to)}`,
  'kitchen.belongs.meat': 'viande',
  'kitchen.belongs.dairy': 'lait',
  'kitchen.belongs.pareve': 'parvé (neutre)',

  'kitchen.choices.why': 'Pourquoi',
  'kitchen.choices.custom': 'Coutume',
  'kitchen.choices.lanes': 'Direction du versement',
  'kitchen.choices.pour-until': 'Fin du versement',
  'kitchen.choices.people': 'Personnes au travail',
  'kitchen.choices.units': 'Unités',
  'kitchen.units.metric': 'Métriques (cm, L, °C)',
  'kitchen.units.us-customary': 'États-Unis (po, qt, °F)',
  'kitchen.purpose.new-kitchen': 'Nouvelle cuisine',
  'kitchen.purpose.passover': 'Pessah',
  'kitchen.purpose.mix-up': 'Après un mélange',
  'kitchen.lanes.back-to-front': 'Du fond vers l’avant (coutume)',
  'kitchen.lanes.shortest': 'Le plus court chemin',
  'kitchen.leaven-day.dawn-nightfall': 'De l’aube à la nuit (l’heure la plus tôt)',
  'kitchen.leaven-day.sunrise-sunset': 'Du lever au coucher du soleil',
  'kitchen.pour-until.reached': 'Chaque point est atteint',
  'kitchen.pour-until.heated': 'C’est chauffé à cœur (aucun texte ne le demande)',

  'kitchen.hardware.altitude': 'Altitude',
  'kitchen.hardware.altitude.value': ({ altitudeM }, f) => f.shortMeasure(altitudeM, 'm', 3),
  'kitchen.hardware.mains': 'Secteur',
  'kitchen.hardware.mains.value': ({ supplyV }, f) => `${f.shortNumber(supplyV, 3)} V`,
  'kitchen.hardware.tap': 'Eau du robinet',
  'kitchen.hardware.tap.value': ({ tapColdC }, f) => f.shortMeasure(tapColdC, '°C', 3),
  'kitchen.hardware.vessel': ({ count, maxFillL, ratedW }, f) =>
    `${count > 1 ? `${f.number(count)} × ` : ''}${f.shortMeasure(maxFillL, 'L', 3)}${ratedW > 0 ? `, ${f.shortNumber(ratedW, 3)} W` : ''}`,
  'kitchen.hardware.vessel.on': ({ vessel, circuit }, f) => `${f.say(vessel)}, sur ${circuit}`,
  'kitchen.hardware.circuit': ({ ratingA, voltsV }, f) =>
    `${f.shortNumber(ratingA, 3)} A sous ${f.shortNumber(voltsV, 3)} V`,
  'kitchen.hardware.hood': 'Hotte',
  'kitchen.hardware.hood.none': 'Pas de hotte',
  'kitchen.hardware.hood.unknown': 'pas encore indiqué : compte comme aucune',
  'kitchen.hardware.hood.vented': ({ flowLS }, f) =>
    `Hotte vers l’extérieur, ${f.shortMeasure(flowLS, 'L/s', 3)}`,
  'kitchen.hardware.hood.recirculating': 'Hotte à recyclage (n’évacue aucun gaz)',
  'kitchen.hardware.window': 'Fenêtre',
  'kitchen.hardware.window.not-told': 'pas encore indiqué : compte comme aucune',
  'kitchen.hardware.window.none': 'aucune qui s’ouvre',
  'kitchen.hardware.window.opens': ({ areaM2 }, f) =>
    `ouvre sur ${f.shortMeasure(areaM2, 'm²', 3)}`,

  'kitchen.kept': 'Cuisines sur cette tablette',
  'kitchen.kept.changed': ({ wallMs, zone }, f) => `changée ${f.dateTime(wallMs, zone)}`,
  'kitchen.kept.open': ({ wallMs, zone }, f) => `ouverte, changée ${f.dateTime(wallMs, zone)}`,
  'kitchen.kept.failed': ({ why }, f) =>
    `Le stockage de cette tablette n’a pas répondu, et rien n’a changé. ${f.say(why)}`,
  'kitchen.kept.more': 'Plus',
  'kitchen.kept.less': 'Moins',
  'kitchen.kept.for': ({ name }) => `pour « ${name} »`,
  'kitchen.kept.another-name': 'Un autre nom',
  'kitchen.kept.rename': 'Renommer',
  'kitchen.kept.duplicate': 'Dupliquer',
  'kitchen.kept.delete': 'Supprimer',
  'kitchen.kept.sure': ({ name }) => `Supprimer « ${name} » ?`,
  'kitchen.kept.keep': 'La garder',
  'kitchen.kept.delete-it': 'La supprimer',
  'kitchen.kept.deleted': ({ name }) =>
    `« ${name} » a été supprimée. Elle peut être rétablie pendant une semaine.`,
  'kitchen.kept.put-back': 'Rétablir',
};
