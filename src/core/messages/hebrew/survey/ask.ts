import type { TranslationOf } from '../../model/translation.ts';
import type { ask as english } from '../../english/survey/ask.ts';

/** What is still to tell, and why the plan wants to know. */
export const ask: TranslationOf<typeof english> = {
  'survey.ask.material': ({ fixture }) => `${fixture}: ממה הוא עשוי?`,
  'survey.ask.material.why': 'אם אפשר להכשיר בכלל, ואיך, תלוי בזה.',
  'survey.ask.lining': ({ fixture }) => `${fixture}: במה הוא מצופה מבפנים?`,
  'survey.ask.lining.why': 'אם אפשר להכשיר בכלל תלוי בזה.',
  'survey.ask.condition': ({ fixture }) => `${fixture}: האם הוא חלק תחת ציפורן?`,
  'survey.ask.condition.why': 'מים לא מגיעים לתוך סדקים ושריטות עמוקות; התוכנית שואלת עד שיימסר.',
  'survey.ask.cycle': ({ fixture }) => `כמה דקות נמשך מחזור הניקוי: ${fixture}?`,
  'survey.ask.cycle.why': 'זה כתוב בהוראות היצרן; עד אז מתוכנן אורך מקובל.',
  'survey.ask.circuit': ({ fixture }) => `איזה מעגל חשמלי מזין: ${fixture}?`,
  'survey.ask.circuit.why': 'העומס לא נבדק עד שהמפסק ידוע.',
  'survey.ask.vessels': 'מה מרתיח את המים?',
  'survey.ask.vessels.why': 'אי אפשר לערות בלי קומקום, מיחם או סיר.',
  'survey.ask.burner': ({ vessel }) => `על איזה מבער עומד: ${vessel}?`,
  'survey.ask.burner.why': 'הוא רותח רק בקצב שהמבער מחמם.',
  'survey.ask.sockets': ({ vessel }) => `לאילו שקעים מחובר: ${vessel}?`,
  'survey.ask.sockets.why': 'שני קומקומים חזקים על מפסק אחד מקפיצים אותו.',
  'survey.ask.place': 'איפה המטבח?',
  'survey.ask.place.why': 'בהרים המים רותחים בחום נמוך יותר, וליום יש זמניו.',
  'survey.ask.hood': ({ hood }) => `פולט החוצה: ${hood}?`,
  'survey.ask.hood.why': 'כמה מבערים מותר ללבן יחד תלוי באוויר; עד אז הקולט נחשב כאילו אינו.',
  'survey.ask.any-hood': 'יש קולט מעל הכיריים, והוא פולט החוצה?',
  'survey.ask.window': 'יש חלון שנפתח?',
  'survey.ask.window.why':
    'עד שיימסר התוכנית מחשבת בלעדיו, ועלולה למצוא שהחדר חם מדי או שאווירו רע מדי.',
  'survey.ask.hood-flow': 'כמה אוויר מניע הקולט?',
  'survey.ask.hood-flow.why': 'זה כתוב בהוראות היצרן; עד אז הקולט נחשב כאילו אינו.',
  'survey.ask.open-sides': ({ fixture }) => `באילו צדדים אפשר לעמוד: ${fixture}?`,
  'survey.ask.open-sides.why': 'משם מערים; עד אז כל הצדדים נחשבים פתוחים.',
  'survey.ask.fixtures': 'מה עומד במטבח?',
  'survey.ask.fixtures.why': 'עוד אין מה להכשיר.',
};
