import type { Fixture, Kitchen } from '../../../../src/core/kitchen/index.ts';
import type { Plan, Step } from '../../../../src/core/plan/index.ts';

/**
 * Where each caution must stand, said a second time: from what hurts in a
 * step and who stands where, and not from the triggers of the table.
 */
export type Where = {
  readonly gate?: (seen: Seen) => boolean;
  readonly standing?: (seen: Seen) => boolean;
  readonly after?: (seen: Seen) => boolean;
};

/** One step with what a person in the kitchen sees of it. */
export type Seen = {
  readonly plan: Plan;
  readonly step: Step;
  readonly fixture: Fixture | undefined;
  /** What gives the heat: the burner of the step or under its kettle, the oven, a plug, or nothing. */
  readonly heat: 'gas' | 'electric' | 'none';
  readonly vessel: 'plugged' | 'on-the-stove' | 'none';
  readonly roomIsHot: boolean;
};

const GAS = /^gas-|^commercial-open$/;

function burnerType(kitchen: Kitchen, id: string | undefined): string {
  const burners = kitchen.fixtures.flatMap((f) => (f.kind === 'cooktop' ? f.burners : []));
  return burners.find((one) => one.id === id)?.type ?? '';
}

function vesselOf(kitchen: Kitchen, step: Step) {
  const held = Object.keys(step.demands).find((id) => id.startsWith('vessel-'));
  if (held === undefined) return undefined;
  const id = held.slice('vessel-'.length);
  const known = kitchen.vessels.find((one) => id === one.id || id.replace(/-\d+$/, '') === one.id);
  return known ?? { burner: undefined };
}

function heatOf(kitchen: Kitchen, step: Step, fixture: Fixture | undefined): Seen['heat'] {
  const vessel = vesselOf(kitchen, step);
  if (vessel) {
    if (vessel.burner === undefined) return 'none';
    return GAS.test(burnerType(kitchen, vessel.burner)) ? 'gas' : 'electric';
  }
  if (step.picture?.kind === 'burner')
    return GAS.test(burnerType(kitchen, step.picture.burner)) ? 'gas' : 'electric';
  if (fixture?.kind === 'oven') return fixture.heat;
  if (fixture?.kind === 'cooktop')
    return fixture.burners.some(({ type }) => GAS.test(type)) ? 'gas' : 'electric';
  return step.kind === 'high-heat' ? 'electric' : 'none';
}

export function seen(plan: Plan, step: Step, roomIsHot: boolean): Seen {
  const { kitchen } = plan;
  const fixture = kitchen.fixtures.find(({ id }) => id === step.fixture);
  const vessel = vesselOf(kitchen, step);
  const stands = vessel?.burner === undefined ? 'plugged' : 'on-the-stove';
  return {
    plan,
    step,
    fixture,
    heat: heatOf(kitchen, step, fixture),
    vessel: vessel ? stands : 'none',
    roomIsHot,
  };
}

const hasBoilingWater = ({ step }: Seen): boolean =>
  step.stages.some(({ hazards }) => hazards.includes('boiling-water'));
/** A person holds the boiling water: poured over a surface, or over and into things by hand. */
const byHand = (s: Seen): boolean => hasBoilingWater(s) && s.step.attention === 'hands';
const pours = ({ step }: Seen): boolean => step.kind === 'pour';
const boils = ({ step }: Seen): boolean => step.kind === 'boil' || step.kind === 'boil-over';
const wetsByHand = (s: Seen): boolean => s.step.kind === 'boil-over' && s.fixture !== undefined;
/** A pot of the household over its own rim, or what goes into the pot of the purge. */
const ofUtensils = ({ step }: Seen): boolean => step.work.on === 'utensils';
const cleans = ({ step }: Seen): boolean => step.kind === 'clean';
const selfCleans = ({ step }: Seen): boolean => step.kind === 'self-clean';
/** Strong dry heat: a glow, a burner or an oven at its highest. */
const heats = ({ step }: Seen): boolean => step.kind === 'glow' || step.kind === 'high-heat';
const isOven = ({ fixture }: Seen): boolean => fixture?.kind === 'oven';
const ovenHeat = (s: Seen): boolean => selfCleans(s) || (heats(s) && isOven(s));

/** Whatever can crack, craze, lift or swell: everything but bare stainless steel. */
function canCrack({ fixture }: Seen): boolean {
  if (fixture?.kind === 'cooktop') return true;
  return fixture !== undefined && 'material' in fixture && fixture.material !== 'stainless-steel';
}

/** Something with a plug and electrics inside. */
function isAppliance({ fixture }: Seen): boolean {
  return [
    'cooktop',
    'fridge',
    'freezer',
    'microwave',
    'dishwasher',
    'warming-drawer',
    'hood',
  ].includes(fixture?.kind ?? '');
}

/** Kettles are poured over it, or it is poured by hand. */
function isPouredLater({ plan, step }: Seen): boolean {
  return plan.methods.some(({ fixture, method }) => fixture === step.fixture && method === 'pour');
}

/** Poured by hand, not put under water. */
function isPoured({ step }: Seen): boolean {
  return step.stages.some(({ role }) => role === 'pour');
}

/** Oven and burners in one piece, not built into a wall or a counter: it can be pulled out. */
function standsFree({ plan, fixture }: Seen): boolean {
  const ovens = plan.kitchen.fixtures.filter((one) => one.kind === 'oven');
  return ovens.some(
    ({ id, sharesRangeWith }) =>
      sharesRangeWith !== undefined && [id, sharesRangeWith].includes(fixture?.id ?? ''),
  );
}

/** Does a rest of 24 hours begin when this cleaning is over? */
function restFollows({ plan, step }: Seen): boolean {
  return plan.steps.some(
    (one) => one.kind === 'rest' && one.needs.some((need) => need.step === step.id),
  );
}

export const WHERE: Readonly<Record<string, Where>> = {
  // A towel on a cold surface hurts nobody, nor do glasses in cold water.
  'child-pet': { gate: ({ step }) => step.phase === 'purge' && step.kind !== 'dry' },
  'scald-dress': { gate: byHand },
  'scald-carry': {
    standing: (s) => hasBoilingWater(s) && s.step.kind !== 'steam' && !ofUtensils(s),
  },
  // It runs off the front of what has no bowl.
  'pour-stance': {
    standing: (s) => s.fixture?.kind !== 'sink' && (pours(s) || (wetsByHand(s) && isPoured(s))),
  },
  splash: {
    standing: (s) =>
      (pours(s) && s.fixture?.kind === 'sink') || (s.step.kind === 'boil-over' && !ofUtensils(s)),
  },
  'dip-pot': { standing: (s) => boils(s) && ofUtensils(s) },
  'hot-refill': { standing: ({ step }) => step.kind === 'boil' },
  'steam-leap': { standing: (s) => s.step.kind === 'steam' && s.fixture?.kind === 'microwave' },
  // Before it is poured, while there is time to ask.
  'tap-chrome': {
    standing: (s) => cleans(s) && s.fixture?.kind === 'sink' && isPouredLater(s),
  },
  'wash-unplugged': {
    standing: (s) => cleans(s) && isAppliance(s) && s.fixture?.kind !== 'cooktop',
  },
  'sand-dust': {
    standing: ({ step }) =>
      step.stages.some(({ detail }) => detail.some(({ key }) => key === 'steps.clean.sand')),
  },
  'pour-power': {
    gate: (s) => (pours(s) && s.fixture?.kind === 'counter') || (wetsByHand(s) && isAppliance(s)),
  },
  'pour-material': { gate: (s) => (pours(s) || wetsByHand(s)) && canCrack(s) },
  'pour-drain': { standing: (s) => pours(s) && s.fixture?.kind === 'sink' },
  'cold-where': { gate: (s) => pours(s) || wetsByHand(s) },
  'wet-floor': { after: byHand },
  'burner-clear': {
    gate: (s) => heats(s) || (boils(s) && (s.vessel === 'on-the-stove' || ofUtensils(s))),
  },
  'burner-air': { gate: (s) => s.step.phase === 'purge' && !pours(s) && s.heat === 'gas' },
  'heat-air': { gate: (s) => (heats(s) || selfCleans(s)) && s.heat === 'electric' },
  'burner-attend': { standing: (s) => heats(s) && !isOven(s) },
  'burner-sheet': {
    gate: (s) =>
      s.step.kind === 'glow' &&
      s.heat === 'gas' &&
      s.plan.kitchen.household.custom === 'ashkenazic',
  },
  'glass-top': {
    standing: (s) =>
      (heats(s) || s.step.kind === 'cool') &&
      s.fixture?.kind === 'cooktop' &&
      s.fixture.surface === 'glass-ceramic',
  },
  'hot-after': { standing: ({ step }) => step.phase === 'cool' },
  'oven-pre': { gate: selfCleans },
  'oven-birds': { gate: (s) => selfCleans(s) || s.step.kind === 'high-heat' },
  'oven-attend': { standing: ovenHeat },
  'oven-late': {},
  'chem-mix': { gate: cleans },
  'range-move': {
    gate: (s) => cleans(s) && s.heat === 'gas' && standsFree(s),
  },
  'range-tip': { gate: (s) => cleans(s) && isOven(s) && s.heat === 'electric' && standsFree(s) },
  'electric-load': { gate: (s) => boils(s) && s.vessel === 'plugged' },
  climb: {
    standing: (s) =>
      (cleans(s) && ['hood', 'fridge', 'freezer'].includes(s.fixture?.kind ?? '')) ||
      ((cleans(s) || s.step.kind === 'cover') &&
        s.fixture?.kind === 'cupboard' &&
        s.fixture.place !== 'under-counter'),
  },
  'heat-stress': { standing: (s) => s.roomIsHot && (heats(s) || selfCleans(s)) },
  alone: {
    standing: (s) =>
      s.plan.kitchen.household.people === 1 &&
      (heats(s) || selfCleans(s) || pours(s) || wetsByHand(s)),
  },
  labels: { after: (s) => cleans(s) && restFollows(s) },
};

/** Cautions about the plan as a whole: they stand in its notices. */
export const WHOLE: Readonly<Record<string, (plan: Plan) => boolean>> = {
  'oven-late': (plan) => plan.steps.some(({ kind }) => kind === 'self-clean'),
  'electric-load': (plan) =>
    plan.steps.some((step) => {
      const one = seen(plan, step, false);
      return boils(one) && one.vessel === 'plugged';
    }),
};
