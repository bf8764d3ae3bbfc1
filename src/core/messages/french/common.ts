import type { common as english } from '../english/common.ts';
import type { TranslationOf } from '../model/translation.ts';

/** Words that every place shares. */
export const common: TranslationOf<typeof english> = {
  'common.as-written': ({ text }) => text,

  'common.phase.prepare': 'Préparer',
  'common.phase.clean': 'Nettoyer',
  'common.phase.rest': 'Repos',
  'common.phase.purge': 'Cachériser',
  'common.phase.cool': 'Refroidir',
  'common.phase.cover': 'Couvrir',
  'common.phase.mark': 'Marquer',

  'common.designation.meat': 'Viande',
  'common.designation.dairy': 'Lait',
  'common.designation.pareve': 'Parvé (neutre)',
  'common.designation.undecided': 'Non décidé',

  /** The hour, with its day where that is not today. */
  'common.when': ({ wallMs, nowMs, zone }, f) =>
    f.day(wallMs, zone) === f.day(nowMs, zone)
      ? f.clock(wallMs, zone)
      : f.shortMoment(wallMs, zone),
  'common.moment': ({ wallMs, zone }, f) => f.moment(wallMs, zone),
  'common.day': ({ wallMs, zone }, f) => f.date(wallMs, zone),
  /** What is left, as a clock shows it: from an hour up, and below. */
  'common.countdown.hours': ({ hours, minutes }) =>
    `${hours} h ${String(minutes).padStart(2, '0')} min`,
  'common.countdown.minutes': ({ minutes, seconds }) =>
    `${minutes}:${String(seconds).padStart(2, '0')}`,
  'common.countdown.unit.hours': 'h',
  'common.countdown.unit.minutes': 'min',

  'common.press.short': 'Appuyez un peu plus longtemps',
  'common.press.no-fingertip': 'Appuyez d’un seul bout de doigt',

  'common.signal.DANGER': 'DANGER',
  'common.signal.WARNING': 'AVERTISSEMENT',
  'common.signal.CAUTION': 'ATTENTION',
  'common.signal.NOTICE': 'AVIS',
};
