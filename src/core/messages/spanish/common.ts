import type { TranslationOf } from '../model/translation.ts';
import type { common as english } from '../english/common.ts';

/** Words that every place shares. */
export const common: TranslationOf<typeof english> = {
  'common.as-written': ({ text }) => text,

  'common.phase.prepare': 'Preparar',
  'common.phase.clean': 'Limpiar',
  'common.phase.rest': 'Reposo',
  'common.phase.purge': 'Kasherizar',
  'common.phase.cool': 'Enfriar',
  'common.phase.cover': 'Cubrir',
  'common.phase.mark': 'Marcar',

  'common.designation.meat': 'Carne',
  'common.designation.dairy': 'Lácteo',
  'common.designation.pareve': 'Parve (neutro)',
  'common.designation.undecided': 'Sin decidir',

  'common.when': ({ wallMs, nowMs, zone }, f) =>
    f.day(wallMs, zone) === f.day(nowMs, zone)
      ? f.clock(wallMs, zone)
      : f.shortMoment(wallMs, zone),
  'common.moment': ({ wallMs, zone }, f) => f.moment(wallMs, zone),
  'common.day': ({ wallMs, zone }, f) => f.date(wallMs, zone),
  'common.countdown.hours': ({ hours, minutes }) =>
    `${hours} h ${String(minutes).padStart(2, '0')} min`,
  'common.countdown.minutes': ({ minutes, seconds }) =>
    `${minutes}:${String(seconds).padStart(2, '0')}`,
  'common.countdown.unit.hours': 'h',
  'common.countdown.unit.minutes': 'min',

  'common.press.short': 'Mantenga el dedo un poco más',
  'common.press.no-fingertip': 'Toque con la punta de un solo dedo',

  'common.signal.DANGER': 'PELIGRO',
  'common.signal.WARNING': 'ADVERTENCIA',
  'common.signal.CAUTION': 'PRECAUCIÓN',
  'common.signal.NOTICE': 'AVISO',
};
