import { message, type Message } from '../../messages/index.ts';
import type { Plan, Stage, Step, TimerSpec } from '../../plan/index.ts';
import type { Refusal, RefusalCode } from './refusal.ts';

function problem(code: RefusalCode, why: Message): Refusal {
  return { code, message: why };
}

function missing(all: readonly string[], from: readonly string[]): string | undefined {
  return all.find((one) => !from.includes(one));
}

/** A wait may not get shorter, an alarm not later, a fault not lost; an estimate is only a guess. */
function weakens(before: TimerSpec, after: TimerSpec | undefined): boolean {
  if (before.role === 'estimate') return false;
  if (!after || after.role !== before.role || after.purpose !== before.purpose) return true;
  if (after.fault !== before.fault) return true;
  if (before.repeats === true && after.repeats !== true) return true;
  return before.purpose === 'at-most'
    ? after.lengthS > before.lengthS
    : after.lengthS < before.lengthS;
}

/** The stage as safe as before: no hazard forgotten, no clock weakened, still a person's word where one was asked. */
function stageWeakened(before: Stage, after: Stage): boolean {
  return (
    missing(before.hazards, after.hazards) !== undefined ||
    after.resumption !== before.resumption ||
    (before.say === undefined) !== (after.say === undefined) ||
    before.timers.some((spec) =>
      weakens(
        spec,
        after.timers.find(({ id }) => id === spec.id),
      ),
    )
  );
}

/** What both a replaced step and an added one must keep of the step they are measured by. */
function guardProblem(model: Step, step: Step): Refusal | null {
  const gate = missing(model.gates, step.gates);
  if (gate !== undefined)
    return problem(
      'amendment-drops-gate',
      message('engine.amend.lacks-gate', { id: step.id, gate }),
    );
  const caution = missing([...model.standing, ...model.after], [...step.standing, ...step.after]);
  if (caution !== undefined)
    return problem(
      'amendment-drops-caution',
      message('engine.amend.lacks-caution', { id: step.id, caution }),
    );
  const ids = step.stages.map(({ id }) => id);
  const order = model.stages.map(({ id }) => ids.indexOf(id));
  if (order.some((place, i) => place < 0 || place <= (order[i - 1] ?? -1)))
    return problem(
      'amendment-drops-stage',
      message('engine.amend.stages', {
        id: step.id,
        found: ids,
        allowed: model.stages.map(({ id }) => id),
      }),
    );
  const thinned = Object.entries(model.demands).find(
    ([id, wanted]) => (step.demands[id] ?? 0) < wanted,
  );
  if (thinned)
    return problem(
      'amendment-weakens',
      message('engine.amend.demands-less', {
        id: step.id,
        resource: thinned[0],
        wanted: thinned[1],
      }),
    );
  const weak = model.stages.find((stage, i) => {
    const after = step.stages[order[i] ?? -1];
    return !after || stageWeakened(stage, after);
  });
  if (weak || (model.makeSafe !== undefined && step.makeSafe === undefined))
    return problem(
      'amendment-weakens',
      message('engine.amend.guards-less', { id: step.id, step: model.title }),
    );
  return null;
}

/** What a step that has not begun may not lose when it is replaced. */
export function replacedProblem(before: Step, step: Step): Refusal | null {
  const same =
    step.kind === before.kind &&
    step.phase === before.phase &&
    step.fixture === before.fixture &&
    step.startsBy === before.startsBy &&
    step.attention === before.attention;
  if (!same)
    return problem(
      'amendment-changes-work',
      message('engine.amend.other-work', { id: step.id, step: before.title }),
    );
  for (const need of before.needs) {
    const kept = step.needs.find((one) => one.step === need.step);
    if (!kept || (kept.withinS ?? Infinity) > (need.withinS ?? Infinity))
      return problem(
        'amendment-drops-need',
        message('engine.amend.drops-need', {
          id: step.id,
          need: need.step,
          step: before.title,
        }),
      );
  }
  return guardProblem(before, step);
}

/**
 * What a new step must have: siblings of the same fixture, kind and means
 * (the same kettle, the same circuit: one step cannot hold what two vessels
 * need), and all that guards every one of them; boiled water as fresh as theirs.
 */
export function addedProblem(plan: Plan, step: Step): Refusal | null {
  const work = plan.steps.filter(
    ({ fixture, kind }) => fixture === step.fixture && kind === step.kind,
  );
  const means = meansOf(step);
  const siblings = work.filter((one) => meansOf(one) === means);
  const [first] = siblings;
  const lessThan = !first && work[0] ? guardProblem(work[0], step) : null;
  if (lessThan) return lessThan;
  if (!first)
    return problem(
      'amendment-without-sibling',
      message('engine.amend.no-sibling', {
        id: step.id,
        kind: step.kind,
        fixture: step.fixture ?? 'nothing',
        means,
        allowed: work.map(meansOf),
      }),
    );
  const freshest = Math.max(...siblings.map((one) => shortestS(one)));
  if (shortestS(step) > freshest)
    return problem(
      'amendment-drops-need',
      message('engine.amend.not-fresh', { id: step.id, step: first.title }),
    );
  if (step.phase !== first.phase || step.startsBy !== first.startsBy)
    return problem(
      'amendment-changes-work',
      message('engine.amend.not-begun-so', { id: step.id, step: first.title }),
    );
  for (const sibling of siblings) {
    const found = guardProblem(sibling, step);
    if (found) return found;
  }
  return siblingNeedProblem(siblings, step);
}

/** What a step holds, by name: its kettle, its circuit, its burner. */
function meansOf(step: Step): string {
  const held = Object.keys(step.demands).filter((id) => (step.demands[id] ?? 0) > 0);
  return held.toSorted().join(', ') || 'nothing';
}

/**
 * A need that every sibling has (the rest, the kettle's purge, the burner's) is
 * a need of the new one too; in the row of boils and pours each has its own.
 */
function siblingNeedProblem(siblings: readonly Step[], step: Step): Refusal | null {
  const [first, ...others] = siblings;
  for (const need of first?.needs ?? []) {
    const shared = others.every(({ needs }) => needs.some((one) => one.step === need.step));
    if (!shared || others.length === 0) continue;
    const withinS = Math.max(
      ...siblings.map(
        ({ needs }) => needs.find((one) => one.step === need.step)?.withinS ?? Infinity,
      ),
    );
    const kept = step.needs.find((one) => one.step === need.step);
    if (!kept || (kept.withinS ?? Infinity) > withinS)
      return problem(
        'amendment-drops-need',
        message('engine.amend.drops-need', {
          id: step.id,
          need: need.step,
          step: (first ?? step).title,
        }),
      );
  }
  return null;
}

/** The shortest time within which it must follow something, s; Infinity when none is set. */
function shortestS(step: Step): number {
  return Math.min(...step.needs.map(({ withinS }) => withinS ?? Infinity));
}

/** A step of the amended plan that would need itself, by whatever way round. */
export function cycleThrough(plan: Plan, amended: readonly Step[]): string | undefined {
  const steps = new Map([...plan.steps, ...amended].map((step) => [step.id, step]));
  const settled = new Set<string>();
  const visit = (id: string, above: ReadonlySet<string>): string | undefined => {
    if (above.has(id)) return id;
    if (settled.has(id)) return undefined;
    const deeper = new Set(above).add(id);
    for (const need of steps.get(id)?.needs ?? []) {
      const found = visit(need.step, deeper);
      if (found !== undefined) return found;
    }
    settled.add(id);
    return undefined;
  };
  for (const { id } of amended) {
    const found = visit(id, new Set());
    if (found !== undefined) return found;
  }
  return undefined;
}
