import type { print as english } from '../../english/plan/print.ts';
import type { TranslationOf } from '../../model/translation.ts';
import type { Formatter } from '../../model/message.ts';

type Band = { readonly low: number; readonly typical: number; readonly high: number };
type Offset = { days: number; hours: number; minutes: number };

/** "T+1 jour 02:10"; on the first day "T+02:10". */
function offset({ days, hours, minutes }: Offset): string {
  const two = (value: number): string => String(value).padStart(2, '0');
  const clock = `${two(hours)}:${two(minutes)}`;
  return days === 0 ? `T+${clock}` : `T+${days} ${days === 1 ? 'jour' : 'jours'} ${clock}`;
}

/** One number a line: what is exact as it is, an estimate in round figures. */
function lasts({ low, typical, high }: Band, f: Formatter): string {
  return low === high ? f.duration(typical) : f.about(typical);
}

/** The plan as plain text. */
export const print: TranslationOf<typeof english> = {
  'plan.customs-differ':
    'Les coutumes diffèrent. Ce plan suit la coutume que vous avez choisie ; la parole de votre rabbin la remplace.',
  'plan.title': ({ kitchen }) => `Plan pour ${kitchen}`,
  'plan.for': ({ purpose, custom, people }, f) =>
    `${f.capital(f.say(purpose))}, coutume : ${f.say(custom)}, ${f.number(people)} ${f.plural(people, { one: 'personne', other: 'personnes' })}`,
  'plan.boils-at': ({ boilingC, low }, f) =>
    `Ici l’eau bout à ${f.measure(boilingC, '°C', 1)}${low ? ' ; c’est bien l’ébullition' : ''}.`,
  'plan.done-earliest': ({ finishS }, f) =>
    `Fini après ${f.duration(finishS)}, au plus tôt possible.`,
  'plan.done-after': ({ finishS, boundS }, f) =>
    `Fini après ${f.duration(finishS)} ; pas avant ${f.duration(boundS)}, dans quelque ordre que ce soit.`,
  'plan.section.methods': 'Méthodes',
  'plan.section.questions': 'Questions à poser',
  'plan.section.notices': 'Avant de commencer',
  'plan.section.shopping': 'À acheter et rassembler',
  'plan.section.totals': 'Totaux',
  'plan.section.days': 'Jours',
  'plan.section.timetable': 'Horaire',
  'plan.section.gates': 'Confirmé une fois, avant le travail',
  'plan.section.work': 'Comment faire',
  'plan.method': ({ fixture, method, minutes, cover, term }, f) =>
    `${fixture} : ${f.say(method)}${minutes > 0 ? `, ${f.number(minutes)} min` : ''}${cover ? ', puis couvrir' : ''}${term ? ` (${f.say(term)})` : ''}`,
  'plan.method.source': ({ source, state, wouldChange }, f) =>
    `${f.say(source)} (${f.say(state)}). ${f.say(wouldChange)}`,
  'plan.method.times': ({ times }, f) => `Ébouillanté ${f.number(times)} fois en entier.`,
  'plan.method.no-rest': 'Sans repos préalable, selon la parole reçue.',
  'plan.method.stone': 'Une pièce d’acier chaude est déplacée dessus pendant le versement.',
  'plan.method.part.not-purged': 'Non cachérisé : n’y posez rien',
  'plan.method.part': ({ part, method, minutes, reason, source, state }, f) =>
    `${f.capital(f.say(part))} : ${f.say(method)}${minutes > 0 ? `, ${f.number(minutes)} min` : ''}. ${f.say(reason)} ${f.say(source)} (${f.say(state)}).`,
  'plan.method.instead-of-row': ({ by }, f) =>
    `À la place de la ligne de la coutume : ${f.say(by)}`,
  'plan.to-ask': ({ ask, untilThen }, f) =>
    `À demander : ${f.say(ask)} D’ici là : ${f.say(untilThen)}`,
  'plan.question.numbered': ({ number, fixture, ask }, f) =>
    `${f.number(number)}. ${fixture} : ${f.say(ask)}`,
  'plan.question.until-then': ({ untilThen }, f) => `D’ici là : ${f.say(untilThen)}`,
  'plan.buy': ({ name, amount, why }, f) => `${f.say(name)} : ${f.say(amount)}. ${f.say(why)}`,
  'plan.total.hot': ({ hotL, kettles }, f) =>
    `Eau bouillante : environ ${f.measure(hotL.typical, 'L')}, ${f.number(kettles.typical)} ${f.plural(kettles.typical, { one: 'bouilloire', other: 'bouilloires' })}`,
  'plan.total.cold': ({ coldL }, f) =>
    `Eau froide ensuite : environ ${f.measure(coldL.typical, 'L')}`,
  'plan.total.electricity': ({ kWh }, f) => `Électricité : environ ${f.number(kWh, 1)} kWh`,
  'plan.total.gas': ({ kWh }, f) => `Gaz : environ ${f.number(kWh, 1)} kWh`,
  'plan.total.hands': ({ lengthS }, f) => `Travail des mains : ${f.about(lengthS)}`,
  'plan.day.begins': ({ startWallMs, endWallMs, zone }, f) =>
    `Début ${f.moment(startWallMs, zone)}, fini ${f.moment(endWallMs, zone)} (${zone})`,
  'plan.day.rest': ({ day, fromWallMs, toWallMs, zone }, f) =>
    `${f.say(day)} : de ${f.moment(fromWallMs, zone)} à ${f.moment(toWallMs, zone)} ; rien n’y est prévu`,
  'plan.day.deadline': ({ name, wallMs, zone }, f) => `${f.say(name)} : ${f.moment(wallMs, zone)}`,
  'plan.day.date': ({ wallMs, zone }, f) => f.capital(f.day(wallMs, zone)),
  'plan.day.number': ({ day }, f) => `Jour ${f.number(day)}`,
  'plan.step.clock': ({ wallMs, zone, step, lengthS }, f) =>
    `${f.clock(wallMs, zone)}  ${f.say(step)}  [${lasts(lengthS, f)}]`,
  'plan.step.clock-itself': ({ wallMs, zone, step, lengthS }, f) =>
    `${f.clock(wallMs, zone)}  ${f.say(step)}  [${lasts(lengthS, f)}, commence seul]`,
  'plan.step.offset': ({ days, hours, minutes, step, lengthS }, f) =>
    `${offset({ days, hours, minutes })}  ${f.say(step)}  [${lasts(lengthS, f)}]`,
  'plan.step.offset-itself': ({ days, hours, minutes, step, lengthS }, f) =>
    `${offset({ days, hours, minutes })}  ${f.say(step)}  [${lasts(lengthS, f)}, commence seul]`,
  'plan.step.untimed': ({ step, lengthS }, f) =>
    `sans heure  ${f.say(step)}  [${lasts(lengthS, f)}]`,
  'plan.work.timer': ({ timer, lengthS }, f) => `${f.say(timer)}, ${f.duration(lengthS)}`,
  'plan.work.timer-about': ({ lengthS, timer }, f) => `après ${f.about(lengthS)} : ${f.say(timer)}`,
  'plan.work.timer-after': ({ lengthS, timer }, f) =>
    `après ${f.duration(lengthS)} : ${f.say(timer)}`,
  'plan.work.timer-every': ({ lengthS, timer }, f) =>
    `toutes les ${f.duration(lengthS)} : ${f.say(timer)}`,
  'plan.work.stage': ({ stage, timers }, f) =>
    timers.length === 0
      ? f.say(stage)
      : `${f.say(stage)} [${timers.map((timer) => f.say(timer)).join(' ; ')}]`,
  'plan.work.caution': ({ signal, say }, f) => `${f.say(signal)} : ${f.say(say)}`,
  'plan.work.caution-after': ({ signal, say }, f) => `${f.say(signal)}, après : ${f.say(say)}`,
  'plan.work.gate': ({ signal, say, ask }, f) =>
    `${f.say(signal)} : ${f.say(say)} Confirmez d’abord : ${f.say(ask)}`,
  'plan.work.kettles': ({ fixture, kettles }, f) =>
    `${fixture} : ${f.number(kettles)} ${f.plural(kettles, { one: 'bouilloire', other: 'bouilloires' })} d’eau bouillante, chacune suivie d’eau froide.`,
  'plan.work.pour-within': ({ withinS }, f) =>
    `La dernière goutte tombe dans les ${f.duration(withinS)} après l’ébullition, sinon refaites bouillir.`,
  'plan.work.kettle-parts': ({ kettle, parts }, f) =>
    `Bouilloire ${f.number(kettle)} : ${parts.map((one) => f.say(one)).join(' ; ')}`,
  'plan.work.kettle-lanes': ({ kettle, lengthM }, f) =>
    `Bouilloire ${f.number(kettle)} : ${f.measure(lengthM, 'm', 1)} de bandes`,
  'plan.work.kettle-told': ({ kettle, told }, f) =>
    `Bouilloire ${f.number(kettle)} : ${told.map((one) => f.say(one)).join(' ')}`,

  'common.resource.hands': 'Mains',
  'common.resource.burners-lit': 'Foyers allumés',
  'common.resource.watch': 'Surveillance',
  'common.resource.unit.shares': 'parts',
  'common.resource.unit.people': 'personnes',
  'common.resource.unit.burners': 'foyers',
  'common.resource.unit.kettles': 'bouilloires',
  'common.resource.unit.amperes': 'A',
};
