import type { runEnds as english } from '../../english/run/ends.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Before a run and after it; a run in progress needs none of it. */
export const runEnds: TranslationOf<typeof english> = {
  'run.start.title': 'Prêt à commencer',
  'run.start.about': ({ steps, lengthS }, f) =>
    `${f.number(steps)} ${f.plural(steps, { one: 'étape', other: 'étapes' })} sur ${f.duration(lengthS)}. Arrêtez et revenez quand il le faut : les minuteurs continuent, rien ne se perd.`,
  'run.start.kept.kept': 'Ce qui est noté reste sur cette tablette jusqu’à ce que vous l’effaciez.',
  'run.start.kept.may-be-deleted':
    'Ce navigateur peut effacer ce qui est stocké si la place manque ou après des jours sans usage. Ajoutez l’application à l’écran d’accueil ; enregistrez le chantier dans un fichier à la fin.',
  'run.start.kept.not-supported':
    'Ce navigateur ne promet pas de garder ce qui est stocké : enregistrez le chantier dans un fichier.',
  'run.start.kept.unknown':
    'Le navigateur n’a pas dit s’il garde ce qui est stocké : enregistrez le chantier dans un fichier.',
  'run.kept.title': 'Ce que ce navigateur peut effacer',
  'run.kept.room':
    'Quand la place manque sur l’appareil, un navigateur peut effacer tout ce que l’application a stocké, d’un coup et sans demander.',
  'run.kept.safari':
    'Safari l’efface si cette page n’a pas servi pendant sept jours, sauf si l’application est sur l’écran d’accueil.',
  'run.kept.private':
    'Ce qui est fait dans une fenêtre privée disparaît à la fermeture de la fenêtre.',
  'run.kept.cleared': 'Vider les données du navigateur l’efface aussi.',
  'run.kept.do':
    'Donc : ajoutez l’application à l’écran d’accueil et enregistrez tout dans un fichier sous Rapport, avant et après un chantier.',
  'run.start.awake':
    'La tablette ne se réveille pas seule : laissez-la branchée, cette page ouverte et l’écran allumé.',
  'run.start.standing':
    'Suivez les notices des fabricants et les règles locales ; gaz, électricité et plomberie reviennent aux professionnels agréés. L’application ne rend aucun avis religieux et ne garantit pas la sécurité. En cas de besoin, appelez le numéro d’urgence local.',
  'run.start.hearing': 'Essai d’écoute',
  'run.start.hearing.ask': 'Entendez-vous l’alarme de là où vous travaillerez ?',
  'run.start.hearing.play': 'Jouer l’alarme',
  'run.start.hearing.again': 'La rejouer',
  'run.start.hearing.heard': 'Je l’ai entendue',
  'run.start.hearing.done': 'Entendue.',
  'run.start.hearing.blocked':
    'Le navigateur a bloqué le son. Montez le volume, quittez le mode silencieux, puis rejouez-la.',
  'run.start.hearing.ready-now': 'Le son est prêt maintenant : rejouez-la.',
  'run.start.hearing.deaf': 'Je ne l’entends pas ; je surveillerai l’écran (noté au rapport)',
  'run.start.hearing.deaf-note':
    'Commencé sans son entendu : les alertes sont surveillées à l’écran.',
  'run.start.first': 'D’abord',
  'run.start.now': ({ wallMs, zone }, f) => `Il est ${f.moment(wallMs, zone)}`,
  'run.start.press': 'Commencer',
  'run.start.hear-first': 'Écoutez d’abord l’alarme',

  'run.closed.completed': 'Terminé',
  'run.closed.failed': 'Terminé par un incident',
  'run.closed.stopped': 'Arrêté',
  'run.closed.all-done': ({ of }, f) =>
    `${f.number(of)} étapes sur ${f.number(of)} ont été faites.`,
  'run.closed.some-done': ({ done, of, undone }, f) =>
    `${f.number(done)} ${f.plural(done, { one: 'étape', other: 'étapes' })} sur ${f.number(of)} ${f.plural(done, { one: 'a été faite', other: 'ont été faites' })}, ${f.number(undone)} non.`,
  'run.closed.mark':
    'Marquez maintenant les endroits traités, pour que personne ne s’en serve par erreur.',
  'run.closed.record': 'Voir le rapport',
};
