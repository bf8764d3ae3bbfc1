import type { planPage as english } from '../english/plan-page.ts';
import type { TranslationOf } from '../model/translation.ts';
import type { Formatter } from '../model/message.ts';
import { planCourse } from './plan-course.ts';

const S_DAY = 86_400;
const S_HOUR = 3600;
const S_MINUTE = 60;

/** "2 jours 5 h", "5 h", "40 min"; cut, so that nobody counts on more than there is. */
function daysAndHours(leftS: number, f: Formatter): string {
  const days = Math.floor(leftS / S_DAY);
  if (days === 0) return f.duration(leftS < S_HOUR ? leftS : leftS - (leftS % S_HOUR), 'down');
  const hours = Math.floor((leftS % S_DAY) / S_HOUR);
  const dayText = `${f.number(days)} ${f.plural(days, { one: 'jour', other: 'jours' })}`;
  return hours === 0 ? dayText : `${dayText} ${f.duration(hours * S_HOUR, 'down')}`;
}

/** The Plan page: its parts, answers, questions and the day the work begins. */
export const planPage: TranslationOf<typeof english> = {
  ...planCourse,
  'plan-page.print': 'Imprimer pour le mur',
  'plan-page.print.all': 'Imprimer tout le plan',
  'plan-page.save-calendar': 'Enregistrer pour un agenda',
  'plan-page.start-run': 'Commencer le chantier',
  'plan-page.back-to-run': 'Retour au chantier',
  'plan-page.rehearse': 'Répéter le chantier',
  'plan-page.rehearse.run-open':
    'Pas maintenant : un chantier est ouvert sur cette tablette, ou on ne sait pas s’il y en a un. Ses alarmes passent d’abord ; répétez quand il est fini.',
  'plan-page.for-whom': ({ purpose, custom }, f) => `${f.capital(purpose)}, coutume : ${custom}`,
  'plan-page.standing':
    'Les coutumes diffèrent. Ce plan suit la coutume que vous avez choisie ; la parole de votre rabbin la remplace. Suivez les notices des fabricants et les règles locales ; gaz, électricité et plomberie reviennent aux professionnels agréés.',
  'plan-page.parts': 'Parties du plan',
  'plan-page.part.methods': 'Méthodes',
  'plan-page.part.steps': 'Chaque étape',
  'plan-page.part.pours': 'Où l’on verse',
  'plan-page.part.heat': 'Chaleur et air',
  'plan-page.part.ask': 'À demander',
  'plan-page.part.lists': 'À acheter et à nettoyer',
  'plan-page.part.handouts': 'Feuilles à imprimer',
  'plan-page.heat.about':
    'Calculé d’après votre matériel, ou d’après l’usuel où vous n’avez rien dit. Les fourchettes sont larges où la physique ou le matériel l’est ; le plan prend le côté sûr.',
  'plan-page.facts.day': ({ wallMs, zone, amount }, f) =>
    `${f.capital(f.day(wallMs, zone))} : ${amount}`,
  'plan-page.facts.whole': 'Du début à la fin',
  'plan-page.facts.hands': 'Vos mains occupées',
  'plan-page.facts.boils-at': 'L’eau bout ici à',
  'plan-page.facts.kettles': 'Bouilloires pleines',
  'plan-page.facts.hot-water': 'Eau bouillante',
  'plan-page.facts.electricity': 'Électricité',
  'plan-page.facts.electricity-and-gas': 'Électricité et gaz',
  'plan-page.duration': ({ lengthS }, f) => f.duration(lengthS),
  'plan-page.temperature': ({ tempC }, f) => f.measure(tempC, '°C', 1),
  'plan-page.count': ({ low, high }, f) => f.range(low, high),
  'plan-page.litres': ({ lowL, highL }, f) => f.measureRange(lowL, highL, 'L'),
  'plan-page.energy': ({ kWh }, f) => `${f.number(kWh, 1)} kWh`,
  'plan-page.energies': ({ electricityKWh, gasKWh }, f) =>
    `${f.number(electricityKWh, 1)} kWh + ${f.number(gasKWh, 1)} kWh`,

  'plan-page.notices': 'À savoir avant',
  'plan-page.notices.more': ({ many }, f) =>
    `${f.number(many)} ${f.plural(many, { one: 'autre point', other: 'autres points' })} à savoir`,
  'plan-page.notices.kitchen': 'Le modifier dans la cuisine',

  'plan-page.begin.region': 'Quand le travail commence',
  'plan-page.begin': 'Début',
  'plan-page.begin.zone': ({ zone }) =>
    `À l’heure de ${(zone.split('/').at(-1) ?? zone).replaceAll('_', ' ')}`,
  'plan-page.begin.tell-place':
    'Indiquez sous Cuisine où elle se trouve, et le plan contourne Chabbat et fêtes.',
  'plan-page.begin.inside': ({ day, toWallMs, zone }, f) =>
    `Ceci tombe pendant ${day} : rien ne commence avant la sortie, ${f.moment(toWallMs, zone)}.`,
  'plan-page.begin.nothing-in': 'Rien n’est prévu pendant',
  'plan-page.begin.from-to': ({ day, fromWallMs, toWallMs, zone }, f) =>
    `${f.say(day)} : de ${f.moment(fromWallMs, zone)} à ${f.moment(toWallMs, zone)}`,
  'plan-page.begin.deadline-ahead': ({ what, atWallMs, leftS, zone }, f) =>
    `${f.say(what)} : ${f.moment(atWallMs, zone)}, ${daysAndHours(leftS, f)} après votre début.`,
  'plan-page.begin.deadline-passed': ({ what, atWallMs, beginWallMs, zone }, f) =>
    `${f.say(what)} : ${f.moment(atWallMs, zone)}. À ${f.clock(beginWallMs, zone)}, c’est passé.`,

  'plan-page.methods.by-custom': 'Selon la coutume :',
  'plan-page.methods.own-custom': 'Votre propre coutume',
  'plan-page.methods.make-own-custom': 'Créer notre propre coutume',
  'plan-page.methods.note-signs': 'a b c d e f g h i j k l m n o p q r s t u v w x y z',
  'plan-page.methods.head.fixture': 'Quoi',
  'plan-page.methods.head.what': 'Ce qui est fait',
  'plan-page.methods.head.why': 'Pourquoi, et ce qui le changerait',
  'plan-page.methods.head.answer': 'Réponse de votre rabbin',
  'plan-page.methods.more': 'Pourquoi',
  'plan-page.methods.minutes': ({ method, minutes }, f) => `${method}, ${f.number(minutes)} min`,
  'plan-page.methods.then-cover': ({ method }) => `${method}, puis couvrir`,
  'plan-page.methods.term': ({ term }) => `(${term})`,
  'plan-page.methods.provisional': 'La manière la plus stricte, jusqu’à la réponse',
  'plan-page.methods.answered': 'Réponse de votre rabbin',
  'plan-page.methods.source': ({ source, state }) => `${source} (${state}).`,
  'plan-page.methods.instead-of-row': ({ by }) => `À la place de la ligne de la coutume : ${by}.`,
  'plan-page.methods.said-otherwise': 'Notre rabbin a dit autrement',
  'plan-page.methods.change-answer': 'Changer la réponse',
  'plan-page.methods.take-back': 'La retirer',
  'plan-page.to-ask': 'À demander :',
  'plan-page.until-then': ({ untilThen }) => `D’ici là : ${untilThen}`,
  'plan-page.not-answered': 'Pas encore répondu :',

  'plan-page.steps.whole-kitchen': 'Toute la cuisine',
  'plan-page.steps.about': ({ lengthS }, f) => f.about(lengthS),
  'plan-page.steps.who': ({ people }, f) => f.list(people.map((one) => f.say(one))),
  'plan-page.steps.kettles': ({ name, kettles }, f) =>
    `${name} : eau bouillante, ${f.number(kettles)} bouilloires`,
  'plan-page.steps.burners': ({ name, burners }, f) =>
    `${name} : porter ${f.number(burners)} foyers au rouge`,
  'plan-page.steps.near': 'quelqu’un auprès',
  'plan-page.steps.titles': ({ titles, more }, f) =>
    `${titles.map((one) => f.say(one)).join(' ')}${more > 0 ? ` et ${f.number(more)} de plus` : ''}`,
  'plan-page.steps.day.morning': ({ wallMs, zone }, f) =>
    `${f.capital(f.day(wallMs, zone))}, matin`,
  'plan-page.steps.day.afternoon': ({ wallMs, zone }, f) =>
    `${f.capital(f.day(wallMs, zone))}, après-midi`,
  'plan-page.steps.day.evening': ({ wallMs, zone }, f) => `${f.capital(f.day(wallMs, zone))}, soir`,
  'plan-page.steps.day.night': ({ wallMs, zone }, f) => `${f.capital(f.day(wallMs, zone))}, nuit`,

  'plan-page.pours.none': 'Rien n’est versé.',
  'plan-page.pours.kettles': ({ name, kettles }, f) =>
    `${name} : ${f.number(kettles)} ${f.plural(kettles, { one: 'bouilloire', other: 'bouilloires' })}`,
  'plan-page.pours.order':
    'Le haut avant le bas, chaque partie en entier. Le chiffre dans le rond est celui de la bouilloire.',
  'plan-page.pours.custom-shortest': ({ customM }, f) =>
    `${f.measure(customM, 'm', 1)} de bandes ; aucune autre direction n’est plus courte. Le chiffre dans le rond est celui de la bouilloire.`,
  'plan-page.pours.custom-longer': ({ customM, shortestM, savedPercent }, f) =>
    `${f.measure(customM, 'm', 1)} de bandes du fond vers l’avant, selon la coutume ; une autre direction prendrait ${f.measure(shortestM, 'm', 1)}, ${f.number(savedPercent)} % de moins. Le chiffre dans le rond est celui de la bouilloire.`,

  'plan-page.shopping': 'À acheter et rassembler',
  'plan-page.cleaning': 'Nettoyage, de haut en bas',
  'plan-page.cleaning.region': 'Listes de nettoyage',
  'plan-page.cleaning.print': 'Imprimer les listes',
  'plan-page.cleaning.about':
    'Le sec avant le mouillé, le dedans avant le dehors. Le repos compte depuis le dernier usage à chaud ; nettoyer à l’eau chaude en est un.',

  'plan-page.questions.region': 'Questions',
  'plan-page.questions': 'Questions pour votre rabbin',
  'plan-page.questions.of': ({ kitchen, custom }) => `${kitchen}. Coutume : ${custom}.`,
  'plan-page.questions.print': 'Imprimer les questions',
  'plan-page.questions.share': 'Les partager',
  'plan-page.questions.shared-title': ({ kitchen }) => `Questions pour notre rabbin : ${kitchen}`,
  'plan-page.questions.about':
    'Les coutumes diffèrent. Sans réponse, la manière la plus stricte est prévue, et le plan le dit ; la réponse remplace la ligne de la coutume.',
  'plan-page.questions.none': 'Il ne reste rien à demander.',
  'plan-page.questions.enter': 'Entrer la réponse',
  'plan-page.questions.to-look': 'À regarder vous-mêmes',
  'plan-page.questions.say-what': 'Dire ce que c’est',
  'plan-page.questions.until-then': 'D’ici là :',
  'plan-page.questions.changes': 'Que changerait une réponse ?',
  'plan-page.questions.change': ({ answer, finishS, kettles }, f) => {
    const end =
      Math.abs(finishS) < S_MINUTE
        ? 'finit à la même heure'
        : `finit ${f.duration(Math.abs(finishS))} plus ${finishS < 0 ? 'tôt' : 'tard'}`;
    const many = Math.abs(kettles);
    const water =
      many === 0
        ? 'autant de bouilloires'
        : `${f.number(many)} ${f.plural(many, { one: 'bouilloire', other: 'bouilloires' })} en ${kettles < 0 ? 'moins' : 'plus'}`;
    return `${f.say(answer)} Le plan ${end}, ${water}.`;
  },
  'plan-page.questions.line.answer': 'Réponse',
  'plan-page.questions.line.said-by': 'Dit par',
  'plan-page.questions.line.on': 'Le',
  'plan-page.questions.answered': 'Répondu',
  'plan-page.questions.answered-bare': 'Répondu.',
  'plan-page.questions.said': ({ saidBy, saidOn }) => `${saidBy}, ${saidOn}`,
  'plan-page.questions.said-own-row': ({ saidBy, saidOn }) =>
    `${saidBy}, ${saidOn} (une ligne de votre propre coutume)`,
  'plan-page.questions.take-back': 'Retirer la réponse',

  'plan-page.answer.about': ({ fixture }) => `Réponse sur : ${fixture}`,
  'plan-page.answer.what-said': 'Qu’en a dit votre rabbin ?',
  'plan-page.answer.given': 'Réponses usuelles',
  'plan-page.answer.own-way': 'Ou dites-le à votre façon :',
  'plan-page.answer.in-words': 'En quels mots (si vous voulez)',
  'plan-page.answer.replaces-row': 'Elle remplace la ligne de la coutume pour ce seul élément.',
  'plan-page.answer.keep': 'Garder la réponse',
  'plan-page.back': 'Retour',
  'plan-page.found.about': ({ fixture }) => `Ce que vous avez constaté sur : ${fixture}`,
  'plan-page.found.leave-open': 'Si vous ne savez pas, laissez ouvert.',

  'plan-page.curve': ({ title, lines, limits }, f) =>
    [title, ...lines, ...limits].map((one) => f.say(one)).join('. '),
  'plan-page.curve.line': ({ name, most, unit }, f) =>
    `${f.say(name)} : jusqu’à ${f.shortNumber(most, 2)} ${f.say(unit)}`,
  'plan-page.curve.limit': ({ name, value, unit }, f) =>
    `${f.say(name)} à ${f.shortNumber(value, 2)} ${f.say(unit)}`,
  'plan-page.curve.value': ({ value }, f) => f.shortNumber(value, 3),
};
