export {
  adviceFor,
  adviceSteps,
  changesToTry,
  type Advice,
  type AdviceList,
  type AdviceOptions,
  type Planned,
  type TryingProgress,
} from './trying/advise.ts';
export { withChange, type Change } from './changes/change.ts';
export { doneS, dueOf } from './due/in-time.ts';
export { hoursOf } from './margins/open-hours.ts';
export { surenessOf, type Sureness } from './margins/sureness.ts';
export { triageOf, triageSteps, type Triage } from './trying/triage.ts';
export { describeAdvice } from './describe/describe-advice.ts';
export {
  changeMessage,
  inVainMessages,
  savingMessage,
  surenessMessages,
  triageMessages,
} from './describe/messages.ts';
