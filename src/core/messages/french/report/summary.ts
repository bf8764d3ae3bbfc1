import type { summary as english } from '../../english/report/summary.ts';
import type { TranslationOf } from '../../model/translation.ts';
import type { Formatter } from '../../model/message.ts';
import { ended, range, unended, type At } from './phrases.ts';

/** "dimanche 1 mars 2026, 10:00": a record is read years later. */
function fullMoment({ wallMs, zone }: At, f: Formatter): string {
  return `${f.date(wallMs, zone)}, ${f.clock(wallMs, zone)}`;
}

/** What somebody gave as the reason, as a sentence of its own. */
function because(reason: string): string {
  return reason === '' ? '' : ` ${ended(reason)}`;
}

/** "Évier : ", or nothing where it is about no one place. */
function at(name: string): string {
  return name === '' ? '' : `${name} : `;
}

/** The first page of a record: its head, what it lacks, a row a place. */
export const summary: TranslationOf<typeof english> = {
  'report.head.title': ({ kitchen }) => `${kitchen} : ce qui a été fait`,
  'report.head.begun': (moment, f) => `Commencé : ${fullMoment(moment, f)}`,
  'report.head.ended': ({ outcome, ...moment }, f) =>
    `Fini : ${fullMoment(moment, f)}, ${f.say(outcome)}`,
  'report.head.stands': ({ outcome, ...moment }, f) =>
    `État au ${fullMoment(moment, f)} : ${f.say(outcome)}`,
  'report.verdict': (
    { isOpen, purged, toPurge, notPurged, covered, cleaned, closedUp, notDone },
    f,
  ) => {
    const main = `${f.number(purged)} ${f.plural(purged, { one: 'endroit cachérisé', other: 'endroits cachérisés' })} sur ${f.number(toPurge)}${isOpen ? ' jusqu’ici' : ''}`;
    const not = notPurged.length === 0 ? '' : ` ; non cachérisé : ${f.list(notPurged)}`;
    const others = [
      ...(covered === 0
        ? []
        : [
            `${f.number(covered)} ${f.plural(covered, { one: 'couvert ou tapissé', other: 'couverts ou tapissés' })}`,
          ]),
      ...(cleaned === 0
        ? []
        : [`${f.number(cleaned)} ${f.plural(cleaned, { one: 'nettoyé', other: 'nettoyés' })}`]),
      ...(closedUp === 0
        ? []
        : [`${f.number(closedUp)} ${f.plural(closedUp, { one: 'fermé', other: 'fermés' })}`]),
    ];
    const beside = others.length === 0 ? '' : ` En plus : ${others.join(', ')}.`;
    const undone = notDone.length === 0 ? '' : ` Non terminé : ${f.list(notDone)}.`;
    return `${main}${not}.${beside}${undone}`;
  },
  'report.app': ({ app }) => `Commencé dans Glowpour ${app}.`,
  'report.digest': ({ digest }) => `Empreinte du chantier : ${digest}`,
  'report.digest.check':
    'Les 16 premiers chiffres du SHA-256 du fichier du chantier. Rouvrez ce fichier sur une tablette : son rapport montre les mêmes chiffres. Ils diffèrent si une ligne a été changée.',

  'report.section.lacks': 'Laissé de côté, arrêté ou douteux',
  'report.section.answers': 'Questions et réponses',
  'report.lack.none': 'Rien de prévu n’a été laissé de côté, arrêté ni laissé dans le doute.',
  'report.lack.steps': ({ name, steps, many, planned, outcome, reason }, f) => {
    const named = steps.map((step) => `« ${unended(f.say(step))} »`);
    const more = many - steps.length;
    const what = more === 0 ? f.list(named) : `${named.join(', ')} et ${f.number(more)} de plus`;
    const share =
      planned === 0 ? '' : `non cachérisé (${f.number(many)} sur ${f.number(planned)}). `;
    return `${at(name)}${share}${what} : ${f.say(outcome)}.${because(f.say(reason))}`;
  },
  'report.section.utensils': 'Ustensiles',
  'report.utensils.line': ({ told, items }, f) =>
    `${f.say(told)} ${f.list(items.map((item) => f.say(item)))}.`,
  'report.lack.utensils': ({ step, items, outcome, reason }, f) =>
    `${f.list(items.map((item) => f.say(item)))} : non cachérisé. « ${unended(f.say(step))} » : ${f.say(outcome)}.${because(f.say(reason))}`,
  'report.lack.rest': ({ name, provedS, neededS, outcome, reason }, f) =>
    `${name} : repos ${f.say(outcome)}${neededS === 0 ? '' : `, ${f.duration(provedS, 'down')} prouvés sur ${f.duration(neededS, 'down')}`}.${because(f.say(reason))}`,
  'report.lack.hold': ({ name, label, provedS, neededS, isShort, unproved, wordS, why }, f) => {
    const told = [
      ...(isShort
        ? [`${f.duration(provedS, 'down')} prouvés sur ${f.duration(neededS, 'down')}`]
        : []),
      ...(wordS === 0 ? [] : [`${f.duration(wordS, 'down')} sur la parole d’une personne`]),
      ...(unproved ? ['personne n’a vu ce qui s’est passé pendant une interruption'] : []),
    ];
    return `${name} : ${f.say(label)}, ${told.join(' ; ')}.${because(why.join(' ; '))}`;
  },
  'report.lack.unreached': ({ name, areaCm2 }, f) =>
    `${name} : ${f.measure(areaCm2, 'cm²')} sont hors de portée de bras et n’ont pas reçu d’eau bouillante.`,
  'report.lack.cold': ({ name, cold, poured }, f) =>
    `${name} : eau froide confirmée après ${f.number(cold)} ${f.plural(cold, { one: 'bouilloire', other: 'bouilloires' })} sur ${f.number(poured)}.`,
  'report.lack.overridden': ({ name, ask, reason }, f) =>
    `${at(name)}passé outre « ${f.say(ask)} ».${because(reason)}`,
  'report.lack.fault': ({ name, fault, wallMs, zone, end }, f) =>
    `${at(name)}${f.say(fault)}, ${f.dateTime(wallMs, zone)}. ${f.say(end)}`,
  'report.lack.questions': ({ count }, f) =>
    `${f.number(count)} ${f.plural(count, { one: 'question était ouverte', other: 'questions étaient ouvertes' })} quand le plan a été fait ; la manière la plus stricte a été prise.`,
  'report.lack.gaps': ({ count, unprovedS }, f) =>
    `La tablette a été éteinte, en veille ou son heure réglée ${count === 1 ? 'une fois' : `${f.number(count)} fois`}, en tout ${f.duration(unprovedS, 'down')}.`,
  'report.lack.alarms': ({ late, silent }, f) =>
    `Alarmes : ${f.number(late)} dites en retard, ${f.number(silent)} sans pouvoir sonner.`,
  'report.lack.storage': ({ lengthS }, f) =>
    `Pendant ${f.duration(lengthS)}, rien ne pouvait être noté.`,

  'report.said-about': ({ name, said }, f) => `${name} : ${f.say(said)}`,
  'report.said-row': ({ names, method, minutes, saidBy, saidOn, why }, f) =>
    `${f.list(names)} : dit par ${saidBy} le ${saidOn} : ${f.say(method)}${minutes > 0 ? `, ${f.number(minutes)} min` : ''}. ${ended(why)}`.trim(),
  'report.unanswered': ({ fixture, ask, untilThen }, f) =>
    `${fixture} : ${f.say(ask)} Pas de réponse. Prévu : ${ended(f.say(untilThen))}`,

  'report.row.method': ({ method, isMeant, cover, term }, f) =>
    `${isMeant ? 'Prévu : ' : ''}${f.say(method)}${term ? ` (${f.say(term)})` : ''}${cover ? ', puis couvert' : ''}`,
  'report.row.kettles': ({ poured, planned }, f) =>
    poured === planned
      ? `${f.number(poured)} ${f.plural(poured, { one: 'bouilloire', other: 'bouilloires' })}`
      : `${f.number(poured)} bouilloires sur ${f.number(planned)}`,
  'report.row.heat': ({ label, provedS, times }, f) =>
    `${f.say(label)} ${f.duration(provedS, 'down')}${times === 1 ? '' : `, ${f.number(times)} fois`}`,
  'report.row.by': ({ who }, f) => `par ${f.list(who.map((one) => f.say(one)))}`,
  'report.by.lead': 'la personne qui dirige',
  'report.by.helper': ({ number }, f) => `aide ${f.number(number)}`,
  'report.row.when': ({ fromWallMs, toWallMs, zone }, f) =>
    f.day(fromWallMs, zone) === f.day(toWallMs, zone)
      ? `${f.dateTime(fromWallMs, zone)}–${f.clock(toWallMs, zone)}`
      : range({ fromWallMs, toWallMs, zone }, f),
  'report.row.rested': ({ provedS, ...times }, f) =>
    `${range(times, f)} (${f.duration(provedS, 'down')})`,
  'report.row.resting': ({ wallMs, zone, provedS }, f) =>
    `depuis ${f.dateTime(wallMs, zone)} (${f.duration(provedS, 'down')})`,
  'report.row.source': ({ source, state }, f) => `${f.say(source)} (${f.say(state)})`,
  'report.row.voided': ({ count }, f) =>
    `${f.number(count)} ${f.plural(count, { one: 'bouilloire d’avant n’a pas compté', other: 'bouilloires d’avant n’ont pas compté' })}.`,
  'report.row.question': 'Sa question était ouverte : voir ci-dessous.',
};
