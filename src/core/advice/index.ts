export {
  adviceFor,
  changesToTry,
  ranked,
  tried,
  type Advice,
  type AdviceList,
  type Planned,
} from './trying/advise.ts';
export { withChange, type Change } from './changes/change.ts';
export { doneS, dueOf } from './due/in-time.ts';
export { hoursOf } from './margins/open-hours.ts';
export { surenessOf, type Sureness } from './margins/sureness.ts';
export { triageOf, triageSteps, type Triage } from './trying/triage.ts';
export { describeAdvice, triageMessages } from './describe/describe-advice.ts';
export {
  changeMessage,
  inVainMessages,
  savingMessage,
  surenessMessages,
} from './describe/messages.ts';
