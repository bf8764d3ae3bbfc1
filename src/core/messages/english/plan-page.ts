import type { Formatter, Message, Section } from '../model/message.ts';
import { planCourse } from './plan-course.ts';

const S_DAY = 86_400;
const S_HOUR = 3600;
const S_MINUTE = 60;

/** "2 days 5 h", "5 h", "40 min"; cut, so that nobody counts on more than there is. */
function daysAndHours(leftS: number, f: Formatter): string {
  const days = Math.floor(leftS / S_DAY);
  if (days === 0) return f.duration(leftS < S_HOUR ? leftS : leftS - (leftS % S_HOUR), 'down');
  const hours = Math.floor((leftS % S_DAY) / S_HOUR);
  const dayText = `${f.number(days)} ${f.plural(days, { one: 'day', other: 'days' })}`;
  return hours === 0 ? dayText : `${dayText} ${f.duration(hours * S_HOUR, 'down')}`;
}

type Moment = { wallMs: number; zone: string };

/** The Plan page: its parts, answers, questions and the day the work begins. */
export const planPage = {
  ...planCourse,
  'plan-page.print': 'Print for the wall',
  'plan-page.print.all': 'Print the whole plan',
  'plan-page.save-calendar': 'Save for a calendar',
  'plan-page.start-run': 'Start the run',
  'plan-page.back-to-run': 'Back to the run',
  'plan-page.rehearse': 'Rehearse the run',
  'plan-page.rehearse.run-open':
    'Not now: a run is open on this tablet, or it is not known whether one is. Its alarms come first; rehearse when it is over.',
  'plan-page.for-whom': ({ purpose, custom }: { purpose: string; custom: string }, f) =>
    `${f.capital(purpose)}, ${custom}`,
  'plan-page.standing':
    'Customs differ. This plan follows the custom you chose; your rabbi’s word replaces it. Follow makers’ manuals and local codes; gas, electrical and plumbing work is for licensed people.',
  'plan-page.parts': 'Parts of the plan',
  'plan-page.part.methods': 'Methods',
  'plan-page.part.steps': 'Every step',
  'plan-page.part.pours': 'Where it is poured',
  'plan-page.part.heat': 'Heat and air',
  'plan-page.part.ask': 'To ask',
  'plan-page.part.lists': 'To buy and to clean',
  'plan-page.part.handouts': 'Sheets to print',
  'plan-page.heat.about':
    'Worked out from your hardware, or from what is usual where you told nothing. Bands are wide where the physics or the hardware is; the plan uses the safe side.',
  'plan-page.facts.day': ({ wallMs, zone, amount }: Moment & { amount: string }, f) =>
    `${f.day(wallMs, zone)}: ${amount}`,
  'plan-page.facts.whole': 'From start to end',
  'plan-page.facts.hands': 'Your hands busy',
  'plan-page.facts.boils-at': 'Water boils here at',
  'plan-page.facts.kettles': 'Kettlefuls',
  'plan-page.facts.hot-water': 'Boiling water',
  'plan-page.facts.electricity': 'Electricity',
  'plan-page.facts.electricity-and-gas': 'Electricity and gas',
  'plan-page.duration': ({ lengthS }: { lengthS: number }, f) => f.duration(lengthS),
  'plan-page.temperature': ({ tempC }: { tempC: number }, f) => f.measure(tempC, '°C', 1),
  'plan-page.count': ({ low, high }: { low: number; high: number }, f) => f.range(low, high),
  'plan-page.litres': ({ lowL, highL }: { lowL: number; highL: number }, f) =>
    f.measureRange(lowL, highL, 'L'),
  'plan-page.energy': ({ kWh }: { kWh: number }, f) => `${f.number(kWh, 1)} kWh`,
  'plan-page.energies': (
    { electricityKWh, gasKWh }: { electricityKWh: number; gasKWh: number },
    f,
  ) => `${f.number(electricityKWh, 1)} kWh + ${f.number(gasKWh, 1)} kWh`,

  'plan-page.notices': 'What to know before',
  'plan-page.notices.more': ({ many }: { many: number }, f) => `${f.number(many)} more to know`,
  'plan-page.notices.kitchen': 'Change it in the kitchen',

  'plan-page.begin.region': 'When the work begins',
  'plan-page.begin': 'Begin',
  'plan-page.begin.zone': ({ zone }: { zone: string }) =>
    `By the clock in ${(zone.split('/').at(-1) ?? zone).replaceAll('_', ' ')}`,
  'plan-page.begin.tell-place':
    'Tell under Kitchen where it is, and the plan goes round Sabbaths and festivals.',
  'plan-page.begin.inside': (
    { day, toWallMs, zone }: { day: string; toWallMs: number; zone: string },
    f,
  ) => `This lies in ${day}: nothing begins before it is out at ${f.moment(toWallMs, zone)}.`,
  'plan-page.begin.nothing-in': 'Nothing is planned in',
  'plan-page.begin.from-to': (
    {
      day,
      fromWallMs,
      toWallMs,
      zone,
    }: { day: Message; fromWallMs: number; toWallMs: number; zone: string },
    f,
  ) => `${f.say(day)}, ${f.moment(fromWallMs, zone)} to ${f.moment(toWallMs, zone)}`,
  'plan-page.begin.deadline-ahead': (
    {
      what,
      atWallMs,
      leftS,
      zone,
    }: { what: Message; atWallMs: number; leftS: number; zone: string },
    f,
  ) => `${f.say(what)}: ${f.moment(atWallMs, zone)}, ${daysAndHours(leftS, f)} after you begin.`,
  'plan-page.begin.deadline-passed': (
    {
      what,
      atWallMs,
      beginWallMs,
      zone,
    }: { what: Message; atWallMs: number; beginWallMs: number; zone: string },
    f,
  ) =>
    `${f.say(what)}: ${f.moment(atWallMs, zone)}. At ${f.clock(beginWallMs, zone)} it has passed.`,

  'plan-page.methods.by-custom': 'By the custom:',
  'plan-page.methods.own-custom': 'Your own custom',
  'plan-page.methods.make-own-custom': 'Make a custom of our own',
  'plan-page.methods.note-signs': 'a b c d e f g h i j k l m n o p q r s t u v w x y z',
  'plan-page.methods.head.fixture': 'What',
  'plan-page.methods.head.what': 'What is done',
  'plan-page.methods.head.why': 'Why, and what would change it',
  'plan-page.methods.head.answer': 'Your rabbi’s answer',
  'plan-page.methods.more': 'Why',
  'plan-page.methods.minutes': ({ method, minutes }: { method: string; minutes: number }, f) =>
    `${method}, ${f.number(minutes)} min`,
  'plan-page.methods.then-cover': ({ method }: { method: string }) => `${method}, then cover`,
  'plan-page.methods.term': ({ term }: { term: string }) => `(${term})`,
  'plan-page.methods.provisional': 'The stricter way, until it is answered',
  'plan-page.methods.answered': 'Your rabbi’s answer',
  'plan-page.methods.source': ({ source, state }: { source: string; state: string }) =>
    `${source} (${state}).`,
  'plan-page.methods.instead-of-row': ({ by }: { by: string }) =>
    `In place of the custom’s row: ${by}.`,
  'plan-page.methods.said-otherwise': 'Our rabbi said otherwise',
  'plan-page.methods.change-answer': 'Change the answer',
  'plan-page.methods.take-back': 'Take it back',
  'plan-page.to-ask': 'To ask:',
  'plan-page.until-then': ({ untilThen }: { untilThen: string }) => `Until then: ${untilThen}`,
  'plan-page.not-answered': 'Not answered yet:',

  'plan-page.steps.whole-kitchen': 'Whole kitchen',
  'plan-page.steps.about': ({ lengthS }: { lengthS: number }, f) => f.about(lengthS),
  'plan-page.steps.who': ({ people }: { people: readonly Message[] }, f) =>
    f.list(people.map((one) => f.say(one))),
  'plan-page.steps.kettles': ({ name, kettles }: { name: string; kettles: number }, f) =>
    `${name}: boiling water, ${f.number(kettles)} kettles`,
  'plan-page.steps.burners': ({ name, burners }: { name: string; burners: number }, f) =>
    `${name}: bring ${f.number(burners)} burners to a glow`,
  'plan-page.steps.near': 'somebody near',
  'plan-page.steps.titles': ({ titles, more }: { titles: readonly Message[]; more: number }, f) =>
    `${titles.map((one) => f.say(one)).join(' ')}${more > 0 ? ` and ${f.number(more)} more` : ''}`,
  'plan-page.steps.day.morning': ({ wallMs, zone }: Moment, f) => `${f.day(wallMs, zone)}, morning`,
  'plan-page.steps.day.afternoon': ({ wallMs, zone }: Moment, f) =>
    `${f.day(wallMs, zone)}, afternoon`,
  'plan-page.steps.day.evening': ({ wallMs, zone }: Moment, f) => `${f.day(wallMs, zone)}, evening`,
  'plan-page.steps.day.night': ({ wallMs, zone }: Moment, f) => `${f.day(wallMs, zone)}, at night`,

  'plan-page.pours.none': 'Nothing is poured.',
  'plan-page.pours.kettles': ({ name, kettles }: { name: string; kettles: number }, f) =>
    `${name}: ${f.number(kettles)} ${f.plural(kettles, { one: 'kettle', other: 'kettles' })}`,
  'plan-page.pours.order':
    'High before low, each part whole. The number in a circle is the kettle’s.',
  'plan-page.pours.custom-shortest': ({ customM }: { customM: number }, f) =>
    `${f.measure(customM, 'm', 1)} of lanes; no other direction is shorter. The number in a circle is the kettle’s.`,
  'plan-page.pours.custom-longer': (
    {
      customM,
      shortestM,
      savedPercent,
    }: {
      customM: number;
      shortestM: number;
      savedPercent: number;
    },
    f,
  ) =>
    `${f.measure(customM, 'm', 1)} of lanes from back to front, as custom has it; another direction would take ${f.measure(shortestM, 'm', 1)}, ${f.number(savedPercent)} % less. The number in a circle is the kettle’s.`,

  'plan-page.shopping': 'To buy and gather',
  'plan-page.cleaning': 'Cleaning, from the top down',
  'plan-page.cleaning.region': 'Cleaning lists',
  'plan-page.cleaning.print': 'Print the lists',
  'plan-page.cleaning.about':
    'Dry before wet, inside before outside. The rest counts from the last hot use; cleaning with hot water counts as one.',

  'plan-page.questions.region': 'Questions',
  'plan-page.questions': 'Questions for your rabbi',
  'plan-page.questions.of': ({ kitchen, custom }: { kitchen: string; custom: string }) =>
    `${kitchen}. Custom: ${custom}.`,
  'plan-page.questions.print': 'Print the questions',
  'plan-page.questions.share': 'Share them',
  'plan-page.questions.shared-title': ({ kitchen }: { kitchen: string }) =>
    `Questions for our rabbi: ${kitchen}`,
  'plan-page.questions.about':
    'Customs differ. Until a question is answered, the stricter way is planned, and the plan says so; the answer replaces the row of the custom.',
  'plan-page.questions.none': 'Nothing is left to ask.',
  'plan-page.questions.enter': 'Enter the answer',
  'plan-page.questions.to-look': 'To look at yourselves',
  'plan-page.questions.say-what': 'Say what it is',
  'plan-page.questions.until-then': 'Until then:',
  'plan-page.questions.changes': 'What would an answer change?',
  'plan-page.questions.change': (
    { answer, finishS, kettles }: { answer: Message; finishS: number; kettles: number },
    f,
  ) => {
    const end =
      Math.abs(finishS) < S_MINUTE
        ? 'ends at the same time'
        : `ends ${f.duration(Math.abs(finishS))} ${finishS < 0 ? 'earlier' : 'later'}`;
    const many = Math.abs(kettles);
    const water =
      many === 0
        ? 'as many kettles'
        : `${f.number(many)} ${f.plural(many, { one: 'kettle', other: 'kettles' })} ${kettles < 0 ? 'fewer' : 'more'}`;
    return `${f.say(answer)} The plan then ${end}, with ${water}.`;
  },
  'plan-page.questions.line.answer': 'Answer',
  'plan-page.questions.line.said-by': 'Said by',
  'plan-page.questions.line.on': 'On',
  'plan-page.questions.answered': 'Answered',
  'plan-page.questions.answered-bare': 'Answered.',
  'plan-page.questions.said': ({ saidBy, saidOn }: { saidBy: string; saidOn: string }) =>
    `${saidBy}, ${saidOn}`,
  'plan-page.questions.said-own-row': ({ saidBy, saidOn }: { saidBy: string; saidOn: string }) =>
    `${saidBy}, ${saidOn} (a row of your own custom)`,
  'plan-page.questions.take-back': 'Take the answer back',

  'plan-page.answer.about': ({ fixture }: { fixture: string }) => `An answer about ${fixture}`,
  'plan-page.answer.what-said': 'What did your rabbi say about it?',
  'plan-page.answer.given': 'Answers that are given',
  'plan-page.answer.own-way': 'Or say it in your own way:',
  'plan-page.answer.in-words': 'In which words (if you like)',
  'plan-page.answer.replaces-row': 'It replaces the row of the custom for this fixture alone.',
  'plan-page.answer.keep': 'Keep the answer',
  'plan-page.back': 'Back',
  'plan-page.found.about': ({ fixture }: { fixture: string }) => `What you found about ${fixture}`,
  'plan-page.found.leave-open': 'If you cannot tell, leave it open.',

  'plan-page.curve': (
    {
      title,
      lines,
      limits,
    }: { title: Message; lines: readonly Message[]; limits: readonly Message[] },
    f,
  ) => [title, ...lines, ...limits].map((one) => f.say(one)).join('. '),
  'plan-page.curve.line': (
    { name, most, unit }: { name: Message; most: number; unit: Message },
    f,
  ) => `${f.say(name)}: up to ${f.shortNumber(most, 2)} ${f.say(unit)}`,
  'plan-page.curve.limit': (
    { name, value, unit }: { name: Message; value: number; unit: Message },
    f,
  ) => `${f.say(name)} at ${f.shortNumber(value, 2)} ${f.say(unit)}`,
  'plan-page.curve.value': ({ value }: { value: number }, f) => f.shortNumber(value, 3),
} satisfies Section;
