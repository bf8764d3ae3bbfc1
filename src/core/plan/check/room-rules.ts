import { distanceToEdgeM, edgesOf, pointInPolygon, type Polygon } from '../../geometry/index.ts';
import type { Fixture } from '../../kitchen/index.ts';
import { SECONDS_PER_HOUR } from '../../units/index.ts';
import type { Plan, Step, VesselUnit } from '../model/index.ts';
import { problem, type PlanProblem } from './problem.ts';

// What the room allows at one time, told by what stands where and when: written
// apart from the resources by which the timetable keeps it.

/** Names of these rules. */
export const ROOM_RULES = ['hot-beside', 'stands-on', 'dry', 'watch', 'range'] as const;

/** Nearer than this a surface is beside what is hot, m. */
const BESIDE_M = 0.1;
/** Times of a timetable are whole milliseconds. */
const TOUCH_S = 0.01;
const DRY_S = SECONDS_PER_HOUR;

type Span = { readonly step: Step; readonly fromS: number; readonly toS: number };

function spanOf({ timetable }: Plan, step: Step): Span {
  const fromS = timetable.startS[step.id] ?? Number.NaN;
  return { step, fromS, toS: fromS + step.durationS.typical };
}

function meet(a: Span, b: Span): boolean {
  return a.fromS < b.toS - TOUCH_S && b.fromS < a.toS - TOUCH_S;
}

function outlineOf(fixture: Fixture | undefined): Polygon | undefined {
  return fixture && 'outline' in fixture ? fixture.outline : undefined;
}

/** Least distance by every corner of either to every edge of the other; 0 where a corner lies inside. */
function isBeside(one: Polygon, other: Polygon): boolean {
  const near = (corners: Polygon, outline: Polygon): boolean =>
    corners.some(
      (corner) =>
        pointInPolygon(corner, outline) ||
        edgesOf(outline).some(([a, b]) => distanceToEdgeM(corner, a, b) <= BESIDE_M),
    );
  return near(one, other) || near(other, one);
}

const HEAT: ReadonlySet<Step['kind']> = new Set(['glow', 'high-heat', 'self-clean', 'cool']);

/** Pours, with the drying that opens them left out: that is no water. */
function poursOf(plan: Plan): readonly Span[] {
  return plan.steps.filter(({ kind }) => kind === 'pour').map((step) => spanOf(plan, step));
}

/** What boils in a step, where it says in which vessel. */
function vesselOf(work: Step['work']): VesselUnit | undefined {
  return 'vessel' in work ? work.vessel : undefined;
}

/** Vessels that boil on a burner, with the hob they boil on. */
function boilsOnHobs(plan: Plan): readonly { readonly hob: Polygon; readonly span: Span }[] {
  return plan.steps.flatMap((step) => {
    const { work, kind } = step;
    const vessel = vesselOf(work);
    if ((kind !== 'boil' && kind !== 'boil-over') || !vessel) return [];
    const burner = plan.kitchen.vessels.find(({ id }) => id === vessel.id)?.burner;
    const hob = plan.kitchen.fixtures.find(
      (one) => one.kind === 'cooktop' && one.burners.some(({ id }) => id === burner),
    );
    const outline = outlineOf(hob);
    return burner !== undefined && outline ? [{ hob: outline, span: spanOf(plan, step) }] : [];
  });
}

/** 1: from lighting until it is safe to touch, nothing hot is beside a pour, and no sheet is laid before. */
function* hotBeside(plan: Plan, byId: ReadonlyMap<string, Fixture>): Generator<PlanProblem> {
  const hot = plan.steps
    .filter(({ kind }) => HEAT.has(kind))
    .map((step) => spanOf(plan, step))
    .filter(({ step }) => ['cooktop', 'oven'].includes(byId.get(step.fixture ?? '')?.kind ?? ''));
  const boiled = boilsOnHobs(plan);
  for (const pour of poursOf(plan)) {
    const over = outlineOf(byId.get(pour.step.fixture ?? ''));
    for (const { hob, span } of boiled)
      if (over && meet(pour, span) && isBeside(over, hob))
        yield problem(
          'hot-beside',
          [pour.step.id, span.step.id],
          `${pour.step.id} pours beside ${span.step.id}, on a burner`,
        );
    const poured = outlineOf(byId.get(pour.step.fixture ?? ''));
    for (const heat of hot) {
      const heated = outlineOf(byId.get(heat.step.fixture ?? ''));
      if (poured && heated && meet(pour, heat) && isBeside(poured, heated))
        yield problem(
          'hot-beside',
          [pour.step.id, heat.step.id],
          `${pour.step.id} pours beside ${heat.step.id}, which is hot`,
        );
    }
  }
  for (const cover of plan.steps.filter(laysSomething).map((step) => spanOf(plan, step))) {
    const on = byId.get(cover.step.fixture ?? '');
    if (on?.kind !== 'counter' && on?.kind !== 'table') continue;
    for (const { hob, span } of boiled)
      if (cover.fromS < span.toS - TOUCH_S && isBeside(on.outline, hob))
        yield problem(
          'hot-beside',
          [cover.step.id, span.step.id],
          `${cover.step.id} lays what burns beside ${span.step.id}, on a burner`,
        );
    for (const heat of hot) {
      const heated = outlineOf(byId.get(heat.step.fixture ?? ''));
      if (heated && cover.fromS < heat.toS - TOUCH_S && isBeside(on.outline, heated))
        yield problem(
          'hot-beside',
          [cover.step.id, heat.step.id],
          `${cover.step.id} lays what burns beside ${heat.step.id}, which is still to come or hot`,
        );
    }
  }
}

/** 2: what stands on a surface is taken off before it is poured, the plan says so, and it does not run meanwhile. */
function* standing(plan: Plan, byId: ReadonlyMap<string, Fixture>): Generator<PlanProblem> {
  for (const pour of poursOf(plan)) {
    const under = byId.get(pour.step.fixture ?? '');
    if (!under || (under.kind !== 'counter' && under.kind !== 'table')) continue;
    const on = plan.kitchen.fixtures.filter((one) => {
      const outline = outlineOf(one);
      const stands = one.kind === 'microwave' || one.kind === 'warming-drawer';
      return stands && outline && outline.some((corner) => pointInPolygon(corner, under.outline));
    });
    const told = plan.steps.some(
      (step) =>
        step.kind === 'dry' &&
        step.fixture === under.id &&
        step.stages.some(({ detail }) =>
          detail.some(({ key }) => key === 'steps.dry.clear' || key === 'steps.dry.clear-to'),
        ),
    );
    for (const { id } of on) {
      if (!told)
        yield problem('stands-on', [pour.step.id, id], `nobody is told to take ${id} off first`);
      for (const step of plan.steps) {
        if (step.fixture === id && step.kind === 'steam' && meet(pour, spanOf(plan, step)))
          yield problem('stands-on', [pour.step.id, step.id], `${step.id} runs on what is poured`);
      }
    }
  }
}

function comesAfter(plan: Plan, later: Step, earlier: Step): boolean {
  const seen = new Set<string>();
  const open = [...later.needs];
  for (let at = open.pop(); at; at = open.pop()) {
    if (at.step === earlier.id) return true;
    if (seen.has(at.step)) continue;
    seen.add(at.step);
    open.push(...(plan.steps.find(({ id }) => id === at.step)?.needs ?? []));
  }
  return false;
}

/** A cover or liner, not a new strainer that may be wet. */
function laysSomething({ kind, stages }: Step): boolean {
  const told = stages.flatMap(({ detail }) => detail);
  return kind === 'cover' && told.some(({ key }) => key.startsWith('steps.cover.with'));
}

/** 3 and 6: dry before the first kettle, and dry again before a cover. */
function* dryness(plan: Plan): Generator<PlanProblem> {
  const dryings = plan.steps.filter(({ kind }) => kind === 'dry');
  for (const { step } of poursOf(plan)) {
    const dried = dryings.some(
      (dry) => dry.fixture === step.fixture && comesAfter(plan, step, dry),
    );
    if (!dried) yield problem('dry', [step.id], `${step.id} pours on what nobody dried`);
  }
  for (const { step: dry, toS } of dryings.map((step) => spanOf(plan, step))) {
    const firstS = Math.min(
      ...poursOf(plan)
        .filter(({ step }) => step.fixture === dry.fixture && comesAfter(plan, step, dry))
        .map(({ fromS }) => fromS),
    );
    if (Number.isFinite(firstS) && firstS - toS > DRY_S)
      yield problem('dry', [dry.id], `${dry.id} dries what is poured hours later`);
  }
  for (const cover of plan.steps.filter(laysSomething)) {
    const { fromS } = spanOf(plan, cover);
    for (const pour of poursOf(plan)) {
      if (pour.step.fixture === cover.fixture && fromS < pour.toS + DRY_S - TOUCH_S)
        yield problem('dry', [cover.id, pour.step.id], `${cover.id} covers what is still wet`);
    }
  }
}

/** 4: nobody pours while a burner glows that only they could watch: at every moment at which either begins. */
function* watched(plan: Plan): Generator<PlanProblem> {
  const pours = poursOf(plan);
  const glows = plan.steps
    .filter(({ work, kind }) => work.on === 'burner' && (kind === 'glow' || kind === 'high-heat'))
    .map((step) => spanOf(plan, step));
  for (const { fromS } of [...pours, ...glows]) {
    const goesOn = (one: Span) => one.fromS <= fromS + TOUCH_S && fromS + TOUCH_S < one.toS;
    const poured = pours.filter(goesOn);
    const lit = glows.filter(goesOn);
    if (poured.length === 0 || lit.length === 0) continue;
    if (poured.length + 1 <= plan.kitchen.household.people) continue;
    const about = [...poured, ...lit].map(({ step }) => step.id);
    yield problem('watch', about, `${about.join(', ')} go on at once: nobody is left to watch`);
  }
}

/** 5: no burner of a range is in use while its oven cleans itself. */
function* ranges(plan: Plan, byId: ReadonlyMap<string, Fixture>): Generator<PlanProblem> {
  const cycles = plan.steps.filter(({ kind }) => kind === 'self-clean');
  for (const cycle of cycles.map((step) => spanOf(plan, step))) {
    const oven = byId.get(cycle.step.fixture ?? '');
    const top = oven?.kind === 'oven' ? byId.get(oven.sharesRangeWith ?? '') : undefined;
    if (top?.kind !== 'cooktop') continue;
    const burners = new Set(top.burners.map(({ id }) => id));
    const boils = new Set(
      plan.kitchen.vessels.filter(({ burner }) => burners.has(burner ?? '')).map(({ id }) => id),
    );
    for (const step of plan.steps) {
      const { work, kind } = step;
      const lit = work.on === 'burner' && kind !== 'cool' && burners.has(work.burner);
      const boiled =
        (kind === 'boil' || kind === 'boil-over') && boils.has(vesselOf(work)?.id ?? '');
      if ((lit || boiled) && meet(cycle, spanOf(plan, step)))
        yield problem('range', [step.id, cycle.step.id], `${step.id} heats on a range that cleans`);
    }
  }
}

/** The rules of the room, 1 to 6; empty where a plan keeps them. */
export function* roomRuleProblems(plan: Plan): Generator<PlanProblem> {
  const byId = new Map(plan.kitchen.fixtures.map((one) => [one.id, one]));
  yield* hotBeside(plan, byId);
  yield* standing(plan, byId);
  yield* dryness(plan);
  yield* watched(plan);
  yield* ranges(plan, byId);
}
