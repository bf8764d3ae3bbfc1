import type { FactBody, RunView, TimerView } from '../../../src/core/run/index.ts';
import { Truth, type Place } from '../truth.ts';
import type { World } from '../world.ts';
import type { Findings } from './findings.ts';

/** What clocks of honest devices may differ by over a run without anybody's fault, s. */
const SLACK_S = 60;

/** Which way time that did not pass was counted, told by what happened in the world. */
function wayOf(truth: Truth): string {
  if (truth.tookBack) return 'an answer taken back still counts';
  if (truth.corrections > 0) return 'dated back by a wrong clock';
  if (truth.startedWrong) return 'the clock was wrong from the start';
  return 'a doubt about the clock was credited';
}

/** I-05, I-20, I-25: a wait ends only when its time has truly passed, unbroken where it must be. */
export function waitEnded(found: Findings, world: World, body: FactBody, before?: Place): void {
  const { truth } = world;
  if (body.kind === 'timer-due') dueOfBroken(found, world, body.timer);
  if (body.kind !== 'stage-ended' || !before) return;
  const step = truth.step(body.step);
  const stage = step.stages.find(({ id }) => id === body.stage);
  const hold = stage?.timers.find(({ role }) => role === 'hold');
  if (!hold || !stage) return;
  if (hold.purpose === 'unbroken' && before.broken && before.told)
    found.add(
      world,
      'I-25',
      'ended though it broke',
      `${step.id} broke off and ended all the same.`,
    );
  if (truth.stained) return;
  const sinceS = truth.leftAloneSinceS(step) ?? before.sinceS;
  const passedS = world.trueS - sinceS;
  if (passedS >= hold.lengthS - SLACK_S) return;
  const way =
    stage.hazards.length > 0 && truth.corrections > 0 ? 'a cool-down dated back' : wayOf(truth);
  const promise = truth.corrections > 0 || truth.tookBack ? 'I-26' : 'I-20';
  found.add(
    world,
    promise,
    way,
    `${step.id} ended after ${Math.round(passedS)} s of ${hold.lengthS}.`,
  );
}

function dueOfBroken(found: Findings, world: World, timer: string): void {
  const [step = ''] = timer.split('#');
  const place = world.truth.places.get(step);
  const stage = world.truth.steps.get(step)?.stages[place?.stage ?? -1];
  if (!place?.told || stage === undefined || !timer.includes(`/${stage.id}/`)) return;
  const spec = stage.timers.find(({ id }) => timer.endsWith(`/${id}`));
  if (spec?.purpose === 'unbroken')
    found.add(world, 'I-25', 'what broke came due', `${timer} was told as over after it broke.`);
}

/** I-07, I-08: a look at the clocks beside the true one. */
export class ClocksWatched {
  private readonly beganS = new Map<string, number>();

  look(found: Findings, world: World, clocks: readonly TimerView[]): void {
    for (const clock of clocks) {
      const key = `${clock.id}!${clock.role === 'reminder' ? clock.cause : 0}`;
      const beganS = this.beganS.get(key) ?? world.trueS;
      this.beganS.set(key, beganS);
      this.one(found, world, clock, world.trueS - beganS);
    }
  }

  /** Somebody told of a burn. */
  burned(fault: string, atS: number): void {
    this.beganS.set(fault, atS);
  }

  /** I-30: a burn's clock shows no less than is truly left, and no run goes on or closes over it. */
  cools(found: Findings, world: World, { coolings, status }: RunView): void {
    for (const { id, fault, leftS, lengthS, over } of coolings) {
      const trueLeftS = lengthS - (world.trueS - (this.beganS.get(fault) ?? -Infinity));
      if (status === 'running' || status === 'closed')
        found.add(world, 'I-30', 'a burn left alone', `The run is ${status} beside ${id}.`);
      if (world.truth.stained) continue;
      if (leftS < trueLeftS - SLACK_S || (over && trueLeftS > SLACK_S))
        found.add(
          world,
          'I-30',
          'cooled too short',
          `${id} shows ${Math.round(leftS)} s; ${Math.round(trueLeftS)} s are truly left.`,
        );
    }
  }

  private one(found: Findings, world: World, clock: TimerView, trueS: number): void {
    const { truth } = world;
    if (!(clock.atLeastS >= 0 && clock.atMostS >= clock.atLeastS))
      found.add(world, 'I-08', 'interval', `${clock.id} is ${clock.atLeastS} to ${clock.atMostS}.`);
    if (truth.stained) return;
    if (clock.purpose === 'at-most') {
      const told = clock.alerting || clock.status === 'due' || clock.status === 'late';
      if (trueS >= clock.lengthS + SLACK_S && !told && !truth.alarmsMayLag)
        found.add(
          world,
          'I-07',
          'alarm late',
          `${clock.id} is silent after ${Math.round(trueS)} s.`,
        );
      return;
    }
    // One that ended and still calls counts nothing any more.
    if (clock.status === 'due' || clock.status === 'late') return;
    const step = truth.steps.get(clock.step);
    const aloneS = step && truth.leftAloneSinceS(step);
    const mostS = aloneS === undefined ? trueS : world.trueS - aloneS;
    if (clock.atLeastS <= mostS + SLACK_S) return;
    const hot = step?.kind === 'cool' && truth.corrections > 0;
    const promise = truth.corrections > 0 || truth.tookBack ? 'I-26' : 'I-20';
    found.add(
      world,
      promise,
      hot ? 'a cool-down dated back' : wayOf(truth),
      `${clock.id} shows ${Math.round(clock.atLeastS)} s as proved; ${Math.round(mostS)} s have passed.`,
    );
  }
}
