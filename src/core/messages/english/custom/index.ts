import { rowsOne } from './rows-1.ts';
import { rowsThree } from './rows-3.ts';
import { rowsTwo } from './rows-2.ts';
import { told } from './told.ts';

/** What the customs say, and how it is told. */
export const custom = { ...told, ...rowsOne, ...rowsTwo, ...rowsThree };
