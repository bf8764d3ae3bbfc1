import type { Picture, Stage, Step, TimerSpec } from '../../plan/index.ts';
import type { Plan1 } from './plan-1.ts';
import { stageRoleOf } from './stage-role.ts';
import type { Picture1, Stage1, Step1, Timer1 } from './step-1.ts';
import { workOf } from './work.ts';
import { allWritten, written } from './written.ts';

/** "Rest: Kitchen sink" said what it counts and of what; no other label has a colon. */
function partsOf(label: string): Pick<TimerSpec, 'of'> {
  const [, head, name] = /^([^:]+): (.+)$/.exec(label) ?? [];
  if (head === undefined || name === undefined) return {};
  return { of: { label: written(head), name: written(name) } };
}

function upgradeTimer({ role, label, ...same }: Timer1): TimerSpec {
  return {
    ...same,
    role: role === 'carry' ? 'freshness' : role,
    label: written(label),
    ...partsOf(label),
  };
}

function upgradeStage(stage: Stage1): Stage {
  const { title, detail, say, timers, reviewAsk, ...same } = stage;
  return {
    ...same,
    role: stageRoleOf(stage.id),
    title: written(title),
    detail: allWritten(detail),
    ...(say !== undefined && { say: written(say) }),
    timers: timers.map(upgradeTimer),
    ...(reviewAsk !== undefined && { reviewAsk: written(reviewAsk) }),
  };
}

function upgradePicture(picture: Picture1): Picture {
  switch (picture.kind) {
    case 'sink':
      return {
        ...picture,
        parts: picture.parts.map(({ name, kettle }) => ({ name: written(name), kettle })),
      };
    case 'oven':
      return {
        ...picture,
        stages: picture.stages.map(({ name, ...same }) => ({ ...same, name: written(name) })),
      };
    default:
      return picture;
  }
}

/**
 * A step of version 1 as version 2 holds it: in the plan of a journal, or in an amendment of it.
 * @param plan with the step in it
 */
export function upgradeStep(plan: Plan1, step: Step1): Step {
  const { title, reason, sources, stages, makeSafe, picture, ...same } = step;
  return {
    ...same,
    work: workOf(plan, step),
    title: written(title),
    reason: written(reason),
    sources: allWritten(sources),
    stages: stages.map(upgradeStage),
    ...(makeSafe !== undefined && { makeSafe: written(makeSafe) }),
    ...(picture !== undefined && { picture: upgradePicture(picture) }),
  };
}
