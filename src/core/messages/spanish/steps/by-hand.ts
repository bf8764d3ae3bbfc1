import type { TranslationOf } from '../../model/translation.ts';
import type { byHand as english } from '../../english/steps/by-hand.ts';

/** Steam, and what a household's answer asks for that is done by hand. */
export const byHand: TranslationOf<typeof english> = {
  'steps.steam.title': ({ fixture, lengthS }, f) =>
    `Hierva agua dentro durante ${f.duration(lengthS)}: ${fixture}.`,
  'steps.steam.start':
    'Llene de agua hasta la mitad una taza ancha con un palito de madera dentro, métala y encienda.',
  'steps.steam.cup-on': 'Apoye la taza sobre algo nuevo: una toalla de papel doblada en cuatro.',
  'steps.steam.start-detail':
    'Con el palito hierve tranquila: el agua quieta puede saltar de la taza al moverla.',
  'steps.steam.start-ask': '¿Está encendido ahora?',
  'steps.steam.hold': 'Deje que se llene de vapor.',
  'steps.steam.hold-detail':
    'No deje nunca que la taza se quede sin agua: un microondas vacío se quema. Para rellenarla: apague, deje cerrado un minuto, use guantes; después ponga la taza en otro sitio.',
  'steps.steam.hold-ask': '¿Siguió hirviendo?',
  'steps.steam.timer': 'Vapor',
  'steps.steam.top-up': '¿Hay agua en la taza?',
  'steps.steam.open': 'Apague y deje cerrado cinco minutos; después pase un paño con agua fría.',
  'steps.steam.open-detail':
    'Abra lejos de usted, con guantes, y saque primero la taza. El plato y el aro vuelven secos.',
  'steps.steam.open-say': 'Ya está limpio',
  'steps.steam.open-ask': '¿Está apagado y limpio?',
  'steps.steam.off-timer': 'Apagar',
  'steps.steam.safe': 'Apague y deje cerrado.',

  'steps.by-hand.pour': ({ fixture }) =>
    `Vierta a mano agua hirviendo sobre cada punto: ${fixture}.`,
  'steps.by-hand.pour-kettle': 'Directo del hervidor que hirvió, a borbotones.',
  'steps.by-hand.pour-stream': 'El propio chorro llega a cada punto, un hervidor cada vez.',
  'steps.by-hand.pour-say': 'Se vertió sobre cada punto',
  'steps.by-hand.pour-ask': '¿Llegó el agua hirviendo a cada punto?',
  'steps.by-hand.immerse': ({ fixture }) =>
    `Sumerja en agua hirviendo, pieza por pieza: ${fixture}.`,
  'steps.by-hand.immerse-boils': 'El agua hierve antes de meter cada pieza y mientras está dentro.',
  'steps.by-hand.immerse-under': 'Cada pieza, del todo bajo el agua.',
  'steps.by-hand.immerse-say': 'Entraron todas las piezas',
  'steps.by-hand.immerse-ask': '¿Estuvieron todas las piezas en el agua hirviendo?',
  'steps.by-hand.cold': 'Enjuague enseguida cada pieza con agua fría.',
  'steps.by-hand.heat': ({ fixture, lengthS }, f) =>
    `Caliente como dice su respuesta, ${f.duration(lengthS)}: ${fixture}.`,
  'steps.by-hand.run-empty': ({ fixture, lengthS }, f) =>
    `Póngalo en marcha vacío, con el ciclo más caliente, ${f.duration(lengthS)}: ${fixture}.`,
  'steps.by-hand.heat-say': 'El tiempo ha terminado',
  'steps.by-hand.heat-ask': '¿Siguió el calor sin interrupción?',
  'steps.by-hand.heat-timer': 'Calor',
  'steps.by-hand.look': 'Mire lo que se calienta',
  'steps.by-hand.off': 'Apague el calor y no lo toque hasta que esté frío.',
  'steps.by-hand.off-say': 'Está apagado y frío',
  'steps.by-hand.off-ask': '¿Está apagado el calor?',
  'steps.by-hand.off-timer': 'Apagar el calor',
  'steps.by-hand.safe': 'Apague el calor y mantenga a todos lejos.',
};
