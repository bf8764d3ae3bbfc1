import { asWritten, type Message } from '../../messages/index.ts';
import type { Picture, Stage, Step, TimerSpec } from '../../plan/index.ts';
import type { Picture1, Stage1, Step1, Timer1 } from './step-1.ts';

/** English text of version 1 as a message: it stays as it was written, in whatever language it is read. */
export function written(text: string): Message {
  return asWritten(text);
}

export function allWritten(texts: readonly string[]): readonly Message[] {
  return texts.map(written);
}

function upgradeTimer({ label, ...same }: Timer1): TimerSpec {
  return { ...same, label: written(label) };
}

function upgradeStage(stage: Stage1): Stage {
  const { title, detail, say, timers, reviewAsk, ...same } = stage;
  return {
    ...same,
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

/** A step of version 1 as version 2 holds it: in the plan of a journal, or in an amendment of it. */
export function upgradeStep(step: Step1): Step {
  const { title, reason, stages, makeSafe, picture, ...same } = step;
  return {
    ...same,
    title: written(title),
    reason: written(reason),
    stages: stages.map(upgradeStage),
    ...(makeSafe !== undefined && { makeSafe: written(makeSafe) }),
    ...(picture !== undefined && { picture: upgradePicture(picture) }),
  };
}
