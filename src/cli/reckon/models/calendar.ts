import { inEnglish } from '../../speech/english.ts';
import titles from '../../../../shared/sources/calendar.json';
import {
  dateText,
  LIGHTING_MIN,
  leavenHours,
  NIGHTFALL_DEG,
  parseDate,
  restDays,
  sunTimes,
  YEARS,
} from '../../../core/calendar/index.ts';
import { MS_PER_SECOND } from '../../../core/units/index.ts';
import { number, type Model, type ModelInput } from '../model/model.ts';

function sources(...keys: readonly (keyof typeof titles)[]): readonly string[] {
  return keys.map((key) => {
    const source: { readonly title: string; readonly place?: string } = titles[key];
    return source.place === undefined ? source.title : `${source.title}, ${source.place}`;
  });
}

const text = (name: string, unit: string): ModelInput => ({ name, kind: 'text', unit });

const SPOT: readonly ModelInput[] = [
  number('latDeg', '°', [-90, 90]),
  number('lonDeg', '°', [-180, 180]),
  text('zone', 'an IANA time-zone name'),
];
const NIGHTFALL = number('nightfallDeg', '°', [1, 20], NIGHTFALL_DEG);
const DATE = 'a date yyyy-mm-dd';
const ISO = 'ISO 8601, UTC';

/** ISO 8601 in UTC, to the whole second; null stays null. */
function iso(atMs: number | null): string | null {
  if (atMs === null) return null;
  const text = new Date(Math.round(atMs / MS_PER_SECOND) * MS_PER_SECOND).toISOString();
  return text.replace('.000Z', 'Z');
}

/** Values were checked against the inputs of the model, so the shapes fit. */
function as<T>(values: object): T {
  return values as T;
}

export const CALENDAR_MODELS: readonly Model[] = [
  {
    name: 'sun-times',
    about:
      'Sunrise, sunset and nightfall of one day at a sea horizon. null: it does not come on that day.',
    inputs: [...SPOT, text('date', DATE), NIGHTFALL],
    results: { sunriseAt: ISO, sunsetAt: ISO, nightfallAt: ISO },
    sources: sources('meeus-1998', 'nightfall-custom'),
    evaluate: (values) => {
      const date = parseDate('date', String(values.date));
      const found = sunTimes({ ...as<Parameters<typeof sunTimes>[0]>(values), date });
      return {
        sunriseAt: iso(found.sunriseAtMs),
        sunsetAt: iso(found.sunsetAtMs),
        nightfallAt: iso(found.nightfallAtMs),
      };
    },
  },
  {
    name: 'rest-days',
    about:
      'Sabbaths and festivals from lighting to nightfall, touching ones joined. null: that moment does not come there.',
    inputs: [
      ...SPOT,
      text('from', DATE),
      number('days', 'days', [1, 36_600]),
      { name: 'land', kind: 'text', unit: 'name', choices: ['israel', 'diaspora'] },
      number('lightingMin', 'min', [0, 90], LIGHTING_MIN),
      NIGHTFALL,
    ],
    results: { restDays: `list of name, startsAt and endsAt (${ISO})` },
    sources: sources('hebrew-calendar', 'meeus-1998', 'nightfall-custom', 'rest-days-second-day'),
    evaluate: (values) => {
      const from = parseDate('from', String(values.from));
      const spans = restDays({ ...as<Parameters<typeof restDays>[0]>(values), from });
      return {
        restDays: spans.map(({ name, startsAtMs, endsAtMs }) => ({
          name: inEnglish.say(name),
          startsAt: iso(startsAtMs),
          endsAt: iso(endsAtMs),
        })),
      };
    },
  },
  {
    name: 'leaven-hours',
    about:
      'Hours of leaven on the eve of Passover. When that is a Sabbath nothing is burned or purged on it: purgeUntilAt is then on the Friday.',
    inputs: [
      ...SPOT,
      number('year', 'civil year', YEARS),
      {
        name: 'reckoning',
        kind: 'text',
        unit: 'name',
        choices: ['sunrise-sunset', 'magen-avraham'],
        usual: 'sunrise-sunset',
        about: 'magen-avraham: the day runs from 72 min before sunrise to 72 min after sunset',
      },
    ],
    results: {
      eveDate: DATE,
      eatUntilAt: ISO,
      burnUntilAt: ISO,
      eveIsSabbath: 'true or false',
      purgeDate: DATE,
      purgeUntilAt: ISO,
    },
    sources: sources('leaven-hours', 'leaven-on-sabbath', 'magen-avraham-day', 'meeus-1998'),
    evaluate: (values) => {
      const found = leavenHours(as(values));
      return {
        eveDate: dateText(found.eveDate),
        eatUntilAt: iso(found.eatUntilAtMs),
        burnUntilAt: iso(found.burnUntilAtMs),
        eveIsSabbath: found.eveIsSabbath,
        purgeDate: dateText(found.purgeDate),
        purgeUntilAt: iso(found.purgeUntilAtMs),
      };
    },
  },
];
