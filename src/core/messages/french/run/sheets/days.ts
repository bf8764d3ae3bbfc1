import type { days as english } from '../../../english/run/sheets/days.ts';
import type { TranslationOf } from '../../../model/translation.ts';

/** When hands are free, what runs until when, and the sheet of one clock. */
export const days: TranslationOf<typeof english> = {
  'run.days.free': ({ from, until }, f) => `Mains libres de ${f.say(from)} à ${f.say(until)}.`,
  'run.days.free-now': ({ until }, f) => `Mains libres maintenant, jusqu’à ${f.say(until)}.`,
  'run.days.all-over': ({ at }, f) => `Tout devrait être fini ${f.say(at)}.`,
  'run.days.at.today': ({ wallMs, zone }, f) => `aujourd’hui ${f.clock(wallMs, zone)}`,
  'run.days.at.tonight': ({ wallMs, zone }, f) => `ce soir ${f.clock(wallMs, zone)}`,
  'run.days.at.tomorrow': ({ wallMs, zone }, f) => `demain ${f.clock(wallMs, zone)}`,
  'run.days.at.weekday': ({ wallMs, zone }, f) => f.moment(wallMs, zone),
  'run.days.by-itself': 'Ce qui tourne tout seul',
  'run.days.until': 'Jusqu’à quand',
  'run.days.wait': ({ label, names }, f) =>
    names.length === 0
      ? f.say(label)
      : `${f.say(label)} : ${names.map((name) => f.say(name)).join(', ')}`,
  'run.days.waits': ({ waits }, f) => waits.map((one) => f.say(one)).join(' ; '),
  'run.meanwhile': 'Entre-temps : manger, laver, chauffer',
  'run.meanwhile.need.eat': 'Manger',
  'run.meanwhile.need.wash': 'Laver',
  'run.meanwhile.need.heat': 'Faire bouillir et chauffer',
  'run.meanwhile.free': ({ names }, f) => `Cachérisé ou couvert : ${f.list(names)}.`,
  'run.meanwhile.before': ({ names }, f) => `Comme avant, jusqu’au nettoyage : ${f.list(names)}.`,
  'run.meanwhile.cold': ({ names }, f) =>
    `À froid seulement, un usage à chaud et son repos recommence : ${f.list(names)}.`,
  'run.meanwhile.not-now': ({ names }, f) =>
    `Pas maintenant, chaud ou en cours : ${f.list(names)}.`,
  'run.meanwhile.elsewhere': 'Rien ici ne doit chauffer : faites bouillir et cuire ailleurs.',
  'run.meanwhile.leaven': 'Ce qui est cachérisé ou couvert est pour Pessah : pas de hamets dessus.',
  'run.meanwhile.ask':
    'Dit d’après l’avancement de chaque endroit. Quels aliments y sont permis, votre coutume le dit.',
  'run.days.in': ({ leftS }, f) => `dans ${f.duration(leftS)}`,
  'run.days.rest-day': ({ day, from, to }, f) =>
    `${f.say(day)}, de ${f.say(from)} à ${f.say(to)} : rien ne vous est demandé alors, et rien ne sonne.`,
  'run.days.deadline': ({ name, when }, f) => `${f.say(name)} : ${f.say(when)}`,
  'run.days.deadline-passed': ({ name, when }, f) =>
    `${f.say(name)} : ${f.say(when)}. C’est passé.`,
  'run.days.work.region': 'Ce que les mains peuvent faire',
  'run.days.work': 'Ce qui peut être fait, et quand',
  'run.days.work.about':
    'Au plus tôt, selon ce que chaque étape attend ; les mains peuvent prendre plus de temps.',
  'run.days.work.line': ({ work, steps }, f) =>
    steps === 1 ? f.say(work) : `${f.say(work)}, ${f.number(steps)} étapes`,
  'run.days.work.at': ({ phase, name }, f) => `${f.say(phase)} : ${name}`,
  'run.days.work.from': ({ wallMs, zone }, f) => `dès ${f.clock(wallMs, zone)}`,
  'run.days.work.more': ({ count }, f) => `et ${f.number(count)} de plus`,
  'run.days.now': 'Maintenant',
  'run.days.next': 'Après ce qui est en cours',
  'run.days.today': 'Aujourd’hui',
  'run.days.tonight': 'Ce soir',
  'run.days.tomorrow': 'Demain',
  'run.days.weekday': ({ wallMs, zone }, f) => f.capital(f.day(wallMs, zone)),

  'run.timer.over-at': ({ label, when }, f) => `${f.say(label)} : jusqu’à ${f.say(when)}`,
  'run.timer.over': ({ when, leftS }, f) => `Jusqu’à ${f.say(when)}, encore ${f.duration(leftS)}.`,
  'run.timer.was-earlier': 'Dernier usage à chaud plus ancien',
  'run.timer.was-used': 'Il a servi',
  'run.timer.last-hot': 'Dernier usage à chaud',
  'run.timer.last-hot.why': 'Comment le savez-vous ? C’est noté au rapport.',
  'run.timer.last-hot.about':
    'Seulement si vous êtes sûr. Un nettoyage à chaud compte comme un usage. Dans le doute, laissez le repos tel quel.',
  'run.timer.last-hot.press': 'Compter depuis ce moment',
  'run.timer.used.about': 'Son repos de 24 heures recommence, et ce qui a suivi est refait.',
  'run.timer.used.press': 'Recommencer le repos',
};
