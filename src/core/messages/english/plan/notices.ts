import type { Formatter, Message, Section } from '../../model/message.ts';

type LastHot = { names: readonly string[]; wall: string };

type Share = { name: Message; percent: number };

/** "takes 20 % longer than reckoned". */
function shareText(percent: number): string {
  const whole = Math.round(percent);
  if (whole === 0) return 'takes as long as reckoned';
  return `takes ${Math.abs(whole)} % ${whole > 0 ? 'longer' : 'less time'} than reckoned`;
}

/** What is late: by how much, and where the calendar is known when it ends and after which day of rest. */
type Late = {
  lateH: number;
  certain: boolean;
  endsWallMs?: number;
  zone?: string;
  after?: Message;
  /** What decides its end; plans of before do not say what. */
  decidedBy?: readonly Message[];
};

/** "Thursday 22 April 20:33, after the last days of Passover, ". */
function ends(
  { endsWallMs, zone, after }: Pick<Late, 'endsWallMs' | 'zone' | 'after'>,
  f: Formatter,
): string {
  if (endsWallMs === undefined || zone === undefined) return '';
  const moment = f.moment(endsWallMs, zone);
  return after ? `${moment}, after ${f.say(after)}, ` : `${moment}, `;
}

/** More names than this are counted, not listed. */
const MOST_NAMES = 5;

/** "the kettle, the front left burner and 3 more". */
function someOf(names: readonly string[], f: Formatter): string {
  const more = names.length - MOST_NAMES;
  return f.list(more > 0 ? [...names.slice(0, MOST_NAMES), `${f.number(more)} more`] : names);
}

/** What the plan tells the household before it starts, and how it is printed. */
type EveHours = {
  readonly fourthWallMs: number;
  readonly candlesWallMs: number;
  readonly zone: string;
};

function bottleneck(decidedBy: Late['decidedBy'], f: Formatter): string {
  if (!decidedBy || decidedBy.length === 0) return '';
  return ` Longest on the way to that end: ${decidedBy.map((one) => f.say(one)).join('; ')}.`;
}

export const notices = {
  'plan.notice.last-hot.counts': (
    { names, wallMs, zone }: { names: readonly string[]; wallMs: number; zone: string },
    f,
  ) =>
    `Rests are planned from the last hot use, ${f.moment(wallMs, zone)}: ${f.list(names)}. Clean ${f.plural(names.length, { one: 'it', other: 'them' })} with cold water only; the run asks you to confirm the time.`,
  'plan.notice.last-hot.later': ({ names, wall }: LastHot, f) =>
    `The last hot use is ${wall}, after the work begins: ${f.list(names)}. It is not counted, only one before the start is; correct it in the kitchen, or begin later.`,
  'plan.notice.last-hot.long-ago': ({ names, wall, mostDays }: LastHot & { mostDays: number }, f) =>
    `The last hot use is ${wall}: ${f.list(names)}. More than ${f.number(mostDays)} days before the start it is not counted; tell the last one in the kitchen.`,
  'plan.notice.last-hot.unplaced': ({ names, wall }: LastHot, f) =>
    `The last hot use is ${wall}: ${f.list(names)}. It is not counted until the kitchen has a place and the plan a start; tell both.`,
  'plan.notice.circuit-overloaded': (
    {
      name,
      drawsA,
      circuit,
      ratingA,
    }: {
      name: Message;
      drawsA: number;
      circuit: string;
      ratingA: number;
    },
    f,
  ) =>
    `${f.capital(f.say(name))} draws ${f.number(drawsA)} A, and ${circuit} bears ${f.shortNumber(ratingA)} A: have an electrician look at it before you heat.`,
  'plan.notice.circuit-shared': (
    {
      circuit,
      ratingA,
      names,
      drawsA,
    }: {
      circuit: string;
      ratingA: number;
      names: readonly Message[];
      drawsA: number;
    },
    f,
  ) =>
    `${circuit} (${f.shortNumber(ratingA)} A) cannot carry ${someOf(names.map(f.say), f)} together (${f.number(drawsA)} A): never run them together, as the plan does not.`,
  'plan.notice.boils-low': ({ boilingC }: { boilingC: number }, f) =>
    `Water boils at ${f.measure(boilingC, '°C')} here; that is boiling. It gets no hotter, however long it is on the fire; the hand is slower for it where that is needed.`,
  'plan.notice.may-stay-dark': (
    { cooktop, names }: { cooktop: string; names: readonly string[] },
    f,
  ) =>
    `${cooktop}: ${f.list(names)} may never redden without a pan, since they sense it or get less voltage than they are made for. Try one in the dark before the day, and ask which way it is purged if it stays dark.`,
  'plan.burner': ({ burner }: { burner: string }) => `the ${burner} burner`,
  'plan.notice.burners-at-once': (
    {
      atOnce,
      limitedBy,
      peakC,
    }: {
      atOnce: number;
      limitedBy: 'heat' | 'air' | 'circuit' | 'none';
      peakC: number;
      lowC: number;
      highC: number;
    },
    f,
  ) => {
    const why = {
      heat: ', for the heat',
      air: ', for the air',
      circuit: ', for the circuit',
      none: '',
    };
    return `${atOnce === 1 ? 'One burner' : 'Two burners'} at a time${why[limitedBy]}: the room is expected to reach about ${f.measure(peakC, '°C')}. It advises; it never says the air is safe.`;
  },
  'plan.notice.room-blocked': ({ says }: { says: readonly Message[] }, f) =>
    says.map((one) => f.say(one)).join(' '),
  'plan.notice.room-hot': ({ says }: { says: readonly Message[] }, f) =>
    says.map((one) => f.say(one)).join(' '),
  'plan.notice.air-not-told':
    'Nobody has told yet whether the hood blows outside and whether a window opens, so the plan reckons with neither, and then even one burner is too much: tell both under “Room and air”.',
  'plan.notice.room-tiny': ({ volumeM3, leastM3 }: { volumeM3: number; leastM3: number }, f) =>
    `The kitchen is told as ${f.shortMeasure(volumeM3, 'm³', 1)}; heat and air are reckoned from ${f.measure(leastM3, 'm³', 0, 'up')} on. Measure floor and ceiling again; until then the plan lights one burner at a time, and nothing says that the room bears it.`,
  'plan.notice.much-water': ({ says }: { says: readonly Message[] }, f) =>
    `A great deal of water: ${f.list(says.map((one) => f.say(one)))}. An urn to fill the kettles from, a second kettle and a helper shorten it much; or ask whether a counter may be covered instead of poured.`,
  'plan.notice.much-water.fixture': (
    { fixture, kettles, litres }: { fixture: string; kettles: number; litres: number },
    f,
  ) => `${fixture}, ${f.number(kettles)} kettles (about ${f.measure(litres, 'L')})`,
  'plan.notice.room-unknown':
    'One burner at a time: how warm this room gets cannot be reckoned as it is described. Check its size, its hood and its window.',
  'plan.notice.room-too-much':
    'By the reckoning even one burner makes the room too hot or its air too bad as it is described: give air a way out, and wait between burners.',
  'plan.notice.no-air':
    'There is neither a hood to the outside nor a window: gas burners cannot be purged here before air has a way out.',
  'plan.notice.hood-filters': 'The hood only filters: it removes no gas. The window must be open.',
  'plan.notice.clean-not-purge.steam': ({ oven }: { oven: string }) =>
    `${oven}: a steam clean is not a purge; it is treated as an oven without self-clean.`,
  'plan.notice.clean-not-purge.catalytic': ({ oven }: { oven: string }) =>
    `${oven}: a catalytic clean is not a purge; it is treated as an oven without self-clean.`,
  'plan.notice.induction': ({ cooktop }: { cooktop: string }) =>
    `${cooktop}: induction gives no glow. Ask how it may be purged before you plan the day.`,
  'plan.notice.by-hand': ({ fixture }: { fixture: string }) =>
    `${fixture}: how much water it takes is not reckoned; it is planned as work by hand.`,
  'plan.notice.unreached': (
    { fixture, spots }: { fixture: string; spots: readonly Message[] },
    f,
  ) =>
    `${fixture}: out of an arm’s reach from where one can stand, so no kettle is planned there: ${spots.map((spot) => f.say(spot)).join('; ')}. Can you stand at another side of it? Then say so in the kitchen. If not, ask your rabbi what is done with the spot. Never stand on a stool with boiling water.`,
  'plan.question.unreached': ({ spots }: { spots: readonly Message[] }, f) =>
    `What is done with a spot that no arm reaches with a kettle: ${spots.map((spot) => f.say(spot)).join('; ')}?`,
  'plan.question.unreached.why':
    'Every spot is to be reached by the stream. From another side it may be in reach: then say so in the kitchen.',
  'plan.question.unreached.until-then': 'No kettle is planned there.',
  'plan.question.unreached.cover': 'Pour, then cover.',
  'plan.question.unreached.enough': 'What is poured is enough.',
  'plan.notice.spot': (
    { areaCm2, leftM, nearM }: { areaCm2: number; leftM: number; nearM: number },
    f,
  ) =>
    `${f.measure(areaCm2, 'cm²')}, ${f.tape(leftM)} from its left end and ${f.tape(nearM)} from its near side`,
  'plan.notice.pots': ({ names }: { names: readonly string[] }) =>
    `Not poured from: ${names.join(', ')}. What is ladled from it is in a second vessel, and it is too heavy to carry full.`,
  'plan.notice.unused-vessels': ({ names }: { names: readonly string[] }) =>
    `Not used: ${names.join(', ')}, with no heater named, too weak to boil here, or too small beside the others.`,
  'plan.notice.utensils-now':
    'Utensils are not purged inside Passover: put away what was not purged before, and ask.',
  'plan.notice.utensils-no-pot': ({ names }: { names: readonly Message[] }, f) =>
    `No pot that boils here takes ${f.list(names.map((name) => f.say(name)))}: no step purges them. Name a larger pot and its burner in the kitchen, or put them away.`,
  'plan.notice.no-change':
    'By custom a vessel is not changed between meat and dairy (Magen Avraham 509:11): ask before you do.',
  'plan.notice.passover-hour':
    'The purge must be over before the fifth hour of the eve of Passover: plan it to end a day earlier.',
  'plan.notice.overnight': ({ step }: { step: Message }, f) =>
    `No working day is long enough for this, so it runs into the night: ${f.say(step)}`,
  'plan.notice.purge-late': ({ certain, decidedBy, ...late }: Late, f) =>
    `By this plan purging ends ${ends(late, f)}${f.number(late.lateH, 1)} h after the deadline${certain ? ', and no other order of work would keep it' : ''}.${bottleneck(decidedBy, f)}`,
  'plan.notice.after-fourth-hour': ({ certain, decidedBy, ...late }: Late, f) =>
    `By this plan purging ends ${ends(late, f)}${f.number(late.lateH, 1)} h too late, and yet before candle lighting${certain ? '; no other order of work would keep the hour' : ''}. Water then needs more care: ask first.${bottleneck(decidedBy, f)}`,
  'plan.notice.after-candles': ({ certain, decidedBy, ...late }: Late, f) =>
    `By this plan purging ends ${ends(late, f)}${f.number(late.lateH, 1)} h too late, after candle lighting, when nothing is purged any more${certain ? '; no other order of work would keep it' : ''}. Begin earlier, or choose what to close up: cleaned, covered and kept out of use over Passover.${bottleneck(decidedBy, f)}`,
  'plan.notice.plan-late': ({ certain, decidedBy, ...late }: Late, f) =>
    `This plan ends ${ends(late, f)}${f.number(late.lateH, 1)} h after the deadline${certain ? ', and no other order of work would keep it' : ''}.${bottleneck(decidedBy, f)}`,
  'plan.chain.step': ({ step, lengthS }: { step: Message; lengthS: number }, f) =>
    `${f.say(step).replace(/\.$/, '')} (${f.duration(lengthS)})`,
  'plan.chain.by-itself': ({ step, lengthS }: { step: Message; lengthS: number }, f) =>
    `${f.say(step).replace(/\.$/, '')} (${f.duration(lengthS)}, which no helper shortens)`,
  'plan.chain.closed': ({ lengthS }: { lengthS: number }, f) =>
    `hours without work, a night or a rest day (${f.duration(lengthS)})`,
  'plan.chain.work': 'other work',
  'plan.notice.days-unknown': ({ place, start }: { place: boolean; start: boolean }) => {
    const missing = [
      ...(place ? [] : ['where the kitchen is (latitude, longitude, time zone, Israel or not)']),
      ...(start ? [] : ['when you begin']),
    ].join(', and ');
    return `Sabbaths and festivals are not in this timetable, which counts hours from the start: tell ${missing}, and it keeps them. Until then begin so that none of its work falls into one.`;
  },
  'plan.notice.last-day': ({ step }: { step: Message }, f) =>
    `On the last day before the deadline, with no day to spare if the lock or the cut-out fails: ${f.say(step)} Begin the work earlier.`,
  'plan.notice.past-fourth-hour': ({ fourthWallMs, candlesWallMs, zone }: EveHours, f) =>
    `The fourth hour of the eve of Passover ended at ${f.moment(fourthWallMs, zone)}. Until candle lighting, ${f.moment(candlesWallMs, zone)}, water still purges, with more care: ask first. What is not purged by then is cleaned, closed up and kept out of use over Passover.`,
  'plan.notice.inside-passover':
    'It is Passover. Nothing is purged by water until it is over: the plan closes up what would be poured. Fire on the weekdays of the festival: ask your rabbi; else close that up too. Some let what rested 24 hours be purged by water: ask.',
  'plan.notice.eve-is-sabbath':
    'This year the eve of Passover is a Sabbath: all purging ends on the Friday before it. It is planned to end by that day’s fourth hour, as in other years. Leaven is still allowed on that Friday: ask your rabbi whether purging may go on until candle lighting without more care.',
  'plan.notice.no-sun-on-eve':
    'At this place the sun does not rise and set on the eve of Passover, so its hours are not reckoned: the plan ends a day earlier. Ask your rabbi for the hour.',
  'plan.notice.leaven-hour': (
    {
      fourthWallMs,
      fifthWallMs,
      purgeWallMs,
      candlesWallMs,
      zone,
    }: EveHours & { fifthWallMs: number; purgeWallMs: number },
    f,
  ) =>
    `On the eve leaven is eaten until ${f.moment(fourthWallMs, zone)} (end of the fourth hour) and burned until ${f.moment(fifthWallMs, zone)} (end of the fifth). Water purges before the first of them: the plan is done by ${f.moment(purgeWallMs, zone)}. After it, until candle lighting, ${f.moment(candlesWallMs, zone)}, ask first.`,
  'plan.notice.dim-days': ({ day, untilHour }: { day: Message; untilHour: number }, f) =>
    `At this place the sun does not tell when ${f.say(day)} begins or ends at this time of the year (it does not set, or the night does not get dark): the plan leaves out all from lighting, or from noon where there is no sunset, to ${f.number(untilHour)}:00 on the morning after. Ask your rabbi for the hours.`,
  'plan.notice.recheck': ({ what }: { what: string }) =>
    `A small plan after something happened (${what}): it holds only what that touches. Ask first whether it must be purged again; until then it is used for nothing hot.`,
  'plan.notice.calibration': ({ told }: { told: readonly Message[] }, f) =>
    `From your last run: ${told.map((one) => f.say(one)).join('; ')}. It sets when to look and how long work takes; rests, holds and limits stay as they are.`,
  'plan.calibration.boil': ({ name, percent }: Share, f) =>
    `${f.say(name)} ${shareText(percent)} to boil`,
  'plan.calibration.glow': ({ name, percent }: Share, f) =>
    `${f.say(name)} ${shareText(percent)} to glow`,
  'plan.calibration.heat-up': ({ name, percent }: Share, f) =>
    `${f.say(name)} ${shareText(percent)} to heat up`,
  'plan.calibration.cool': ({ name, percent }: Share, f) =>
    `${f.say(name)} ${shareText(percent)} to cool`,
  'plan.calibration.flow': ({ flowLMin }: { flowLMin: number }, f) =>
    `your pour is ${f.measure(flowLMin, 'L', 1)} a minute`,
  'plan.calibration.reach': ({ percent }: { percent: number }, f) =>
    `a kettle reaches ${f.number(percent)} % as far as reckoned`,
  'plan.question.recheck': ({ fixture }: { fixture: string }) =>
    `Must this be purged again: ${fixture}?`,
  'plan.question.recheck.why': ({ what }: { what: string }) =>
    `After its purge this was told: ${what}`,
  'plan.question.recheck.until-then':
    'Use it for nothing hot. The plan lets it rest and purges it anew.',
  'plan.only-heats': 'It is not in doubt: it only heats the kettle.',
} satisfies Section;
