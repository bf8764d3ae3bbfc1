import type { TranslationOf } from '../../model/translation.ts';
import type { heat as english } from '../../english/steps/heat.ts';

/** `isAhead`: what is expected has not come yet. */
export const heat: TranslationOf<typeof english> = {
  'steps.heat.say-on': 'Está encendido',
  'steps.heat.say-off': 'Está apagado',
  'steps.heat.ask-stayed-on': '¿Siguió encendido el quemador?',

  'steps.burner.of': ({ burner, cooktop }) => `${burner} (${cooktop})`,
  'steps.glow.title': ({ burner, cooktop, lengthS }, f) =>
    `Ponga al rojo y mantenga ${f.duration(lengthS)}: ${burner} (${cooktop}).`,
  'steps.glow.title-highest': ({ burner, cooktop, lengthS }, f) =>
    `Caliente al máximo: ${burner} (${cooktop}), ${f.duration(lengthS)}.`,
  'steps.glow.light-gas': ({ burner }) => `Encienda el quemador ${burner} con la llama al máximo.`,
  'steps.glow.light-electric': ({ burner }) => `Ponga el quemador ${burner} al máximo.`,
  'steps.glow.light-clear': 'Campana en marcha, nada cerca.',
  'steps.glow.light-order':
    'Primero los quemadores de atrás, para que nadie pase el brazo sobre uno caliente.',
  'steps.glow.light-gas-ready':
    'Tapas y parrillas encajadas y secas, perillas puestas, llave del gas abierta. Si huele a gas, ni llama ni interruptor: salga y llame.',
  'steps.glow.light-ask': '¿Está encendido ahora el quemador?',
  'steps.glow.warm-up': 'Mírelo hasta que esté al rojo.',
  'steps.glow.visible.electric-coil':
    'Toda la espiral se pone rojo oscuro y después naranja. Una más nueva con limitador por sensor puede encenderse y apagarse y no llegar al rojo sin olla.',
  'steps.glow.visible.solid-plate':
    'Un disco de hierro fundido se pone rojo oscuro, visible a oscuras, si su limitador lo deja. Muchos con punto rojo se cortan antes.',
  'steps.glow.visible.radiant-glass':
    'La cinta bajo el vidrio se pone al rojo en segundos; un limitador la apaga y la enciende, y es normal. El vidrio mismo no se pone al rojo.',
  'steps.glow.visible.gas-sealed':
    'Enrojecen las puntas de la parrilla que están en la llama; la parrilla entera, no.',
  'steps.glow.visible.gas-open':
    'Enrojecen las puntas de la parrilla que están en la llama; la parrilla entera, no.',
  'steps.glow.visible.gas-wok':
    'El aro de la parrilla sobre la llama exterior enrojece en las puntas.',
  'steps.glow.visible.commercial-open':
    'Los brazos gruesos de hierro fundido enrojecen donde les da la llama; deles más tiempo.',
  'steps.glow.visible.portable-plate':
    'Una espiral portátil se pone rojo oscuro; una de disco cerrado o con termostato puede no llegar al rojo.',
  'steps.glow.may-stay-dark':
    'Este puede no enrojecer nunca sin olla: la detecta, o recibe poca tensión. Mire a oscuras. Si sigue sin color, diga que no se pone al rojo.',
  'steps.glow.warm-up-say': 'Está al rojo',
  'steps.glow.expect': ({ isAhead }) =>
    isAhead ? 'Hasta que esté al rojo (previsto)' : 'Al rojo más o menos ahora',
  'steps.glow.limit': 'Ya debería estar al rojo',
  'steps.glow.hold': 'Manténgalo al rojo sin interrupción.',
  'steps.glow.hold-highest': 'Manténgalo al máximo sin interrupción.',
  'steps.glow.hold-detail':
    'Quédese al lado. Si falla la llama o la corriente, el tiempo empieza de nuevo.',
  'steps.glow.hold-ask': '¿Siguió el quemador al rojo?',
  'steps.glow.hold-timer': 'Al rojo',
  'steps.glow.look': 'Mire el quemador',
  'steps.glow.off': ({ burner }) => `Apague el quemador ${burner}.`,
  'steps.glow.off-detail': 'Déjelo seco y sin tocar.',
  'steps.glow.off-ask': '¿Está apagado el quemador?',
  'steps.glow.off-timer': 'Apagar el quemador',
  'steps.glow.cool-safe': ({ burner }) =>
    `Mantenga manos, paños y niños lejos del quemador ${burner} hasta que se enfríe.`,

  'steps.oven.look': '¿Va todo bien con el horno?',
  'steps.oven.clean.title': ({ oven }) => `Haga un ciclo completo de autolimpieza: ${oven}.`,
  'steps.oven.clean.start': ({ oven }) =>
    `Cierre la puerta e inicie el ciclo completo de autolimpieza: ${oven}.`,
  'steps.oven.clean.racks-in': 'Las rejillas quedan dentro, como permite su manual.',
  'steps.oven.clean.racks-out': 'Las rejillas están fuera.',
  'steps.oven.clean.hob-cold':
    'Los quemadores de encima quedan apagados hasta que se abra el bloqueo.',
  'steps.oven.clean.locks': 'La puerta se bloquea sola cuando está caliente.',
  'steps.oven.clean.start-say': 'Está en marcha',
  'steps.oven.clean.start-ask': '¿Está en marcha el ciclo ahora?',
  'steps.oven.clean.cycle': 'Deje que el ciclo llegue a su fin.',
  'steps.oven.clean.cycle-detail':
    'Quédese en casa y despierto; mantenga lejos a los niños. Si falla la corriente, el ciclo empieza de nuevo.',
  'steps.oven.clean.cycle-ask': '¿Siguió el ciclo sin interrupción?',
  'steps.oven.clean.cycle-timer': 'Ciclo de autolimpieza',
  'steps.oven.clean.cool': 'Deje la puerta cerrada hasta que se abra el bloqueo.',
  'steps.oven.clean.cool-detail': 'No la fuerce.',
  'steps.oven.clean.cool-timer': 'Se abre el bloqueo',
  'steps.oven.clean.open':
    'Compruebe que el ciclo ha terminado y el bloqueo está abierto; después apague el horno.',
  'steps.oven.clean.open-detail': 'Dentro sigue caliente: déjelo cerrado y seco.',
  'steps.oven.clean.open-say': 'Está apagado y sin bloqueo',
  'steps.oven.clean.open-ask': '¿Está el horno apagado y sin bloqueo?',
  'steps.oven.clean.open-timer': 'Compruebe que el horno está apagado',
  'steps.oven.clean.safe':
    'Mantenga la puerta cerrada y apague el horno en su mando o en su interruptor automático.',
  'steps.oven.title': ({ oven, lengthS }, f) =>
    `Caliente al máximo durante ${f.duration(lengthS)}: ${oven}.`,
  'steps.oven.start': ({ oven }) => `Póngalo al máximo con la puerta cerrada: ${oven}.`,
  'steps.oven.start-detail': 'Si tiene gratinador, úselo en los últimos minutos.',
  'steps.oven.racks-in': 'Rejillas dentro, limpias y secas.',
  'steps.oven.racks-out': 'Las rejillas viejas están fuera.',
  'steps.oven.start-ask': '¿Está encendido ahora el horno?',
  'steps.oven.warm-up': 'Espere hasta que llegue a su calor máximo.',
  'steps.oven.warm-up-say': 'Está al máximo',
  'steps.oven.warm-up-ask': '¿Siguió encendido el horno?',
  'steps.oven.expect': ({ isAhead }) =>
    isAhead ? 'Hasta que esté al máximo (previsto)' : 'Al máximo más o menos ahora',
  'steps.oven.hold': 'Manténgalo al máximo sin interrupción.',
  'steps.oven.hold-detail': 'Si falla la corriente o la llama, el tiempo empieza de nuevo.',
  'steps.oven.hold-ask': '¿Siguió encendido el horno sin interrupción?',
  'steps.oven.hold-timer': 'Calor máximo',
  'steps.oven.off': ({ oven }) => `Apague y deje la puerta cerrada: ${oven}.`,
  'steps.oven.off-ask': '¿Está apagado el horno?',
  'steps.oven.off-timer': 'Apagar el horno',
  'steps.oven.safe': 'Apague el horno y mantenga la puerta cerrada.',
  'steps.oven.cool-safe': ({ oven }) =>
    `Mantenga la puerta cerrada y a los niños lejos hasta que se enfríe: ${oven}.`,
  'steps.oven.picture.heat': 'Calentar',
  'steps.oven.picture.hold': 'Mantener',
  'steps.oven.picture.cool': 'Enfriar',
  'steps.oven.picture.cool-locked': 'Enfriar, bloqueado',
};
