export {
  adviceFor,
  changesToTry,
  ranked,
  tried,
  type Advice,
  type AdviceList,
  type Planned,
} from './advise.ts';
export { withChange, type Change, type Situation } from './changes/change.ts';
export type { Saving } from './saving.ts';
export { surenessOf, type Sureness } from './margins/sureness.ts';
export { triageOf, triageSteps, type Triage } from './triage.ts';
export { describeAdvice, triageMessages } from './describe/describe-advice.ts';
export {
  changeMessage,
  inVainMessages,
  savingMessage,
  surenessMessages,
} from './describe/messages.ts';
