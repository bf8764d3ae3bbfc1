import type { dialogs as english } from '../../../english/run/sheets/dialogs.ts';
import type { TranslationOf } from '../../../model/translation.ts';

/** What lies over the run while a person answers, looks up, or tells something. */
export const dialogs: TranslationOf<typeof english> = {
  'run.prepare.list': 'La liste',
  'run.prepare.item': ({ name, amount }, f) => `${f.say(name)} : ${f.say(amount)}`,

  'run.glance.open': 'La cuisine en grand',
  'run.glance.hot': ({ names }, f) => `Chaud : ${names.map((one) => f.say(one)).join(', ')}`,
  'run.glance.nothing-hot': 'Rien n’est chaud',
  'run.glance.rests-one': ({ name, until }, f) => `${f.say(name)} : repos jusqu’à ${f.say(until)}`,
  'run.glance.rests': ({ count, until }, f) =>
    `${f.number(count)} au repos jusqu’à ${f.say(until)}`,
  'run.glance.next': ({ from, step }, f) => `Ensuite, ${f.say(from)} : ${f.say(step)}`,
  'run.glance.next-now': ({ step }, f) => `Ensuite : ${f.say(step)}`,
  'run.glance.here': 'ici',
  'run.glance.then': 'ensuite',

  'run.fault.first': ({ fault }, f) => `${f.say(fault)} : faites d’abord ceci`,
  'run.fault.oven-shut': 'Gardez la porte du four fermée : l’air nourrit le feu.',
  'run.fault.policy.stop-run':
    'Le signaler arrête le chantier et vous guide pour tout mettre en sécurité.',
  'run.fault.policy.suspend':
    'Le signaler suspend le chantier jusqu’à ce que vous disiez que c’est réglé.',
  'run.fault.policy.note': 'Le signaler le consigne ; le chantier continue.',
  'run.fault.tell': ({ fault }, f) => `Signaler : ${f.say(fault)}`,
  'run.fault.well': 'Tout va bien',

  'run.happened.danger': 'Quelqu’un est en danger',
  'run.happened.burned.about': '20 minutes de refroidissement commencent aussitôt',
  'run.happened.here': 'À cette étape',
  'run.happened.other': 'Autre',
  'run.happened.used': 'Un élément a servi ou a été touché',
  'run.happened.broke-off': ({ step }, f) =>
    `Finalement, cela ne s’est pas poursuivi : ${f.say(step)}`,
  'run.happened.skip': 'Sauter cette étape',
  'run.happened.note': 'Écrire une note',
  'run.happened.what': 'Que s’est-il passé ?',
  'run.happened.words-first': 'Écrivez-le d’abord dans le champ : le rapport le garde.',
  'run.happened.skip.why': 'Pourquoi sauter cette étape ? C’est noté au rapport.',
  'run.happened.skip.press': 'La sauter',
  'run.happened.note.press': 'Garder la note',

  'run.used.which': 'Lequel ? Touchez-le sur l’image, ou son nom.',
  'run.used.words': 'Avec vos mots, si vous voulez : le rapport les garde',
  'run.used.press': ({ name }, f) => `Signaler : a servi – ${f.say(name)}`,
  'run.used.will-rest': ({ name, ready }, f) =>
    `${f.say(name)} : son repos recommencera, prêt ${f.say(ready)}.`,
  'run.used.rests': ({ name, ready }, f) =>
    `${f.say(name)} : de nouveau au repos, prêt ${f.say(ready)}.`,
  'run.used.not-begun': ({ name }, f) =>
    `${f.say(name)} : son repos n’a pas encore commencé, rien n’est perdu. C’est noté.`,
  'run.used.no-rest': ({ name }, f) =>
    `${f.say(name)} : pas de repos ici ; le rapport garde qu’il a servi.`,
  'run.used.put-away': ({ name }, f) =>
    `${f.say(name)} : le plan ne le cachérise pas. Le chantier attend qu’un autre le remplace, ou qu’on le dise bon.`,
  'run.used.take-back': 'Annuler : il n’a pas servi',
  'run.used.taken-back': ({ name }, f) =>
    `${f.say(name)} : tout reste comme avant. Le rapport garde les deux déclarations.`,
  'run.used.done-again': ({ steps }, f) =>
    `${f.number(steps)} ${f.plural(steps, { one: 'étape déjà faite est refaite', other: 'étapes déjà faites sont refaites' })}.`,

  'run.gate.go-past.title': 'Continuer sans cela',
  'run.gate.go-past.why': 'Pourquoi continuer sans cela ? C’est noté au rapport.',
  'run.gate.go-past.press': 'Continuer',
  'run.gate.no': 'Alors on attend. Occupez-vous-en d’abord ; quand c’est fait, pressez oui.',

  'run.ran-out.where': 'Où l’eau a-t-elle manqué ?',
  'run.ran-out.one-more': 'Une bouilloire de plus termine ces parties ; les suivantes avancent.',
  'run.ran-out.back': 'Plus en arrière',
  'run.ran-out.on': 'Plus en avant',
  'run.ran-out.share': ({ percent }, f) => `${f.number(percent)} % de la bande de cette bouilloire`,
  'run.ran-out.about':
    'Le reste est réparti de nouveau, selon la portée de cette bouilloire. L’eau froide sur ce qui est versé vient d’abord, comme toujours.',
  'run.ran-out.press': 'Vide à cet endroit',

  'run.all-steps': 'Toutes les étapes',
  'run.all-steps.show': 'Montrer',
  'run.all-steps.blocked': ({ state, why }, f) => `${f.say(state)} : ${f.say(why)}`,
  'run.step-state.waiting': 'attend',
  'run.step-state.ready': 'peut commencer',
  'run.step-state.active': 'en cours',
  'run.step-state.checking': 'attend votre réponse',
  'run.step-state.stalled': 'bloquée',
  'run.step-state.unwinding': 'en cours de mise en sécurité',
  'run.step-state.settled': 'finie',
  'run.outcome.done': 'faite',
  'run.outcome.skipped': 'sautée',
  'run.outcome.failed': 'échouée',
  'run.outcome.stopped': 'arrêtée',
  'run.outcome.not-run': 'non commencée',

  'run.choices.title': 'Pédale, voix et sons',
  'run.choices.pedalActs': 'La pédale déclenche l’action principale',
  'run.choices.pedalActs.about':
    'Page suivante ou flèche droite ; sinon, elle passe à l’étape suivante. Une pédale ne répond jamais à une question de sécurité.',
  'run.choices.spoken': 'Les consignes sont dites à voix haute',
  'run.choices.spoken.about': 'Par une voix de cet appareil ; rien n’est envoyé ailleurs.',
  'run.choices.soonSounds': 'Son pour « à peu près maintenant »',
  'run.choices.soonSounds.about':
    'Bouilloires qui devraient bouillir, foyers qui devraient rougir.',
  'run.choices.doneSounds': 'Son pour une attente terminée',
  'run.choices.doneSounds.about': 'Repos, refroidissements, cycles.',
  'run.settings.version': ({ version }) => `Version de l’application : ${version}`,
  'run.choices.always': 'Ce qui demande une réponse, ou présente un danger, sonne toujours.',
  'run.choices.say-again': 'Redire la dernière consigne',
  'run.choices.language': 'Langue',
  'run.choices.voice.asking': 'Recherche d’une voix …',
  'run.choices.voice.ready': 'Une voix de cet appareil parle.',
  'run.choices.voice.no-voice':
    'Cet appareil n’a pas de voix française utilisable sans réseau : rien n’est dit. Ajoutez-en une dans les réglages vocaux de l’appareil.',
  'run.choices.voice.failed': ({ why }) =>
    `La voix n’a pas pu démarrer : rien n’est dit. Rechargez la page quand rien n’est chaud. (${why})`,
  'run.keys': 'Touches',
  'run.keys.main': 'Espace, Entrée',
  'run.keys.main.does': 'action principale',
  'run.keys.forward': 'Page suivante, flèche droite',
  'run.keys.forward.does': 'étape suivante (ou action principale, selon le réglage ci-dessus)',
  'run.keys.back': 'Page précédente, flèche gauche',
  'run.keys.back.does': 'étape précédente',
  'run.keys.tab': 'Tab, puis Entrée',
  'run.keys.tab.does': 'tous les autres boutons, et toutes les questions de sécurité',
  'run.keys.stop': 'S, ou Échap quand rien n’est ouvert par-dessus',
  'run.keys.stop.does': 'Arrêt – sécurité',
  'run.keys.repeat': 'R',
  'run.keys.repeat.does': 'redire la dernière consigne',
  'run.keys.escape': 'Échap',
  'run.keys.escape.does': 'fermer ce qui est ouvert par-dessus',
};
