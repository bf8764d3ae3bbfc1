import type { recordPage as english } from '../english/record-page.ts';
import type { TranslationOf } from '../model/translation.ts';
import type { Formatter } from '../model/message.ts';

function from(count: number, f: Formatter): string {
  return `d’après ${f.number(count)} ${f.plural(count, { one: 'relevé', other: 'relevés' })}`;
}

/** The Record page around the report itself. */
export const recordPage: TranslationOf<typeof english> = {
  'record-page.title': 'Rapport',
  'record-page.none': 'Pas encore de chantier. Ce que vous y ferez sera gardé ici.',
  'record-page.list-zone': ({ zone }) =>
    `Commencé, à l’heure de cette tablette (${(zone.split('/').at(-1) ?? zone).replaceAll('_', ' ')}) :`,
  'record-page.run-status': ({ openedWallMs, zone, status }, f) =>
    `${f.shortMoment(openedWallMs, zone)}, ${status}`,
  'record-page.status.open': 'ouvert',
  'record-page.status.closed': 'clos',
  'record-page.status.completed': 'terminé',
  'record-page.status.failed': 'échoué',
  'record-page.status.stopped': 'arrêté',
  'record-page.region': 'Rapport du chantier',
  'record-page.print': 'Imprimer',
  'record-page.save-text': 'Enregistrer en texte',
  'record-page.save-calendar': 'Enregistrer ce qui vient pour un agenda',
  'record-page.save-run': 'Enregistrer le chantier dans un fichier',
  'record-page.import': 'Reprendre un chantier d’un fichier',
  'record-page.history': 'Ce qui est arrivé à un endroit au fil des chantiers',
  'record-page.history.reading': 'Lecture des chantiers de cette cuisine …',
  'record-page.history.place': 'Endroit',
  'record-page.history.nothing': 'Aucun chantier n’y a rien fait.',
  'record-page.history.run': ({ wallMs, zone, purpose, status }, f) =>
    `${f.date(wallMs, zone)}, ${purpose}, ${status}`,
  'record-page.history.rested': ({ rest }, f) => `Repos : ${f.say(rest)}`,
  'record-page.everything': 'Tout dans un fichier',
  'record-page.everything.about':
    'Toutes les cuisines, les chantiers, les coches et les choix de cette tablette, à garder ailleurs. Ce qui est repris s’ajoute : rien de ce qui est ici ne change.',
  'record-page.everything.save': 'Tout enregistrer dans un fichier',
  'record-page.everything.bring-back': 'Tout reprendre d’un tel fichier',
  'record-page.restored': ({ kitchens, runs, same }, f) =>
    `Repris : ${f.number(kitchens)} ${f.plural(kitchens, { one: 'cuisine', other: 'cuisines' })} et ${f.number(runs)} ${f.plural(runs, { one: 'chantier', other: 'chantiers' })}.${same > 0 ? ` Déjà ici : ${f.number(same)}.` : ''}`,
  'record-page.restored.left': ({ count }, f) => `Non repris, ${f.number(count)} :`,
  'record-page.restored.run': ({ path, name, why }, f) => `${path} (${name}) : ${f.say(why)}`,

  'record-page.damaged': 'Le journal est endommagé ; la suite n’est pas racontée.',
  'record-page.no-digest':
    'Pas d’empreinte : ce navigateur n’en calcule une que sur une connexion sûre.',
  'record-page.moments': 'Tout, moment par moment',
  'record-page.picture': ({ places }, f) =>
    `La cuisine vue d’en haut. ${places.map((one) => f.say(one)).join(' ; ')}.`,
  'record-page.picture.place': ({ number, name, state }, f) =>
    `${f.number(number)} ${name} : ${f.say(state)}`,
  'record-page.state.heated': 'cachérisé par la chaleur',
  'record-page.state.poured': 'cachérisé par l’eau bouillante',
  'record-page.state.steamed': 'cachérisé par la vapeur',
  'record-page.state.covered': 'couvert ou tapissé',
  'record-page.state.cleaned': 'simplement nettoyé',
  'record-page.state.closed-up': 'fermé, hors d’usage',
  'record-page.state.not-purged': 'non cachérisé',
  'record-page.state.not-done': 'non terminé',
  'record-page.state.not-yet': 'encore à venir',
  'record-page.state.untouched': 'rien de prévu',
  'record-page.covered-too': 'couvert aussi',
  'record-page.letter.heated': 'F',
  'record-page.letter.poured': 'E',
  'record-page.letter.steamed': 'P',
  'record-page.letter.covered': 'C',
  'record-page.letter.cleaned': 'S',
  'record-page.letter.closed-up': 'H',
  'record-page.letter.not-purged': 'X',
  'record-page.letter.not-done': 'O',
  'record-page.letter.not-yet': '…',
  'record-page.letter.untouched': '–',
  'record-page.mark.meat': 'V',
  'record-page.mark.dairy': 'L',
  'record-page.mark.pareve': 'N',
  'record-page.table': 'Endroit par endroit',
  'record-page.column.place': 'Endroit, et ce qu’il est maintenant',
  'record-page.column.how': 'Ce qui a été fait',
  'record-page.column.when': 'Quand',
  'record-page.column.rested': 'Repos',
  'record-page.column.source': 'Selon quelle source, la parole de qui',

  'record-page.recheck.region': 'Un événement depuis',
  'record-page.recheck.title': 'Il s’est passé quelque chose depuis ?',
  'record-page.recheck.about':
    'Dites ce qui est touché. Un petit plan pour cela seul demande d’abord s’il faut cachériser à nouveau ; d’ici là, rien de chaud.',
  'record-page.recheck.open': 'Il s’est passé quelque chose',
  'record-page.recheck.what': 'Que s’est-il passé ?',
  'record-page.recheck.touches': 'Qu’est-ce qui est touché ?',
  'record-page.recheck.make-plan': 'Faire un petit plan pour cela',
  'record-page.recheck.back': 'Retour',

  'record-page.calibration.title': 'Ce que ce chantier a appris',
  'record-page.calibration.used':
    'D’après vos relevés. Le prochain plan en tient compte ; repos, maintiens et limites ne changent pas.',
  'record-page.calibration.not-used':
    'D’après vos relevés. Le prochain plan n’en tient pas encore compte ; repos, maintiens et limites ne changent pas.',
  'record-page.calibration.boil': ({ name, takesS, plannedS }, f) =>
    `${name} : bout en ${f.duration(takesS)} (prévu ${f.duration(plannedS)})`,
  'record-page.calibration.glow': ({ name, takesS, plannedS }, f) =>
    `${name} : rouge après ${f.duration(takesS)} (prévu ${f.duration(plannedS)})`,
  'record-page.calibration.heat-up': ({ name, takesS, plannedS }, f) =>
    `${name} : au maximum après ${f.duration(takesS)} (prévu ${f.duration(plannedS)})`,
  'record-page.calibration.cool': ({ name, takesS, plannedS }, f) =>
    `${name} : se touche sans danger après ${f.duration(takesS)} (prévu ${f.duration(plannedS)})`,
  'record-page.calibration.pour': ({ flowLMin }, f) =>
    `Votre versement : ${f.measure(flowLMin, 'L', 1)} par minute`,
  'record-page.calibration.reach': ({ percent }, f) =>
    `Une bouilloire porte à ${f.number(percent)} % de la distance calculée`,
  'record-page.calibration.grounds': ({ count, spreadPercent }, f) =>
    `${from(count, f)}, ±${f.number(spreadPercent)} %`,
  'record-page.calibration.grounds-longest': ({ count }, f) =>
    `${from(count, f)} ; le plus long compte`,
  'record-page.calibration.set-apart': ({ grounds, count }, f) =>
    `${f.say(grounds)} ; ${f.number(count)} ${f.plural(count, { one: 'écarté comme trop éloigné', other: 'écartés comme trop éloignés' })}`,
  'record-page.calibration.leave-out': 'Écarter le dernier relevé',
  'record-page.calibration.count': 'Compter le dernier relevé',
};
