export { historyOf, placesInRuns, type PlaceInRun } from './history-of.ts';
