export { openRunTrace, type OpenRunTrace } from './open-run-trace.ts';
