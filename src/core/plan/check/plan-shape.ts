import { escapedUnseen, POUR_UNTIL, readKitchen, seenText } from '../../kitchen/index.ts';
import { byName, fields, flag, list, number, oneOf, said, text, type ShapeOf } from './shape-of.ts';
import { band, faultKind, stepShape } from './step-shape.ts';

const messages = list(said);
const anything: ShapeOf = () => undefined;
const signal = oneOf('DANGER', 'WARNING', 'CAUTION', 'NOTICE');
const resourceKind = oneOf('hands', 'burners-lit', 'range', 'vessel', 'circuit', 'place', 'watch');

const gate = fields(
  {
    id: text,
    kind: oneOf('caution', 'condition'),
    signal,
    ask: said,
    say: said,
    scope: oneOf('run', 'fixture', 'step'),
    trippedBy: list(faultKind),
    settleS: number(),
    makeSafe: said,
  },
  { lapsesS: number() },
);

const method = fields(
  {
    fixture: text,
    method: text,
    cover: flag,
    reason: said,
    source: said,
    checked: flag,
    wouldChange: said,
  },
  {
    minutes: number(),
    times: number(1),
    rest: flag,
    stone: flag,
    sourceState: text,
    term: said,
    overriddenBy: said,
    ownRow: text,
    question: text,
    parts: list(
      fields(
        { part: text, method: text, within: flag, reason: said, source: said, sourceState: text },
        { minutes: number(), overriddenBy: said, question: text },
      ),
    ),
  },
);

const days = fields(
  {
    startWallMs: number(),
    restDays: list(fields({ name: said, fromWallMs: number(), toWallMs: number() })),
  },
  {
    deadline: fields(
      { name: said, atWallMs: number() },
      { hard: fields({ name: said, atWallMs: number(), asks: said }) },
    ),
  },
);

const amount = fields({ litres: band, kettles: number() });

const plannedPour = fields({
  fixture: text,
  until: oneOf(...POUR_UNTIL),
  handSpeedMS: number(),
  firstTouchC: band,
  hottestC: band,
  surfaceC: band,
  wetFirstTouchC: number(),
  runOffC: number(),
  belowC: number(),
  reached: amount,
  heated: amount,
  says: said,
});

const planShape = fields(
  {
    format: oneOf('glowpour-plan'),
    version: oneOf(2),
    kitchen: anything,
    purpose: text,
    custom: text,
    boilingC: number(),
    methods: list(method),
    steps: list(stepShape),
    resources: list(
      fields({ id: text, kind: resourceKind, name: said, capacity: number(), unit: said }),
    ),
    gates: list(gate),
    cautions: list(fields({ id: text, signal, hazard: said, say: said, source: said })),
    faults: list(
      fields({
        kind: faultKind,
        name: said,
        policy: oneOf('stop-run', 'suspend', 'note'),
        doThis: messages,
      }),
    ),
    questions: list(
      fields(
        { id: text, fixture: text, ask: said, why: said, untilThen: said },
        {
          row: text,
          part: text,
          about: text,
          answers: list(
            fields(
              { text: said, method: text, cover: flag },
              { minutes: number(), times: number(1), rest: flag, stone: flag, upwards: flag },
            ),
          ),
        },
      ),
    ),
    shopping: list(fields({ id: text, name: said, amount: said, why: said })),
    totals: fields({
      hotL: band,
      coldL: band,
      kettles: band,
      electricityKWh: number(),
      gasKWh: number(),
      handsOnS: number(),
    }),
    timetable: fields(
      { startS: byName(number()), finishS: number(), lowerBoundS: number() },
      { proven: flag },
    ),
    notices: messages,
  },
  { days, pours: list(plannedPour), calibration: byName(anything) },
);

/** More than this is not listed; the file is refused all the same. */
const MOST = 20;

/** Texts with what nobody sees or what would turn the words around them: no plan is made with any. */
function unseenIn(value: unknown, at: string, found: string[]): void {
  if (found.length >= MOST) return;
  if (typeof value === 'string') {
    if (seenText(value) !== value)
      found.push(
        `${at} is "${escapedUnseen(value).slice(0, 60)}"; allowed: a text without control codes and marks that turn or pile up letters`,
      );
  } else if (typeof value === 'object' && value !== null)
    for (const [name, one] of Object.entries(value)) unseenIn(one, `${at}.${name}`, found);
}

/**
 * What a value lacks to be a plan at all, field by field, its kitchen by the
 * reader of kitchen files; empty: its shape is right. Says nothing of its sense.
 */
export function planShapeProblems(raw: unknown): readonly string[] {
  const found: string[] = [];
  planShape(raw, 'plan', (what) => found.push(what));
  if (found.length > 0) return found.slice(0, MOST);
  unseenIn(raw, 'plan', found);
  if (found.length > 0) return found.slice(0, MOST);
  const kitchen = readKitchen((raw as { readonly kitchen: unknown }).kitchen);
  return 'problems' in kitchen
    ? kitchen.problems
        .slice(0, MOST)
        .map(({ path }) => `plan.kitchen.${path} is not what a kitchen file may have`)
    : [];
}
