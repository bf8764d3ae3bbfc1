import type { TranslationOf } from '../../model/translation.ts';
import type { choices as english } from '../../english/survey/choices.ts';

/**
 * What a household chooses among, and how to know each by eye, fingernail or
 * magnet; most names are in the common section. Common practice, no published source.
 */
export const choices: TranslationOf<typeof english> = {
  'survey.material.stainless-steel': 'מתכת אפורה כולה; מצלצלת כשמקישים.',
  'survey.material.cast-iron': 'שחור, כבד, מחוספס; מגנט נצמד בכוח.',
  'survey.material.enamelled-steel': 'ציפוי זכוכיתי על מתכת; מגנט נצמד, שבר מגלה מתכת כהה.',
  'survey.material.porcelain': 'לבן, זכוכיתי ועבה; מגנט לא נצמד.',
  'survey.material.ceramic': 'חרס שרוף עם זיגוג; שבר מגלה פנים עמום.',
  'survey.material.glass': 'שקופה או צבעונית, קרה ליד, קצה ירוק.',
  'survey.material.glass-ceramic': 'זכוכית כהה ושטוחה של כיריים.',
  'survey.material.granite': 'אבן מנומרת, אין שני מקומות זהים; מפתח לא שורט.',
  'survey.material.marble': 'אבן עם עורקים; מיץ לימון עושה אותה עמומה.',
  'survey.material.soapstone': 'אפורה ומשיית; ציפורן כמעט מסמנת אותה.',
  'survey.material.concrete': 'יציקה אפורה עם נקבוביות דקות; סופג מים אם לא נאטם.',
  'survey.material.quartz-composite': 'גרגרים אחידים בשרף; הצד התחתון חלק ואותו דבר.',
  'survey.material.acrylic': 'חמים ליד, בלי תפרים, מתלטש כמו פלסטיק קשה.',
  'survey.material.laminate': 'לוח מודפס דק על עץ; קו חום בקצה.',
  'survey.material.wood': 'עם לכה או שמן; טיפת מים עומדת עליו.',
  'survey.material.raw-wood': 'טיפת מים נספגת ומשאירה כתם כהה.',
  'survey.material.tile': 'ריבועים מזוגגים וקווי רובה ביניהם.',
  'survey.material.plastic': 'קל, חמים ליד, נכנע לציפורן.',
  'survey.material.silicone': 'רך וגומי.',
  'survey.material.unknown': 'התוכנית נוקטת את הדרך המחמירה ורושמת את השאלה.',

  'survey.condition.smooth': 'ציפורן שעוברת עליו לא נתפסת.',
  'survey.condition.scratched': 'הציפורן נתפסת בקווים שרואים.',
  'survey.condition.cracked': 'קו נכנס עמוק, או שחסר שבב.',
  'survey.condition.porous': 'טיפת מים שעומדת דקה מכהה אותו.',
  'survey.condition.unknown': 'הביטו לפני התוכנית: זה עשוי לשנות את הדרך.',

  'survey.burner-type.electric-coil': 'ספירלה חשופה שמאדימה.',
  'survey.burner-type.solid-plate': 'דיסקת ברזל סגורה; לא מאדימה.',
  'survey.burner-type.radiant-glass': 'מאדים דרך זכוכית כהה.',
  'survey.burner-type.induction': 'לא מאדים לעולם; מחמם רק סיר שמגנט נצמד אליו.',
  'survey.burner-type.gas-sealed': 'להבה מעל משטח סגור.',
  'survey.burner-type.gas-open': 'אפשר להביט למטה לצד המבער.',
  'survey.burner-type.gas-wok': 'טבעת גדולה אחת, לעיתים שתי להבות זו בתוך זו.',
  'survey.burner-type.commercial-open': 'ראשי יציקה כבדים של כיריים מסחריות.',
  'survey.burner-type.portable-plate': 'עומד על המשטח עם תקע משלו.',

  'survey.cleaning.pyrolytic.name': 'ניקוי עצמי בחום',
  'survey.cleaning.pyrolytic.tell': (_, f) =>
    `נועל את הדלת ומתחמם שעות; בהוראות כתוב "פירוליטי" או "ניקוי עצמי", כ־${f.measure(450, '°C')} ויותר.`,
  'survey.cleaning.steam.name': 'ניקוי בקיטור',
  'survey.cleaning.steam.tell': 'מים על הרצפה, חצי שעה, בלי נעילה. ניקוי בקיטור אינו הכשרה.',
  'survey.cleaning.catalytic.name': 'ציפוי קטליטי',
  'survey.cleaning.catalytic.tell':
    'דפנות אפורות מחוספסות ש"מתנקות בעצמן" באפייה. גם זו אינה הכשרה.',
  'survey.cleaning.none.name': 'אין',
  'survey.cleaning.none.tell': 'מתנקה ביד בלבד.',

  'survey.hood.none.name': 'אין קולט',
  'survey.hood.none.tell': 'דבר לא שואב מעל הכיריים.',
  'survey.hood.recirculating.name': 'מחזיר לחדר',
  'survey.hood.recirculating.tell': 'מחזיר אוויר לחדר דרך מסנן. לא מסלק גז ולא חום.',
  'survey.hood.vented.name': 'אל החוץ',
  'survey.hood.vented.tell': 'צינור מוביל החוצה; ביום קר מרגישים אותו בקיר.',

  'survey.vessel-kind.electric-kettle': 'קומקום חשמלי',
  'survey.vessel-kind.stove-kettle': 'קומקום לכיריים',
  'survey.vessel-kind.urn': 'מיחם',
  'survey.vessel-kind.pot': 'סיר',

  'survey.body.steel': 'פלדה',
  'survey.body.plastic': 'פלסטיק',
  'survey.body.glass': 'זכוכית',
  'survey.body.double-wall': 'דופן כפולה',
  'survey.body.enamel': 'אמייל',

  'survey.surface.metal': 'מתכת',
  'survey.surface.enamel': 'אמייל',
  'survey.surface.glass-ceramic': 'זכוכית',

  'survey.purpose.new-kitchen': 'הוא לא היה כשר, או שאיש לא יודע.',
  'survey.purpose.passover': 'הוא כשר ועובר לחג.',
  'survey.purpose.mix-up': 'בשר וחלב נפגשו, או שבושל דבר מסופק.',

  'survey.heat.electric': 'חשמל',
  'survey.heat.gas': 'גז',
  'survey.racks.out': 'הן יוצאות',
  'survey.racks.in': 'הן יכולות להישאר',
  'survey.turn.left': 'פנו שמאלה',
  'survey.turn.straight': 'ישר',
  'survey.turn.right': 'פנו ימינה',
  'survey.land.israel': 'ארץ ישראל',
  'survey.land.diaspora': 'חוץ לארץ',
  'survey.rest-days.yes': 'בלי עבודה, בלי צליל',
  'survey.rest-days.no': 'לתכנן גם בהם',
  'survey.yes': 'כן',
  'survey.no': 'לא',
};
