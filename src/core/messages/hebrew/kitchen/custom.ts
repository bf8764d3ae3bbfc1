import type { TranslationOf } from '../../model/translation.ts';
import type { custom as english } from '../../english/kitchen/custom.ts';

/** A custom of the household's own, and what a person fills in about one answer. */
export const custom: TranslationOf<typeof english> = {
  'kitchen.custom.title': 'מנהג משלכם',
  'kitchen.custom.first-name': 'המנהג שלנו',
  'kitchen.custom.make': 'להגדיר מנהג משלנו',
  'kitchen.custom.about': ({ custom: base }, f) =>
    `הוא מתחיל כהעתק של ${f.say(base)}. אתם משנים את השורות שאצלכם אחרות, כל אחת עם מי שאמר, מתי ולמה. הוא נשמר בקובץ המטבח ועובר איתו.`,
  'kitchen.custom.resting': ({ name, custom: base }, f) =>
    `"${name}", העתק של ${f.say(base)}, שמור ואינו בשימוש כעת. העתק חדש יבוא במקומו.`,
  'kitchen.custom.called': 'איך תקראו לו',
  'kitchen.custom.copy': ({ custom: base }, f) => `להעתיק: ${f.say(base)}`,
  'kitchen.custom.back': 'חזרה',
  'kitchen.custom.copied': ({ custom: base, changed, rows }, f) =>
    `העתק של ${f.say(base)}; ${changed === 0 ? 'שום שורה עוד לא שונתה' : `שונו ${f.number(changed)} מתוך ${f.number(rows)} שורות`}. תשובה על פריט אחד קודמת לו. מה שסדקים ושריטות משנים נשאר כמות שהוא.`,
  'kitchen.custom.done': 'סיום',
  'kitchen.custom.delete': 'למחוק את המנהג',
  'kitchen.custom.delete-sure': ({ name }) => `כן, למחוק את "${name}"`,
  'kitchen.custom.keep': 'להשאיר',
  'kitchen.custom.change': 'לשנות',
  'kitchen.custom.back-to-row': 'חזרה לשורת המנהג',
  'kitchen.custom.own-way': ({ way }, f) => `${f.say(way)}.`,
  'kitchen.custom.said': ({ why, saidBy, saidOn }) => `${why} (${saidBy}, ${saidOn})`,
  'kitchen.custom.change-row': ({ row }, f) => `לשנות את השורה: ${f.say(row)}`,
  'kitchen.custom.base-has': ({ way, reason }, f) => `במנהג: ${f.say(way)}. ${f.say(reason)}`,
  'kitchen.custom.follows': 'כל פריט שהשורה עוסקת בו הולך לפיה.',
  'kitchen.custom.keep-row': 'לשמור את השורה',

  'kitchen.custom.row': ({ kinds, materials, anyMaterial, burners, cleaning, purposes }, f) => {
    const what = [
      kinds.map(f.say).join(', '),
      ...(anyMaterial ? ['מחומר לא ידוע'] : []),
      ...(!anyMaterial && materials.length > 0 ? [`חומר: ${materials.map(f.say).join(', ')}`] : []),
      ...(burners.length > 0 ? [`מבערים: ${burners.map(f.say).join(', ')}`] : []),
      ...(cleaning === 'does-not' ? ['בלי ניקוי עצמי בשרפה'] : []),
      ...(cleaning === 'burns-out' ? ['עם ניקוי עצמי בשרפה'] : []),
    ].join(', ');
    const when = purposes.length > 0 ? `, ${purposes.map(f.say).join(' או ')}` : '';
    return what + when;
  },
  'kitchen.custom.material.stainless-steel': 'פלדת אל־חלד',
  'kitchen.custom.material.cast-iron': 'ברזל יצוק',
  'kitchen.custom.material.enamelled-steel': 'פלדה מצופה אמייל',
  'kitchen.custom.material.porcelain': 'פורצלן',
  'kitchen.custom.material.ceramic': 'קרמיקה',
  'kitchen.custom.material.glass': 'זכוכית',
  'kitchen.custom.material.glass-ceramic': 'זכוכית קרמית',
  'kitchen.custom.material.granite': 'גרניט',
  'kitchen.custom.material.marble': 'שיש טבעי',
  'kitchen.custom.material.soapstone': 'אבן סבון',
  'kitchen.custom.material.concrete': 'בטון',
  'kitchen.custom.material.quartz-composite': 'קוורץ מרוכב',
  'kitchen.custom.material.acrylic': 'אקריל',
  'kitchen.custom.material.laminate': 'למינט',
  'kitchen.custom.material.wood': 'עץ',
  'kitchen.custom.material.raw-wood': 'עץ לא מצופה',
  'kitchen.custom.material.tile': 'אריחים',
  'kitchen.custom.material.plastic': 'פלסטיק',
  'kitchen.custom.material.silicone': 'סיליקון',
  'kitchen.custom.material.unknown': 'לא ידוע',
  'kitchen.custom.burner.electric-coil': 'ספירלה חשמלית',
  'kitchen.custom.burner.solid-plate': 'פלטת ברזל',
  'kitchen.custom.burner.radiant-glass': 'כיריים קרמיות',
  'kitchen.custom.burner.induction': 'אינדוקציה',
  'kitchen.custom.burner.gas-sealed': 'גז סגור',
  'kitchen.custom.burner.gas-open': 'גז פתוח',
  'kitchen.custom.burner.gas-wok': 'גז לווק',
  'kitchen.custom.burner.commercial-open': 'פתוח מסחרי',
  'kitchen.custom.burner.portable-plate': 'פלטה ניידת',
  'kitchen.custom.purpose.new-kitchen': 'במטבח חדש',
  'kitchen.custom.purpose.passover': 'לפסח',
  'kitchen.custom.purpose.mix-up': 'אחרי תערובת',
  'kitchen.custom.way': ({ method, thenCover }, f) =>
    `${f.say(method)}${thenCover ? ', ואחר כך כיסוי' : ''}`,
  'kitchen.custom.timed-way': ({ method, minutes, thenCover }, f) =>
    `${f.say(method)}, ${f.shortNumber(minutes)} דק׳${thenCover ? ', ואחר כך כיסוי' : ''}`,

  'kitchen.custom.way.method': 'מה עושים',
  'kitchen.custom.way.minutes': 'דקות',
  'kitchen.custom.way.cover': 'מכסים אחר כך?',
  'kitchen.custom.way.cover.yes': 'כן',
  'kitchen.custom.way.cover.no': 'לא',
  'kitchen.custom.way.said-by': 'מי אמר',
  'kitchen.custom.way.said-on': 'באיזה יום',
  'kitchen.custom.way.why': 'למה',
  'kitchen.custom.missing.minutes': ({ least, most }, f) =>
    `דקות: מ־${f.number(least)} עד ${f.number(most)}.`,
  'kitchen.custom.missing.said-by': 'כתבו מי אמר.',
  'kitchen.custom.missing.said-on': 'בחרו את היום שבו נאמר.',
  'kitchen.custom.missing.why': 'כתבו למה.',
};
