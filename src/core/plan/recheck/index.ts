export { planForRecheck } from './plan-for-recheck.ts';
export { recheckNotice, recheckContext, type Recheck } from '../context/recheck-context.ts';
