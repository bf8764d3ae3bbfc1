import { fixtures } from './fixtures.ts';
import { run } from './run.ts';
import { standing } from './standing.ts';
import { summary } from './summary.ts';
import { times } from './times.ts';

/** What was done, as it is printed, saved and shown. */
export const report = { ...run, ...summary, ...fixtures, ...times, ...standing };
