import type { TranslationOf } from '../../model/translation.ts';
import type { around as english } from '../../english/handouts/around.ts';

/** Covers to cut and utensils to purge, as handouts; what they tell stands with their own rooms. */
export const around: TranslationOf<typeof english> = {
  'handouts.covers.about':
    'מצויר בקנה מידה: תחילת הגליל משמאל, שוליו השמאליים למעלה. מדדו שוב לפני החיתוך הראשון; חתכו לפי הסדר.',
  'handouts.covers.picture': ({ widthM, fromM, toM }, f) =>
    `הגליל, רוחב ${f.tape(widthM)}, מ־${f.tape(fromM, { isFirst: true })} עד ${f.tape(toM)}`,
  'handouts.utensils.time': ({ startS, lengthS }, f) =>
    `נכנס ${f.about(startS)} אחרי שהסיר הועמד; נמשך ${f.about(lengthS)}.`,
};
