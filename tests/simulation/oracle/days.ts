import { inEnglish } from '../../support/english.ts';
import type { Stage, Step } from '../../../src/core/plan/index.ts';
import type { FactBody } from '../../../src/core/run/index.ts';
import type { World } from '../world.ts';
import type { Findings } from './findings.ts';

/** What may be off at the edge of a day: its clock, and the work that was reckoned to end there, s. */
const EDGE_S = 300;

/** Longest wait of a stage that somebody or some heat is bound to, s. */
function waitS(stage: Stage): number {
  return Math.max(
    0,
    ...stage.timers
      .filter(({ role }) => role === 'hold' || role === 'estimate')
      .map((t) => t.lengthS),
  );
}

function measures(step: Step): boolean {
  if (step.attention !== 'none') return false;
  return (
    step.kind === 'rest' || step.kind === 'cool' || step.stages.every((s) => s.hazards.length === 0)
  );
}

/** I-19, I-21: work that begins or goes on by a word now, and until when it goes on by itself, s from now. */
function workOf(world: World, body: FactBody): { step: Step; how: string; forS: number } | null {
  const { truth } = world;
  switch (body.kind) {
    case 'step-started': {
      const step = truth.step(body.step);
      return {
        step,
        how: body.by === 'person' ? 'started' : 'chained',
        forS: step.durationS.typical,
      };
    }
    case 'stage-restarted': {
      const step = truth.step(body.step);
      return {
        step,
        how: 'restarted',
        forS: waitS(
          step.stages[truth.places.get(step.id)?.stage ?? 0] ?? ({ timers: [] } as never),
        ),
      };
    }
    case 'stage-ended': {
      const step = truth.step(body.step);
      const number = step.stages.findIndex(({ id }) => id === body.stage);
      const entered = step.stages[number + 1];
      if (body.by !== 'person' || !entered || entered.hazards.length === 0) return null;
      const wasHot = (step.stages[number]?.hazards.length ?? 0) > 0;
      const forS = waitS(entered);
      const ends = wasHot && step.stages.slice(number + 1).every((stage) => waitS(stage) === 0);
      return ends ? null : { step, how: 'confirmed', forS };
    }
    default:
      return null;
  }
}

export function restDayKept(found: Findings, world: World, body: FactBody): void {
  const { days } = world.state.plan;
  if (!days || !world.truth.timeCouldBeKnown) return;
  const nowMs = world.trueMs;
  const inside = days.restDays.find(
    ({ fromWallMs, toWallMs }) =>
      nowMs > fromWallMs + EDGE_S * 1000 && nowMs < toWallMs - EDGE_S * 1000,
  );
  if (body.kind === 'resumed' && inside)
    return resumedInside(found, world, inEnglish.say(inside.name));
  const work = workOf(world, body);
  if (!work || measures(work.step)) return;
  const { step, how, forS } = work;
  if (inside)
    found.add(
      world,
      'I-21',
      `${how} inside a rest day`,
      `${step.id} ${how} inside ${inEnglish.say(inside.name)}.`,
    );
  const next = days.restDays.find(
    ({ fromWallMs }) => fromWallMs > nowMs && nowMs + (forS - EDGE_S) * 1000 > fromWallMs,
  );
  if (next && !inside)
    found.add(
      world,
      'I-21',
      `${how} into a rest day`,
      `${step.id} ${how} and reaches into ${inEnglish.say(next.name)}.`,
    );
  const { deadline } = days;
  if (!deadline || step.phase !== 'purge') return;
  if (nowMs + (forS - EDGE_S) * 1000 > deadline.atWallMs)
    found.add(
      world,
      'I-21',
      `${how} past the hour of leaven`,
      `${step.id} ${how} and ends after ${inEnglish.say(deadline.name)}.`,
    );
}

function resumedInside(found: Findings, world: World, day: string): void {
  for (const [id, place] of world.truth.places) {
    const step = world.truth.step(id);
    const stage = step.stages[place.stage];
    if (!stage || measures(step) || stage.hazards.length === 0 || waitS(stage) === 0) continue;
    if (world.trueS - place.sinceS > waitS(stage)) continue;
    found.add(
      world,
      'I-21',
      'resumed inside a rest day',
      `${id} goes on by a resume inside ${day}.`,
    );
  }
}
