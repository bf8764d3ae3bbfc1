export { readRun } from './read-run.ts';
