import type { TranslationOf } from '../../model/translation.ts';
import type { words as english } from '../../english/utensils/words.ts';

/** Kinds of utensils, and what is done with them. */
export const words: TranslationOf<typeof english> = {
  'utensils.kind-for': ({ kind, designation }, f) => `${f.say(kind)} (${f.say(designation)})`,
  'utensils.kind.pot': 'סירים',
  'utensils.kind.lid': 'מכסים',
  'utensils.kind.pan': 'מחבתות',
  'utensils.kind.tray': 'תבניות אפייה',
  'utensils.kind.rack': 'רשתות וגרילים',
  'utensils.kind.cutlery': 'סכו״ם',
  'utensils.kind.knife': 'סכינים',
  'utensils.kind.ladle': 'מצקות ומרית',
  'utensils.kind.wooden-spoon': 'כפות עץ',
  'utensils.kind.board': 'קרשי חיתוך',
  'utensils.kind.plate': 'צלחות וקערות',
  'utensils.kind.mug': 'ספלים',
  'utensils.kind.glass': 'כוסות',
  'utensils.kind.silver': 'כלי כסף',
  'utensils.kind.sieve': 'נפות ומגרדות',
  'utensils.kind.gadget': 'כלי עזר',

  'utensils.method.heat': 'ליבון עד שמאדים, או מחזור ניקוי עצמי מלא',
  'utensils.method.light-heat': 'ליבון עד שקש נחרך בצד האחר',
  'utensils.method.immerse': 'הגעלה במים רותחים',
  'utensils.method.soak': 'השריה במים קרים',
  'utensils.method.clean': 'שפשוף ושטיפה',
  'utensils.method.put-away': 'להרחיק או להחליף',

  'utensils.answer.heat': 'רק בליבון עד שמאדים.',
  'utensils.answer.light-heat': 'בליבון קל.',
  'utensils.answer.immerse': 'במים רותחים.',
  'utensils.answer.soak': 'בהשריה שלושה ימים.',
  'utensils.answer.clean': 'די בשטיפה.',
  'utensils.answer.put-away': 'לא מוכשר.',

  'utensils.rule.rest': 'שטפו, ואל תשתמשו בו לשום דבר חם 24 שעות. מה שאינו נקי לא מוכשר.',
  'utensils.rule.light-heat-test':
    'די בליבון קל כשקש או נייר שנוגעים בצד האחר נחרכים. הרחיקו מידיות פלסטיק.',
  'utensils.rule.soak': 'השרו מתחת למים קרים 24 שעות, שפכו את המים, מלאו שוב: שלוש פעמים.',
  'utensils.rule.plain-water': 'מים בלבד, בלי שום תוספת. החליפו כשהם נעשים סמיכים או עכורים.',
  'utensils.rule.pot-first': 'הסיר מוכשר לפני שהוא מכשיר דבר, ושוב אחרי הסבב האחרון.',
  'utensils.rule.boil-over':
    'סיר מוכשר כשהוא מלא עד השפה וגולש ברתיחה: כבו את המבער והורידו לתוכו לאט פלדה נקייה ולוהטת כדי להעלות את המים. לא אבן: היא עלולה להתפוצץ.',
  'utensils.rule.bubbling':
    'טבלו רק כשהמים מבעבעים. הבעבוע נפסק כשנכנס דבר קר: השאירו בפנים עד שיבעבע שוב.',
  'utensils.rule.tongs': 'במקום אחיזת המלקחיים מים לא מגיעים: הרפו מתחת למים, או סובבו וטבלו שוב.',
  'utensils.rule.parts': 'מה שארוך מדי נכנס חצי אחר חצי, השני מעט מעבר לאמצע.',
  'utensils.rule.apart': 'כלי בשר וכלי חלב לעולם לא באותם מים.',
  'utensils.rule.cold-rinse': 'למים קרים מיד כשיוצא.',
  'utensils.rule.mikveh': 'אחרי ההכשרה, כלי מתכת וזכוכית לאוכל שבאו מנוכרים טובלים במקווה.',
};
