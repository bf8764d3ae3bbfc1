import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  FIXTURE_KINDS,
  PARTS,
  partsOf,
  type Fixture,
  type Kitchen,
  type PartId,
} from '../../../src/core/kitchen/index.ts';
import type { Message } from '../../../src/core/messages/index.ts';
import { buildPlan, describePlan, type Plan, type Step } from '../../../src/core/plan/index.ts';
import { inEnglish } from '../../support/english.ts';
import { kitchens } from '../kitchen/arbitrary/kitchen-arbitrary.ts';
import { DEMOS, kitchenOf } from './support/plans.ts';

// How every plan reads to a person with wet hands: short sentences, one number, nothing that is not there.

/** What is read at the work, and what is read before it, words a sentence. */
const AT_WORK_WORDS = 24;
const BEFORE_WORDS = 60;
/** Of the heat a hand recoils from there are opinions from one figure to another: what is told there is the spread. */
const SPREAD_IS_MEANT: ReadonlySet<string> = new Set(['plan.pour.reached-by-some']);

/** Every sentence anywhere in a plan, whole: what stands inside another is told with it. */
function* messagesOf(value: unknown): Generator<Message> {
  if (typeof value !== 'object' || value === null) return;
  if ('key' in value && 'params' in value) {
    yield value as Message;
    return;
  }
  for (const one of Object.values(value)) yield* messagesOf(one);
}

type Said = { readonly key: string; readonly text: string };

function saidIn(plan: Plan): readonly Said[] {
  return [...messagesOf({ ...plan, kitchen: undefined })].map((message) => ({
    key: message.key,
    text: inEnglish.say(message),
  }));
}

function longest({ text }: Said): number {
  return Math.max(...text.split(/(?<=[.!?])\s+/).map((one) => one.split(/\s+/).length));
}

/** "9 min (8 min to 11 min)", "18 (11 to 20) L": a value and, in brackets, its two ends. */
const WITH_BAND =
  /\d[\d.,]*(?: [^\s\d()]{1,4})*(?: \d+ [a-z]+)? \((?:about )?[−-]?\d[^()]* to [^()]*\d[^()]*\)/;

function expectShort(plan: Plan): void {
  for (const said of saidIn(plan)) {
    const most = /^(?:steps|cautions)\./.test(said.key) ? AT_WORK_WORDS : BEFORE_WORDS;
    if (longest(said) > most) expect.fail(`${said.key}: ${longest(said)} words: ${said.text}`);
    if (!SPREAD_IS_MEANT.has(said.key)) expect(said.text, said.key).not.toMatch(WITH_BAND);
  }
  expect(describePlan(plan, inEnglish)).not.toMatch(WITH_BAND);
}

/** By which word each part is known in a list. */
const NAMED: Readonly<Record<PartId, RegExp>> = {
  racks: /\bracks\b/i,
  'side-rails': /side rail/i,
  trays: /\btray/i,
  'door-rim': /rim of the door/i,
  grates: /\bgrate/i,
  caps: /burner cap/i,
  'drip-bowls': /drip bowl/i,
  'cooktop-surface': /surface round the burners|the glass:/i,
  knobs: /\bknob/i,
  'hood-filter': /\bfilter/i,
  strainer: /strainer/i,
  aerator: /aerator/i,
  overflow: /overflow/i,
  'sprayer-hose': /sprayer|\bhose\b/i,
  'instant-hot-tap': /hot-water tap/i,
  disposer: /disposer/i,
  plate: /glass plate/i,
  'plate-ring': /\bring\b/i,
};

/** Of which a kind of fixture has its own, apart from the parts that are treated by themselves. */
const OWN: Readonly<Partial<Record<Fixture['kind'], readonly PartId[]>>> = {
  cooktop: ['cooktop-surface'],
  dishwasher: ['racks', 'hood-filter'],
};

type Feature = { readonly named: RegExp; readonly has: (fixture: Fixture) => boolean };

/** What else is named in the lists, and which fixtures have it. */
const FEATURES: readonly Feature[] = [
  { named: /drainboard/i, has: (f) => f.kind === 'sink' && f.drainboard },
  { named: /under the handles/i, has: (f) => f.kind === 'sink' && f.tap.handles > 0 },
  {
    named: /backsplash/i,
    has: (f) => f.kind === 'counter' && f.backEdges.length > 0 && f.backsplashHeightM > 0,
  },
  { named: /shelf pins/i, has: (f) => 'shelves' in f && f.shelves.length > 0 },
  { named: /toe kick/i, has: (f) => 'place' in f && f.place === 'under-counter' },
  {
    named: /pull it out|drawer beneath/i,
    has: (f) => f.kind === 'oven' && f.sharesRangeWith !== undefined,
  },
  { named: /the glass:/i, has: (f) => f.kind === 'cooktop' && f.surface === 'glass-ceramic' },
  {
    named: /seam to the counter/i,
    has: (f) => f.kind === 'cooktop' && f.burners.some(({ type }) => type !== 'portable-plate'),
  },
];

function cleaningStep(plan: Plan, fixture: Fixture): Step {
  const step = plan.steps.find(({ kind, fixture: of }) => kind === 'clean' && of === fixture.id);
  if (!step) throw new Error(`${fixture.id} is cleaned nowhere`);
  return step;
}

/** Lines of the list, but for the one that names what does not come back. */
function listOf(plan: Plan, fixture: Fixture): string {
  return cleaningStep(plan, fixture)
    .stages.flatMap(({ detail }) => detail)
    .filter(({ key }) => key !== 'steps.parts.take-out' && key !== 'steps.parts.until-new')
    .map((line) => inEnglish.say(line))
    .join('\n');
}

/** What is said and asked beside the list. */
function saidBeside(plan: Plan, { gates, standing, after }: Step): string {
  const ids = [...gates, ...standing, ...after];
  return [...plan.cautions, ...plan.gates]
    .filter(({ id }) => ids.includes(id))
    .flatMap((one) => [one.say, ...('ask' in one ? [one.ask] : [])])
    .map((one) => inEnglish.say(one))
    .join('\n');
}

/** One appliance with burners and an oven, which can be pulled out and tips. */
function isRange(fixture: Fixture, { fixtures }: Kitchen): boolean {
  return fixtures.some(
    (one) =>
      one.kind === 'oven' &&
      one.sharesRangeWith !== undefined &&
      [one.id, one.sharesRangeWith].includes(fixture.id),
  );
}

function expectNothingAbsent(plan: Plan, fixture: Fixture): void {
  const list = listOf(plan, fixture);
  const own = OWN[fixture.kind] ?? [];
  const method = plan.methods.find((row) => row.fixture === fixture.id);
  const gone = (method?.parts ?? []).filter((part) => part.method === 'replace');
  for (const part of PARTS) {
    const there = partsOf(fixture).includes(part) && !gone.some((one) => one.part === part);
    if (!there && !own.includes(part))
      expect(list, `${fixture.kind} without ${part}`).not.toMatch(NAMED[part]);
  }
  const beside = saidBeside(plan, cleaningStep(plan, fixture));
  if (!isRange(fixture, plan.kitchen)) expect(beside, fixture.kind).not.toMatch(/bracket|pull/i);
  if ('place' in fixture && fixture.place === 'under-counter')
    expect(beside, fixture.kind).not.toMatch(/ladder/i);
  for (const { named, has } of FEATURES)
    if (!has(fixture)) expect(list, `${fixture.kind} ${named}`).not.toMatch(named);
}

/** A kitchen of a demo in which every part of every fixture is as told. */
function withParts(kitchen: Kitchen, parts: readonly PartId[]): Kitchen {
  const fixtures = kitchen.fixtures.map((one): Fixture => ({ ...one, parts }));
  return { ...kitchen, fixtures };
}

function look(plan: Plan): void {
  expectShort(plan);
  for (const fixture of plan.kitchen.fixtures) expectNothingAbsent(plan, fixture);
}

describe.each(DEMOS)('the words of %s', (demo) => {
  it('are short, with one number, and name what is there', () => {
    look(buildPlan(kitchenOf(demo)));
  });

  it('name no part where none is told, and each where it is', () => {
    for (const parts of [[], ...PARTS.map((part) => [part])]) {
      const plan = buildPlan(withParts(kitchenOf(demo), parts));
      for (const fixture of plan.kitchen.fixtures) expectNothingAbsent(plan, fixture);
    }
  });
});

describe('the words of any kitchen', () => {
  it('are short, with one number, and name what is there, for every kind of fixture', () => {
    const seen = new Set<string>();
    const property = fc.property(kitchens(), (kitchen) => {
      const plan = buildPlan(kitchen);
      look(plan);
      for (const { kind } of kitchen.fixtures) seen.add(kind);
    });
    fc.assert(property, { numRuns: 40, seed: 11 });
    expect([...seen].toSorted()).toEqual([...FIXTURE_KINDS].toSorted());
  });
});

describe('the measure', () => {
  it('finds a value told with its ends', () => {
    expect('Boils. [9 min 15 s (8 min 20 s to 11 min)]').toMatch(WITH_BAND);
    expect('Boiling water: 11 (9 to 12) L').toMatch(WITH_BAND);
    expect('about 35 °C (23 to 41 °C)').toMatch(WITH_BAND);
    expect('Clean: Table.  [about 20 min]').not.toMatch(WITH_BAND);
  });
});

describe('the title of a step', () => {
  it.each(DEMOS)('%s: names the place it is at, so that what is next is found', (demo) => {
    const { steps, kitchen } = buildPlan(kitchenOf(demo));
    const nameless = steps.filter(({ fixture, title }) => {
      const name = kitchen.fixtures.find(({ id }) => id === fixture)?.name;
      return name !== undefined && !inEnglish.say(title).includes(name);
    });
    expect(nameless.map(({ id }) => id)).toEqual([]);
    expect(steps.filter(({ fixture }) => fixture !== undefined).length).toBeGreaterThan(20);
  });
});
