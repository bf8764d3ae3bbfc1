import { exactly } from '../../units/index.ts';
import type { Step, Timetable } from '../model/index.ts';
import type { StepDraft } from './step-draft.ts';

/** The step with the time that is left of its rest where the timetable has put it. */
export function withRestLeft(
  step: Step,
  { overS }: Pick<StepDraft, 'overS'>,
  startS: Timetable['startS'],
): Step {
  if (overS === undefined) return step;
  return { ...step, durationS: exactly(Math.max(0, overS - (startS[step.id] ?? 0))) };
}
