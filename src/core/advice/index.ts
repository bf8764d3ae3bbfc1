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
export { surenessOf } from './margins/sureness.ts';
export { triageOf, triageSteps, type Triage } from './trying/triage.ts';
export { describeAdvice } from './describe/describe-advice.ts';
export {
  changeMessage,
  inVainMessages,
  savingMessage,
  surenessMessages,
  triageMessages,
} from './describe/messages.ts';
