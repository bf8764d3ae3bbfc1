import type { TranslationOf } from '../../model/translation.ts';
import type { faults as english } from '../../english/cautions/faults.ts';

/** What can go wrong, and what to do (shared/fault-policies.json). */
export const faults: TranslationOf<typeof english> = {
  'cautions.fault.burned.name': 'מישהו נכווה',
  'cautions.fault.no-glow.name': 'לא מאדים',
  'cautions.fault.flame-out.name': 'הלהבה כבתה',
  'cautions.fault.power-cut.name': 'הפסקת חשמל',
  'cautions.fault.smoke.name': 'עשן',
  'cautions.fault.fire.name': 'אש',
  'cautions.fault.co-alarm.name': 'גלאי הפחמן החד־חמצני מצפצף',
  'cautions.fault.gas-smell.name': 'יש ריח גז',
  'cautions.fault.unwell.name': 'מישהו נפגע או חש ברע',
  'cautions.fault.kettle-failed.name': 'הקומקום התקלקל',
  'cautions.fault.oven-lock.name': 'דלת התנור נשארת נעולה',
  'cautions.fault.breaker-tripped.name': 'מפסק קפץ',
  'cautions.fault.cracked.name': 'משהו נסדק',
  'cautions.fault.undefined.name': 'משהו אחר',
};
