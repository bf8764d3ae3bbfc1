export { planForRecheck } from './plan-for-recheck.ts';
