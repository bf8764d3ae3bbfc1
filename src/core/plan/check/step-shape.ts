import {
  byName,
  fields,
  flag,
  list,
  number,
  oneOf,
  said,
  tagged,
  text,
  type ShapeOf,
} from './shape-of.ts';

const PHASES = ['prepare', 'clean', 'rest', 'purge', 'cool', 'cover', 'mark'] as const;
const KINDS = [
  'prepare',
  'unplug',
  'thaw',
  'clean',
  'rest',
  'dry',
  'boil',
  'pour',
  'glow',
  'cool',
  'self-clean',
  'high-heat',
  'steam',
  'boil-over',
  'cover',
  'switch-on',
  'mark',
] as const;
const ROLES = [
  'do',
  'clean',
  'rest',
  'dry',
  'fill',
  'boil',
  'overflow',
  'pour',
  'immerse',
  'cold',
  'light',
  'start',
  'warm-up',
  'hold',
  'cycle',
  'off',
  'cool',
  'open',
  'cover',
  'mark',
] as const;
const FAULTS = [
  'burned',
  'no-glow',
  'flame-out',
  'power-cut',
  'smoke',
  'fire',
  'co-alarm',
  'gas-smell',
  'unwell',
  'kettle-failed',
  'oven-lock',
  'breaker-tripped',
  'cracked',
  'undefined',
] as const;

const texts = list(text);
const messages = list(said);
const coordinate = number(-Infinity);
const point: ShapeOf = (value, at, bad) => {
  list(coordinate)(value, at, bad);
  if (Array.isArray(value) && value.length !== 2)
    bad(`${at} has ${value.length} numbers; allowed: 2`);
};
export const band = fields({ low: number(), typical: number(), high: number() });
export const faultKind = oneOf(...FAULTS);

const timer = fields(
  {
    id: text,
    role: oneOf('hold', 'estimate', 'limit', 'reminder', 'freshness'),
    purpose: oneOf('at-least', 'at-most', 'unbroken'),
    lengthS: number(),
    label: said,
  },
  { repeats: flag, fault: faultKind, of: fields({ label: said, name: said }) },
);

const stage = fields(
  {
    id: text,
    role: oneOf(...ROLES),
    title: said,
    detail: messages,
    timers: list(timer),
    resumption: oneOf('continue', 'ask', 'restart', 'void'),
    hazards: list(oneOf('boiling-water', 'flame', 'element', 'oven', 'hot-surface')),
  },
  { say: said, reviewAsk: said },
);

const stand = fields({ edge: list(number()), at: point, from: point, to: point });

const spot = fields({ outline: list(point), areaM2: number(), at: point });

const stretch = fields(
  {
    kettle: number(),
    points: list(point),
    litres: number(),
    lengthM: number(),
  },
  { stand },
);

const picture = tagged('kind', {
  lanes: fields(
    {
      outline: list(point),
      holes: list(list(point)),
      stretches: list(stretch),
      kettle: number(),
    },
    { laneM: number(), unreached: list(spot) },
  ),
  sink: fields({ parts: list(fields({ name: said, kettle: number() })), kettle: number() }),
  burner: fields({ cooktop: text, burner: text }),
  oven: fields({ stages: list(fields({ name: said, lengthS: number(), tempC: coordinate })) }),
  kettle: fields({ vessel: text, litres: number(), maxFillL: number() }),
  batch: fields({
    vessel: text,
    diameterM: number(),
    depthM: number(),
    waterShare: number(),
    hold: oneOf('tongs', 'net'),
    byHalves: flag,
    items: list(fields({ kind: text, name: said, count: number(1) })),
  }),
});

const vessel = fields({ id: text, unit: text, name: said });

const work = tagged('on', {
  kitchen: fields({}),
  fixture: fields({ method: text }, { minutes: number() }),
  burner: fields({ burner: text, method: text }, { minutes: number() }),
  vessel: fields({ vessel }, { litres: number() }),
  kettle: fields(
    { kettle: number(1), of: number(1), vessel, litres: number() },
    { round: number(1), rounds: number(1) },
  ),
  utensils: fields(
    { items: list(fields({ utensil: text, name: said, count: number(1) })) },
    {
      method: oneOf('heat', 'light-heat', 'immerse', 'soak', 'clean', 'put-away'),
      vessel,
      batch: fields({
        number: number(1),
        of: number(1),
        group: oneOf('meat', 'dairy', 'pareve', 'undecided'),
      }),
    },
  ),
});

/** A step of a plan, field by field. */
export const stepShape = fields(
  {
    id: text,
    kind: oneOf(...KINDS),
    phase: oneOf(...PHASES),
    work,
    title: said,
    reason: said,
    sources: messages,
    stages: list(stage),
    durationS: band,
    attention: oneOf('hands', 'watch', 'none'),
    needs: list(fields({ step: text }, { withinS: number() })),
    startsBy: oneOf('person', 'chain'),
    demands: byName(number()),
    gates: texts,
    standing: texts,
    after: texts,
  },
  { fixture: text, makeSafe: said, picture, lastHotWallMs: number() },
);
