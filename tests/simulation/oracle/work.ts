import type { Step } from '../../../src/core/plan/index.ts';
import type { FactBody, RunView } from '../../../src/core/run/index.ts';
import { Truth, vesselOf, type Place } from '../truth.ts';
import type { World } from '../world.ts';
import type { Findings } from './findings.ts';

const SLACK_S = 60;

/** I-17, I-24: no heat or water on a fixture that was touched less than its rest ago. */
export function purgeBegun(found: Findings, world: World, body: FactBody, view: RunView): void {
  if (body.kind !== 'step-started') return;
  const { truth } = world;
  const step = truth.step(body.step);
  if (step.phase !== 'purge') return;
  const thing = Truth.thing(step);
  if (truth.cleanings.has(thing))
    found.add(
      world,
      'I-24',
      'heat while it is cleaned',
      `${step.id} began while ${thing} is cleaned.`,
    );
  for (const rest of restsBefore(truth, step)) restedEnough(found, world, step, rest, view);
}

function restsBefore(truth: Truth, step: Step): Step[] {
  const needed = new Set(step.needs.map((need) => need.step));
  return [...truth.steps.values()].filter(
    (one) =>
      one.kind === 'rest' &&
      (needed.has(one.id) || (step.fixture !== undefined && one.fixture === step.fixture)),
  );
}

function restedEnough(found: Findings, world: World, step: Step, rest: Step, view: RunView): void {
  const { truth } = world;
  const now = view.steps.find((one) => one.step.id === rest.id);
  if (now?.outcome === 'skipped' && now.reason !== undefined) return;
  const cleanLeftOut = rest.needs.every(
    (need) => view.steps.find((one) => one.step.id === need.step)?.outcome === 'skipped',
  );
  if (truth.stained || cleanLeftOut) return;
  const thing = Truth.thing(rest);
  const lengthS = rest.stages[0]?.timers.find(({ role }) => role === 'hold')?.lengthS ?? 0;
  const touchedS = truth.leftAloneSinceS(rest) ?? Infinity;
  const passedS = world.trueS - touchedS;
  if (passedS >= lengthS - SLACK_S) return;
  const again = (now?.attempt ?? 1) === 1 && now?.outcome === 'done';
  const way = truth.doubtedS.has(thing)
    ? 'a doubt did not restart the rest'
    : again && truth.clockTroubles === 0 && truth.corrections === 0
      ? 'cleaned again, and not rested again'
      : 'not rested';
  found.add(
    world,
    way === 'not rested' ? 'I-17' : 'I-24',
    way,
    `${step.id} began ${Math.round(passedS)} s after ${thing} was last touched; ${lengthS} are promised.`,
  );
}

/** I-23: water that truly boiled, truly fresh until the last drop; a kettle that holds some is in use. */
export function waterUsed(found: Findings, world: World, body: FactBody, before?: Place): void {
  const { truth } = world;
  if (body.kind === 'step-started') {
    const step = truth.step(body.step);
    const vessel = vesselOf(step);
    if (vessel === null) return;
    const held = truth.kettles.get(vessel);
    if (step.kind === 'pour' && !held)
      found.add(
        world,
        'I-23',
        'nothing boiled',
        `${step.id} began with no boiled water in ${vessel}.`,
      );
    doubtedKettle(found, world, step, vessel);
    if (step.kind === 'boil' && held && held.boil !== step.id && waiting(world, held.boil))
      found.add(
        world,
        'I-23',
        'a full kettle filled',
        `${step.id} began with ${vessel} full from ${held.boil}.`,
      );
  }
  if (body.kind === 'stage-ended' && before?.stage === 0)
    poured(found, world, truth.step(body.step));
}

/** I-24: a kettle that was doubted boils nothing for a purge before it was purged again. */
function doubtedKettle(found: Findings, world: World, step: Step, vessel: string): void {
  const { truth } = world;
  const kettle = vessel.replace(/^vessel-/, '');
  const doubtS = truth.doubtedS.get(kettle);
  const purge = truth.steps.get(`boil-over-${kettle}`);
  if (step.kind !== 'boil' || doubtS === undefined || !purge) return;
  const state = world.view.steps.find((one) => one.step.id === purge.id);
  if (state?.outcome === 'skipped' || (truth.purgedS.get(purge.id) ?? -Infinity) > doubtS) return;
  found.add(
    world,
    'I-24',
    'a doubted kettle used',
    `${step.id} began with ${kettle}, doubted and not purged again.`,
  );
}

/** Is the pour that this water is for still to come, and the water still fresh? */
function waiting(world: World, boil: string): boolean {
  const { truth } = world;
  const boiledS = boiledAtS(truth, boil);
  const ageS = world.trueS - boiledS;
  // What it was meant for was touched or is cleaned meanwhile, and rests first.
  const thing = Truth.thing(truth.step(boil));
  if (truth.cleanings.has(thing) || (truth.touchedS.get(thing) ?? 0) > boiledS) return false;
  return [...truth.steps.values()].some((step) => {
    const need = step.needs.find((one) => one.step === boil && one.withinS !== undefined);
    const begun = truth.places.has(step.id) || truth.purgedS.has(step.id);
    const left = world.facts.some(
      ({ body }) => body.kind === 'step-settled' && body.step === step.id,
    );
    return need?.withinS !== undefined && !begun && !left && ageS < need.withinS - SLACK_S;
  });
}

function boiledAtS(truth: Truth, boil: string): number {
  return [...truth.kettles.values()].find((one) => one.boil === boil)?.boiledS ?? -Infinity;
}

function poured(found: Findings, world: World, step: Step): void {
  if (step.kind !== 'pour') return;
  const vessel = vesselOf(step);
  const held = vessel === null ? undefined : world.truth.kettles.get(vessel);
  const within = step.needs.find(({ withinS }) => withinS !== undefined)?.withinS;
  if (!held || within === undefined || world.truth.alarmsMayLag) return;
  const ageS = world.trueS - held.boiledS;
  if (ageS > within + step.durationS.high + 2 * SLACK_S)
    found.add(
      world,
      'I-23',
      'poured stale',
      `${step.id} poured water that boiled ${Math.round(ageS)} s ago; ${within} are allowed.`,
    );
}

/** I-11: resources, by what has begun. */
export function resourcesHeld(found: Findings, world: World, view: RunView): void {
  const begun = view.steps.filter(({ status }) =>
    ['active', 'checking', 'stalled', 'unwinding'].includes(status),
  );
  for (const { id, capacity } of view.plan.resources) {
    const used = begun
      .filter((one) => world.truth.places.has(one.step.id))
      .reduce((sum, one) => sum + (one.step.demands[id] ?? 0), 0);
    if (used > capacity + 1e-6)
      found.add(
        world,
        'I-11',
        'a resource twice',
        `${used} of ${id} are used; there are ${capacity}.`,
      );
  }
}
