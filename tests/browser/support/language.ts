import { translatorOf } from '../../support/translators.ts';

/** The language the pages of the tests speak; another one when GLOWPOUR_LANGUAGE names it. */
export const LANGUAGE = process.env['GLOWPOUR_LANGUAGE'] ?? 'en';

/** What is on the screen in that language, by key. */
export const usual = await translatorOf(LANGUAGE);
export const { t, say, format } = usual;
