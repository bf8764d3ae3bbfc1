import { print } from './print.ts';
import { rows } from './rows.ts';
import { words } from './words.ts';

/** What is said of utensils: kinds, methods, reasons, batches. */
export const utensils = { ...words, ...rows, ...print };
