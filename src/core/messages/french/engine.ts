import type { engine as english } from '../english/engine.ts';
import type { TranslationOf } from '../model/translation.ts';

/** What the run engine says: why something cannot be, and what to do instead. */
export const engine: TranslationOf<typeof english> = {
  'engine.halted.drafting': 'Le chantier n’a pas commencé.',
  'engine.halted.held': 'Le chantier est en pause.',
  'engine.halted.suspended': 'Le chantier est suspendu.',
  'engine.halted.reviewing': 'Dites d’abord ce qui s’est passé en l’absence de l’application.',
  'engine.halted.closing': 'Le chantier est en cours d’arrêt.',
  'engine.halted.closed': 'Le chantier est clos.',

  'engine.step.ends-by-itself': 'Cette partie finit avec son minuteur.',
  'engine.step.not-due': 'Le temps n’est pas encore écoulé.',
  'engine.step.cold-first': 'De l’eau bouillante a été versée ici. Confirmez d’abord l’eau froide.',
  'engine.step.hot': 'C’est chaud. Arrêtez l’étape et mettez en sécurité.',
  'engine.step.went-on': ({ step }, f) =>
    `« ${f.say(step)} » : a-t-il continué sans interruption ?`,
  'engine.step.make-safe': ({ step }, f) => `Mettez en sécurité : « ${f.say(step)} ».`,
  'engine.step.make-safe-cold': ({ makeSafe, cold }, f) => `${f.say(makeSafe)} ${f.say(cold)}`,
  'engine.step.pour-now': 'Versez maintenant : ce temps passé, l’eau est trop refroidie',
  'engine.step.use-within': ({ step }, f) => `À utiliser dans ce délai après « ${f.say(step)} »`,

  'engine.because.nothing-heated': 'Rien n’a été chauffé.',
  'engine.because.heated-again': 'C’est chauffé à nouveau.',
  'engine.because.all-settled': 'Toutes les étapes sont réglées.',
  'engine.because.stopped': 'Arrêté.',
  'engine.because.paused': 'En pause.',
  'engine.because.interrupted': 'L’étape a été interrompue et ne peut être refaite.',
  'engine.because.broke-off': 'Cela s’est interrompu.',
  'engine.because.nobody-saw': 'Personne n’a vu si cela s’est interrompu.',
  'engine.because.doubt': 'Il a servi ou a été touché.',
  'engine.because.answer-withdrawn': 'Une réponse sur l’heure a été retirée.',

  'engine.need.open': ({ step }, f) => `D’abord : « ${f.say(step).replace(/\.$/, '')} ».`,
  'engine.need.undone': ({ step }, f) =>
    `« ${f.say(step)} » n’est pas terminé. Refaites-le, ou sautez-le en disant pourquoi.`,
  'engine.need.left-out': ({ step }, f) =>
    `« ${f.say(step)} » a été laissé de côté. Refaites-le, ou laissez aussi ceci.`,
  'engine.need.late': ({ step }, f) =>
    `Trop de temps depuis « ${f.say(step)} ». Refaites-le d’abord.`,

  'engine.rest-day.inside': ({ day }, f) =>
    `${f.say(day)} : aucun travail ne commence avant la fin.`,
  'engine.rest-day.reaches': ({ day }, f) =>
    `Ce ne serait pas fini avant ${f.say(day)}. Commencez après.`,

  'engine.deadline.inside': ({ deadline }, f) =>
    `Échéance passée : ${f.say(deadline)}. On ne cachérise plus rien.`,
  'engine.deadline.reaches': ({ deadline }, f) =>
    `Ce ne serait pas fini avant l’échéance : ${f.say(deadline)}.`,

  'engine.gate.settling': ({ leftMin, say }, f) =>
    `Attendez ${f.number(leftMin)} min que ce soit stable : ${f.say(say)}`,
  'engine.gate.answered-no': ({ ask }, f) => `Répondu non : ${f.say(ask)}`,
  'engine.gate.confirm-first': ({ ask }, f) => `Confirmez d’abord : ${f.say(ask)}`,
  'engine.gate.danger': 'Ceci protège de la mort ou de blessures graves. On ne peut passer outre.',
  'engine.gate.undescribed': ({ id }) => `Le plan ne décrit pas sa question de sécurité « ${id} ».`,

  'engine.resource.too-few': ({ name, wanted, unit, capacity }, f) =>
    `${f.say(name)} : il faut ${f.shortNumber(wanted)} ${f.say(unit)}, il y a ${f.shortNumber(capacity)}.`,
  'engine.resource.hands': ({ steps }, f) =>
    `Toutes les mains sont prises : ${f.list(steps.map((one) => `« ${f.say(one)} »`))}.`,
  'engine.resource.burners': ({ lit }, f) =>
    `Limite de foyers atteinte : ${f.number(lit)} ${f.plural(lit, { one: 'allumé', other: 'allumés' })}.`,
  'engine.resource.place': ({ name, steps }, f) =>
    `Rien de chaud à côté d’un versement, et rien n’y tourne. ${f.say(name)} : il reste ${f.list(steps.map((one) => `« ${f.say(one)} »`))}.`,
  'engine.resource.watch': ({ steps }, f) =>
    `Personne ne verse et ne surveille un foyer à la fois. Attendez ${f.list(steps.map((one) => `« ${f.say(one)} »`))}, ou faites surveiller par quelqu’un qui ne fait rien d’autre.`,
  'engine.resource.in-use': ({ name, steps }, f) =>
    `${f.say(name)} : occupé par ${f.list(steps.map((one) => `« ${f.say(one)} »`))}.`,
  'engine.resource.taken': ({ name, used, capacity, unit, steps }, f) =>
    `${f.say(name)} : ${f.shortNumber(used)} sur ${f.shortNumber(capacity)} ${f.say(unit)}, pris par ${f.list(steps.map((one) => `« ${f.say(one)} »`))}.`,

  'engine.fault.undefined': 'Quelque chose a mal tourné',
  'engine.fault.undefined.off': 'Éteignez ce qui est chaud.',
  'engine.fault.undefined.write': 'Notez ce qui s’est passé.',
  'engine.fault.undefined.go-on': 'Reprenez quand c’est réglé.',
  'engine.storage.down': 'Rien ne peut être noté pour l’instant.',
  'engine.storage.no-progress':
    'Rien ne peut être noté, donc rien n’avance. Libérez de la place ou exportez le journal.',
};
