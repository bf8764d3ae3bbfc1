import type { refusals as english } from '../../english/run/refusals.ts';
import type { TranslationOf } from '../../model/translation.ts';

/**
 * Why the engine refuses what no screen offers, what was told already, and
 * changes of a running plan. It comes after the run's page: nobody asks for
 * any of it in its first moment.
 */
export const refusals: TranslationOf<typeof english> = {
  'engine.unknown.step': ({ id }) => `Étape « ${id} » ; admis : une étape du plan.`,
  // A second press reaches a step that has gone on meanwhile: said to a person, so without its name in the plan.
  'engine.unknown.stage':
    'Cette partie est déjà finie. Regardez ce que l’étape demande maintenant.',
  'engine.unknown.fault': ({ id }) => `Incident « ${id} » ; admis : un incident signalé.`,
  'engine.unknown.gate': ({ id }) =>
    `Question de sécurité « ${id} » ; admis : une question du plan.`,
  'engine.unknown.scope': ({ id, allowed }, f) => `Portée « ${id} » ; admis : ${f.list(allowed)}.`,
  'engine.unknown.question': ({ id }) => `Question « ${id} » ; admis : une question ouverte.`,
  'engine.unknown.fixture': ({ id }) =>
    `Élément « ${id} » ; admis : un élément du plan, ou un récipient qu’il cachérise. Choisissez-le sur l’image ; un récipient non cachérisé est rangé, et le plan refait.`,

  'engine.clock.below-build': ({ shownWallMs, fromWallMs }) =>
    `L’horloge indique ${shownWallMs} ; admis : ${fromWallMs} ou plus tard, date de cette application. Réglez le jour et l’heure de la tablette.`,
  'engine.clock.passed-missing': ({ missingS }, f) =>
    `Il manque ${f.duration(missingS)}. Dites si ce temps a passé, ou si l’heure a été réglée.`,
  'engine.clock.nothing-answered': 'Aucune réponse sur l’heure dans ce chantier.',

  'engine.reason.skip': 'Dites pourquoi vous sautez cette étape ; c’est noté au rapport.',
  'engine.reason.repeat': 'Dites pourquoi vous refaites cette étape ; c’est noté au rapport.',
  'engine.reason.override': 'Écrivez pourquoi on peut passer outre ; c’est noté au rapport.',
  'engine.reason.amend': 'Dites pourquoi le plan change ; c’est noté au rapport.',
  'engine.reason.correct': 'Écrivez comment vous le savez ; c’est noté au rapport.',
  'engine.reason.note': 'La note est vide. Écrivez quelque chose.',

  'engine.cooling.first': 'Dites d’abord comment le refroidissement de la brûlure s’est terminé.',
  'engine.cooling.short': 'Elle n’a pas encore refroidi 20 minutes : laissez couler l’eau.',
  'engine.fault.already-cleared': 'C’est déjà réglé.',

  'engine.session.open': 'Cette page a déjà ouvert le chantier.',
  'engine.session.not-open':
    'Cette page n’a pas ouvert le chantier. Ouvrez d’abord la séance, pour que l’interruption soit vue.',
  'engine.storage.down-already': 'Le stockage est déjà en panne.',
  'engine.storage.up-already': 'Le stockage fonctionne déjà.',
  'engine.recheck.stands':
    'On ne peut plus l’annuler : il s’est passé autre chose depuis. Son repos court depuis le signalement.',
  'engine.timer.ended': 'Ce minuteur est déjà fini ; il n’y a plus rien à répondre.',
  'engine.timer.cause': ({ found, most }) =>
    `cause vaut ${found} ; admis : de 1 à ${most}, comme le minuteur l’indique.`,
  'engine.timer.told': 'C’est déjà dit ; une fois par cause suffit.',
  'engine.timer.does-not-call': 'Ce minuteur ne demande pas de réponse.',
  'engine.timer.cannot-extend': 'Une alarme ne se reporte pas. Répondez-y quand elle sonne.',
  'engine.timer.extend-range': ({ byS, mostS }) =>
    `byS vaut ${byS} ; admis : plus de 0, au plus ${mostS}. Entrez le temps à ajouter.`,
  'engine.timer.cannot-correct': 'Seule une attente, comme un repos, peut être datée.',
  'engine.timer.correct-range': ({ sinceWallMs, mostS }) =>
    `sinceWallMs vaut ${sinceWallMs} ; admis : d’il y a ${mostS} s jusqu’à maintenant, selon le rapport. Entrez le dernier usage à chaud.`,

  'engine.clock.not-asked': 'Personne n’a demandé l’heure.',
  'engine.clock.range': ({ actualWallMs, fromWallMs, toWallMs }) =>
    `actualWallMs vaut ${actualWallMs} ; admis : de ${fromWallMs}, date de cette application, à ${toWallMs}, un jour après la dernière heure affichée. Réglez l’horloge de la tablette, ou entrez la bonne heure.`,

  'engine.amend.begun': ({ step }, f) =>
    `« ${f.say(step)} » a commencé ; seul ce qui n’a pas commencé peut changer.`,
  'engine.amend.bad-number': ({ id, field, found }) =>
    `Étape "${id}" : ${field} vaut ${found} ; admis : un nombre fini supérieur à 0.`,
  'engine.amend.need-twice': ({ id, need }) =>
    `Étape "${id}" : "${need}" est exigé deux fois ; admis : une fois.`,
  'engine.amend.no-stage': ({ id }) => `Étape "${id}" : aucune partie ; admis : une ou plusieurs.`,
  'engine.amend.stage-twice': ({ id, stage }) =>
    `Étape "${id}" : la partie "${stage}" figure deux fois ; admis : une fois.`,
  'engine.amend.timer-twice': ({ id, timer }) =>
    `Étape "${id}" : le minuteur "${timer}" figure deux fois dans une partie ; admis : une fois.`,
  'engine.amend.start-of-none': ({ id }) => `startS nomme "${id}", qui n’est pas une étape.`,
  'engine.amend.start-range': ({ id, found }) =>
    `startS de "${id}" vaut ${found} ; admis : un nombre fini, 0 ou plus.`,
  'engine.amend.empty': 'La modification n’a aucune étape ; admis : une ou plusieurs.',
  'engine.amend.twice': 'La modification nomme deux fois une étape ; admis : une fois.',
  'engine.amend.cycle': ({ id }) =>
    `L’étape "${id}" s’exigerait elle-même ; aucun ordre n’est possible.`,
  'engine.amend.no-need': ({ id, need }) =>
    `L’étape "${id}" exige "${need}", qui n’est pas une étape.`,
  'engine.amend.no-resource': ({ id, resource }) =>
    `L’étape "${id}" demande "${resource}", qui n’est pas une ressource.`,
  'engine.amend.no-gate': ({ id, gate }) =>
    `L’étape "${id}" nomme la question de sécurité "${gate}", qui n’existe pas.`,
  'engine.amend.lacks-gate': ({ id, gate }) =>
    `Il manque à l’étape "${id}" la question de sécurité "${gate}".`,
  'engine.amend.lacks-caution': ({ id, caution }) =>
    `Il manque à l’étape "${id}" la mise en garde "${caution}".`,
  'engine.amend.stages': ({ id, found, allowed }, f) =>
    `Étape "${id}" : parties ${f.list(found)} ; admis : avec ${f.list(allowed)} dans cet ordre.`,
  'engine.amend.demands-less': ({ id, resource, wanted }) =>
    `L’étape "${id}" demande moins de "${resource}" que ${wanted}.`,
  'engine.amend.guards-less': ({ id, step }, f) =>
    `L’étape "${id}" protège moins que « ${f.say(step)} » : un danger, un minuteur ou sa mise en sécurité.`,
  'engine.amend.other-work': ({ id, step }, f) =>
    `L’étape "${id}" est un autre travail que « ${f.say(step)} » ; admis : le même élément, le même genre.`,
  'engine.amend.drops-need': ({ id, need, step }, f) =>
    `L’étape "${id}" n’exige plus "${need}", comme le fait « ${f.say(step)} ».`,
  'engine.amend.no-sibling': ({ id, kind, fixture, means, allowed }) =>
    `Étape "${id}" : ${kind} de ${fixture} avec ${means} ; admis : un travail que le plan y prévoit déjà${allowed.map((one) => `, avec ${one}`).join('')}.`,
  'engine.amend.not-fresh': ({ id, step }, f) =>
    `L’étape "${id}" n’exige pas d’eau fraîchement bouillie, comme le fait « ${f.say(step)} ».`,
  'engine.amend.not-begun-so': ({ id, step }, f) =>
    `L’étape "${id}" ne commence pas comme « ${f.say(step)} ».`,

  'engine.step.over': ({ step }, f) => `« ${f.say(step)} » est fini.`,
  'engine.step.over-repeat': ({ step }, f) =>
    `« ${f.say(step)} » est fini. Répétez l’étape pour la refaire.`,
  'engine.step.begun': ({ step }, f) => `« ${f.say(step)} » a commencé.`,
  'engine.step.not-begun': ({ step }, f) => `« ${f.say(step)} » n’a pas commencé.`,
  'engine.step.stopped': ({ step }, f) => `« ${f.say(step)} » a été arrêté. Mettez en sécurité.`,
  'engine.step.not-over': ({ step }, f) =>
    `« ${f.say(step)} » n’est pas encore fini. Arrêtez-le d’abord.`,
  'engine.step.cannot-repeat': ({ step }, f) => `« ${f.say(step)} » ne peut pas être refait.`,
  'engine.step.fault-open': 'Réglez d’abord ce qui a été signalé sur cette étape.',
  'engine.step.not-stopped':
    'Cette étape n’a pas été arrêtée : il n’y a rien à mettre en sécurité.',
  'engine.resume.review-gap': 'Dites d’abord ce qui s’est passé pendant l’interruption.',
  'engine.resume.review-clock': 'Dites d’abord si l’heure affichée est juste.',
  'engine.resume.storage': 'Rien ne peut encore être noté.',
  'engine.resume.hot': 'Mettez d’abord en sécurité ce qui est encore chaud.',
  'engine.resume.fault': ({ fault }, f) => `Pas encore réglé : ${f.say(fault)}.`,
  'engine.resume.gate-settling': ({ ask }, f) => `Attendez que ce soit stable : ${f.say(ask)}`,
  'engine.resume.gate-asked': ({ ask }, f) => `Répondez d’abord : ${f.say(ask)}`,

  'engine.status.drafting': 'Le chantier n’a pas commencé. Commencez-le d’abord.',
  'engine.status.running': 'Le chantier est déjà en cours.',
  'engine.status.held': 'Le chantier est en pause. Reprenez-le d’abord.',
  'engine.status.suspended': 'Le chantier est suspendu. Réglez ce qui l’a arrêté, puis reprenez.',
  'engine.status.reviewing': 'Dites d’abord ce qui s’est passé en l’absence de l’application.',
  'engine.status.closing': 'Le chantier est en cours d’arrêt. Il ne reste qu’à mettre en sécurité.',
  'engine.status.closed': 'Le chantier est clos.',
};
