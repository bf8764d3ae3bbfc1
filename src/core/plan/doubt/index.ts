export { planForDoubt } from './plan-for-doubt.ts';
export { doubtNotice, inDoubt, type Doubt } from './site-in-doubt.ts';
