import type { TranslationOf } from '../model/translation.ts';
import type { common as english } from '../english/common.ts';

/** Words that every place shares. */
export const common: TranslationOf<typeof english> = {
  'common.as-written': ({ text }) => text,

  'common.method.glow': 'Calentar al rojo',
  'common.method.light-heat': 'Calentar al máximo',
  'common.method.self-clean': 'Ciclo completo de autolimpieza',
  'common.method.pour': 'Verter agua hirviendo',
  'common.method.immerse': 'Sumergir en agua hirviendo',
  'common.method.steam': 'Hervir agua dentro',
  'common.method.boil-over': 'Hacer rebosar hirviendo',
  'common.method.clean': 'Limpiar a fondo',
  'common.method.line': 'Limpiar y forrar',
  'common.method.cover': 'Cubrir',
  'common.method.not-purged': 'Sin kasherizar: no se usa',
  'common.method.replace': 'Reemplazar',

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

  'common.other-zone': ({ wallMs, zone, tabletZone }, f) =>
    `Todas las horas son las de la cocina, donde ahora es ${f.shortMoment(wallMs, zone)}. Esta tableta está en otra zona horaria y mostraría ${f.shortMoment(wallMs, tabletZone)}.`,
  'common.when': ({ wallMs, nowMs, zone }, f) =>
    f.day(wallMs, zone) === f.day(nowMs, zone)
      ? f.clock(wallMs, zone)
      : f.shortMoment(wallMs, zone),
  'common.countdown.hours': ({ hours, minutes }) =>
    `${hours} h ${String(minutes).padStart(2, '0')} min`,
  'common.countdown.minutes': ({ minutes, seconds }) =>
    `${minutes}:${String(seconds).padStart(2, '0')}`,
  'common.countdown.unit.hours': 'h',
  'common.countdown.unit.minutes': 'min',

  'common.press.short': 'Mantenga el dedo un poco más',
  'common.press.no-fingertip': 'Toque con la punta de un solo dedo',

  'common.resource.hands': 'Manos',
  'common.resource.burners-lit': 'Quemadores encendidos',
  'common.resource.watch': 'Vigilancia',
  'common.resource.unit.shares': 'partes',
  'common.resource.unit.people': 'personas',
  'common.resource.unit.burners': 'quemadores',
  'common.resource.unit.kettles': 'hervidores',
  'common.resource.unit.amperes': 'A',

  'common.signal.DANGER': 'PELIGRO',
  'common.signal.WARNING': 'ADVERTENCIA',
  'common.signal.CAUTION': 'PRECAUCIÓN',
  'common.signal.NOTICE': 'AVISO',
};
