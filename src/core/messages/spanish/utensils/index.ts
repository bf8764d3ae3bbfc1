import { print } from './print.ts';
import { rows } from './rows.ts';
import { utensilSteps } from './steps.ts';
import { words } from './words.ts';

/** What is said of utensils: kinds, methods, reasons, batches, steps. */
export const utensils = { ...words, ...rows, ...print, ...utensilSteps };
