import type { TranslationOf } from '../../model/translation.ts';
import type { names as english } from '../../english/custom/names.ts';

/** Purposes, customs, materials, their condition and burners by name: words of rows, answers and surveys; an open run says none of them. */
export const names: TranslationOf<typeof english> = {
  'common.purpose.new-kitchen': 'מטבח שעבר לידיכם',
  'common.purpose.passover': 'פסח',
  'common.purpose.mix-up': 'אחרי תערובת',

  'common.custom.sephardic': 'מנהג ספרדי',
  'common.custom.ashkenazic': 'מנהג אשכנזי',

  'common.material.stainless-steel': 'פלדת אל־חלד',
  'common.material.cast-iron': 'ברזל יצוק',
  'common.material.enamelled-steel': 'פלדה מצופה אמייל',
  'common.material.porcelain': 'פורצלן',
  'common.material.ceramic': 'קרמיקה',
  'common.material.glass': 'זכוכית',
  'common.material.glass-ceramic': 'זכוכית קרמית',
  'common.material.granite': 'גרניט',
  'common.material.marble': 'שיש טבעי',
  'common.material.soapstone': 'אבן סבון',
  'common.material.concrete': 'בטון',
  'common.material.quartz-composite': 'קוורץ מרוכב',
  'common.material.acrylic': 'אקריל',
  'common.material.laminate': 'למינט',
  'common.material.wood': 'עץ, אטום',
  'common.material.raw-wood': 'עץ, לא מצופה',
  'common.material.tile': 'אריחים',
  'common.material.plastic': 'פלסטיק',
  'common.material.silicone': 'סיליקון',
  'common.material.unknown': 'אי אפשר לדעת',

  'common.condition.smooth': 'חלק',
  'common.condition.scratched': 'שרוט',
  'common.condition.cracked': 'סדוק',
  'common.condition.porous': 'נקבובי',
  'common.condition.unknown': 'לא נבדק',

  'common.burner.electric-coil': 'ספירלה חשמלית',
  'common.burner.solid-plate': 'פלטת ברזל',
  'common.burner.radiant-glass': 'קרמי, מתחת לזכוכית',
  'common.burner.induction': 'אינדוקציה',
  'common.burner.gas-sealed': 'גז, סגור',
  'common.burner.gas-open': 'גז, פתוח',
  'common.burner.gas-wok': 'גז, לווק',
  'common.burner.commercial-open': 'פתוח מסחרי',
  'common.burner.portable-plate': 'פלטה ניידת',
};
