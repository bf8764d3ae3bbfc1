import { custom } from './custom.ts';
import { home } from './home.ts';

/** The Kitchen page, and customs of a household's own. */
export const kitchen = { ...home, ...custom };
