export { readRun, type ReadRun } from './read-run.ts';
